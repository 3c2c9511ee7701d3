package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.document.Spoken;
import pappus.quantity.Money;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An offer of a result's builds, from the command line to its files. */
class OfferCommandTest {
  static final String SETTINGS = """
      {
        "shop": "Windlass Row",
        "address": ["3 Windlass Row"],
        "contact": ["knock twice"],
        "currency": "EUR",
        "tax": {"label": "sales tax", "percent": 20},
        "pricesIncludeTax": true,
        "validDays": 14,
        "spares": [{"role": "propeller", "units": 1}]
      }
      """;

  @TempDir
  private Path folder;

  private Path typed;

  @BeforeEach
  void recommend() throws IOException {
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.addAll(SmallShop.MORE);
    CommandRun.write(folder, SmallShop.catalog(ids), "");
    Files.writeString(folder.resolve("shop.json"), SETTINGS);
    recommendAgain();
  }

  private void recommendAgain() {
    typed = CommandRun.typed(folder);
    assertThat(CommandRun.recommend(typed, "--force").exitCode()).isEqualTo(ExitCode.OK);
  }

  private CommandRun offer(List<String> builds, String... more) {
    var args = new ArrayList<>(List.of("offer"));
    builds.forEach(build -> args.add(typed.resolve("out/result.json") + build));
    args.addAll(List.of(
        "--settings", typed.resolve("shop.json").toString(),
        "--date", "2026-05-31",
        "--out", typed.resolve("out").toString()));
    args.addAll(List.of(more));
    return CommandRun.of(args);
  }

