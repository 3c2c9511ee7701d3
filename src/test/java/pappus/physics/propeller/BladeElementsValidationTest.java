package pappus.physics.propeller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.analysis.MultivariateVectorFunction;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the eight propellers of P. Cao and J. Strawson, "motor_propeller_testing", 2018 (MIT), and what was
 * found when the model was fitted to them.
 */
class BladeElementsValidationTest {
  private static final double INCH_M = 0.0254;
  private static final double RAD_PER_S_OF_RPM = Math.PI / 30;

  private record Measured(double pitchInch, int blades, double cT, double cP) {
    double thrustError() {
      return Math.log(model().thrustCoefficient(speed()) / cT);
    }

    double powerError() {
      return Math.log(model().powerCoefficient(speed()) / cP);
    }

    double meritError() {
      return 1.5 * thrustError() - powerError();
    }

    private PropellerInAir model() {
      return BladeElements.propeller(5 * INCH_M, pitchInch * INCH_M, blades).in(1.2, 1.81e-5);
    }

    private static double speed() {
      return 14_000 * RAD_PER_S_OF_RPM;
    }
  }

  /**
   * Root mean squares of the errors of the logarithms, in per cent, at half of the last digit. The figure of merit
   * is given the rounding of its coefficients on top: four digits leave up to 0.11 % in a figure of merit, and the
   * unrounded ones are not published.
   */
  @Test
  void missesTheEightAsItsFitSaid() throws IOException {
    assertThat(rms(Measured::thrustError)).isCloseTo(6.2, within(0.05));
    assertThat(rms(Measured::powerError)).isCloseTo(8.2, within(0.05));
    assertThat(rms(Measured::meritError)).isCloseTo(3.0, within(0.05 + 0.11));
  }

  @Test
  void meetsEveryThrustCoefficientWithinATenth() throws IOException {
    assertThat(measured())
        .hasSize(8)
        .allSatisfy(one -> assertThat(Math.expm1(Math.abs(one.thrustError()))).isLessThan(0.10));
  }

  /** As measured: more blades and more pitch, more thrust and power. */
  @Test
  void ordersBladesAndPitches() {
    assertThat(Stream.of(2, 3, 4).map(blades -> point(4, blades).thrustCoefficient()))
        .isSorted()
        .doesNotHaveDuplicates();
    assertThat(Stream.of(2, 3, 4).map(blades -> point(4, blades).powerCoefficient()))
        .isSorted()
        .doesNotHaveDuplicates();
    assertThat(Stream.of(4.0, 4.5, 5.3).map(pitch -> point(pitch, 3).thrustCoefficient()))
        .isSorted()
        .doesNotHaveDuplicates();
    assertThat(Stream.of(4.0, 4.5, 5.3).map(pitch -> point(pitch, 3).powerCoefficient()))
        .isSorted()
        .doesNotHaveDuplicates();
  }

  private static StaticPoint point(double pitchInch, int blades) {
    return new BladeElements(BladeElements.Fitted.TO_EIGHT, 5 * INCH_M, pitchInch * INCH_M, blades)
        .at(Measured.speed());
  }

  /**
   * Each propeller predicted by a plain least-squares fit of the four numbers to the seven others. An independent
   * fit found 9.4 % rms and 15.8 at most in thrust, 3.7 and 5.7 in the figure of merit; this one, without anything
   * to hold the numbers, does worse, and it is this one that the documents state.
   */
  @Test
  void leavingOneOutMissesAsTheDoubtSays() throws IOException {
    var all = measured();
    var thrust = new ArrayList<Double>();
    var merit = new ArrayList<Double>();
    for (var left : all) {
      var fitted = fit(all.stream().filter(one -> !one.equals(left)).toList());
      var errors = errors(fitted, left);
      thrust.add(errors[0]);
      merit.add(1.5 * errors[0] - errors[1]);
    }
    System.out.printf(
        Locale.ROOT,
        "one propeller left out: C_T %.1f %% rms, at most %.1f; figure of merit %.1f, at most %.1f%n",
        100 * rms(thrust),
        100 * most(thrust),
        100 * rms(merit),
        100 * most(merit));
    assertThat(100 * rms(thrust)).isCloseTo(10.7, within(0.1));
    assertThat(100 * most(thrust)).isCloseTo(19.7, within(0.1));
    assertThat(100 * rms(merit)).isCloseTo(4.5, within(0.1));
    assertThat(100 * most(merit)).isCloseTo(6.2, within(0.1));
  }

  private static double rms(List<Double> errors) {
    return Math.sqrt(errors.stream().mapToDouble(e -> e * e).average().orElseThrow());
  }

