package pappus.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
import pappus.offer.OfferedBuild;
import pappus.offer.ShopFiles;
import pappus.offer.ToldBuilds;
import pappus.part.Build;
import pappus.quantity.Require;
import pappus.scenario.Scenario;
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
          "Builds of results of recommend, three at most; one result without #N: its longest flight, its best value and its lightest. Of what order wrote, builds of groups with one scenario, such as order.json#meadow.")
  private List<String> texts = new ArrayList<>();

  /** The result that is read now. */
  private String current = "";

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

  @Option(names = "--for", paramLabel = "NAME", description = "Whom the offer is for.")
  private @Nullable String customer;

  @Option(
      names = "--number",
      paramLabel = "TEXT",
      description = "By which the shop files it, such as 2026-014.")
  private @Nullable String number;

  @Option(
      names = "--pdf",
      description = "Also write offer.pdf, by a Chromium or Chrome that is installed.")
  private boolean withPdf;

  @Override
  String buildName() {
    var of = resultFile().toString();
    return texts.stream()
        .filter(text -> Path.of(file(text)).toString().equals(of))
        .findFirst()
        .map(text -> text.substring(text.lastIndexOf('#') + 1))
        .orElse("");
  }

  @Override
  Path resultFile() {
    return Path.of(current.isEmpty() ? file(texts.get(0)) : current);
  }

  private void checkNames() {
    for (var text : texts) {
      if (file(text).isEmpty()) {
        throw usage(
            "%s must name its file before #, such as out/name/result.json#1: each build does."
                .formatted(Shown.text(text)));
      }
    }
    if (texts.size() > 1) {
      texts.stream().filter(text -> !text.contains("#")).findFirst().ifPresent(text -> {
        throw usage("%s must end in # and a rank or a pick.".formatted(Shown.text(text)));
      });
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
    checkNames();
    var customer = named("--for", this.customer);
    var number = named("--number", this.number);
    var offered = new LinkedHashMap<String, OfferedBuild>();
    var results = new LinkedHashSet<String>();
    texts.forEach(text -> results.add(file(text)));
    ShopFiles shop = null;
    var scenarios = new ArrayList<Scenario>();
    for (var result : results) {
      current = result;
      var ranks = ranks();
      var inputs = readAgain();
      scenarios.add(inputs.scenario());
      tellOfChanges(inputs);
      if (shop == null) {
        shop = ShopFiles.read(settingsFile, stockFile, inputs.catalog().currency());
        tellOfTheShop(shop, inputs);
      }
      var desk = new OfferDesk(shop.shop(), inputs.scenario(), inputs.supply(), shop.stock());
      for (var build : desk.offered(builds(ranks, inputs, desk))) {
        offered.put(result + "#" + build.rank(), build);
      }
    }
    if (shop == null) {
      throw new IllegalStateException("there is a result at least");
    }
    var ordered = texts.size() == 1
        ? List.copyOf(offered.values())
        : texts.stream()
            .map(this::key)
            .map(offered::get)
            .map(Objects::requireNonNull)
            .toList();
    return answer(
        scenarios.get(0),
        new Offer(shop.shop(), date, customer, number, ordered, shop.stock().isPresent()));
  }

  /** File and place of a build that is named. */
  private String key(String text) {
    current = file(text);
    return current + "#" + place(text.substring(text.lastIndexOf('#') + 1));
  }

  /** What stands on the page as it is typed. */
  private Optional<String> named(String option, @Nullable String text) {
    try {
      return Optional.ofNullable(text).map(given -> Require.name(option, given));
    } catch (IllegalArgumentException wrong) {
      throw usage(String.valueOf(wrong.getMessage()));
    }
  }

  private void tellOfChanges(Inputs inputs) {
    told()
        .changed(inputs.files())
        .forEach(
            name -> err()
                .line(
                    name
                        + " has changed since the result, or was not read: the offer is of it as it is now."));
  }

  private void tellOfTheShop(ShopFiles shop, Inputs inputs) {
    if (!isQuiet()) {
      ReadCatalog.first(shop.strangers(inputs.catalog())).forEach(err()::line);
      shop.missing().ifPresent(err()::line);
    }
  }

  private Map<Integer, Build> builds(List<Integer> ranks, Inputs inputs, OfferDesk desk) {
    return new ToldBuilds(
            resultFile().toString(),
            (ranks.isEmpty() ? told().candidates() : told().builds())
                .stream()
                    .map(row -> new ToldBuilds.Row(row.roles(), row.milliseconds()))
                    .toList())
        .of(ranks, inputs.catalog(), inputs.assessor(), desk);
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

  /** Places named of the result that is read now; empty where the best are to be picked. */
  private List<Integer> ranks() {
    var ranks = new ArrayList<Integer>();
    for (var text : texts) {
      if (!file(text).equals(current)) {
        continue;
      }
      var hash = text.lastIndexOf('#');
      if (hash < 0) {
        return List.of();
      }
      var name = text.substring(hash + 1);
      if (!name.matches(BuildText.NAME)) {
        throw usage("%s must end in # and a rank or a pick.".formatted(Shown.text(text)));
      }
      var place = place(name);
      if (ranks.contains(place)) {
        throw usage("builds must differ, but #%s is there twice.".formatted(name));
      }
      ranks.add(place);
    }
    return ranks;
  }

  private int place(String name) {
    return told()
        .place(name)
        .orElseThrow(() -> InputException.badData(Problem.ofFile(
            resultFile().toString(),
            Character.isDigit(name.charAt(0))
                ? "must hold a candidate %s, but has %s."
                    .formatted(name, told().candidates().size())
                : "must hold the pick %s, but has %s.".formatted(name, told().names()))));
  }

  /**
   * @param first what was asked of the first result, for the folder
   */
  private int answer(Scenario first, Offer offer) {
    var report = new OfferReport(offer);
    if (!isQuiet()) {
      report.overBudget().forEach(err()::line);
    }
    var page = OfferPage.of(offer, report, Version.tool());
    var json = report.json(Version.tool());
    var browser = withPdf
        ? PdfPrinter.browser(String.valueOf(System.getenv("PATH")))
        : Optional.<Path>empty();
    var pdf = browser.flatMap(found -> PdfPrinter.print(found, page, offer.date()));
    var folder = output(first);
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
