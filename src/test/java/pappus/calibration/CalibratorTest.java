package pappus.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import pappus.calibration.Calibration.Figure;

class CalibratorTest {
  @Test
  void findsKnownCoefficientsWithinItsStandardErrors() {
    var calibration = Calibrator.fit(new MadeUpBench(1, 0.02).rows());

    assertThatIsNear(calibration.law().loss(), MadeUpBench.LOSS);
    assertThatIsNear(calibration.law().idleA(), MadeUpBench.IDLE_A);
    assertThatIsNear(calibration.law().growth(), MadeUpBench.GROWTH);
    for (var motor : MadeUpBench.MOTORS) {
      var found = of(calibration.motors(), motor.key());
      assertThatIsNear(found.kvRpmPerVolt(), motor.kv());
      assertThatIsNear(found.resistanceOhm(), motor.ohm());
      assertThatIsNear(found.noLoadCurrentA(), motor.noLoadA());
      assertThatIsNear(
          found.ripple(), MadeUpBench.LOSS * Math.pow(Math.max(1, 18 / motor.stator()), 2));
      assertThatIsNear(found.airRatio(), 1);
      assertThat(found.kvRpmPerVolt().standardError()).isLessThan(0.03 * motor.kv());
      assertThat(found.resistanceOhm().standardError()).isLessThan(0.1 * motor.ohm());
      assertThat(found.rows()).isEqualTo(36);
    }
    for (var propeller : MadeUpBench.PROPELLERS) {
      var found = of(calibration.propellers(), propeller.key());
      assertThat(found.thrustCoefficient(10_000)).isCloseTo(propeller.thrust(), within(0.004));
      assertThat(found.powerCoefficient(10_000)).isCloseTo(propeller.power(), within(0.006));
      assertThat(found.lowestRpm()).isBetween(3000.0, 5500.0);
      assertThat(found.highestRpm()).isGreaterThan(15_000);
    }
    assertThat(calibration.errors().rmsPercent()).isBetween(1.0, 3.0);
    assertThat(calibration.leftOut()).isEmpty();
  }

  @Test
  void everyStartLeadsToTheSameCost() {
    var starts = Calibrator.fit(new MadeUpBench(2, 0.02).rows()).starts();

    assertThat(starts).hasSize(3);
    assertThat(starts.get(2)).isCloseTo(starts.get(0), within(1e-3 * starts.get(0)));
  }

  @Test
  void saysThatItShouldNotBeTrusted() {
    var rows = new MadeUpBench(8, 0.02).rows();
    assertThat(Calibrator.fit(rows).cautions()).isEmpty();

    assertThat(Calibrator.fit(new MadeUpBench(8, 0.16).rows()).cautions())
        .anyMatch(caution -> caution.startsWith("The rows fitted are missed by "));
    var fit = Calibrator.fit(rows);
    var apart = new Calibration(
        fit.law(),
        fit.motors(),
        fit.propellers(),
        fit.errors(),
        List.of(),
        Map.of(),
        List.of(),
        List.of(3.0, 3.1));
    assertThat(apart.cautions())
        .containsExactly(
            "The starts end at different costs: other coefficients fit about as well. Maybe there are too few rows.");
  }

  @Test
  void saysWhichCoefficientsStandInForEachOther() {
    assertThat(Calibrator.fit(new MadeUpBench(3, 0.02).rows()).correlations())
        .anySatisfy(one -> {
          assertThat(one.first()).isEqualTo("Kv of m1");
          assertThat(one.second()).isEqualTo("resistance of m1");
          assertThat(one.value()).isBetween(0.5, 1.0);
        })
        .allMatch(one -> Math.abs(one.value()) >= 0.5 && Math.abs(one.value()) <= 1 + 1e-9);
  }

  @Test
  void predictsAMotorKnownByOneFullThrottleRowAlone() {
    var bench = new MadeUpBench(4, 0.01);
    var all = bench.rows();
    var known = all.stream()
        .filter(row -> !row.motorKey().equals("m2")
            || (row.pulseMicroseconds() == 2000
                && row.propellerKey().equals("p2")
                && row.supplyLabelVolts() == 7.4))
        .toList();
    assertThat(known).hasSize(73);
    var others = all.stream().filter(row -> row.motorKey().equals("m2")).toList();

    var errors = of(Comparison.of(Calibrator.fit(known), others).byMotor(), "m2");

    assertThat(errors.n()).isEqualTo(36);
    assertThat(errors.rmsPercent()).isLessThan(12);
  }

