package pappus.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.answers.offer.OfferPage;
import pappus.answers.offer.OfferReport;
import pappus.catalog.BuildText;
import pappus.catalog.ShelfEntry;
import pappus.document.Spoken;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.output.OutputFolder;
import pappus.offer.Offer;
import pappus.offer.OfferDesk;
import pappus.offer.Shop;
import pappus.offer.StockList;
import pappus.part.Build;
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

  private String resultName() {
    return resultFile().toString();
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
    changed(inputs)
        .forEach(
            name -> err()
                .line(
                    name
                        + " has changed since the result, or was not read: the offer is of it as it is now."));
    var problems = new Problems();
    var currency = inputs.catalog().currency();
    var shop = Shop.read(settingsFile, currency, problems);
    var stock = stock(currency, problems);
    problems.throwIfAny();
    tellStrangers(stock.orElse(List.of()), inputs);
    if (stock.isPresent() && !StockList.hasPrices(stock.get()) && !isQuiet()) {
      err()
          .line(String.valueOf(stockFile)
              + " has no prices in a column price: those of the catalogue are taken.");
    }
    if (stock.isEmpty() && !isQuiet()) {
      err()
          .line(
              "Without --stock nothing is said of what is in stock, and prices are the catalogue's.");
    }
    var desk = new OfferDesk(shop.orElseThrow(), inputs.scenario(), inputs.supply(), stock);
    var builds = builds(ranks, inputs, desk);
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
      var rank = hash < 0 ? "" : text.substring(hash + 1);
      if (!rank.matches("[1-9][0-9]{0,2}")) {
        throw usage("%s must end in # and a rank.".formatted(Shown.text(text)));
      }
      if (ranks.contains(Integer.valueOf(rank))) {
        throw usage("builds must differ, but #%s is there twice.".formatted(rank));
      }
      ranks.add(Integer.valueOf(rank));
    }
    return ranks;
  }

  private Optional<List<ShelfEntry>> stock(String currency, Problems problems) {
    return stockFile == null
        ? Optional.empty()
        : Source.find(stockFile, problems)
            .map(source -> StockList.read(source, currency, problems));
  }

  /** A shop's list is longer than a catalogue. */
  private void tellStrangers(List<ShelfEntry> stock, Inputs inputs) {
    if (isQuiet()) {
      return;
    }
    tellStrangers(stock.stream()
        .filter(entry -> inputs.catalog().part(entry.id()).isEmpty())
        .map(entry -> Problem.ofFile(
            String.valueOf(stockFile),
            "%s is in no catalogue: it counts for nothing.".formatted(entry.id())))
        .toList());
  }

  /** By rank, in the order they are offered. */
  private Map<Integer, Build> builds(List<Integer> named, Inputs inputs, OfferDesk desk) {
    var rows = told().candidates();
    var all = new TreeMap<Integer, Build>();
    var problems = new Problems();
    for (var rank : named) {
      if (rank > rows.size()) {
        problems.add(Problem.ofFile(
            resultName(), "must hold a candidate %s, but has %s.".formatted(rank, rows.size())));
      }
    }
    if (rows.isEmpty()) {
      problems.add(Problem.ofFile(resultName(), "must hold a candidate, but has none."));
    }
    problems.throwIfAny();
    for (var rank = 1; rank <= rows.size(); rank++) {
      if (named.isEmpty() || named.contains(rank)) {
        all.put(rank, build(rank, inputs, desk));
      }
    }
    var builds = new LinkedHashMap<Integer, Build>();
    (named.isEmpty() ? desk.pick(all) : named)
        .forEach(rank -> builds.put(rank, Objects.requireNonNull(all.get(rank))));
    return builds;
  }

  /** What does not fly as it was told is not to be promised to anybody. */
  private Build build(int rank, Inputs inputs, OfferDesk desk) {
    var row = told().candidates().get(rank - 1);
    try {
      var assessed = inputs.assessor().assess(BuildText.of(row.roles(), inputs.catalog()));
      if (assessed.milliseconds() != row.milliseconds() || !assessed.isFeasible()) {
        throw new IllegalArgumentException(
            "candidate %s must fly as the result tells, %s min, but flies %s min%s. Maybe run recommend again."
                .formatted(
                    rank,
                    Spoken.number(row.milliseconds() / 60_000.0, 2),
                    Spoken.number(assessed.milliseconds() / 60_000.0, 2),
                    assessed.isFeasible() ? "" : " and breaks a rule or limit"));
      }
      return BuildText.of(row.roles(), desk.catalog());
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          InputException.Kind.BAD_DATA,
          List.of(Problem.ofFile(resultName(), String.valueOf(wrong.getMessage()))));
    }
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
