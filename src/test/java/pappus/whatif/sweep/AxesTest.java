package pappus.whatif.sweep;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.change.Asking;
import pappus.part.Battery;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Money;
import pappus.scenario.Payload;
import pappus.scenario.Scenario;
import pappus.scenario.reading.ScenarioReader;
import pappus.shop.SmallShop;
import pappus.whatif.sweep.Axis.Tightens;

class AxesTest {
  private static final Catalog FEW = SmallShop.few();

  private static Asked asked(String fields) {
    return new Asked(SmallShop.scenario(fields), new Supply(FEW, Shelf.EMPTY));
  }

  private static Axis axis(String typed) {
    return Axes.of(typed, asked(""));
  }

  private static Scenario at(String typed, String fields) {
    var asked = asked(fields);
    var axis = Axes.of(typed, asked);
    return axis.change().at(asked, axis.values().get(0)).scenario();
  }

  private static void assertRefused(String typed, String message) {
    assertThatThrownBy(() -> axis(typed))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      200:250:25      | 200 225 250
      200:240:25      | 200 225
      250:200:25      | 250 225 200
      250:200:-25     | 250 225 200
      200:250:-25     | 200 225 250
      250:201:25      | 250 225
      2:2.3:0.1       | 2 2.1 2.2 2.3
      7:7:3           | 7
      0:1:2           | 0
      -10:10:10       | -10 0 10
      1.50:1.5:0.5    | 1.5
      100:300:100     | 100 200 300
      2,3,4           | 2 3 4
      4,2,3           | 4 2 3
      5               | 5
      5,5.0,05,6      | 5 6
      -0,0,0.0        | 0
      1000000,2500.50 | 1000000 2500.5
      """)
  void numbersAreARangeOrAList(String typed, String values) {
    assertThat(String.join(" ", Axes.numbers(typed))).isEqualTo(values);
  }

  @Test
  void aRangeHasAsManyStepsAsASweepMayHave() {
    assertThat(Axes.numbers("1:400:1")).hasSize(400).startsWith("1").endsWith("400");
    assertRefused("mass-cap=1:401:1", "must have at most 400 steps, but \"1:401:1\" has more.");
    assertRefused("mass-cap=401:1:1", "must have at most 400 steps, but \"401:1:1\" has more.");
    assertRefused(
        "mass-cap=1:9999999:0.0001",
        "must have at most 400 steps, but \"1:9999999:0.0001\" has more.");
  }

  @Test
  void whatCannotBeReadIsNamed() {
    assertRefused(
        "mass-cap", "must be LIMIT=FROM:TO:STEP or LIMIT=VALUE,VALUE, but is \"mass-cap\".");
    assertRefused("", "must be LIMIT=FROM:TO:STEP or LIMIT=VALUE,VALUE, but is \"\".");
    assertRefused("mass-cap=", "must have plain numbers, but has \"\".");
    assertRefused("mass-cap=200,", "must have plain numbers, but has \"\".");
    assertRefused("mass-cap=200,2e2", "must have plain numbers, but has \"2e2\".");
    assertRefused("mass-cap= 200", "must have plain numbers, but has \" 200\".");
    assertRefused("mass-cap=0.00001", "must have plain numbers, but has \"0.00001\".");
    assertRefused("mass-cap=12345678", "must have plain numbers, but has \"12345678\".");
    assertRefused("mass-cap=NaN", "must have plain numbers, but has \"NaN\".");
    assertRefused("mass-cap=1=2", "must have plain numbers, but has \"1=2\".");
    assertRefused(
        "mass-cap=200:250", "must have FROM:TO:STEP in plain numbers, but has \"200:250\".");
    assertRefused(
        "mass-cap=200:250:5:1",
        "must have FROM:TO:STEP in plain numbers, but has \"200:250:5:1\".");
    assertRefused(
        "mass-cap=200:x:5", "must have FROM:TO:STEP in plain numbers, but has \"200:x:5\".");
    assertRefused(
        "mass-cap=:250:5", "must have FROM:TO:STEP in plain numbers, but has \":250:5\".");
    assertRefused(
        "mass-cap=1:2:3,4:5:6",
        "must have FROM:TO:STEP in plain numbers, but has \"1:2:3,4:5:6\".");
    assertRefused("mass-cap=200:250:0", "must have a step above 0, but has 0.");
    assertRefused("mass-cap=200:250:0.0", "must have a step above 0, but has 0.0.");
    assertRefused("mass-cap=\u001B[2J", "must have plain numbers, but has \"\\u001b[2J\".");
  }

  @Test
  void anUnknownNameHasAdvice() {
    var known =
        "must be over altitude, budget, cells, clear-view, least-kilometres, least-minutes, mass-cap, packs, payload, reach, temperature, thrust-to-weight, transmitter-power, a frame.PROPERTY or a where.ROLE.FIELD, but is over ";
    assertRefused("mas-cap=1,2", known + "\"mas-cap\". Maybe mass-cap was meant.");
    assertRefused("weather=1,2", known + "\"weather\".");
    assertRefused("=1,2", known + "\"\".");
    assertRefused("Mass-Cap=1,2", known + "\"Mass-Cap\". Maybe mass-cap was meant.");
    assertThat(Axes.names())
        .containsExactly(
            "altitude",
            "budget",
            "cells",
            "clear-view",
            "least-kilometres",
            "least-minutes",
            "mass-cap",
            "packs",
            "payload",
            "reach",
            "temperature",
            "thrust-to-weight",
            "transmitter-power");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      mass-cap=240          | g   | DOWNWARD
      budget=200            | EUR | DOWNWARD
      thrust-to-weight=2    | ''  | UPWARD
      reach=500             | m   | NEITHER
      altitude=100          | m   | NEITHER
      temperature=20        | °C  | NEITHER
      transmitter-power=25  | mW  | NEITHER
      packs=2               | ''  | NEITHER
      payload=10            | g   | NEITHER
      cells=2               | ''  | NEITHER
      """)
  void eachHasItsUnitAndTheWayThatTightensIt(String typed, String unit, Tightens tightens) {
    var axis = axis(typed);

    assertThat(axis.id() + "=" + axis.values().get(0)).isEqualTo(typed);
    assertThat(axis.unit()).isEqualTo(unit);
    assertThat(axis.tightens()).isEqualTo(tightens);
  }

