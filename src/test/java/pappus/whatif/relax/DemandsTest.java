package pappus.whatif.relax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.assessment.Supply;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.change.Asked;
import pappus.change.Asking;
import pappus.part.Parts;
import pappus.scenario.Scenario;
import pappus.shop.SmallShop;

class DemandsTest {
  private static final String FLIGHT =
      "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 11.5, \"windMetresPerSecond\": 3}";
  private static final String UNKNOWN = ", \"unknownFacts\": \"leave-out\"";
  private static final String WANTS = ", \"wants\": [\"gps\", \"buzzer\"]";
  private static final String POWER = ", \"transmitterMilliwatts\": 100";
  private static final String BUDGET = ", \"budget\": {\"amount\": 170, \"currency\": \"EUR\"}";
  private static final String PAYLOAD =
      ", \"payload\": {\"name\": \"seeds\", \"massGrams\": 12.5, \"watts\": 1, \"xMillimetres\": 20}";
  private static final String PILOT =
      ", \"pilot\": {\"video\": \"analogue\", \"radio\": \"thrennel\", \"polarisation\": \"left\"}";
  private static final String PARTS = ", \"parts\": {\"fixed\": [\"cottongrass-4\"],"
      + " \"allowed\": [{\"role\": \"motor\", \"parts\": [\"spikerush-1303-3400\", \"cypsela-1404-2800\"]},"
      + " {\"role\": \"camera\", \"parts\": [\"newteye-14\"]}],"
      + " \"excluded\": [\"frond-4.5x3.2x3\", \"awn-4.5x2.5x2\"], \"owned\": [\"stipule-wire\"]}";
  private static final Supply COUNTED = new Supply(
      Asking.FEW, Shelf.of(List.of(new ShelfEntry("stipule-wire", null, 3, null, null))));

  private static final Scenario RICH =
      rich(FLIGHT, UNKNOWN, WANTS, POWER, BUDGET, PAYLOAD, PILOT, PARTS);

  private static Scenario rich(String flight, String... fields) {
    return SmallShop.flying(flight, String.join("", fields));
  }

  private static List<Demand> all() {
    return Demands.of(new Asked(RICH, COUNTED));
  }

  private static Scenario without(String id) {
    var demand = all().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return demand.change().without(new Asked(RICH, COUNTED)).scenario();
  }

  @Test
  void whatOneWouldGiveUpFirstComesFirst() {
    assertThat(all())
        .extracting(demand -> demand.id() + ": " + demand.text())
        .containsExactly(
            "unknown-facts: parts of which not enough is known are left out",
            "wants-gps: a GPS",
            "wants-buzzer: a buzzer",
            "excluded-frond-4.5x3.2x3: no frond-4.5x3.2x3",
            "excluded-awn-4.5x2.5x2: no awn-4.5x2.5x2",
            "allowed-motor: only some parts as motor: spikerush-1303-3400, cypsela-1404-2800",
            "allowed-camera: only some parts as camera: newteye-14",
            "fixed-cottongrass-4: the part cottongrass-4",
            "pilot-video: video for analogue goggles",
            "pilot-radio: a receiver for a radio that speaks thrennel",
            "transmitter-power: video power of 100 mW",
            "payload: a payload of 12.5 g",
            "airspeed: an airspeed of 11.5 m/s",
            "wind: wind of 3 m/s",
            "in-stock: what is in stock",
            "budget: a budget of EUR 170",
            "thrust-to-weight: thrust-to-weight of 2",
            "mass-cap: below 250 g");
  }

  @Test
  void whatHasNoStepsThatHelpSaysWhatIsDoneAboutIt() {
    assertThat(all().stream().filter(demand -> demand.dial().isEmpty()))
        .extracting(Demand::givenUp)
        .containsExactly(
            "keep parts of which not enough is known",
            "do without a GPS",
            "do without a buzzer",
            "take frond-4.5x3.2x3 too",
            "take awn-4.5x2.5x2 too",
            "take any motor",
            "take any camera",
            "take another part than cottongrass-4",
            "fly with other goggles",
            "fly with another radio",
            "order what is not in stock");
    assertThat(all().stream().filter(demand -> demand.dial().isPresent()))
        .extracting(demand -> demand.id() + ": " + demand.givenUp())
        .containsExactly(
            "transmitter-power: ",
            "payload: carry no payload",
            "airspeed: leave the airspeed open",
            "wind: ",
            "budget: ",
            "thrust-to-weight: ",
            "mass-cap: ");
  }

  @Test
  void aPlainScenarioAsksForThrustAndMassAlone() {
    assertThat(Demands.of(Asking.asked(SmallShop.scenario(""))))
        .extracting(Demand::text)
        .containsExactly("thrust-to-weight of 2", "below 250 g");
    var notStrict = Parts.with(SmallShop.scenario("").massCap(), "strict", false);
    assertThat(Demands.of(Asking.asked(Parts.with(SmallShop.scenario(""), "massCap", notStrict))))
        .extracting(Demand::text)
        .contains("at most 250 g");
  }

