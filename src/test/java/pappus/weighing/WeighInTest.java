package pappus.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.assessment.Supply;
import pappus.assessment.flight.Factors;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.files.InputException;
import pappus.part.Battery;
import pappus.part.Flown;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.scenario.Flight;
import pappus.scenario.PackAge;
import pappus.scenario.Scenario;
import pappus.shop.SmallShop;

class WeighInTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Supply SUPPLY = new Supply(FEW, Shelf.EMPTY);
  private static final Scenario HOVER = SmallShop.scenario("");
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);

  private static final String MOTOR = "spikerush-1303-3400";
  private static final String PACK = "tidewell-2s-3500";

  /** One deviation of a pocket scale. */
  private static final double POCKET = Math.sqrt(0.01 / 12 + 0.04);

  /** Frame 41, motors 4 × 4.4, propellers 4 × 1.5, board 5.3, camera 1.5, antenna 0.4, capacitor 0.8, and so on. */
  private static final double DRY =
      41 + 17.6 + 6 + 5.3 + 1.5 + 0.4 + 0.8 + 16 * 0.09 + 1.6 + 0.7 + 2.8 + 1 + 1.8 + 1.293885;

  /** The record of the pack has no leads: 2.37 g are added. */
  private static final double READY = DRY + 105.3 + 2.37;

  private static final double LAST_DIGIT = 1e-6;

  private static MassRow mass(String what, double grams, int pieces) {
    return new MassRow("m.csv", 2, what, grams, pieces, 0.1);
  }

  private static FlightRow flight(double charged) {
    var none = OptionalDouble.empty();
    return new FlightRow(
        "f.csv",
        2,
        "hover",
        10,
        charged,
        Optional.empty(),
        Optional.of("new"),
        none,
        none,
        none,
        none);
  }

  private static FlightRow landed(double minutes, double charged, double volts) {
    return Parts.with(
        Parts.with(flight(charged), "minutes", minutes), "landingVolts", OptionalDouble.of(volts));
  }

  private static WeighIn of(List<MassRow> masses, FlightRow... flights) {
    return of(SUPPLY, HOVER, masses, flights);
  }

  private static WeighIn of(
      Supply supply, Scenario scenario, List<MassRow> masses, FlightRow... flights) {
    return WeighIn.of(
        scenario, supply, BuildText.parse(BUILD, supply.catalog()), masses, List.of(flights));
  }

  /** Charge of ten minutes by an assessment of its own. */
  private static double charge(Supply supply, Scenario scenario, String build) {
    var assessor = supply.assessor(scenario);
    return assessor
        .likeliest()
        .milliampHours(
            assessor.assess(BuildText.parse(build, supply.catalog())), Factors.NONE, 600);
  }

  private static double charge() {
    return charge(SUPPLY, HOVER, BUILD);
  }

  private static double computed(FlightRow flight) {
    return of(List.of(), flight).fits().get(0).flights().get(0).computedMilliampHours();
  }

  @Test
  void setsAllPiecesOfAPartBesideTheScale() {
    var result = of(List.of(mass(MOTOR, 9.2, 2)));

    assertThat(result.weighed()).hasSize(1);
    var motors = result.weighed().get(0);
    assertThat(motors.what()).isEqualTo("motor");
    assertThat(motors.part()).isEqualTo(FEW.part(MOTOR));
    assertThat(motors.isDerived()).isFalse();
    assertThat(motors.estimatedGrams()).isCloseTo(17.6, within(LAST_DIGIT));
    assertThat(motors.estimatedDoubt()).isCloseTo(0.4, within(LAST_DIGIT));
    assertThat(motors.measuredGrams()).isCloseTo(18.4, within(LAST_DIGIT));
    assertThat(motors.measuredDoubt()).isCloseTo(2 * POCKET, within(LAST_DIGIT));
    assertThat(motors.differenceGrams()).isCloseTo(0.8, within(LAST_DIGIT));
    assertThat(motors.agrees()).isTrue();
  }

  @Test
  void writesTheMassOfOnePieceAsMeasured() {
    var result = of(List.of(mass(MOTOR, 18.4, 4)));

    assertThat(result.records()).extracting(Part::id).containsExactly(MOTOR);
    // a quarter of 0.202 g
    assertThat(result.records().get(0).mass()).isEqualTo(new Mass(4.6, Known.MEASURED, 0.051));
    assertThat(result.records().get(0).source())
        .isEqualTo(FEW.part(MOTOR).orElseThrow().source() + " Its mass: weighed by the builder.");
    assertThat(result.assessment().mass().grams()).isCloseTo(READY, within(LAST_DIGIT));
    assertThat(result.after().mass().grams()).isCloseTo(READY + 0.8, within(LAST_DIGIT));
  }

  @Test
  void weighsAPackWithItsLeads() {
    var result = of(List.of(mass(PACK, 108.4, 1)));

    assertThat(result.weighed().get(0).estimatedGrams()).isCloseTo(107.67, within(LAST_DIGIT));
    assertThat(result.weighed().get(0).differenceGrams()).isCloseTo(0.73, within(LAST_DIGIT));
    var record = (Battery) result.records().get(0);
    assertThat(record.mass()).isEqualTo(new Mass(108.4, Known.MEASURED, 0.202));
    assertThat(record.massIncludesLeads()).isTrue();
    assertThat(((Battery) FEW.part(PACK).orElseThrow()).massIncludesLeads()).isFalse();
    assertThat(result.after().mass().grams()).isCloseTo(DRY + 108.4, within(LAST_DIGIT));
    assertThat(result.after().mass().lines())
        .extracting(line -> line.label())
        .contains("battery")
        .doesNotContain("pack leads and plug");
  }

  @Test
  void findsThePackAsReadyLessDry() {
    var result = of(List.of(mass("dry", 84, 1), mass("ready", 193, 1)));

    assertThat(result.weighed())
        .extracting(Weighed::what)
        .containsExactly("battery", "dry", "ready");
    var pack = result.weighed().get(0);
    assertThat(pack.isDerived()).isTrue();
    assertThat(pack.estimatedGrams()).isCloseTo(107.67, within(LAST_DIGIT));
    assertThat(pack.measuredGrams()).isCloseTo(109, within(LAST_DIGIT));
    assertThat(pack.measuredDoubt()).isCloseTo(POCKET * Math.sqrt(2), within(LAST_DIGIT));
    var dry = result.weighed().get(1);
    assertThat(dry.part()).isEmpty();
    assertThat(dry.estimatedGrams()).isCloseTo(DRY, within(LAST_DIGIT));
    assertThat(dry.measuredGrams()).isEqualTo(84);
    var ready = result.weighed().get(2);
    assertThat(ready.estimatedGrams()).isCloseTo(READY, within(LAST_DIGIT));
    assertThat(ready.measuredGrams()).isEqualTo(193);
    assertThat(result.records())
        .extracting(Part::mass)
        .containsExactly(new Mass(109.0, Known.MEASURED, 0.286));
    assertThat(result.after().mass().grams()).isCloseTo(DRY + 109, within(LAST_DIGIT));
  }

  @Test
  void believesAPackOnTheScaleMoreThanADifference() {
    var result = of(List.of(mass("dry", 84, 1), mass("ready", 193, 1), mass(PACK, 108.4, 1)));

    assertThat(result.weighed()).noneMatch(Weighed::isDerived);
    assertThat(result.records()).extracting(part -> part.mass().grams()).containsExactly(108.4);
  }

  @Test
  void leavesThePayloadOutOfTheAircraft() {
    var carrying = SmallShop.scenario(
        ", \"payload\": {\"name\": \"sensor\", \"massGrams\": 10, \"watts\": 0, \"xMillimetres\": 0}");
    var result = of(SUPPLY, carrying, List.of(mass("dry", 84, 1), mass("ready", 203, 1)));

    assertThat(result.weighed().get(0).measuredGrams()).isCloseTo(109, within(LAST_DIGIT));
    assertThat(result.weighed().get(1).estimatedGrams()).isCloseTo(DRY, within(LAST_DIGIT));
    assertThat(result.weighed().get(2).estimatedGrams()).isCloseTo(READY + 10, within(LAST_DIGIT));
  }

  @Test
  void findsFactorOneWhereTheChargeIsAsComputed() {
    var result = of(List.of(), flight(charge()));

    var fit = result.fits().get(0);
    assertThat(fit.style()).isEqualTo("hover");
    assertThat(fit.flights().get(0).computedMilliampHours()).isCloseTo(charge(), within(1e-9));
    assertThat(fit.factor()).isCloseTo(1, within(1e-9));
    // scatter 0.05 and charger 0.03
    assertThat(result.flown())
        .containsExactly(new Flown(
            "hover", 1, 0.0583, 1, "Fitted to what the charger put back after 1 flight."));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.9, 0.99, 1.1, 1.5})
  void findsTheFactorWithWhichTheComputedChargeIsWhatWasCharged(double share) {
    var factor = of(List.of(), flight(share * charge())).fits().get(0).factor();

    assertThat(factor > 1).isEqualTo(share > 1);
    var flown = new Flown("hover", factor, 0.05, 1, "made up");
    assertThat(charge(new Supply(FEW, Shelf.EMPTY, Map.of("hover", flown)), HOVER, BUILD))
        .isCloseTo(share * charge(), within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(ints = {20, 5000})
  void refusesAFlightThatNoFactorExplains(int charged) {
    assertThatThrownBy(() -> of(List.of(), flight(charged)))
        .isInstanceOf(InputException.class)
        .hasMessage(
            "f.csv:2: charged_mah must be what such a flight can take, but is %s where 731 are computed: no propeller is as good, or as bad. Maybe minutes are wrong."
                .formatted(charged));
  }

  /** Only what belongs to another way of flying is left behind, and the age is the scenario's if none is told. */
  @Test
  void fliesAsTheScenarioSaysWhereTheLogSaysNothing() {
    var cruise = new Flight(
        Flight.Style.CRUISE,
        null,
        null,
        null,
        null,
        0.2,
        12.0,
        3.0,
        null,
        null,
        PackAge.TIRED,
        null,
        null,
        null);
    var hover = new Flight(
        Flight.Style.HOVER,
        null,
        null,
        null,
        null,
        0.2,
        null,
        null,
        null,
        null,
        PackAge.TIRED,
        null,
        null,
        null);
    var row = Parts.with(flight(880), "age", Optional.empty());
    var fit =
        of(SUPPLY, Parts.with(HOVER, "flight", cruise), List.of(), row).fits().get(0);

    assertThat(fit.flights().get(0).computedMilliampHours())
        .isEqualTo(charge(SUPPLY, Parts.with(HOVER, "flight", hover), BUILD))
        .isGreaterThan(charge() + 10);
  }

  /** What the discharge took, in as long: the volts are those with which it ended. */
  @Test
  void landsAtTheVoltsWithWhichTheDischargeEnds() {
    var flight =
        SUPPLY.assessor(HOVER).assess(BuildText.parse(BUILD, FEW)).flight().orElseThrow();
    var discharge = flight.endurance().discharge();
    var row =
        landed(discharge.seconds() / 60, discharge.usedCoulomb() / 3.6, discharge.endVolts() - 0.3);
    var fit = of(List.of(), row).fits().get(0).flights().get(0);

    assertThat(fit.factor()).isCloseTo(1, within(1e-6));
    assertThat(fit.computedLandingVolts().getAsDouble())
        .isCloseTo(discharge.endVolts(), within(1e-6));
    assertThat(fit.landingDifference().getAsDouble()).isCloseTo(-0.15, within(1e-6));
  }

  /** More than is in the pack by its record. */
  @Test
  void computesNoVoltsWhereTheRecordHasNothingLeft() {
    var capacity = ((Battery) FEW.part(PACK).orElseThrow()).capacityMilliampHours();
    var row = landed(10 * 1.05 * capacity / charge(), 1.05 * capacity, 6);

    assertThat(of(List.of(), row).fits().get(0).flights().get(0).computedLandingVolts())
        .isEmpty();
  }

  /** What is known from earlier flights does not count, else a second fit would undo the first. */
  @Test
  void findsFactorsAgainstTheEstimateWithoutThem() {
    var earlier = new Flown("hover", 1.5, 0.05, 1, "made up");
    var supply = new Supply(FEW, Shelf.EMPTY, Map.of("hover", earlier));

    assertThat(of(supply, HOVER, List.of(), flight(charge())).fits().get(0).factor())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void fliesWithTheMassOnTheScale() {
    var result = of(List.of(mass("ready", READY + 10, 1)), flight(charge()));
    var heavier = SmallShop.scenario(
        ", \"payload\": {\"name\": \"sensor\", \"massGrams\": 10, \"watts\": 0, \"xMillimetres\": 0}");

    var fit = result.fits().get(0).flights().get(0);
    assertThat(fit.computedMilliampHours()).isCloseTo(charge(SUPPLY, heavier, BUILD), within(1e-4));
    assertThat(fit.factor()).isLessThan(1);
  }

  @Test
  void fliesAsOldAndAsWarmAndWithThePackThatWasLogged() {
    var tired = Parts.with(flight(700), "age", Optional.of("tired"));
    var cold = Parts.with(
        Parts.with(flight(700), "airCelsius", OptionalDouble.of(-10)),
        "packCelsius",
        OptionalDouble.of(5));
    var other = Parts.with(flight(700), "pack", Optional.of("tidewell-2s-3400"));
    var old = SmallShop.flying("{\"style\": \"hover\", \"packAge\": \"tired\"}", "");
    var winter = Parts.with(
        HOVER,
        "air",
        Parts.with(
            Parts.with(HOVER.air(), "temperatureCelsius", -10.0), "packTemperatureCelsius", 5.0));

    assertThat(computed(tired)).isCloseTo(charge(SUPPLY, old, BUILD), within(1e-9));
    assertThat(computed(cold)).isCloseTo(charge(SUPPLY, winter, BUILD), within(1e-9));
    assertThat(computed(other))
        .isCloseTo(charge(SUPPLY, HOVER, BUILD.replace(PACK, "tidewell-2s-3400")), within(1e-9));
    assertThat(List.of(charge(), computed(tired), computed(cold), computed(other)))
        .doesNotHaveDuplicates();
    assertThat(computed(tired)).isGreaterThan(charge());
  }

  @Test
  void keepsStylesApartInTheOrderOfTheirFirstFlights() {
    var loiter = Parts.with(flight(700), "style", "loiter");
    var result = of(List.of(), loiter, flight(700), loiter);

    assertThat(result.fits()).extracting(StyleFit::style).containsExactly("loiter", "hover");
    assertThat(result.flown()).extracting(Flown::flights).containsExactly(2, 1);
    assertThat(result.flown().get(0).source())
        .isEqualTo("Fitted to what the charger put back after 2 flights.");
    assertThat(result.fits().get(0).flights().get(0).computedMilliampHours())
        .isCloseTo(
            charge(SUPPLY, SmallShop.flying("{\"style\": \"loiter\"}", ""), BUILD), within(1e-9));
  }

  /** 650 and 600 mAh by the charger, 600 and 550 by the sensor; the third flight has no reading. */
  @Test
  void scalesTheSensorByAllThatBothCounted() {
    var first = Parts.with(flight(650), "sensorMilliampHours", OptionalDouble.of(600));
    var second = Parts.with(
        Parts.with(first, "chargedMilliampHours", 600.0),
        "sensorMilliampHours",
        OptionalDouble.of(550));

    assertThat(of(List.of(), first, second, flight(900)).sensorScale())
        .hasValueCloseTo(1250.0 / 1150, within(1e-12));
    assertThat(of(List.of(), flight(900)).sensorScale()).isEmpty();
  }

  @Test
  void needsLegsToFlyAProfile() {
    assertThat(WeighIn.canBeFlown("profile", HOVER)).isFalse();
    assertThat(WeighIn.canBeFlown("cruise", HOVER)).isTrue();
  }
}