  /** Where the power follows from the reach, who flies best at a short one may not at a long one. */
  @Test
  void aReachOnlyTakesBuildsAwayWherePowerIsStated() {
    var stated = asked(", \"transmitterMilliwatts\": 200, \"reachMetres\": 400");

    assertThat(Axes.of("reach=500", stated).tightens()).isEqualTo(Tightens.UPWARD);
    assertThat(Axes.of("reach=500", stated).asked()).contains(400.0);
    assertThat(at("reach=500", "")).isEqualTo(SmallShop.scenario(", \"reachMetres\": 500"));
  }

  @Test
  void tellsWhereTheScenarioStandsIfItSaysSo() {
    var budget = asked(", \"budget\": {\"amount\": 180.5, \"currency\": \"EUR\"}");

    assertThat(axis("mass-cap=240").asked()).contains(250.0);
    assertThat(axis("thrust-to-weight=3").asked()).contains(2.0);
    assertThat(axis("altitude=100").asked()).contains(5.0);
    assertThat(Axes.of("budget=200", budget).asked()).contains(180.5);
    assertThat(axis("budget=200").asked()).isEmpty();
    assertThat(axis("cells=2").asked()).isEmpty();
  }

  @Test
  void whatIsFeasibleIsWithinWhatIsLooser() {
    var cap = axis("mass-cap=9,10,10.5");
    var thrust = axis("thrust-to-weight=9,10");
    var altitude = axis("altitude=9,10");

    assertThat(cap.isWithin("9", "10")).isTrue();
    assertThat(cap.isWithin("10", "9")).isFalse();
    assertThat(cap.isWithin("10", "10.5")).isTrue();
    assertThat(thrust.isWithin("10", "9")).isTrue();
    assertThat(thrust.isWithin("9", "10")).isFalse();
    assertThat(altitude.isWithin("9", "10")).isFalse();
    assertThat(altitude.isWithin("10", "9")).isFalse();
    assertThat(altitude.isWithin("10", "10")).isTrue();
  }

