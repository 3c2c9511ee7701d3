package pappus.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.answers.offer.OfferPage;
import pappus.answers.offer.OfferReport;
import pappus.catalog.BuildText;
import pappus.catalog.ReadCatalog;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Shown;
import pappus.files.output.OutputFolder;
import pappus.offer.Offer;
import pappus.offer.OfferDesk;
import pappus.offer.ShopFiles;
import pappus.offer.ToldBuilds;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Builds of a result as a shop offers them. */
@Command(
    name = "offer",
    description =
        "Writes the page for a customer: up to three builds of a result in selling units, with the shop's prices, tax and stock.",
    footer = {
      "pappus offer out/bird-survey/result.json --settings src/main/shop/shop.json \\",
      "  --stock src/main/shop/stock.csv --date 2026-05-31",
      "pappus offer out/bird-survey/result.json#1 out/bird-survey/result.json#3 \\",
      "  --settings src/main/shop/shop.json --date 2026-05-31 --format csv"
    })
final class OfferCommand extends ToldCommand implements Callable<Integer> {
  private static final int MOST_BUILDS = 3;
  private static final String PDF = "offer.pdf";

  @Parameters(
      arity = "1..*",
      paramLabel = "RESULT.json#N",
      description =
          "Builds of one result of recommend, three at most; without #N its longest flight, its best value and its lightest.")
  private List<String> texts = new ArrayList<>();

  @Option(
      names = "--settings",
      required = true,
      paramLabel = "FILE",
      description = "What the shop says of itself and how it sells; describe shop has its fields.")
  private Path settingsFile;

  @Option(
      names = "--stock",
      paramLabel = "CSV",
      description =
          "What the shop has: columns id, stock in selling units, and price of one; others are not looked at.")
  private @Nullable Path stockFile;

  @Option(
      names = "--date",
      required = true,
      paramLabel = "DATE",
      description = "Date of the offer, such as 2026-05-31.")
  private String dateText;

  @Option(
      names = "--pdf",
      description = "Also write offer.pdf, by a Chromium or Chrome that is installed.")
  private boolean withPdf;

  @Override
  Path resultFile() {
    return Path.of(file(texts.get(0)));
  }

  private void checkOneResult() {
    var file = file(texts.get(0));
    for (var text : texts) {
      if (file(text).isEmpty()) {
        throw usage(
            "%s must name its file before #, such as out/name/result.json#1: each build does."
                .formatted(Shown.text(text)));
      }
      if (!file(text).equals(file)) {
        throw usage("builds must be of one result, but are of %s and %s."
            .formatted(Shown.text(file), Shown.text(file(text))));
      }
    }
  }

  private static String file(String text) {
    var hash = text.lastIndexOf('#');
    return hash < 0 ? text : text.substring(0, hash);
  }

  private ParameterException usage(String message) {
    return new ParameterException(spec().commandLine(), message);
  }

  @Override
  public Integer call() {
    format(Format.CSV, Format.MARKDOWN);
    var date = date();
    if (texts.size() > MOST_BUILDS) {
      throw usage("RESULT.json#N must be given three times at most, but is given %s times."
          .formatted(texts.size()));
    }
    checkOneResult();
    var ranks = ranks();
    var inputs = readAgain();
    told()
        .changed(inputs.files())
        .forEach(
            name -> err()
                .line(
                    name
                        + " has changed since the result, or was not read: the offer is of it as it is now."));
    var shop = ShopFiles.read(settingsFile, stockFile, inputs.catalog().currency());
    if (!isQuiet()) {
      ReadCatalog.first(shop.strangers(inputs.catalog())).forEach(err()::line);
      shop.missing().ifPresent(err()::line);
    }
    var desk = new OfferDesk(shop.shop(), inputs.scenario(), inputs.supply(), shop.stock());
    var builds = new ToldBuilds(
            resultFile().toString(),
            (ranks.isEmpty() ? told().candidates() : told().builds())
                .stream()
                    .map(row -> new ToldBuilds.Row(row.roles(), row.milliseconds()))
                    .toList())
        .of(ranks, inputs.catalog(), inputs.assessor(), desk);
    return answer(inputs, desk.offer(builds, date));
  }

  private LocalDate date() {
    if (!dateText.matches("[12][0-9]{3}-[0-9]{2}-[0-9]{2}")) {
      throw usage(
          "--date must be a day such as 2026-05-31, but is %s.".formatted(Shown.text(dateText)));
    }
    try {
      return LocalDate.parse(dateText);
    } catch (DateTimeParseException wrong) {
      throw usage(
          "--date must be a day of the calendar, but %s is none.".formatted(Shown.text(dateText)));
    }
  }

  /** Ranks named; empty where the best are to be picked. */
  private List<Integer> ranks() {
    var ranks = new ArrayList<Integer>();
    for (var text : texts) {
      var hash = text.lastIndexOf('#');
      if (hash < 0 && texts.size() == 1) {
        return List.of();
      }
      var name = hash < 0 ? "" : text.substring(hash + 1);
      if (!name.matches(BuildText.NAME)) {
        throw usage("%s must end in # and a rank or a pick.".formatted(Shown.text(text)));
      }
      var place = told()
          .place(name)
          .orElseThrow(() -> InputException.badData(Problem.ofFile(
              resultFile().toString(),
              Character.isDigit(name.charAt(0))
                  ? "must hold a candidate %s, but has %s."
                      .formatted(name, told().candidates().size())
                  : "must hold the pick %s, but has %s.".formatted(name, told().names()))));
      if (ranks.contains(place)) {
        throw usage("builds must differ, but #%s is there twice.".formatted(name));
      }
      ranks.add(place);
    }
    return ranks;
  }

  private int answer(Inputs inputs, Offer offer) {
    var report = new OfferReport(inputs.scenario(), offer);
    if (!isQuiet()) {
      report.overBudget().forEach(err()::line);
    }
    var page = OfferPage.of(inputs.scenario(), offer, report, Version.tool());
    var json = report.json(Version.tool());
    var browser = withPdf
        ? PdfPrinter.browser(String.valueOf(System.getenv("PATH")))
        : Optional.<Path>empty();
    var pdf = browser.flatMap(found -> PdfPrinter.print(found, page, offer.date()));
    var folder = output(inputs.scenario());
    folder.write(
        Map.of("offer.html", page, "offer.csv", report.csv(), "offer.json", json),
        pdf.<Map<String, byte[]>>map(bytes -> Map.of(PDF, bytes)).orElse(Map.of()));
    if (pdf.isEmpty()) {
      tellOfNoPdf(folder, browser);
    }
    print(() -> json, () -> report.text(columns()), report::csv, report::markdown);
    return withPdf && pdf.isEmpty() ? ExitCode.CANNOT_CREATE : ExitCode.OK;
  }

  /** After the other files are written: they are what can be printed instead. */
  private void tellOfNoPdf(OutputFolder folder, Optional<Path> browser) {
    if (withPdf) {
      err()
          .line(browser
                  .map(found -> PDF + " could not be printed by " + found.getFileName() + ".")
                  .orElse(PDF + " needs an installed Chromium or Chrome, but none is on the PATH.")
              + " offer.html is written: print it from any browser.");
    }
    var older = folder.file(PDF);
    if (Files.exists(older) && (withPdf || !isQuiet())) {
      err().line(older.toString() + " is of an earlier offer.");
    }
  }
}
