package pappus.answers.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pappus.assessment.Supply;
import pappus.catalog.Shelf;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.scenario.MassCap;
import pappus.shop.SmallShop;
import pappus.weighing.FlightFit;
import pappus.weighing.FlightRow;
import pappus.weighing.MassRow;
import pappus.weighing.StyleFit;
import pappus.weighing.WeighIn;
import pappus.weighing.Weighed;

class WeighWordsTest {
  private static final FlightFit FLIGHT = flight(OptionalDouble.empty(), OptionalDouble.empty());

  private static FlightFit flight(OptionalDouble landing, OptionalDouble computed) {
    return new FlightFit(
        new FlightRow(
            "f.csv",
            2,
            "hover",
            10,
            660,
            Optional.empty(),
            Optional.of("used"),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            landing,
            OptionalDouble.empty()),
        600,
        1.117,
        computed,
        2);
  }

  private static Weighed weighed(String what, Optional<Part> part, boolean isDerived) {
    return new Weighed(what, part, 100, 3, 110, 4, isDerived);
  }

  /** What is left once a reading of the whole counts; the estimate is 190.9 g. */
  private static String left(MassRow... rows) {
    var catalog = SmallShop.few();
    return WeighWords.left(WeighIn.of(
        SmallShop.scenario(""),
        new Supply(catalog, Shelf.EMPTY),
        SmallShop.oneBuild(),
        List.of(rows),
        List.of()));
  }

  private static MassRow row(String what, double grams) {
    return new MassRow("m.csv", 2, what, grams, 1, 0.1);
  }

  @Test
  void namesWhatWasWeighed() {
    Part motor = Parts.with(Parts.motor(), "name", "Reed\u001b 1404");
    assertThat(WeighWords.what(weighed("dry", Optional.empty(), false)))
        .isEqualTo("dry, without its pack");
    assertThat(WeighWords.what(weighed("ready", Optional.empty(), false)))
        .isEqualTo("ready to fly");
    assertThat(WeighWords.what(weighed("motor", Optional.of(motor), false)))
        .isEqualTo("motor, Reed\u001B 1404");
    assertThat(WeighWords.what(weighed("battery", Optional.of(Parts.battery()), true)))
        .isEqualTo("battery, Battery (ready less dry)");
  }

  /** Doubts of 3 and 4 g make 5 g: 10 g are two deviations, and 10.1 g are more. */
  @Test
  void saysWhetherTheDoubtExplainsTheDifference() {
    assertThat(WeighWords.agreement(weighed("dry", Optional.empty(), false)))
        .isEqualTo("within its doubt");
    assertThat(WeighWords.agreement(new Weighed("dry", Optional.empty(), 100, 3, 110.1, 4, false)))
        .isEqualTo("off by more than its doubt");
    assertThat(WeighWords.agreement(new Weighed("dry", Optional.empty(), 100, 3, 89.9, 4, false)))
        .isEqualTo("off by more than its doubt");
  }

  @Test
  void saysWhatIsLeftForThatWhichWasNotWeighed() {
    assertThat(left(row("ready", 195)))
        .isEqualTo(
            "With the weighed parts it comes to 190.9 g ready to fly; 4.1 g more is in what was not weighed on its own: if you cannot find it, enter it as payload.massGrams of the scenario.");
    assertThat(left(row("ready", 185)))
        .isEqualTo(
            "With the weighed parts it comes to 190.9 g ready to fly; 5.9 g less is in what was not weighed on its own.");
    assertThat(left(row("ready", 190.9)))
        .isEqualTo("With the weighed parts it comes to 190.9 g ready to fly, as the scale says.");
    assertThat(left(row("dry", 84)))
        .isEqualTo("Weigh it ready to fly too: that is the mass the law asks about.");
  }

  private static WeighIn weighed(MassRow... rows) {
    var catalog = SmallShop.few();
    return WeighIn.of(
        SmallShop.scenario(""),
        new Supply(catalog, Shelf.EMPTY),
        SmallShop.oneBuild(),
        List.of(rows),
        List.of());
  }

