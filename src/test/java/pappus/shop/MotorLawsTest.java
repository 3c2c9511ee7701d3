package pappus.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.part.Motor.ResistanceReading;
import pappus.part.ScrewThread;
import pappus.part.Seat;
import pappus.part.Wire;

/** Invented motors against what real ones of their size are. */
final class MotorLawsTest {
  private static final List<Motor> MOTORS = Bands.records(Kind.MOTOR, Motor.class);

  /** Controller and leads in a resistance fitted on a bench, Ω (engineering estimate). */
  private static final double FITTED_OHMS = 0.010;

  private static List<Double> of(ToDoubleFunction<Motor> figure) {
    return MOTORS.stream().map(figure::applyAsDouble).toList();
  }

  private static double bareGrams(Motor motor) {
    return motor.mass().grams()
        - 3
            * motor.leadsIncludedMillimetres()
            / 1000
            * Wire.ofGauge(motor.leadGauge()).gramsPerMetre();
  }

  /** By the label's Kv, on which data sheets and the trends drawn from them rest: 2 to 9 % above the loaded one. */
  private static double torquePerAmp(Motor motor) {
    var overLoaded = motor.speedConstantReading() == Motor.KvReading.LOADED ? 1.055 : 1;
    return 9.5493 / (motor.speedConstantRpmPerVolt() * overLoaded);
  }

  private static double ohms(Motor motor) {
    var fitted = motor.resistanceReading() == ResistanceReading.FITTED ? FITTED_OHMS : 0;
    return motor.resistanceMilliohms() / 1000 - fitted;
  }

  /** Kt/√R, N·m/√W. */
  private static double constant(Motor motor) {
    return torquePerAmp(motor) / Math.sqrt(ohms(motor));
  }

  private static double statorMeasure(Motor motor) {
    return motor.statorDiameterMillimetres()
        * motor.statorDiameterMillimetres()
        * Math.sqrt(motor.statorHeightMillimetres());
  }

  private static double noLoadTorque(Motor motor) {
    return motor.noLoadCurrentAmps() * torquePerAmp(motor);
  }

  @Test
  void massFollowsTheVolumeOfTheStator() {
    // 10.0 mg/mm³ of D²H, ±13 %, hard 7.5 to 14: common practice, no published source.
    var densities = of(motor -> 1000
        * bareGrams(motor)
        / (motor.statorDiameterMillimetres()
            * motor.statorDiameterMillimetres()
            * motor.statorHeightMillimetres()));

    assertThat(densities).allSatisfy(density -> assertThat(density).isBetween(7.5, 14.0));
    assertThat(Bands.inside(densities, 10 * 0.77, 10 * 1.30)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.median(densities)).isCloseTo(10.0, within(1.0));
  }

  @Test
  void motorConstantIsThatOfBenchMotors() {
    // 1.30e-5 D²√H, ±17 %, hard 0.75e-5 to 2.0e-5; the bench of P. Cao and J. Strawson (open data
    // set, 2018, MIT licence) has 1.08e-5 to 1.39e-5.
    var ratios = of(motor -> constant(motor) / statorMeasure(motor));

    assertThat(ratios).allSatisfy(ratio -> assertThat(ratio).isBetween(0.75e-5, 2.0e-5));
    assertThat(Bands.inside(ratios, 1.30e-5 * 0.71, 1.30e-5 * 1.41)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.median(ratios)).isBetween(1.08e-5, 1.45e-5);
  }

  @Test
  void motorConstantAgreesWithThePublishedTrendOverMass() {
    // 0.0265 (m / 69.5 g)^(5/6), ±19 %: Budinger, Reysset, Ochotorena, Delbecq, Aerosp. Sci.
    // Technol. 98 (2020) 105658.
    var ratios =
        of(motor -> constant(motor) / (0.0265 * StrictMath.pow(bareGrams(motor) / 69.5, 5.0 / 6)));

    assertThat(Bands.withinTwo(List.of(Bands.median(ratios)), 0.19)).isEqualTo(1);
    assertThat(Bands.inside(ratios, StrictMath.exp(-2.5 * 0.19), StrictMath.exp(2.5 * 0.19)))
        .isGreaterThanOrEqualTo(0.9);
  }