  private static double most(List<Double> errors) {
    return errors.stream().mapToDouble(Math::abs).max().orElseThrow();
  }

  /** Of ln C_T and ln C_P. */
  private static double[] errors(BladeElements.Fitted fitted, Measured one) {
    var point = new BladeElements(fitted, 5 * INCH_M, one.pitchInch() * INCH_M, one.blades())
        .at(Measured.speed());
    return new double[] {
      Math.log(point.thrustCoefficient() / one.cT()), Math.log(point.powerCoefficient() / one.cP())
    };
  }

  private static BladeElements.Fitted fit(List<Measured> known) {
    MultivariateVectorFunction residuals = at -> known.stream()
        .flatMapToDouble(one -> Arrays.stream(errors(fitted(at), one)))
        .toArray();
    return fitted(new LevenbergMarquardtOptimizer()
        .optimize(new LeastSquaresBuilder()
            .model(residuals, at -> slopes(residuals, at))
            .target(new double[2 * known.size()])
            .start(new double[] {0.18, 0.4, 0.05, 0.04})
            .maxEvaluations(100)
            .maxIterations(100)
            .build())
        .getPoint()
        .toArray());
  }

  private static BladeElements.Fitted fitted(double[] at) {
    return new BladeElements.Fitted(at[0], at[1], at[2], at[3]);
  }

  private static double[][] slopes(MultivariateVectorFunction residuals, double[] at) {
    var base = residuals.value(at);
    var slopes = new double[base.length][at.length];
    for (var column = 0; column < at.length; column++) {
      var moved = at.clone();
      moved[column] += 1e-5;
      var there = residuals.value(moved);
      for (var row = 0; row < base.length; row++) {
        slopes[row][column] = (there[row] - base[row]) / 1e-5;
      }
    }
    return slopes;
  }

  /**
   * The same model in an independent program, printed to four digits. The four fitted numbers are printed to
   * three or four as well: moved within their last digit they shift a coefficient by up to 0.00009, which
   * adds to the half of the last digit.
   */
  @ParameterizedTest(name = "propeller {0}")
  @CsvFileSource(resources = "five-inch-static.csv")
  void agreesWithAnIndependentProgram(
      int number,
      double pitchInch,
      int blades,
      double measuredThrust,
      double measuredPower,
      double modelThrust,
      double modelPower) {
    var model = new Measured(pitchInch, blades, measuredThrust, measuredPower).model();

    assertThat(model.thrustCoefficient(Measured.speed())).isCloseTo(modelThrust, within(0.00014));
    assertThat(model.powerCoefficient(Measured.speed())).isCloseTo(modelPower, within(0.00014));
  }

  /** Outside the fit, the same independent program, to three digits. */
  @ParameterizedTest(name = "{0} x {1} inch")
  @CsvSource({"10, 5, 5400, .100, .0416", "9, 5, 6397, .108, .046"})
  void agreesOnBiggerPropellers(
      double diameterInch, double pitchInch, double rpm, double thrust, double power) {
    var model =
        BladeElements.propeller(diameterInch * INCH_M, pitchInch * INCH_M, 2).in(1.2, 1.81e-5);

    assertThat(model.thrustCoefficient(rpm * RAD_PER_S_OF_RPM)).isCloseTo(thrust, within(0.0005));
    assertThat(model.powerCoefficient(rpm * RAD_PER_S_OF_RPM)).isCloseTo(power, within(0.0005));
  }

  /** Thrust coefficient from 6000 to 16 000 rpm: + 11 % for all, same program. */
  @Test
  void thrustCoefficientRisesWithSpeed() {
    for (var blades = 2; blades <= 4; blades++) {
      var model = BladeElements.propeller(5 * INCH_M, 4 * INCH_M, blades).in(1.2, 1.81e-5);
      var rise = model.thrustCoefficient(16_000 * RAD_PER_S_OF_RPM)
          / model.thrustCoefficient(6_000 * RAD_PER_S_OF_RPM);

      assertThat(rise).isCloseTo(1.11, within(0.005));
    }
  }

  private static double rms(ToDoubleFunction<Measured> error) throws IOException {
    var squares = measured().stream().mapToDouble(m -> Math.pow(error.applyAsDouble(m), 2));
    return 100 * Math.sqrt(squares.average().orElseThrow());
  }

  private static List<Measured> measured() throws IOException {
    var stream = Objects.requireNonNull(
        BladeElementsValidationTest.class.getResourceAsStream("five-inch-static.csv"));
    try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line ->
              Stream.of(line.split(",")).mapToDouble(Double::parseDouble).toArray())
          .map(row -> new Measured(row[1], (int) row[2], row[3], row[4]))
          .toList();
    }
  }
}
