package pappus.answers.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pappus.answers.result.Run;
import pappus.assessment.Supply;
import pappus.catalog.Shelf;
import pappus.part.Parts;
import pappus.shop.SmallShop;
import pappus.weighing.FlightRow;
import pappus.weighing.MassRow;
import pappus.weighing.WeighIn;
import tools.jackson.databind.json.JsonMapper;

class WeighReportTest {
  private static final FlightRow FLIGHT = new FlightRow(
      "f.csv",
      2,
      "hover",
      10,
      800,
      Optional.empty(),
      Optional.of("new"),
      OptionalDouble.empty(),
      OptionalDouble.empty(),
      OptionalDouble.empty(),
      OptionalDouble.of(640));

  private static MassRow mass(String what, double grams, int pieces) {
    return new MassRow("m.csv", 2, what, grams, pieces, 0.1);
  }

  private static WeighReport report(List<MassRow> masses, FlightRow... flights) {
    var catalog = SmallShop.few();
    var scenario = SmallShop.scenario("");
    var build = SmallShop.oneBuild();
    return new WeighReport(
        scenario,
        WeighIn.of(scenario, new Supply(catalog, Shelf.EMPTY), build, masses, List.of(flights)));
  }

  @Test
  void tellsMassesAlone() {
    assertThat(report(List.of(mass("spikerush-1303-3400", 18.4, 4))).text(List.of(), 200))
        .contains("""
            estimate g    ±  scale g    ±  more  what
                  17.6  0.4     18.4  0.2   0.8  motor, Spikerush 1303-3400  within its doubt

            Weigh it ready to fly too: that is the mass the law asks about.

            Nothing written: --into FOLDER keeps it, and --catalog FOLDER then counts with it.
            """)
        .doesNotContain("times the propeller power computed")
        .doesNotContain("current sensor");
  }

  @Test
  void tellsFlightsAloneAndWhatWasWritten() {
    assertThat(report(List.of(), FLIGHT).text(List.of("mine/flown.json", "b"), 200))
        .contains(
            "- 10.0 min: the charger put back 800 mAh, the estimate says 731; ratio ",
            "\nThe current sensor reads 20 % low against the charger (good to 3 %): scale its reading by 1.250.\n",
            "\nWritten: mine/flown.json, b. With --catalog and that folder, every command counts with it.\n")
        .doesNotContain("estimate g")
        .doesNotContain("not weighed")
        .doesNotContain("Nothing written");
  }

  @Test
  void givesOneRowAWeighing() {
    var rows = report(List.of(mass("dry", 84, 1), mass("ready", 203.5, 1)))
        .csv()
        .lines()
        .toList();

    assertThat(rows).hasSize(4);
    assertThat(rows.get(0))
        .isEqualTo("what,unit,estimate,estimate_doubt,measured,measured_doubt,says");
    assertThat(rows.get(1))
        .startsWith("\"battery, Tidewell 2S 3500 (ready less dry)\",g,107.")
        .endsWith(",off by more than its doubt");
    assertThat(rows.get(2))
        .startsWith("\"dry, without its pack\",g,")
        .endsWith(",within its doubt");
    assertThat(rows.get(3)).startsWith("ready to fly,g,").endsWith(",off by more than its doubt");
  }

  /** Charge, volts, what the style and the sensor say: one row each. */
  @Test
  void givesFlightsTheSameColumns() {
    var landed =
        Parts.with(Parts.with(FLIGHT, "landingVolts", OptionalDouble.of(6.5)), "file", "=f.csv");
    var report = report(List.of(), landed);
    var rows = report.csv().lines().toList();

    assertThat(rows).hasSize(5);
    assertThat(rows.get(1))
        .startsWith("\"hover, =f.csv, line 2\",mAh,731.223")
        .contains(",800,24,");
    assertThat(rows.get(2)).startsWith("\"hover, =f.csv, line 2\",V,").contains(",0.2,6.5,,Landed");
    assertThat(rows.get(3)).startsWith("hover,times the power,1,,1.");
    assertThat(rows.get(4)).startsWith("current sensor,times its scale,1,,1.25,0.03,");
    assertThat(report.markdown().lines()).hasSize(6);
    assertThat(report.text(List.of(), 200))
        .contains("ratio 1.12. Landed at 6.50 V; the estimate says");
  }

  @Test
  void givesEveryDigitToAMachine() {
    var text = report(List.of(mass("spikerush-1303-3400", 18.4, 4)), FLIGHT)
        .json(
            new Run("1", 1, 0, List.of("parts"), List.of(), List.of()), List.of("mine/flown.json"));
    var json = JsonMapper.shared().readTree(text);

    assertThat(json.path("status").asString()).isEqualTo("weighed");
    assertThat(json.path("buildAfter").path("grams").asDouble()
            - json.path("build").path("grams").asDouble())
        .isCloseTo(0.8, within(1e-9));
    assertThat(json.path("masses")).hasSize(1);
    var motor = json.path("masses").get(0);
    assertThat(motor.path("what").asString()).isEqualTo("motor");
    assertThat(motor.path("part").asString()).isEqualTo("spikerush-1303-3400");
    assertThat(motor.path("estimatedGrams").asDouble()).isCloseTo(17.6, within(1e-9));
    assertThat(motor.path("estimatedDoubt").asDouble()).isCloseTo(0.4, within(1e-9));
    assertThat(motor.path("measuredGrams").asDouble()).isCloseTo(18.4, within(1e-9));
    assertThat(motor.path("measuredDoubt").asDouble()).isCloseTo(0.2020726, within(1e-7));
    assertThat(motor.path("agrees").asBoolean()).isTrue();
    assertThat(motor.path("derived").asBoolean()).isFalse();
    var style = json.path("styles").get(0);
    assertThat(style.path("style").asString()).isEqualTo("hover");
    assertThat(style.path("flights").get(0).path("line").asInt()).isEqualTo(2);
    assertThat(style.path("flights").get(0).path("chargedMilliampHours").asDouble())
        .isEqualTo(800);
    assertThat(style.path("flights").get(0).path("factor").asDouble())
        .isEqualTo(style.path("powerFactor").asDouble());
    assertThat(json.path("sensorScale").asDouble()).isEqualTo(1.25);
    assertThat(json.path("written").get(0).asString()).isEqualTo("mine/flown.json");
  }
}
