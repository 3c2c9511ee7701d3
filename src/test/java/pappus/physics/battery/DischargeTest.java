package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;

class DischargeTest {

  private static Pack pack(Chemistry chemistry, double capacityAh, double ohmFactor) {
    var coulomb = capacityAh * 3600;
    var ohm = ohmFactor * chemistry.classResistanceOhm(coulomb);
    return Pack.of(Cell.of(chemistry, coulomb, ohm, 1, Condition.STANDARD), 4, 1, 0.006);
  }

  private static double balanceVolts(Pack pack, Load load, double charge) {
    var open = pack.openVolts(charge);
    return new BracketingNthOrderBrentSolver(1e-13, 1e-12, 5)
        .solve(
            200,
            v -> open - v - pack.steadyOhm(charge) * load.currentA(v),
            0.6 * open,
            open + 1e-9);
  }

  /** The end and the integral by library methods, 0.02 % asked for. */
  @Test
  void agreesWithHipparchusQuadrature() {
    var random = new Random(11);
    var gauss = new GaussIntegratorFactory().legendre(12);
    var chemistries = List.of(Chemistry.values());
    for (var draw = 0; draw < 60; draw++) {
      var chemistry = chemistries.get(draw % 4);
      var pack = pack(chemistry, 0.4 + 2 * random.nextDouble(), 0.7 + random.nextDouble());
      var powerW = (3 + 7 * random.nextDouble()) * pack.capacityCoulomb() / 3600 * 14;
      var load = new Load(powerW, 3.5 + 4 * random.nextDouble(), 0.5, 0.4, 3);
      var leastVolts = 4 * (2.9 + 0.6 * random.nextDouble());
      var reserve = draw % 3 == 0 ? 0 : 0.15;

      var discharge = Discharge.of(pack, load, Until.drained(reserve, leastVolts));

      UnivariateFunction secondsPerCharge =
          z -> pack.capacityCoulomb() / load.currentA(balanceVolts(pack, load, z));
      var seconds = 0.0;
      for (var piece = 20; piece > 0; piece--) {
        var low = Math.max((piece - 1) / 20.0, discharge.endCharge());
        var high = piece / 20.0;
        if (low < high) {
          var half = (high - low) / 2;
          var middle = (high + low) / 2;
          seconds += half * gauss.integrate(x -> secondsPerCharge.value(middle + half * x));
        }
      }
      assertThat(discharge.seconds()).isCloseTo(seconds, withinPercentage(0.02));
      if (discharge.ending() == Discharge.Ending.LEAST_VOLTS && discharge.seconds() > 0) {
        assertThat(discharge.endVolts()).isCloseTo(leastVolts, within(1e-6));
        assertThat(balanceVolts(pack, load, discharge.endCharge()))
            .isCloseTo(leastVolts, within(1e-6));
      }
    }
  }

  @Test
  void energyIsChargeTimesVolts() {
    var pack = pack(Chemistry.LIPO, 0.85, 1);

    var discharge = Discharge.of(pack, Load.ofPower(40), Until.drained(0.2, 0));

    assertThat(discharge.meanPowerW()).isCloseTo(40, withinPercentage(0.001));
    assertThat(discharge.usedCoulomb()).isCloseTo(0.8 * 0.95 * 0.85 * 3600, within(1e-9));
    assertThat(discharge.startA() * discharge.startVolts()).isCloseTo(40, within(1e-6));
    assertThat(discharge.endA() * discharge.endVolts()).isCloseTo(40, within(1e-6));
  }

  @Test
  void aLoadTheFreshPackCannotCarryLastsNoTime() {
    var pack = pack(Chemistry.LIPO, 0.85, 1);

    var tooMuch = Discharge.of(pack, Load.ofPower(5000), Until.drained(0.2, 0));
    var tooLow = Discharge.of(pack, Load.ofPower(400), Until.drained(0.2, 4 * 3.9));

    assertThat(tooMuch.ending()).isEqualTo(Discharge.Ending.UNDELIVERABLE);
    assertThat(tooMuch.seconds()).isZero();
    assertThat(tooMuch.meanPowerW()).isZero();
    assertThat(tooLow.ending()).isEqualTo(Discharge.Ending.LEAST_VOLTS);
    assertThat(tooLow.seconds()).isZero();
  }

