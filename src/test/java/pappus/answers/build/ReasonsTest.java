package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.assessment.flight.FlightEstimate;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.compatibility.Verdict;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.doubt.Contribution;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.physics.flight.Ending;
import pappus.physics.flight.ThrottleLimit;
import pappus.quantity.Sentence;
import pappus.ranking.Candidate;
import pappus.reliance.Doubt;
import pappus.scenario.Waiver;
import pappus.search.Changed;
import pappus.shop.SmallShop;

class ReasonsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final GoalWords BY_FLIGHT = new GoalWords(SmallShop.scenario(""));
  private static final Assessor ASSESSOR = SmallShop.assessor(FEW, "");
  private static final Assessment FIRST = assess(String.join(",", SmallShop.ONE_BUILD));
  private static final Assessment SMALLER_PACK =
      assess(FIRST.build().toString().replace("tidewell-2s-3500", "tidewell-2s-3400"));
  private static final FlightEstimate FLIGHT = FIRST.flight().orElseThrow();

  @Test
  void namesTheLimitWithTheLeastRoom() {
    var mass = new Limit("mass-cap", "all-up mass", "g", 180, 249.999, true, true);
    var thrust = new Limit("thrust-to-weight", "thrust-to-weight", "", 2.25, 2, false, true);

    assertThat(Reasons.binding(Changed.limits(FIRST, List.of(mass, thrust))))
        .isEqualTo("Tightest limit: thrust-to-weight, 2.25 of at least 2.00, 0.25 to spare.");
    assertThat(Reasons.binding(Changed.limits(FIRST, List.of(mass))))
        .isEqualTo("Tightest limit: all-up mass, 180.0 g of at most 250.0 g, 70.00 g to spare.");
  }

  @Test
  void namesTheLimitThatIsBroken() {
    var price = new Limit("budget", "price to buy", "EUR", 210, 180, true, false);
    var thrust = new Limit("thrust-to-weight", "thrust-to-weight", "", 1.5, 2, false, false);

    assertThat(Reasons.binding(Changed.limits(FIRST, List.of(price))))
        .isEqualTo("Broken: price to buy is 210.0 EUR, but must be at most 180.0 EUR.");
    assertThat(Reasons.binding(Changed.limits(FIRST, List.of(thrust))))
        .isEqualTo("Broken: thrust-to-weight is 1.50, but must be at least 2.00.");
  }

  @Test
  void saysWhereNothingOfALimitIsUsed() {
    assertThat(Reasons.room(new Limit("pack-overhang", "reach", "mm", 0, 15, true, true)))
        .isEqualTo("none of at most 15.00 mm");
  }

  @Test
  void saysWhenNothingCouldBeComputed() {
    assertThat(Reasons.binding(assess("cottongrass-4"))).isEqualTo("Nothing could be computed.");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      RESERVE            | The flight ends at the reserve.
      LANDING_VOLTS      | The flight ends at landing voltage, ahead of the reserve.
      FULL_DUTY          | The flight ends when full throttle no longer holds the hover.
      MOTOR_CURRENT      | No flight: it exceeds the motors' continuous current.
      CONTROLLER_CURRENT | No flight: it exceeds the controllers' continuous current.
      PACK_CURRENT       | The flight ends at the continuous current of the pack.
      CONNECTOR_CURRENT  | The flight ends at the continuous current of the plug.
      LEAD_CURRENT       | The flight ends at the continuous current of the leads.
      UNDELIVERABLE      | The flight ends when the pack can no longer deliver the power.
      TIME               | The flight ends with the time asked for.
      WIND               | No flight: it makes no headway against the wind.
      """, quoteCharacter = '"')
  void saysWhatEndsTheFlight(Ending ending, String sentence) {
    assertThat(Reasons.ending(Changed.ending(FLIGHT, ending))).isEqualTo(sentence);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      MOTOR       | the motors exceed their burst current
      CONTROLLER  | the controllers exceed their burst current
      PACK        | the pack exceeds its burst current
      CONNECTOR   | the plug exceeds its burst current
      LEAD        | the leads exceed their burst current
      FLOOR_VOLTS | the pack sags below its floor volts
      """, quoteCharacter = '"')
  void saysToWhatMotorOutputIsLimited(ThrottleLimit limit, String overtaxed) {
    assertThat(Reasons.cap(Changed.cap(FLIGHT, limit, 0.848)))
        .contains("Limit motor output to 84 % in the flight firmware: above that, " + overtaxed
            + " in mid-flight.");
  }

  /** Its volts are the highest, and so are its currents. */
  @Test
  void aFreshPackMayTakeALowerLimitThanMidFlight() {
    var onlyFresh =
        Changed.capFresh(Changed.cap(FLIGHT, ThrottleLimit.FULL_DUTY, 1), ThrottleLimit.PACK, 0.9);
    var both =
        Changed.capFresh(Changed.cap(FLIGHT, ThrottleLimit.PACK, 0.97), ThrottleLimit.PACK, 0.9);

    var limit =
        "Limit motor output to 90 % in the flight firmware: above that, the pack exceeds its burst current on a fresh pack.";
    assertThat(Reasons.cap(onlyFresh))
        .contains(limit + " In mid-flight, where thrust is judged, the parts stand full throttle.");
    assertThat(Reasons.cap(both))
        .contains(limit + " In mid-flight, where thrust is judged, that is so above 97 %.");
  }

  @Test
  void saysNothingOfAThrottleThatIsNotCapped() {
    assertThat(Reasons.cap(Changed.cap(FLIGHT, ThrottleLimit.FULL_DUTY, 1))).isEmpty();
  }

  @Test
  void saysWhyOneStandsBeforeTheNext() {
    var longer = Changed.cents(Changed.seconds(FIRST, 2700), 20_000);
    var shorter = Changed.cents(Changed.seconds(SMALLER_PACK, 2600), 18_000);

    var watts = Spoken.number(
        FLIGHT.split().totalW() - SMALLER_PACK.flight().orElseThrow().split().totalW(), 1);
    assertThat(watts).matches("0\\.[1-9]");

    assertThat(Reasons.standing(candidate(longer, false), candidate(shorter, false), BY_FLIGHT))
        .isEqualTo("Ahead of the next by 1.5 min: 3 g heavier, " + watts
            + " W more in hover, 20 EUR dearer; differs in battery.");
    assertThat(Reasons.standing(candidate(shorter, false), candidate(longer, false), BY_FLIGHT))
        .endsWith(
            ": 3 g lighter, " + watts + " W less in hover, 20 EUR cheaper; differs in battery.");
  }

  @Test
  void saysWhereABoardsOwnLossDecidesTheRank() {
    var board = with(FIRST.build().board().orElseThrow(), "controllerLoss", 0.30);
    var own = ASSESSOR.assess(FIRST.build().with(Role.BOARD, board));
    var first = Changed.seconds(own, 2700);
    var share = Evidence.NONE.board(board).rippleShare(Weighing.EXPECTED).orElseThrow();
    // So much that the usual loss costs a minute and a half.
    var effect = -90 / Math.log(1 / share) * 0.1;

    assertThat(Reasons.standing(
            losing(first, effect),
            candidate(Changed.seconds(SMALLER_PACK, 2640), false),
            BY_FLIGHT))
        .endsWith(
            " It ranks here on its board's stated part-load loss; at the usual loss it would reach 43.5 min.");
    assertThat(Reasons.standing(
            losing(first, effect),
            candidate(Changed.seconds(SMALLER_PACK, 2600), false),
            BY_FLIGHT))
        .doesNotContain("by its board");
    assertThat(Reasons.standing(
            losing(Changed.seconds(FIRST, 2700), effect),
            candidate(Changed.seconds(SMALLER_PACK, 2640), false),
            BY_FLIGHT))
        .doesNotContain("by its board");
  }

  private static Candidate losing(Assessment assessment, double effect) {
    return new Candidate(
        assessment,
        new Band(
            assessment.milliseconds() / 1000.0,
            List.of(new Contribution(Doubt.LOSS, "loss", 0.1, effect, -effect, -effect)),
            0.9),
        List.of(),
        false,
        Map.of(),
        OptionalInt.empty(),
        false);
  }

  @Test
  void saysWhenTheDifferenceIsWithinTheDoubt() {
    var other = assess(FIRST.build().toString().replace("newteye-14-feather", "newteye-14"));
    var longer = Changed.cents(Changed.seconds(FIRST, 2700), 20_000);

    assertThat(Reasons.standing(
            candidate(longer, false),
            candidate(Changed.cents(Changed.seconds(SMALLER_PACK, 2650), 20_000), true),
            BY_FLIGHT))
        .startsWith("Ahead of the next by 50 s: ")
        .endsWith("; differs in battery. Too close to call.");
    assertThat(Reasons.standing(
            candidate(longer, false),
            candidate(Changed.cents(Changed.seconds(other, 2699.5), 20_000), true),
            BY_FLIGHT))
        .startsWith("Ahead of the next by 0.5 s");
  }

  @Test
  void namesTheTwoLargestDoubtsAndTheMeasurementsThatNarrowThemMost() {
    var band = new Band(
        100,
        List.of(
            new Contribution(Doubt.MASS, "a", 1, 1, 1, 1),
            new Contribution(Doubt.CELL_RESISTANCE, "b", 0.30, -5, 5, 5),
            new Contribution(Doubt.RESISTANCE, "c", 0.05, 3, 3, 3)),
        0.9);

    assertThat(Reasons.doubt(band))
        .isEqualTo("Band ±8 %; mostly the cells' resistance and the motor's resistance."
            + " A full discharge of this pack with a ten-second step would take it to ±4 %,"
            + " thrust-stand rows of this motor with this board to ±7 %.");
  }

  @Test
  void namesNoMeasurementThatLeavesTheBandAsItIsTold() {
    var band = new Band(
        100,
        List.of(
            new Contribution(Doubt.CELL_RESISTANCE, "b", 0.30, -5, 5, 5),
            new Contribution(Doubt.RESISTANCE, "c", 0.05, 0.5, 0.5, 0.5)),
        0.9);

    assertThat(Reasons.doubt(band))
        .doesNotContain("thrust-stand rows")
        .contains("A full discharge of this pack");
  }

  @Test
  void putsClashesBeforeWhatIsNotKnownBeforeNotes() {
    var waiver = new Waiver("battery-bay", List.of("tidewell-2s-3500"), "We cut the plate.");
    var assessment = Changed.findings(
        FIRST,
        List.of(
            new Finding("balance", Verdict.FITS, Optional.empty(), false),
            new Finding("capacitor", Verdict.fitsBut("Solder it."), Optional.empty(), false),
            new Finding(
                "motor-screw",
                Verdict.unknown("the thread depth of motor %s", "m"),
                Optional.empty(),
                false),
            new Finding(
                "battery-bay",
                Verdict.clashes("Pack %s is %s mm too long.", "p", 1.5),
                Optional.of(waiver),
                false),
            new Finding(
                "motor-mount", Verdict.clashes("No circle fits."), Optional.empty(), true)));

    assertThat(Reasons.findings(assessment))
        .containsExactly(
            "Set aside (battery-bay, We cut the plate.): Pack p is 1.5 mm too long.",
            "Clash (motor-mount): No circle fits.",
            "Not known (motor-screw): the thread depth of motor m.",
            "Solder it.");
  }

  /** By hand: laws of 417 mΩ and 0.464 A, weights of 0.9 and 0.8, and a slip once in a hundred. */
  @Test
  void tellsWhatOfARecordCountsAndWhatWouldSettleIt() {
    var motor = with(Parts.motor(), "resistanceMilliohms", 330.0);
    var battery = with(Parts.battery(), "deliveredMilliampHours", 840.0);
    var build = Parts.of(motor, Parts.propeller(), battery, Parts.board());

    assertThat(Reasons.counted(build, Evidence.NONE.build(build)))
        .containsExactly(
            "Motor, winding resistance: 330 mΩ listed, 338 mΩ counted, 417 usual; drawn by its class; doubt 5 %, spread of its class 15 %.",
            "Motor, no-load current: 0.600 A listed, 0.569 A counted, 0.464 usual; drawn by its class; doubt 10 %, spread of its class 20 %.",
            "Battery, charge delivered: 840 mAh listed, 816 mAh counted, 808 usual; drawn by its class; doubt 5 %, spread of its class 3 %.");
    assertThat(Reasons.countedBriefly(build, Evidence.NONE.build(build)))
        .contains(
            "Not counted as listed: winding resistance 330 mΩ as 338 by its class; no-load current 0.600 A as 0.569 by its class; charge delivered 840 mAh as 816 by its class.");
  }

  @Test
  void saysNothingOfFiguresThatCountAsStated() {
    var motor = with(with(Parts.motor(), "figuresDoubt", 0.0), "noLoadCurrentAmps", 0.6);
    var build = Parts.of(motor, Parts.propeller(), Parts.battery(), Parts.board());

    assertThat(Reasons.counted(build, Evidence.NONE.build(build))).isEmpty();
    assertThat(Reasons.countedBriefly(build, Evidence.NONE.build(build))).isEmpty();
  }

  @Test
  void controlCharactersInWhatRulesQuoteComeOutVisible() {
    var note = Sentence.of("Turn %s.", "a\u001B[2Jb\u0007c\nd\u202Ee");
    var assessment = Changed.findings(
        FIRST,
        List.of(new Finding("balance", Verdict.fitsWith(List.of(note)), Optional.empty(), false)));

    assertThat(Reasons.findings(assessment)).containsExactly("Turn a\u001B[2Jb\u0007c\nd\u202Ee.");
  }

  @Test
  void namesWhatIsTheSameInEveryNumber() {
    var motor = FEW.part("spikerush-1303-3400").orElseThrow();
    var other = FEW.part("cypsela-1404-2800").orElseThrow();

    assertThat(Reasons.twins(motor, List.of(other)))
        .isEqualTo("Spikerush 1303-3400 has the same figures as Cypsela 1404-2800"
            + " (cypsela-1404-2800): take either.");
  }

  private static Candidate candidate(Assessment assessment, boolean unsure) {
    return new Candidate(
        assessment,
        new Band(
            assessment.milliseconds() / 1000.0,
            unsure ? List.of(new Contribution(Doubt.MASS, "a", 1, 100, 100, 100)) : List.of(),
            0.9),
        List.of(),
        false,
        Map.of(),
        OptionalInt.empty(),
        false);
  }

  private static Assessment assess(String build) {
    return ASSESSOR.assess(BuildText.parse(build, FEW));
  }
}
