package pappus.physics.motor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;

/**
 * The first-order model of M. Drela, MIT 2007, worked by an independent program at half of its last digit:
 * 2400 rpm/V, 0.1 Ω, 1 A without load at every speed, 7.4 V.
 */
class MotorValidationTest {
  private static final double RAD_PER_S_OF_RPM = Math.PI / 30;

  private static MotorModel motor() {
    return MotorModel.of(2400 * RAD_PER_S_OF_RPM, 0.1, 0, 1, 7.4, 0);
  }

  @Test
  void tenAmpsAtSevenPointFourVolts() {
    var point = motor().atVolts(7.4, 10);

    assertThat(point.speedRadPerS() / RAD_PER_S_OF_RPM).isCloseTo(15_360, within(1e-8));
    assertThat(point.torqueNm()).isCloseTo(35.80986e-3, within(0.000005e-3));
    assertThat(point.efficiency()).isCloseTo(0.778378, within(0.0000005));
  }

  @Test
  void isBestAtTheSquareRootOfVoltsTimesIdleCurrentOverResistance() {
    var best = new BrentOptimizer(1e-10, 1e-12)
        .optimize(
            new MaxEval(200),
            new UnivariateObjectiveFunction(i -> motor().atVolts(7.4, i).efficiency()),
            GoalType.MAXIMIZE,
            new SearchInterval(2, 40));

    assertThat(best.getValue()).isCloseTo(0.781018, within(0.0000005));
    assertThat(best.getPoint()).isCloseTo(8.602325, within(0.0000005 + 2e-6));
  }

  /** Battery power at 3.270948 V and 2.407945 A in a motor of 0.1 Ω. */
  @Test
  void controllerAtPartLoad() {
    var point = new OperatingPoint(1, 1, 2.407945, 3.270948);
    var controller = PartLoadLaw.BENCH.controllerFor(22, 0.1, 1);

    assertThat(controller.busPowerW(point, 14.8)).isCloseTo(15.824, within(0.0005));
    assertThat(controller.busPowerW(point, 7.4)).isCloseTo(12.632, within(0.0005));
  }
}