  @Test
  void eachChangesItsOwnFieldAndNothingElse() {
    assertThat(at("mass-cap=201.5", "")).isEqualTo(read("\"grams\": 250", "\"grams\": 201.5"));
    assertThat(at("thrust-to-weight=2.5", ""))
        .isEqualTo(read("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": 2.5"));
    assertThat(at("altitude=1500", ""))
        .isEqualTo(read("\"altitudeMetres\": 5", "\"altitudeMetres\": 1500"));
    assertThat(at("temperature=-10", ""))
        .isEqualTo(
            read("\"altitudeMetres\": 5", "\"altitudeMetres\": 5, \"temperatureCelsius\": -10"));
    assertThat(at("transmitter-power=25", ""))
        .isEqualTo(SmallShop.scenario(", \"transmitterMilliwatts\": 25"));
    assertThat(at("budget=199.5", "").budget()).isEqualTo(Money.ofCents(19_950, "EUR"));
    assertThat(at("budget=199.5", ""))
        .isEqualTo(SmallShop.scenario(", \"budget\": {\"amount\": 199.5, \"currency\": \"EUR\"}"));
  }

  private static Scenario read(String old, String now) {
    var bytes = SmallShop.scenarioText("").replace(old, now).getBytes(UTF_8);
    return ScenarioReader.read(Path.of("-"), new ByteArrayInputStream(bytes)).scenario();
  }

  @Test
  void aPayloadKeepsAllButItsMass() {
    var carried =
        ", \"payload\": {\"name\": \"logger\", \"massGrams\": 7, \"watts\": 1.5, \"xMillimetres\": 12}";

    assertThat(at("payload=9", carried).payload())
        .isEqualTo(new Payload("logger", 9, 1.5, 12, null, null));
    assertThat(at("payload=9", "").payload())
        .isEqualTo(new Payload("payload", 9, 0, 0, null, null));
    assertThat(at("payload=0", carried).payload()).isNull();
    assertThat(at("payload=0", "")).isEqualTo(SmallShop.scenario(""));
  }

  @Test
  void cellsLeaveOnlyPacksOfThatMany() {
    var all = SmallShop.all();
    var asked = new Asked(SmallShop.scenario(""), new Supply(all, Shelf.EMPTY));
    var axis = Axes.of("cells=3,8", asked);

    var three = axis.change().at(asked, "3");
    assertThat(three.scenario()).isEqualTo(asked.scenario());
    assertThat(three.supply().catalog().ofKind(Battery.class))
        .isNotEmpty()
        .isEqualTo(all.ofKind(Battery.class).stream()
            .filter(battery -> battery.cellsInSeries() == 3)
            .toList());
    assertThat(three.supply().catalog().parts())
        .filteredOn(part -> !(part instanceof Battery))
        .isEqualTo(
            all.parts().stream().filter(part -> !(part instanceof Battery)).toList());
    assertThat(axis.change().at(asked, "8").supply().catalog().ofKind(Battery.class))
        .isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      cells=9              | cells must be from 1 to 8, but is "9".
      cells=0              | cells must be from 1 to 8, but is "0".
      cells=2.5            | cells must be from 1 to 8, but is "2.5".
      payload=-1           | massGrams must be from 0 to 5000, but is -1.
      budget=-1            | amount must be from 0 to 1000000, but is -1.
      budget=1.234         | amount must have at most two decimals, but is 1.234.
      """, quoteCharacter = '\0')
  void aValueThatIsRefusedIsNamed(String typed, String message) {
    assertThatThrownBy(() -> at(typed, ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void namesTheFieldOfAValueThatTheScenarioRefuses() {
    assertThatThrownBy(() -> at("thrust-to-weight=0.5", ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("leastThrustToWeight must be from 1 to 20, but is 0.5.");
  }

  /** Else another pack would stand in for the one that the scenario fixes. */
  @Test
  void aFixedPackOfOtherCellsLeavesNone() {
    var fixed =
        Asking.asked(SmallShop.scenario(", \"parts\": {\"fixed\": [\"tidewell-2s-3500\"]}"));
    var axis = Axes.of("cells=2,3", fixed);

    assertThat(axis.change().at(fixed, "2").question().options(Role.BATTERY))
        .extracting(Part::id)
        .containsExactly("tidewell-2s-3500");
    assertThat(axis.change().at(fixed, "3").question().options(Role.BATTERY)).isEmpty();
  }
}