  @Test
  void withoutLeastVoltsAPackEndsWhereItCollapses() {
    var pack = pack(Chemistry.LIPO, 0.85, 3);
    var load = Load.ofPower(150);

    var discharge = Discharge.of(pack, load, Until.drained(0, 0));

    assertThat(discharge.ending()).isEqualTo(Discharge.Ending.UNDELIVERABLE);
    var open = pack.openVolts(discharge.endCharge());
    assertThat(open * open / (4 * pack.steadyOhm(discharge.endCharge())))
        .isCloseTo(150, withinPercentage(0.01));
    assertThat(discharge.endVolts()).isCloseTo(open / 2, withinPercentage(1));
  }

  @Test
  void stopsOnTimeAndGoesOnFromThere() {
    var pack = pack(Chemistry.LIHV, 0.85, 1);
    var load = new Load(35, 4, 0.5, 0.4, 3);
    var whole = Discharge.of(pack, load, Until.drained(0.2, 14));

    var first = Discharge.of(pack, load, new Until(0.2, 14, 300));
    var rest = Discharge.of(pack, load, Until.drained(0.2, 14), first.endCharge());

    assertThat(first.ending()).isEqualTo(Discharge.Ending.TIME);
    assertThat(first.seconds()).isEqualTo(300);
    assertThat(rest.seconds()).isCloseTo(whole.seconds() - 300, within(0.05));
    assertThat(first.energyJ() + rest.energyJ()).isCloseTo(whole.energyJ(), within(2.0));
  }

  @Test
  void traceRunsFromStartToEndWithFallingVolts() {
    var pack = pack(Chemistry.LIPO, 0.85, 1);
    var load = Load.ofPower(60);
    var until = Until.drained(0.2, 14);
    var whole = Discharge.of(pack, load, until);

    var trace = Mixture.trace(
        pack, List.of(new Mixture.Share(load, 1)), pack.startCharge(), whole.endCharge());

    var end = trace.get(trace.size() - 1);
    assertThat(trace.get(0).volts()).isCloseTo(whole.startVolts(), within(1e-6));
    assertThat(end.seconds()).isCloseTo(whole.seconds(), within(1e-6 * whole.seconds()));
    assertThat(end.volts()).isCloseTo(whole.endVolts(), within(1e-6));
    assertThat(end.usedCoulomb()).isCloseTo(whole.usedCoulomb(), within(1e-6));
    for (var moment = 1; moment < trace.size(); moment++) {
      assertThat(trace.get(moment).seconds())
          .isGreaterThan(trace.get(moment - 1).seconds());
      assertThat(trace.get(moment).volts()).isLessThan(trace.get(moment - 1).volts());
    }
  }

  /** Constant power has a closed solution: I = (V − √(V² − 4 R P))/(2 R). */
  @Test
  void constantPowerMeetsItsClosedSolution() {
    var pack = pack(Chemistry.LIPO, 0.85, 1);
    var open = pack.openVolts(0.5);
    var ohm = pack.steadyOhm(0.5);

    var currentA =
        pack.deliver(Load.ofPower(150), 0.5).match(Delivery.Delivered::currentA, refused -> -1.0);
    var most = pack.deliver(Load.ofPower(1.01 * open * open / (4 * ohm)), 0.5)
        .match(given -> -1.0, Delivery.Undeliverable::mostW);

    assertThat(currentA)
        .isCloseTo((open - Math.sqrt(open * open - 4 * ohm * 150)) / (2 * ohm), within(1e-9));
    assertThat(most).isCloseTo(open * open / (4 * ohm), within(1e-9));
  }

  @Test
  void voltsAtACurrentInvertTheLoad() {
    var load = new Load(35, 4, 0.5, 0.4, 3);

    assertThat(load.currentA(load.voltsAtCurrent(3))).isCloseTo(3, within(1e-12));
    assertThat(load.voltsAtCurrent(0.3)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(load.voltsAtCurrent(1000)).isGreaterThanOrEqualTo(0).isLessThan(0.1);
    assertThat(Load.ofCurrent(2).voltsAtCurrent(2)).isZero();
    assertThat(Load.ofCurrent(2).voltsAtCurrent(1)).isEqualTo(Double.POSITIVE_INFINITY);
  }
}