  /** Against the same scenario with the field left out of its text. */
  @Test
  void eachChangeTakesOutItsDemandAndNothingElse() {
    assertThat(without("unknown-facts"))
        .isEqualTo(rich(FLIGHT, WANTS, POWER, BUDGET, PAYLOAD, PILOT, PARTS));
    assertThat(without("wants-gps"))
        .isEqualTo(rich(
            FLIGHT, UNKNOWN, WANTS.replace("\"gps\", ", ""), POWER, BUDGET, PAYLOAD, PILOT, PARTS));
    assertThat(without("excluded-frond-4.5x3.2x3"))
        .isEqualTo(parts(PARTS.replace("\"frond-4.5x3.2x3\", ", "")));
    assertThat(without("allowed-motor"))
        .isEqualTo(parts(PARTS.replaceFirst("\\{\"role\": \"motor\"[^}]*}, ", "")));
    assertThat(without("fixed-cottongrass-4"))
        .isEqualTo(parts(PARTS.replace("\"cottongrass-4\"", "")));
    assertThat(without("pilot-video"))
        .isEqualTo(pilot(PILOT.replace("\"video\": \"analogue\", ", "")));
    assertThat(without("pilot-radio"))
        .isEqualTo(pilot(PILOT.replace("\"radio\": \"thrennel\", ", "")));
    assertThat(without("transmitter-power"))
        .isEqualTo(rich(FLIGHT, UNKNOWN, WANTS, BUDGET, PAYLOAD, PILOT, PARTS));
    assertThat(without("payload"))
        .isEqualTo(rich(FLIGHT, UNKNOWN, WANTS, POWER, BUDGET, PILOT, PARTS));
    assertThat(without("airspeed"))
        .isEqualTo(flying(FLIGHT.replace(" \"airspeedMetresPerSecond\": 11.5,", "")));
    assertThat(without("wind"))
        .isEqualTo(flying(FLIGHT.replace(", \"windMetresPerSecond\": 3", "")));
    assertThat(without("budget"))
        .isEqualTo(rich(FLIGHT, UNKNOWN, WANTS, POWER, PAYLOAD, PILOT, PARTS));
    assertThat(without("thrust-to-weight")).isEqualTo(Parts.with(RICH, "leastThrustToWeight", 1.0));
    assertThat(without("mass-cap"))
        .isEqualTo(Parts.with(RICH, "massCap", Parts.with(RICH.massCap(), "grams", 25_000.0)));
    assertThat(without("in-stock")).isEqualTo(RICH);
  }

  private static Scenario parts(String parts) {
    return rich(FLIGHT, UNKNOWN, WANTS, POWER, BUDGET, PAYLOAD, PILOT, parts);
  }

  private static Scenario pilot(String pilot) {
    return rich(FLIGHT, UNKNOWN, WANTS, POWER, BUDGET, PAYLOAD, pilot, PARTS);
  }

  private static Scenario flying(String flight) {
    return rich(flight, UNKNOWN, WANTS, POWER, BUDGET, PAYLOAD, PILOT, PARTS);
  }

  /** A power that is stated may be what keeps a link short, and less of it never helps. */
  @Test
  void aReachIsADemandThatAPowerMayStandAgainst() {
    var reaching = Demands.of(Asking.asked(SmallShop.scenario(POWER + ", \"reachMetres\": 800")));

    assertThat(reaching)
        .extracting(demand -> demand.id() + ": " + demand.text() + "; " + demand.givenUp())
        .containsExactly(
            "transmitter-power: video power of 100 mW; leave the video power to how far it must reach",
            "reach: picture and control out to 800 m; ",
            "thrust-to-weight: thrust-to-weight of 2; ",
            "mass-cap: below 250 g; ");
    assertThat(reaching.get(0).dial().orElseThrow().isOrdered()).isFalse();
    assertThat(reaching.get(1).dial().orElseThrow().isOrdered()).isTrue();
    assertThat(reaching.get(1).dial().orElseThrow().shown(3)).isEqualTo("770 m");
  }

  @Test
  void changesAddUp() {
    var left = new Asked(RICH, COUNTED);
    for (var demand : all()) {
      left = demand.change().without(left);
    }
    var choice = left.scenario().choice();

    assertThat(choice.fixedIds()).isEmpty();
    assertThat(choice.allowedParts()).isEmpty();
    assertThat(choice.excludedIds()).isEmpty();
    assertThat(choice.ownedIds()).containsExactly("stipule-wire");
    assertThat(left.scenario().pilotOrAny().polarisation()).isNotNull();
    assertThat(left.scenario().wants()).isEmpty();
    assertThat(left.supply().catalog()).isSameAs(Asking.FEW);
    assertThat(left.supply().shelf().pieces(Asking.FEW.part("stipule-wire").orElseThrow()))
        .isEqualTo(Optional.empty());
    assertThat(Demands.of(left))
        .extracting(Demand::text)
        .containsExactly("thrust-to-weight of 1", "below 25000 g");
  }

  @Test
  void whatIsNotCountedIsNoDemand() {
    var owned = new Supply(
        Asking.FEW, Shelf.of(List.of(new ShelfEntry("stipule-wire", 3, null, null, null))));

    assertThat(Demands.of(new Asked(SmallShop.scenario(""), owned)))
        .extracting(Demand::id)
        .containsExactly("thrust-to-weight", "mass-cap");
  }
}