  private CommandRun withStock(String stock, String... more) throws IOException {
    Files.writeString(folder.resolve("stock.csv"), stock);
    var words = new ArrayList<>(List.of("--stock", typed.resolve("stock.csv").toString()));
    words.addAll(List.of(more));
    return offer(List.of("#1"), words.toArray(String[]::new));
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve("out").resolve(name));
  }

  private JsonNode line(CommandRun run, String part) {
    for (var line : run.json().path("builds").path(0).path("lines")) {
      if (line.path("part").asString().equals(part)) {
        return line;
      }
    }
    throw new AssertionError(part + " is not in " + run.out());
  }

  private JsonNode candidate(int rank) throws IOException {
    return JsonMapper.shared().readTree(file("result.json")).path("candidates").path(rank - 1);
  }

  private String fixed(int rank, String role) throws IOException {
    return candidate(rank).path("roles").path(role).asString();
  }

  /** Where the flight leads away, card and text say how far picture and control reach, and whose law permits it. */
  @Test
  void tellsHowFarLinksReachWhereTheFlightLeadsAway() throws IOException {
    assertThat(offer(List.of("#1")).out()).doesNotContain("Video reaches");

    var scenario = folder.resolve("marsh.json");
    Files.writeString(
        scenario,
        Files.readString(scenario).replace("{\"style\": \"hover\"}", "{\"style\": \"cruise\"}"));
    recommendAgain();
    var run = offer(List.of("#1"), "--force");

    var words =
        "Video reaches [0-9.]+ k?m to .* control reaches .* Permitted power, band and range are local law.";
    assertThat(run.out().replaceAll("\\s+", " ")).containsPattern(words);
    assertThat(file("offer.html").replaceAll("\\s+", " ")).containsPattern(words);
  }

  @Test
  void sellsWholeUnitsWithSparesAndTellsTaxAndDates() throws IOException {
    var run = offer(List.of("#1"), "--format", "json");

    var build = run.json().path("builds").path(0);
    var motors = line(run, fixed(1, "motor"));
    assertThat(motors.path("pieces").asInt()).isEqualTo(4);
    assertThat(motors.path("units").asInt()).isEqualTo(4);
    var propellers = line(run, fixed(1, "propeller"));
    assertThat(propellers.path("unit").asString()).isEqualTo("set of 4");
    assertThat(propellers.path("units").asInt()).isEqualTo(2);
    assertThat(propellers.path("spareUnits").asInt()).isEqualTo(1);
    var sum = 0L;
    for (var line : build.path("lines")) {
      sum += line.path("cents").asLong();
    }
    assertThat(build.path("grossCents").asLong()).isEqualTo(sum);
    assertThat(build.path("netCents").asLong()).isEqualTo(Math.round(sum / 1.2));
    assertThat(build.path("netCents").asLong() + build.path("taxCents").asLong())
        .isEqualTo(sum);
    assertThat(file("offer.html"))
        .contains(
            "2026-05-31",
            "Valid until <strong>2026-06-14",
            "radio",
            "goggles",
            "charger",
            "postage",
            "sales tax 20 %");
  }

  @Test
  void promisesWhatToPlanWithAndNeverTheEstimate() throws IOException {
    var run = offer(List.of("#1"), "--format", "json");

    var band = candidate(1).path("band");
    assertThat(run.json().path("builds").path(0).path("planWithSeconds").asDouble())
        .isEqualTo(band.path("lowSeconds").asDouble());
    var best = Spoken.minutes(candidate(1).path("milliseconds").asLong() / 1000.0);
    // Rounded down: a promise is kept.
    var plan = Spoken.minutes(Math.floor(band.path("lowSeconds").asDouble() / 30) * 30);
    assertThat(plan).isNotEqualTo(best);
    assertThat(file("offer.html"))
        .contains(">" + plan + " min in the air<")
        .doesNotContain(best + " min");
  }

  @Test
  void takesPricesAndStockFromTheShopsList() throws IOException {
    var motor = fixed(1, "motor");
    var battery = fixed(1, "battery");

    var run = withStock(
        "id,stock,price\n%s,9,10.50\n%s,7,\n".formatted(motor, battery), "--format", "json");

    assertThat(run.err()).isEmpty();
    assertThat(line(run, motor).path("cents").asLong()).isEqualTo(4200);
    assertThat(line(run, motor).path("standing").asString()).isEqualTo("in-stock");
    assertThat(line(run, battery).path("cents").asLong())
        .isEqualTo(line(offer(List.of("#1"), "--format", "json"), battery)
            .path("cents")
            .asLong());
    assertThat(line(run, fixed(1, "camera")).path("standing").asString()).isEqualTo("to-order");
  }

  @Test
  void namesTheBestStandInThatIsInStock() throws IOException {
    var battery = fixed(1, "battery");
    var other = battery.equals("tidewell-2s-3500") ? "tidewell-2s-3400" : "tidewell-2s-3500";

    var run =
        withStock("id,stock,price\n%s,0,\n%s,4,\n".formatted(battery, other), "--format", "json");

    var standIn = run.json().path("builds").path(0).path("standIns").path(0);
    assertThat(standIn.path("out").asString()).isEqualTo(battery);
    assertThat(standIn.path("in").asString()).isEqualTo(other);
    assertThat(standIn.path("planWithSeconds").asDouble()).isPositive();
    assertThat(file("offer.html"))
        .contains("is out of stock: Tidewell", "Once it is in stock again: plan with ");
    assertThat(line(run, battery).path("standing").asString()).isEqualTo("short");

    var none = withStock("id,stock,price\n%s,0,\n%s,0,\n".formatted(battery, other), "--force");

    assertThat(none.out().replaceAll("\\s+", " "))
        .contains("no other in stock keeps every rule and limit: it has to be ordered");
  }

  /** A part that is not listed is not in stock either, however well it would fly. */
  @Test
  void offersNoStandInThatHasToBeOrderedItself() throws IOException {
    withStock("id,stock,price\n%s,0,\n".formatted(fixed(1, "battery")));

    assertThat(file("offer.html")).contains("no other in stock keeps every rule and limit");
  }

  /** What is small comes with the build and is told, not silently swapped or left out. */
  @Test
  void keepsTheBuildWhereSmallThingsAreShort() throws IOException {
    var counted = offer(List.of("#1"), "--format", "json").json().path("builds").path(0);
    var screws = line(offer(List.of("#1"), "--format", "json"), "hawthorn-m2x4");

    var run = withStock("id,stock\nhawthorn-m2x4,0\n", "--format", "json", "--force");

    var build = run.json().path("builds").path(0);
    assertThat(build.path("grams").asDouble()).isEqualTo(counted.path("grams").asDouble());
    assertThat(build.path("grossCents")).isEqualTo(counted.path("grossCents"));
    assertThat(line(run, "hawthorn-m2x4").path("units")).isEqualTo(screws.path("units"));
    assertThat(line(run, "hawthorn-m2x4").path("standing").asString()).isEqualTo("short");
    assertThat(build.path("standIns").path(0).path("text").asString())
        .startsWith("Motor screws ")
        .endsWith(" is out of stock: it has to be ordered.");
  }

  @Test
  void needsNoStandInWhereOnlySparesAreShort() throws IOException {
    var propeller = fixed(1, "propeller");

    var run = withStock("id,stock\n%s,1\n".formatted(propeller), "--format", "json");

    var standIn = run.json().path("builds").path(0).path("standIns").path(0);
    assertThat(standIn.path("in").isMissingNode()).isTrue();
    assertThat(standIn.path("text").asString())
        .startsWith("Only 1 in stock of propeller ")
        .endsWith(", where 2 are wanted: enough to fly, but spares have to be ordered.");
  }

  @Test
  void saysWhetherPricesHoldTheTax() throws IOException {
    offer(List.of("#1"));
    assertThat(file("offer.html")).contains("Single prices are with tax.");
    assertThat(file("offer.csv")).contains(",20,yes,");

    Files.writeString(
        folder.resolve("shop.json"),
        SETTINGS.replace(
            "\"pricesIncludeTax\": true",
            "\"pricesIncludeTax\": false, \"extras\": [{\"text\": \"a\", \"price\": {\"amount\": 900000, \"currency\": \"EUR\"}}, {\"text\": \"b\", \"price\": {\"amount\": 900000, \"currency\": \"EUR\"}}]"));
    var run = offer(List.of("#1"), "--force");

    // Sums may be more than any one price.
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "Added to each build: a: EUR 900000.00 without tax, b: EUR 900000.00 without tax.");
    assertThat(file("offer.html")).contains("Single prices are without tax.");
    assertThat(file("offer.csv")).contains(",20,no,");
  }

  @Test
  void tellsOfAPdfOfAnEarlierOffer() throws IOException {
    Files.writeString(folder.resolve("out/offer.pdf"), "of yesterday");

    assertThat(offer(List.of("#1")).err()).contains("offer.pdf is of an earlier offer.");
  }

  @Test
  void takesTitlesAsShopsWriteThem() throws IOException {
    var motor = fixed(1, "motor");

    for (var title : List.of("price (EUR)", "Price", "PRICE (eur)")) {
      var run = withStock(
          "ID,Stock,%s\n%s,9,10.50\n".formatted(title, motor), "--format", "json", "--force");
      assertThat(line(run, motor).path("cents").asLong()).as(title).isEqualTo(4200);
      assertThat(run.err()).isEmpty();
    }
    assertThat(withStock("id,stock,price (USD)\n%s,9,10.50\n".formatted(motor)).err())
        .contains(
            "stock.csv:1: price must be in the currency of the catalogue, EUR, but is in USD.");
    assertThat(
            withStock("id,stock,cost\n%s,9,10.50\n".formatted(motor), "--force").err())
        .contains("has no prices in a column price: those of the catalogue are taken.");
  }

  /** Every other cell of the list holds a word that must turn up nowhere. */
  @Test
  void letsNothingThroughOfWhatTheShopPaid() throws IOException {
    var motor = fixed(1, "motor");

    var stock =
        "id,paid,stock,margin,price,supplier\n%s,7.7731,9,Zwergmargin,10.50,\"=Zwerg()\"\nnobodys,7.7731,1,Zwergmargin,2,Zwerg\n"
            .formatted(motor);
    var said = new StringBuilder();
    for (var format : List.of("text", "json", "csv", "markdown")) {
      var run = withStock(stock, "--format", format, "--force");
      assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
      said.append(run.out()).append(run.err());
    }
    said.append(file("offer.html")).append(file("offer.csv")).append(file("offer.json"));

    assertThat(said.toString()).contains("10.50").doesNotContain("7.7731", "Zwerg");
  }

  @Test
  void refusesAListThatIsWrongLineByLine() throws IOException {
    var run = withStock("id,stock,price\na,-1,3\nb,1.5,3\nc,1,3.999\nd,1,2\nd,2,2\n,1,2\n");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors())
        .anyMatch(line -> line.contains(
            "stock.csv:2: stock must be a plain number from 0 to 100000, but is \"-1\""))
        .anyMatch(line -> line.contains("stock.csv:3: stock must be a whole number"))
        .anyMatch(line -> line.contains("stock.csv:4: price must have at most two decimals"))
        .anyMatch(line -> line.contains("stock.csv:6: id must be there once"))
        .anyMatch(line -> line.contains("stock.csv:7: id must be plain text"))
        .hasSize(5);
    assertThat(folder.resolve("out/offer.html")).doesNotExist();
    assertThat(withStock("id;stock\na;1\n").err()).contains("must separate its cells by commas");
    assertThat(withStock("id,price\na,1\n").err())
        .contains("must have one column stock, but has none among \"id\", \"price\".");
  }

  @Test
  void refusesSettingsThatAreWrong() throws IOException {
    Files.writeString(
        folder.resolve("shop.json"),
        SETTINGS
            .replace("\"EUR\"", "\"GBP\"")
            .replace("14", "0")
            .replace("\"percent\": 20", "\"percent\": 120"));

    var run = offer(List.of("#1"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains("validDays must be from 1 to 365", "percent must be from 0 to 100");

    Files.writeString(folder.resolve("shop.json"), SETTINGS.replace("\"EUR\"", "\"GBP\""));
    assertThat(offer(List.of("#1")).err())
        .contains("shop.json:5: currency must be that of the catalogue, EUR, but is GBP.");
  }

  /** What a customer has to know to read it without the trade's words. */
  @Test
  void saysWhatIsBuiltInWhatItStaysBelowAndThatStockWasNotLookedAt() throws IOException {
    Files.writeString(
        folder.resolve("shop.json"),
        SETTINGS.replace("\"validDays\"", "\"notIncluded\": [], \"validDays\""));

    var run = offer(List.of("#1"));

    assertThat(run.err()).contains("Without --stock nothing is said of what is in stock");
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "Built into its parts: ",
            "m above the sea",
            "By estimate each is below 250 g ready to fly (",
            " with at least 95 % confidence",
            "Whether all of it is in stock is told on ordering.",
            "Spares among them, in the units sold: propeller 1.")
        .doesNotContain("Not included");
    assertThat(file("offer.html"))
        .contains("Built into its parts: ", "Spares among them, in the units sold: propeller 1.")
        .doesNotContain("Not included");
    assertThat(withStock("id,stock,price\nx,1,1\n", "--force", "--quiet").out())
        .doesNotContain("told on ordering");
  }

  @Test
  void takesALogoByWhatItIs() throws IOException {
    Files.writeString(
        folder.resolve("shop.json"),
        SETTINGS.replace("\"currency\"", "\"logo\": \"logo.svg\", \"currency\""));
    Files.writeString(folder.resolve("logo.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");

    assertThat(offer(List.of("#1")).exitCode()).isEqualTo(ExitCode.OK);
    assertThat(file("offer.html")).contains("<img src=\"data:image/svg+xml;base64,");

    Files.writeString(folder.resolve("logo.svg"), "a text");
    assertThat(offer(List.of("#1")).err())
        .contains("logo must name a png, jpeg or svg file, but logo.svg is none.");
    Files.delete(folder.resolve("logo.svg"));
    assertThat(offer(List.of("#1")).exitCode()).isEqualTo(ExitCode.NO_INPUT);
  }

  @Test
  void offersUpToThreeOfOneResultAndPicksThemItself() throws IOException {
    var three = offer(List.of("#1", "#2", "#3"), "--format", "json");

    assertThat(three.json().path("builds").size()).isEqualTo(3);
    var labels = new ArrayList<String>();
    three
        .json()
        .path("builds")
        .forEach(build -> build.path("labels").forEach(label -> labels.add(label.asString())));
    assertThat(labels)
        .doesNotHaveDuplicates()
        .isSubsetOf("longest flight", "best value", "lightest");

    var picked = offer(List.of(""), "--format", "json", "--force").json().path("builds");
    assertThat(picked.size()).isBetween(1, 3);
    var all = JsonMapper.shared().readTree(file("result.json")).path("candidates");
    var longest = 0.0;
    for (var candidate : all) {
      if (!candidate.path("flight").path("beyondBelief").asBoolean()) {
        longest = Math.max(longest, candidate.path("band").path("lowSeconds").asDouble());
      }
    }
    assertThat(picked.path(0).path("planWithSeconds").asDouble()).isEqualTo(longest);
    // Nothing that is better than such aircraft are known to fly is offered.
    picked.forEach(build -> assertThat(all.path(build.path("rank").asInt() - 1)
            .path("flight")
            .path("beyondBelief")
            .asBoolean())
        .isFalse());
  }

  @Test
  void refusesWhatIsNoBuildOfAResult() {
    assertThat(offer(List.of("#1", "#2", "#3", "#4")).err()).contains("three times at most");
    assertThat(offer(List.of("#1", "#1")).err())
        .contains("builds must differ, but #1 is there twice");
    assertThat(offer(List.of("#99")).err())
        .contains("result.json: must hold a candidate 99, but has");
    assertThat(offer(List.of("#0")).exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(CommandRun.of(
                "offer", "a.json", "b.json#1", "--settings", "s.json", "--date", "2026-01-01")
            .err())
        .contains("\"a.json\" must end in # and a rank or a pick");
    assertThat(offer(List.of("#1"), "--for", " ").err()).contains("--for must ");
    assertThat(CommandRun.of("offer", "a.json#1", "--settings", "s.json", "--date", "31.5.2026")
            .err())
        .contains("--date must be a day such as 2026-05-31, but is \"31.5.2026\"");
    assertThat(CommandRun.of("offer", "a.json#1", "--settings", "s.json", "--date", "2026-02-29")
            .err())
        .contains("--date must be a day of the calendar, but \"2026-02-29\" is none;");
    assertThat(CommandRun.of("offer", "#1", "--settings", "s.json", "--date", "2026-02-28")
            .err())
        .contains("\"#1\" must name its file before #");
  }

  /** Whose offer it is stands on the page, in its title, and in what the shop files. */
  @Test
  void namesTheCustomerAndTheNumber() throws IOException {
    var run =
        offer(List.of("#1"), "--for", "Mara <Fenn>", "--number", "2026-014", "--format", "json");

    assertThat(run.json().path("customer").asString()).isEqualTo("Mara <Fenn>");
    assertThat(run.json().path("number").asString()).isEqualTo("2026-014");
    assertThat(file("offer.html"))
        .contains(
            "<title>Offer 2026-014 for Mara &lt;Fenn&gt;, Windlass Row</title>",
            "For <strong>Mara &lt;Fenn",
            "<h1>Offer 2026-014</h1>");
  }

  /** Units times their price, what the shop adds, and the sum below them that the card has in large. */
  @Test
  void theTableAddsUpToThePriceInLarge() throws IOException {
    for (var isIncluded : List.of("true", "false")) {
      Files.writeString(
          folder.resolve("shop.json"),
          SETTINGS.replace(
              "\"pricesIncludeTax\": true",
              "\"pricesIncludeTax\": " + isIncluded
                  + ", \"extras\": [{\"text\": \"Postage\", \"price\": {\"amount\": 6.90, \"currency\": \"EUR\"}}]"));
      var rows = offer(List.of("#1", "#2"), "--format", "markdown", "--force")
          .out()
          .lines()
          .filter(line -> line.startsWith("|"))
          .map(line -> line.split("\\|", -1))
          .toList();
      var title = rows.get(0);
      for (var letter : List.of("A", "B")) {
        var price = column(title, "EUR " + letter);
        var units = column(title, letter);
        var each = column(title, "EUR each");
        var sum = BigDecimal.ZERO;
        var tax = BigDecimal.ZERO;
        var all = BigDecimal.ZERO;
        for (var row : rows.subList(2, rows.size())) {
          var amount = row[price].isBlank() ? BigDecimal.ZERO : new BigDecimal(row[price].strip());
          if (!row[units].isBlank()) {
            assertThat(amount)
                .isEqualByComparingTo(
                    new BigDecimal(row[units].strip()).multiply(new BigDecimal(row[each].strip())));
            sum = sum.add(amount);
          } else if (row[1].contains("sales tax 20 %")) {
            tax = amount;
          } else if (row[1].contains("in all")) {
            all = amount;
          }
        }
        assertThat(all)
            .isEqualByComparingTo(isIncluded.equals("true") ? sum : sum.add(tax))
            .isPositive();
        assertThat(tax).isPositive();
        assertThat(file("offer.html")).contains("<p class=\"price\">EUR " + all);
      }
    }
  }

  private static int column(String[] titles, String title) {
    for (var i = 0; i < titles.length; i++) {
      if (titles[i].strip().equals(title)) {
        return i;
      }
    }
    throw new AssertionError("no " + title + " in " + String.join("|", titles));
  }

  /** In large stands what can be delivered, with what stands in, and the table and the till's list are of that. */
  @Test
  void pricesWhatCanBeDelivered() throws IOException {
    var battery = fixed(1, "battery");
    var other = battery.equals("tidewell-2s-3500") ? "tidewell-2s-3400" : "tidewell-2s-3500";

    var run = withStock(
        "id,stock,price\n%s,0,99\n%s,4,1\n".formatted(battery, other), "--format", "json");

    var build = run.json().path("builds").path(0);
    var delivered = build.path("deliveredCents").asLong();
    assertThat(delivered)
        .isEqualTo(build.path("standIns").path(0).path("grossCents").asLong())
        .isNotEqualTo(build.path("grossCents").asLong());
    assertThat(file("offer.html"))
        .contains("<p class=\"price\">EUR " + Money.sum(delivered).toPlainString())
        .contains("in place of ");
    assertThat(file("offer.csv")).contains(other).doesNotContain(battery);
    assertThat(build.path("toOrder").valueStream().map(JsonNode::asString))
        .isNotEmpty()
        .doesNotContain(battery, other);
    assertThat(file("offer.html")).contains("To be ordered first: ");
  }

  @Test
  void saysOnThePageWhatIsOverTheBudget() throws IOException {
    var text = Files.readString(folder.resolve("marsh.json"));
    var gross = offer(List.of("#1"), "--format", "json")
        .json()
        .path("builds")
        .path(0)
        .path("grossCents")
        .asLong();
    // Less than with the spare propellers, and more than what flies.
    Files.writeString(
        folder.resolve("marsh.json"),
        text.replace(
            "\"name\": \"marsh\",",
            "\"name\": \"marsh\", \"budget\": {\"amount\": %s, \"currency\": \"EUR\"},"
                .formatted(Money.sum(gross - 100).toPlainString())));

    var run = offer(List.of("#1"), "--force");

    assertThat(run.err()).contains("A costs EUR ", "above the scenario's budget");
    assertThat(file("offer.html")).contains("EUR 1.00 more than your budget of EUR ");
  }

  /** Two results of two scenarios in one offer, each with what its promise holds for. */
  @Test
  void offersBuildsOfSeveralResults() throws IOException {
    var other = Files.createDirectory(folder.resolve("other"));
    var ids = new ArrayList<>(SmallShop.ONE_BUILD);
    ids.addAll(SmallShop.MORE);
    CommandRun.write(other, SmallShop.catalog(ids), "");
    Files.writeString(
        other.resolve("marsh.json"),
        Files.readString(other.resolve("marsh.json"))
            .replace("\"name\": \"marsh\"", "\"name\": \"fen\""));
    var otherTyped = CommandRun.typed(other);
    assertThat(CommandRun.recommend(otherTyped, "--force").exitCode()).isEqualTo(ExitCode.OK);

    var run = CommandRun.of(
        "offer",
        otherTyped.resolve("out/result.json") + "#2",
        typed.resolve("out/result.json") + "#1",
        "--settings",
        typed.resolve("shop.json").toString(),
        "--date",
        "2026-05-31",
        "--format",
        "json",
        "--out",
        typed.resolve("out").toString());

    assertThat(run.json()
            .path("builds")
            .valueStream()
            .map(build -> build.path("scenario").asString()))
        .containsExactly("fen", "marsh");
    assertThat(run.json()
            .path("builds")
            .valueStream()
            .map(build -> build.path("rank").asInt()))
        .containsExactly(2, 1);
    assertThat(file("offer.html")).contains("A: Flight counted", "B: Flight counted");
  }

  @Test
  void promisesNothingThatDoesNotFlyAsTold() throws IOException {
    var text = file("result.json");
    var milliseconds = candidate(1).path("milliseconds").asLong();
    Files.writeString(
        folder.resolve("out/result.json"),
        text.replaceFirst(
            "\"milliseconds\": " + milliseconds, "\"milliseconds\": " + (milliseconds + 60_000)));

    var run = offer(List.of("#1"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains("candidate 1 must fly as the result tells", "Maybe run recommend again.");
  }

  @Test
  void namesAreOnlyNames() throws IOException {
    HostileNames.write(folder);
    Files.writeString(
        folder.resolve("shop.json"),
        SETTINGS
            .replace("Windlass Row\"", HostileNames.SCRIPT + "\"")
            .replace("knock twice", HostileNames.FORMULA));
    recommendAgain();

    var run = offer(List.of(""), "--force");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(file("offer.html")).doesNotContain("<script").contains("&lt;script&gt;");
    assertThat(file("offer.csv").lines())
        .noneMatch(line -> line.contains(",=") || line.startsWith("="));
    assertThat(offer(List.of(""), "--format", "markdown").out()).doesNotContain("<script", "[x](");
  }

  @Test
  void noTextOfAFileSteersTheTerminal() throws IOException {
    var settings = SETTINGS.replace(
        "\"validDays\"",
        "\"extras\": [{\"text\": \"Built\", \"price\": {\"amount\": 1, \"currency\": \"EUR\"}}], \"notIncluded\": [\"radio\"], \"validDays\"");
    for (var field :
        List.of("Windlass Row", "3 Windlass Row", "knock twice", "sales tax", "Built", "radio")) {
      Files.writeString(
          folder.resolve("shop.json"),
          settings.replace("\"" + field + "\"", "\"\\u001b[31m\\u009b1m" + field + "\""));

      var run = offer(List.of("#1"));

      assertThat(run.exitCode()).as(field).isEqualTo(ExitCode.BAD_DATA);
      assertThat(run.err()).as(field).contains("must be text without control or hidden characters");
      assertThat(run.out() + run.err()).as(field).doesNotContain("\u001b", "\u009b");
    }
    var run = withStock("id,stock\n\u001b[31mx,1\n");
    assertThat(run.out() + run.err()).doesNotContain("\u001b");
  }

  @Test
  void saysWhatIsMissingForAPdf() {
    assertThat(PdfPrinter.browser("/nowhere:")).isEmpty();
    assertThat(PdfPrinter.print(Path.of("/bin/false"), "<p>", LocalDate.of(2026, 5, 31)))
        .isEmpty();
  }
}