  @Test
  void takesTorqueForWhatItIs() {
    var rows = new MadeUpBench(5, 0.02).rows();
    var measured = rows.stream()
        .map(row -> row.propellerKey().equals("p1") ? withTorque(row, 1.1) : row)
        .toList();

    var without = of(Calibrator.fit(rows).propellers(), "p1").powerCoefficient(10_000);
    var with = of(Calibrator.fit(measured).propellers(), "p1").powerCoefficient(10_000);

    assertThat(with).isBetween(1.02 * without, 1.11 * without);
  }

  /** So many times what its propeller takes at the speed of the row. */
  private static BenchRow withTorque(BenchRow row, double factor) {
    var turns = row.speedRpm() / 60;
    var torque = factor
        * MadeUpBench.PROPELLERS.get(0).powerAt(turns)
        * row.airDensityKgPerCubicMetre()
        * turns
        * turns
        * StrictMath.pow(0.127, 5)
        / (2 * Math.PI);
    return with(row, row.currentA(), row.speedRpm(), 1000 * torque);
  }

  private static BenchRow with(
      BenchRow row, double currentA, double rpm, double torqueMillinewtonMetres) {
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
        currentA,
        rpm,
        row.diameterMillimetres(),
        row.airDensityKgPerCubicMetre(),
        torqueMillinewtonMetres,
        row.statorMillimetres());
  }

  @Test
  void leavesOutWhatCannotBeAndWhatNobodyElseSays() {
    var rows = new ArrayList<>(new MadeUpBench(6, 0.02).rows());
    rows.add(row(100, 0.2, 9000, 201));
    rows.add(row(100, 20, 9000, 202));
    rows.add(row(-1, 2, 9000, 203));
    rows.add(row(100, 0, 9000, 204));

    var calibration = Calibrator.fit(rows);

    assertThat(calibration.leftOut())
        .extracting(row -> row.line() + ": " + row.reason())
        .containsExactlyInAnyOrder(
            "201: power is below what any propeller of this size needs: row left out",
            "202: power is far from all other rows: row left out",
            "203: thrust or current is not above zero: row left out",
            "204: thrust or current is not above zero: row left out");
    assertThatIsNear(calibration.law().loss(), MadeUpBench.LOSS);
  }

  @Test
  void leavesOutSpeedsThatNoPropellerTurnsAtForItsThrust() {
    var rows = withSpeeds(
        new MadeUpBench(9, 0.02).rows(),
        row -> row.line() % 4 == 0,
        row -> 4 + 415.0 * row.line() / 110);

    var calibration = Calibrator.fit(rows);

    assertThat(calibration.leftOut())
        .hasSize(27)
        .allMatch(
            row -> row.line() % 4 == 0
                && row.reason()
                    .equals(
                        "speed gives a thrust coefficient outside 0.03 to 0.5: speed left out, power used"));
    assertThat(calibration.cautions()).isEmpty();
    assertThat(calibration.errors().rmsPercent()).isBetween(1.0, 3.0);
    for (var motor : MadeUpBench.MOTORS) {
      assertThatIsNear(of(calibration.motors(), motor.key()).kvRpmPerVolt(), motor.kv());
    }
  }

  @Test
  void fewRowsFarOffMoveItLittle() {
    var clean = new MadeUpBench(10, 0.01).rows();
    var rows = clean.stream()
        .map(row -> row.line() % 10 == 0 ? withCurrent(row, 1.3 * row.currentA()) : row)
        .toList();

    var calibration = Calibrator.fit(rows);

    assertThat(calibration.leftOut()).isEmpty();
    assertThat(Comparison.of(calibration, clean).all().biasPercent()).isBetween(0.0, 1.3);
  }

  @Test
  void namesAMotorWhoseSpeedsBelongToAnotherNumberOfPoles() {
    var rows = withSpeeds(
        new MadeUpBench(11, 0.02).rows(),
        row -> row.motorKey().equals("m2"),
        row -> row.speedRpm() * 6 / 7);

    var calibration = Calibrator.fit(rows);

    assertThat(calibration.cautions())
        .containsExactly(
            "Motor m2 turns 0.86 times as fast as motor m1 at equal thrust, as 6 to 7: maybe its number of poles was set wrong. Its speeds are left out.");
    assertThat(calibration.leftOut())
        .hasSize(36)
        .allMatch(row ->
            row.reason().equals("speed is another number of poles': speed left out, power used"));
    assertThatIsNear(of(calibration.motors(), "m2").kvRpmPerVolt(), 2450);
    assertThatIsNear(of(calibration.motors(), "m1").kvRpmPerVolt(), 2200);
  }

  @Test
  void namesSpeedsThatNoLabelAllowsWhereThereIsNoOtherMotor() {
    var alone = new MadeUpBench(12, 0.02)
        .rows().stream().filter(row -> row.motorKey().equals("m1")).toList();

    assertThat(Calibrator.fit(withSpeeds(alone, row -> true, row -> row.speedRpm() * 7))
            .cautions())
        .singleElement()
        .asString()
        .matches(
            "Motor m1 turns [67]\\.\\d\\d times as fast at full throttle as the Kv on its label leads to expect: .*");
    assertThat(Calibrator.fit(withSpeeds(alone, row -> true, row -> row.speedRpm() / 2))
            .cautions())
        .singleElement()
        .asString()
        .matches("Motor m1 turns 0\\.[45]\\d times as fast at full throttle as .*");
  }

  @Test
  void refusesAFitThatIsWorthNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Calibrator.fit(new MadeUpBench(8, 0.6).rows()))
        .withMessageMatching(
            "rows must be met within 25 % rms of power, eight times what sound rows show, but are missed by \\d\\d %\\. Maybe units or keys are mixed up, or a label's Kv is wrong\\.");
  }

  private static List<BenchRow> withSpeeds(
      List<BenchRow> rows, Predicate<BenchRow> which, ToDoubleFunction<BenchRow> rpm) {
    return rows.stream()
        .map(row -> which.test(row) ? with(row, row.currentA(), rpm.applyAsDouble(row), 0) : row)
        .toList();
  }

  private static BenchRow withCurrent(BenchRow row, double currentA) {
    return with(row, currentA, row.speedRpm(), 0);
  }

  @Test
  void makesDoWithFewRowsAndNoSpeeds() {
    var full = new MadeUpBench(7, 0.01)
        .fullThrottle(MadeUpBench.MOTORS.get(0), MadeUpBench.PROPELLERS.get(0), 11.1);
    assertThat(Calibrator.fit(List.of(full)).errors().rmsPercent()).isLessThan(5);

    var calibration = Calibrator.fit(List.of(row(100, 2.9, 0, 2), row(50, 1.4, 0, 3)));
    assertThat(of(calibration.motors(), "m1").kvRpmPerVolt().value()).isBetween(1900.0, 2500.0);
    assertThat(calibration.leftOut())
        .hasSize(2)
        .allMatch(row -> row.reason().equals("speed was not read: speed left out, power used"));
    assertThat(calibration.errors().n()).isEqualTo(2);
  }

  @Test
  void refusesRowsThatSayNothing() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Calibrator.fit(List.of(row(0, 2, 9000, 2))))
        .withMessage(
            "rows must hold one with thrust and current above zero and a power that can lift it, but hold none.");
  }

  private static BenchRow row(double grams, double current, double rpm, int line) {
    return new BenchRow(
        "made-up.csv",
        line,
        "m1",
        2300,
        "p1",
        11.1,
        1500,
        grams,
        11.1,
        current,
        rpm,
        127,
        1.2,
        0,
        0);
  }

  private static void assertThatIsNear(Figure found, double truth) {
    assertThat(found.standardError()).isPositive();
    assertThat(found.value()).isCloseTo(truth, within(2.5 * found.standardError()));
  }

  private static <T> T of(Map<String, T> byKey, String key) {
    return Optional.ofNullable(byKey.get(key)).orElseThrow();
  }
}
