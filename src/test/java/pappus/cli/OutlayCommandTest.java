package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.quantity.Money;
import pappus.shop.SmallShop;

/** What is bought beside a build, through every command that tells of it. */
class OutlayCommandTest {
  private static final String BESIDE = """
      , "alsoBuy": {"packs": 3,
        "spares": [{"role": "propeller", "pieces": 3}, {"hardware": "battery-strap", "units": 2}],
        "lines": [{"text": "charger", "price": {"amount": 39.5, "currency": "EUR"}}]%s},
      "workday": {"minutesOnSite": 240}""";

  @TempDir
  private Path folder;

  private Path typed = Path.of("");

  private CommandRun recommend(String fields, String... more) throws IOException {
    CommandRun.write(folder, SmallShop.catalog(SmallShop.ONE_BUILD), fields);
    typed = CommandRun.typed(folder);
    return CommandRun.recommend(typed, more);
  }

  @Test
  void isToldBesideThePriceOfWhatFlies() throws IOException {
    var plain = recommend("", "--format", "json").json().path("candidates").path(0);
    var run = recommend(BESIDE.formatted(""), "--format", "json", "--force");
    var row = run.json().path("candidates").path(0);
    var pack = 0L;
    for (var line : row.path("cost").path("lines")) {
      pack +=
          line.path("what").asString().equals("battery") ? line.path("cents").asLong() : 0;
    }

    assertThat(plain.has("outlay")).isFalse();
    assertThat(plain.has("workday")).isFalse();
    assertThat(row.path("cost")).isEqualTo(plain.path("cost"));
    assertThat(row.path("outlay").path("own").path(0).path("cents").asLong()).isEqualTo(3950);
    assertThat(row.path("outlay").path("cents").asLong())
        .isGreaterThan(row.path("cost").path("cents").asLong() + 2 * pack + 3950);
    assertThat(row.path("workday").path("packs").asInt())
        .isEqualTo(row.path("workday").path("flights").asInt())
        .isGreaterThan(row.path("workday").path("packsInTurn").asInt());
    assertThat(CommandRun.recommend(typed, "--force").out().replaceAll("\\s+", " "))
        .contains(
            "Outlay in all EUR ",
            "battery, 2 more (EUR ",
            "propeller, 3 more (1 set of 4, EUR ",
            "charger EUR 39.50",
            "only what it takes to fly once counts against a budget",
            "240 min on site take ",
            "With 3 packs, one has to be charged after 3 flights.")
        .doesNotContain("Prices and the budget hold");
  }

  @Test
  void countsAgainstTheBudgetIfAsked() throws IOException {
    var counting = BESIDE.formatted(", \"countsAgainstBudget\": true");
    var free = recommend(counting, "--format", "json").json().path("candidates").path(0);
    var cents = free.path("cost").path("cents").asLong();
    assertThat(free.path("outlay").path("cents").asLong()).isEqualTo(cents);

    var enough = recommend(counting + budget(cents), "--force");
    assertThat(enough.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(enough.out().replaceAll("\\s+", " "))
        .contains(
            "Prices and budget include what is bought besides the build: 3 packs, spare propeller, spare battery strap, charger.",
            "the price above is for all of it");

    var short1 = recommend(counting + budget(cents - 1), "--force");
    assertThat(short1.exitCode()).isEqualTo(ExitCode.NO);
    var relaxed = CommandRun.onParts(folder, "relax", List.of());
    assertThat(relaxed.out().replaceAll("\\s+", " "))
        .contains("Pay what is bought beside the build outside the budget");
  }

  private static String budget(long cents) {
    return ", \"budget\": {\"amount\": %s, \"currency\": \"EUR\"}"
        .formatted(Money.ofCents(cents, "EUR").amount().toPlainString());
  }

  @Test
  void standsOnTheSheetAndOnThePage() throws IOException {
    recommend(BESIDE.formatted(""), "--report");
    var sheet = CommandRun.of(
        "sheet",
        typed.resolve("out/result.json") + "#1",
        "--out",
        typed.resolve("out").toString());

    assertThat(sheet.out()).contains("spare", "charger", "Outlay in all");
    assertThat(sheet.out()).doesNotContain("Without spares");
    assertThat(Files.readString(folder.resolve("out/report.html")))
        .contains("charger", "Outlay in all", "[\"spare\",true]");
  }

  @Test
  void aShopsSparesWinAndThatIsSaid() throws IOException {
    recommend(BESIDE.formatted(""));
    Files.writeString(folder.resolve("shop.json"), """
        {"shop": "Windlass Row", "address": [], "contact": [], "currency": "EUR",
         "pricesIncludeTax": true, "validDays": 14, "spares": [{"role": "propeller", "units": 2}]}
        """);
    var offer = CommandRun.of(List.of(
        "offer",
        typed.resolve("out/result.json") + "#1",
        "--settings",
        typed.resolve("shop.json").toString(),
        "--date",
        "2026-05-31",
        "--out",
        typed.resolve("out").toString(),
        "--format",
        "json"));

    var lines = offer.json().path("builds").path(0).path("lines");
    var units = new TreeMap<String, Integer>();
    lines.forEach(
        line -> units.put(line.path("part").asString(), line.path("spareUnits").asInt()));
    assertThat(units.values().stream().filter(spare -> spare == 2).count())
        .as("two sets of propellers by the shop, two packs and two straps by the scenario")
        .isEqualTo(3);
    assertThat(offer.json().path("besides").path(0).asString())
        .isEqualTo(
            "Spares of propeller are as the shop sells them, not as the scenario wants them. "
                + "Bought elsewhere, and in no price here: charger.");
  }

  @Test
  void pricesOfAnotherCurrencyAreRefusedAtTheirLine() throws IOException {
    var run = recommend(
        BESIDE.formatted("").replace("39.5, \"currency\": \"EUR\"", "39.5, \"currency\": \"USD\""));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains(
            "alsoBuy.lines[0].price.currency must be that of the catalogue, EUR, but is USD.");
  }
}
