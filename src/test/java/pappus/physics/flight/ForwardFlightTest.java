package pappus.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;

class ForwardFlightTest {
  private static final Leg CALM = new Leg(1000, 0, 0);

  private static ForwardFlight flight(double leastOfHover) {
    var aircraft = Examples.fiveInch(0.25);
    return new ForwardFlight(aircraft, Hover.of(aircraft), leastOfHover);
  }

  @Test
  void isHoverAtRest() {
    var hover = Hover.of(Examples.fiveInch(0.25));

    var still = flight(ForwardFlight.LEAST_OF_HOVER).at(0);

    assertThat(still.steady().busPowerW(15)).isCloseTo(hover.steady().busPowerW(15), within(1e-9));
    assertThat(still.tiltRad()).isZero();
    assertThat(still.isClamped()).isFalse();
  }

  @Test
  void bestEnduranceAgreesWithHipparchus() {
    var theory = flight(0);
    var best = new BrentOptimizer(1e-12, 1e-12)
        .optimize(
            new MaxEval(500),
            new UnivariateObjectiveFunction(theory::theoryPowerW),
            GoalType.MINIMIZE,
            new SearchInterval(1, 15));

    assertThat(theory.bestEndurance().airspeedMPerS()).isCloseTo(best.getPoint(), within(1e-4));
    assertThat(theory.bestEndurance().steady().shaftPowerW())
        .isCloseTo(best.getValue(), within(1e-9));
  }

  @Test
  void theClampRaisesPowerAndLeavesTheSpeed() {
    var clamped = flight(0.95).bestEndurance();
    var theory = flight(0).bestEndurance();
    var hoverW = Hover.of(Examples.fiveInch(0.25)).steady().shaftPowerW();

    assertThat(clamped.isClamped()).isTrue();
    assertThat(clamped.airspeedMPerS()).isEqualTo(theory.airspeedMPerS());
    assertThat(clamped.steady().shaftPowerW()).isCloseTo(0.95 * hoverW, within(1e-9));
    assertThat(theory.steady().shaftPowerW()).isLessThan(0.95 * hoverW);
  }

  @Test
  void bestRangeAgreesWithHipparchusAndFliesFasterAgainstTheWind() {
    var theory = flight(0);
    var best = new BrentOptimizer(1e-10, 1e-10)
        .optimize(
            new MaxEval(500),
            new UnivariateObjectiveFunction(v -> theory.theoryPowerW(v) / v),
            GoalType.MINIMIZE,
            new SearchInterval(4, 25));

    var calm = theory.bestRange(CALM);

    assertThat(calm.airspeedMPerS()).isCloseTo(best.getPoint(), within(1e-3));
    assertThat(theory.bestRange(new Leg(1000, -5, 0)).airspeedMPerS())
        .isGreaterThan(calm.airspeedMPerS());
    assertThat(theory.bestRange(new Leg(1000, 5, 0)).airspeedMPerS())
        .isLessThan(calm.airspeedMPerS());
    assertThat(theory.bestRange(new Leg(1000, 0, 6)).airspeedMPerS())
        .isGreaterThan(calm.airspeedMPerS());
  }

  @Test
  void windMovesTheGroundSpeed() {
    assertThat(new Leg(120, 0, 0).groundSpeedMPerS(5)).hasValue(5);
    assertThat(new Leg(120, 2, 3).groundSpeedMPerS(5)).hasValue(6);
    assertThat(new Leg(120, 2, -3).seconds(5)).hasValue(20);
    assertThat(new Leg(120, -4, 3).groundSpeedMPerS(5)).isEmpty();
    assertThat(new Leg(120, 10, 6).seconds(5)).isEmpty();
  }

  @Test
  void refusesAWindItCannotFlyAgainst() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> flight(0).bestRange(new Leg(1000, -50, 0)))
        .withMessageStartingWith("wind in m/s that must be overcome must be from 0 to");
  }

  @Test
  void topSpeedIsWhereFullThrottlesPowerIsUsedUp() {
    var aircraft = Examples.fiveInch(0.25);
    var full = FullThrottle.of(aircraft, Examples.lipo(4, 0.85), 0.5, 3, Limits.NONE);
    var flight = flight(ForwardFlight.LEAST_OF_HOVER);

    var top = flight.topSpeedMPerS(full);

    assertThat(top).isBetween(20.0, 60.0);
    assertThat(Math.max(
            flight.theoryPowerW(top) / (4 * full.point().shaftPowerW()),
            flight.at(top).thrustN() / full.thrustN()))
        .isCloseTo(1, within(1e-6));
  }

  @Test
  void anAircraftThatCannotHoverHasNoTopSpeed() {
    var aircraft = Examples.fiveInch(0.25);
    var weak =
        FullThrottle.of(aircraft, Examples.lipo(4, 0.85), 0.5, 3, new Limits(0.5, 1, 1, 1, 1));

    assertThat(flight(0).topSpeedMPerS(weak)).isZero();
  }

  /** Without gusts a wind is an airspeed, but for three hundredths of unsteady work. */
  @Test
  void windIsAnAirspeedThatIsWorkedHarderFor() {
    var flight = flight(ForwardFlight.LEAST_OF_HOVER);
    var hoverW = Hover.of(Examples.fiveInch(0.25)).steady().shaftPowerW();

    assertThat(flight.windFactor(0, 0.3)).isEqualTo(1);
    assertThat(flight.windFactor(14, 0))
        .isCloseTo(1.03 * flight.theoryPowerW(14) / hoverW, within(1e-9))
        .isGreaterThan(1.1);
    assertThat(flight.windFactor(5, 0)).isEqualTo(1);
  }

  /** The mean over a normal distribution by small steps. */
  @Test
  void gustsAreAveragedOverTheirDistribution() {
    var flight = flight(ForwardFlight.LEAST_OF_HOVER);
    var leastW = 0.914 * Hover.of(Examples.fiveInch(0.25)).steady().shaftPowerW();
    for (var deviation : new double[] {0.5, 2}) {
      var mean = 0.0;
      for (var z = -6.0; z < 6; z += 0.001) {
        mean += 0.001
            * Math.exp(-z * z / 2)
            / Math.sqrt(2 * Math.PI)
            * Math.max(flight.theoryPowerW(Math.abs(15 + z * deviation)), leastW);
      }

      assertThat(flight.meanPowerW(15, deviation)).isCloseTo(mean, within(1e-3 * mean));
      assertThat(flight.inGusts(flight.at(15), deviation).steady().shaftPowerW())
          .isCloseTo(1.03 * flight.meanPowerW(15, deviation), within(1e-9));
    }
  }

  @Test
  void gustsNeverSavePower() {
    var flight = flight(ForwardFlight.LEAST_OF_HOVER);
    var calm = flight.at(15);

    assertThat(flight.inGusts(calm, 0)).isSameAs(calm);
    var gusty = flight.inGusts(calm, 2);
    assertThat(gusty.airspeedMPerS()).isEqualTo(15);
    assertThat(gusty.isClamped()).isEqualTo(calm.isClamped());
    assertThat(gusty.steady().shaftPowerW()).isGreaterThan(calm.steady().shaftPowerW());
  }
}
