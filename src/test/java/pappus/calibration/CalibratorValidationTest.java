package pappus.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Against the rows of P. Cao and J. Strawson, "motor_propeller_testing", 2018 (MIT). */
@Tag("slow")
class CalibratorValidationTest {
  private static final List<BenchRow> ROWS = PublishedBench.rows();

  /** Reached: median 1.9 to 2.5, 90th percentile 3.9 to 5.4 %. */
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

  /** Reached: 3.3 %. */
  @Test
  void meetsTheHighSupplyFromTheLowOne() {
    var errors = predict(
            row -> row.supplyLabelVolts() == 7.4, row -> row.supplyLabelVolts() == 11.1)
        .all();
    assertThat(errors.n()).isEqualTo(352);
    assertThat(errors.rmsPercent()).isLessThanOrEqualTo(5);
  }

  /**
   * Reached: a mean of 4.93, worst 7.25 (motor c, which idles on less current than the others); before
   * full-throttle rows were read by their own speed and current, 9.80 and 13.50.
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

  /** The law of the flight model, so that records fitted under it can be flown. */
  @Test
  void fitsTheRowsAsWellUnderTheLawThatIsFlown() {
    var free = Calibrator.fit(ROWS).errors();
    var flown = Calibrator.fit(
            ROWS,
            new Calibration.ControllerLaw(
                new Calibration.Figure(0.39, 0.001),
                new Calibration.Figure(0.10, 0.001),
                new Calibration.Figure(0.33, 0.001)))
        .errors();
    assertThat(free.rmsPercent()).isLessThanOrEqualTo(3.5);
    assertThat(flown.rmsPercent()).isLessThanOrEqualTo(3.5);
  }

  private static Comparison predict(Predicate<BenchRow> fitted, Predicate<BenchRow> scored) {
    var calibration = Calibrator.fit(ROWS.stream().filter(fitted).toList());
    return Comparison.of(calibration, ROWS.stream().filter(scored).toList());
  }
}