  @Test
  void saysWhereReadingsContradictEachOther() {
    assertThat(WeighWords.contradiction(
            weighed(row("dry", 84), row("tidewell-2s-3500", 108), row("ready", 193))))
        .isEmpty();
    assertThat(WeighWords.contradiction(weighed(row("dry", 84), row("ready", 203))))
        .isEmpty();
    assertThat(WeighWords.contradiction(
            weighed(row("dry", 84), row("tidewell-2s-3500", 108), row("ready", 203))))
        .contains(
            "Readings disagree: dry, pack and payload add up to 11.0 g less than ready to fly. Weigh again.");
    assertThat(WeighWords.contradiction(
            weighed(row("dry", 94), row("tidewell-2s-3500", 108), row("ready", 193))))
        .contains(
            "Readings disagree: dry, pack and payload add up to 9.0 g more than ready to fly. Weigh again.");
  }

  @Test
  void saysWhereTheScaleBreaksTheCap() {
    var strict = new MassCap(250, true, "a law", null);
    assertThat(WeighWords.overCap(weighed(row("ready", 249.9)), strict)).isEmpty();
    assertThat(WeighWords.overCap(weighed(row("ready", 250)), strict))
        .contains("Over the cap on the scale: 250.0 g, must be below 250.0 g.");
    var most = new MassCap(250, false, "a law", null);
    assertThat(WeighWords.overCap(weighed(row("ready", 250)), most)).isEmpty();
    assertThat(WeighWords.overCap(weighed(row("ready", 250.1)), most))
        .contains("Over the cap on the scale: 250.1 g, must be at most 250.0 g.");
    assertThat(WeighWords.overCap(weighed(row("dry", 260)), most)).isEmpty();
  }

  @Test
  void saysWhatFlightsSay() {
    assertThat(WeighWords.fit(new StyleFit("hover", 1.117, 0.0599, List.of(FLIGHT))))
        .isEqualTo("Hover: 1.12 ± 0.06 times the propeller power computed, from 1 flight.");
    assertThat(WeighWords.fit(new StyleFit("cruise", 0.934, 0.041, Collections.nCopies(3, FLIGHT))))
        .isEqualTo("Cruise: 0.93 ± 0.04 times the propeller power computed, from 3 flights.");
    assertThat(WeighWords.flight(FLIGHT))
        .isEqualTo("10.0 min: the charger put back 660 mAh, the estimate says 600; ratio 1.12.");
  }

  @Test
  void saysWhatTheVoltsAtLandingTell() {
    assertThat(WeighWords.landing(FLIGHT)).isEmpty();
    assertThat(WeighWords.landing(flight(OptionalDouble.of(7.02), OptionalDouble.of(7.2))))
        .contains("Landed at 7.02 V; the estimate says 7.20 V after as much charge.");
    assertThat(WeighWords.landing(flight(OptionalDouble.of(6.98), OptionalDouble.of(7.2))))
        .contains(
            "Landed at 6.98 V; the estimate says 7.20 V after as much charge: the pack holds less or sags more than its record says; maybe it is more used up than was counted.");
    assertThat(WeighWords.landing(flight(OptionalDouble.of(7.42), OptionalDouble.of(7.2))))
        .contains(
            "Landed at 7.42 V; the estimate says 7.20 V after as much charge: the pack holds more or sags less than its record says.");
    assertThat(WeighWords.landing(flight(OptionalDouble.of(6.5), OptionalDouble.empty())))
        .contains(
            "Landed at 6.50 V with more drawn than its pack holds by record: the pack holds more.");
  }

  /** A sensor that counts 1000 of 1100 mAh shows 9 % too little, one that counts 1250 of 1000 shows 25 % too much. */
  @Test
  void saysWhatTheSensorIsToBeSetTo() {
    assertThat(WeighWords.sensor(1.1))
        .isEqualTo(
            "The current sensor reads 9 % low against the charger (good to 3 %): scale its reading by 1.100.");
    assertThat(WeighWords.sensor(0.8))
        .isEqualTo(
            "The current sensor reads 25 % high against the charger (good to 3 %): scale its reading by 0.800.");
    assertThat(WeighWords.sensor(1.029))
        .isEqualTo("Current sensor and charger agree to 3 %, as far as the charger is trusted.");
  }
}