  @Test
  void windingsOfOneStatorShareResistanceTimesKvSquared() {
    // Copper in one slot: R·Kv² is the same for all windings of a stator.
    var families = new TreeMap<String, List<Double>>();
    for (var motor : MOTORS) {
      var family = motor.name().substring(0, motor.name().indexOf('-'));
      families
          .computeIfAbsent(family, key -> new ArrayList<>())
          .add(ohms(motor) * motor.speedConstantRpmPerVolt() * motor.speedConstantRpmPerVolt());
    }

    assertThat(families).hasSizeGreaterThanOrEqualTo(30);
    assertThat(families).allSatisfy((family, values) -> {
      var mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
      assertThat(values)
          .hasSizeBetween(3, 4)
          .allSatisfy(value -> assertThat(value).isBetween(0.9 * mean, 1.1 * mean));
    });
  }

  @Test
  void noLoadTorqueIsOfItsMassAndSpeed() {
    // 0.11 mN·m a gram × (rpm / 10⁴)^0.4, ±35 %, hard 0.04 to 0.30; 0.090 a gram in Budinger et al.
    // 2020.
    var ratios = of(motor -> 1000
        * noLoadTorque(motor)
        / bareGrams(motor)
        / StrictMath.pow(motor.speedConstantRpmPerVolt() * motor.noLoadVolts() / 10_000, 0.4));

    assertThat(ratios).allSatisfy(ratio -> assertThat(ratio).isBetween(0.04, 0.30));
    assertThat(Bands.inside(ratios, 0.11 * 0.497, 0.11 * 2.014)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.median(ratios)).isBetween(0.08, 0.14);
  }

  @Test
  void bestEfficiencyRisesWithSize() {
    // (1 − √(i₀R/V))²: .75 at 1103 to .84 at 2207, ±.05, hard .60 to .90: common practice, no
    // published source.
    var excess = of(motor -> {
      var efficiency = efficiency(motor);
      assertThat(efficiency).as(motor.id()).isBetween(0.60, 0.90);
      return efficiency - (0.75 + 0.0085 * (motor.statorDiameterMillimetres() - 11));
    });

    assertThat(Bands.inside(excess, -0.10, 0.10)).isGreaterThanOrEqualTo(0.9);
    assertThat(Math.abs(Bands.median(excess))).isLessThan(0.03);
  }

  private static double efficiency(Motor motor) {
    var loss = Math.sqrt(motor.noLoadCurrentAmps() * ohms(motor) / motor.noLoadVolts());
    return (1 - loss) * (1 - loss);
  }

  @Test
  void ratedPowerIsOfItsMass() {
    // Burst 8 to 20 W/g, hard 3 to 35; without end 2.5 to 5.4 W/g, held at half of the pack's
    // volts:
    // common practice, no published source.
    var burst = MOTORS.stream()
        .filter(motor -> motor.burstAmps() != null)
        .map(motor ->
            Objects.requireNonNull(motor.burstAmps()) * motor.cells().to() * 3.7 / bareGrams(motor))
        .toList();
    var lasting = MOTORS.stream()
        .filter(motor -> motor.continuousAmps() != null)
        .map(motor -> Objects.requireNonNull(motor.continuousAmps())
            * motor.cells().to()
            * 3.7
            / 2
            / bareGrams(motor))
        .toList();

    assertThat(burst)
        .hasSizeGreaterThan(100)
        .allSatisfy(watts -> assertThat(watts).isBetween(3.0, 35.0));
    assertThat(Bands.inside(burst, 8, 20)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.inside(lasting, 2.5, 5.4)).isGreaterThanOrEqualTo(0.9);
  }

  @Test
  void screwsAndShaftsAreThoseOfTheClass() {
    // 6.6 mm circle M1.4, 9 and 12 mm M2, 16 mm up M3; a 5 mm shaft from 14 mm stators up: common
    // practice, no published source.
    assertThat(MOTORS).allSatisfy(motor -> {
      var circle = motor.boltCirclesMillimetres().get(0);
      assertThat(motor.screw())
          .isEqualTo(circle < 7 ? ScrewThread.M1_4 : circle < 16 ? ScrewThread.M2 : ScrewThread.M3);
      assertThat(circle).isLessThan(motor.statorDiameterMillimetres());
      if (motor.propellerSeat().isPressFit()) {
        assertThat(motor.statorDiameterMillimetres()).isLessThan(13);
      }
      if (motor.propellerSeat() == Seat.NUT_M5) {
        assertThat(motor.statorDiameterMillimetres()).isGreaterThan(14);
      }
    });
  }

  @Test
  void pricesAreThoseOfATradeShop() {
    // 8 to 30 € each: common practice, no published source.
    assertThat(Bands.inside(of(motor -> motor.price().cents() / 100.0), 7, 30))
        .isGreaterThanOrEqualTo(0.95);
  }
}
