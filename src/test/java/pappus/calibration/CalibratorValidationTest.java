package pappus.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Against the rows of P. Cao and J. Strawson, "motor_propeller_testing", 2018 (MIT). */
@Tag("slow")
class CalibratorValidationTest {
  private static final List<BenchRow> ROWS = PublishedBench.rows();

  /** Reached: median 1.5 to 2.2, 90th percentile 4.5 to 6.0 %. */
  @Test
  void meetsPropellersOnMotorsTheyWereNotFittedOn() {
    for (var key : PublishedBench.MOTORS) {
      Predicate<BenchRow> known = row -> row.propellerKey().compareTo("5") <= 0;
      var errors = predict(
              known.or(row -> row.motorKey().equals(key)),
              row -> row.propellerKey().compareTo("6") >= 0 && !row.motorKey().equals(key))
          .hover();
      assertThat(errors.medianPercent()).as(key).isLessThanOrEqualTo(3);
      assertThat(errors.p90Percent()).as(key).isLessThanOrEqualTo(7);
    }
  }

  /** Reached: 2.8 %. */
  @Test
  void meetsTheHighSupplyFromTheLowOne() {
    var errors = predict(
            row -> row.supplyLabelVolts() == 7.4, row -> row.supplyLabelVolts() == 11.1)
        .all();
    assertThat(errors.n()).isEqualTo(352);
    assertThat(errors.rmsPercent()).isLessThanOrEqualTo(5);
  }

  /**
   * Reached: a mean of 4.90, worst 5.94 (motor j); before full-throttle rows were read by their own speed and current,
   * 9.80 and 13.50.
   */
  @Test
  void meetsMotorsKnownByTheirFullThrottleRowsAlone() {
    var rms = PublishedBench.MOTORS.stream()
        .mapToDouble(key -> predict(
                row -> !row.motorKey().equals(key) || row.pulseMicroseconds() == 2000,
                row -> row.motorKey().equals(key))
            .all()
            .rmsPercent())
        .toArray();
    assertThat(Arrays.stream(rms).average().orElseThrow()).isLessThanOrEqualTo(5);
    assertThat(Arrays.stream(rms).max().orElseThrow()).isLessThanOrEqualTo(10);
  }

  /** Two motors of four left out: no goal, but what is left must carry over too.  */
  @Test
  void holdsWithHalfTheMotorsKnownByTheirFullThrottleRowsAlone() {
    for (var known : List.of(List.of("a", "c"), List.of("j", "k"))) {
      var comparison = predict(
          row -> known.contains(row.motorKey()) || row.pulseMicroseconds() == 2000,
          row -> !known.contains(row.motorKey()));
      assertThat(comparison.byMotor()).hasSize(2);
      assertThat(comparison.byMotor().values())
          .allSatisfy(errors -> assertThat(errors.rmsPercent()).isLessThanOrEqualTo(8));
    }
  }

  /**
   * The law of the flight model, so that records fitted under it can be flown. Below some 8 gf, where nothing hovers, it
   * takes too little: reached over all rows 3.3 % free and 4.7 under it, from 40 to 150 gf 2.5 and 2.4.
   */
  @Test
  void fitsTheRowsAsWellUnderTheLawThatIsFlown() {
    var free = Comparison.of(Calibrator.fit(ROWS), ROWS);
    var flown = Comparison.of(
        Calibrator.fit(
            ROWS,
            new Calibration.ControllerLaw(
                new Calibration.Figure(0.10, 0.0001),
                new Calibration.Figure(0.04, 0.00004),
                new Calibration.Figure(0.50, 0.0005))),
        ROWS);
    assertThat(free.all().rmsPercent()).isLessThanOrEqualTo(3.5);
    assertThat(flown.all().rmsPercent()).isLessThanOrEqualTo(5);
    assertThat(free.hover().rmsPercent()).isLessThanOrEqualTo(3);
    assertThat(flown.hover().rmsPercent()).isLessThanOrEqualTo(3);
  }

  /** Every fourth speed a glitch of 4 to 419 rpm, as a tachometer that lost its blade gives them. */
  @Test
  void bearsGlitchesOfTheTachometer() {
    var glitched = ROWS.stream()
        .map(row -> row.line() % 4 == 0 && row.speedRpm() > 0 ? glitch(row) : row)
        .toList();

    var sound = Calibrator.fit(ROWS);
    var found = Calibrator.fit(glitched);

    assertThat(found.leftOut().stream().filter(row -> row.reason().startsWith("speed gives")))
        .hasSize((int) glitched.stream()
            .filter(row -> row.speedRpm() < 420 && row.speedRpm() > 0)
            .count());
    assertThat(found.cautions()).isEmpty();
    assertThat(found.errors().rmsPercent()).isLessThanOrEqualTo(3.5);
    sound
        .motors()
        .forEach((key, motor) -> assertThat(Optional.ofNullable(found.motors().get(key))
                .orElseThrow()
                .kvRpmPerVolt()
                .value())
            .isCloseTo(motor.kvRpmPerVolt().value(), withinPercentage(1)));
  }

  private static BenchRow glitch(BenchRow row) {
    return new BenchRow(
        row.file(),
        row.line(),
        row.motorKey(),
        row.labelKvRpmPerVolt(),
        row.propellerKey(),
        row.supplyLabelVolts(),
        row.pulseMicroseconds(),
        row.thrustGrams(),
        row.volts(),
        row.currentA(),
        4 + row.line() % 416,
        row.diameterMillimetres(),
        row.airDensityKgPerCubicMetre(),
        row.torqueMillinewtonMetres(),
        row.statorMillimetres());
  }

  private static Comparison predict(Predicate<BenchRow> fitted, Predicate<BenchRow> scored) {
    var calibration = Calibrator.fit(ROWS.stream().filter(fitted).toList());
    return Comparison.of(calibration, ROWS.stream().filter(scored).toList());
  }
}
