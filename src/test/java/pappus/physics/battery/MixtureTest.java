package pappus.physics.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.api.Test;

class MixtureTest {
  private static final Pack PACK =
      Pack.of(Cell.of(Chemistry.LIPO, 0.85 * 3600, 0.018, 1, Condition.STANDARD), 4, 1, 0.006);
  private static final Load HOVER = new Load(35, 4, 0.5, 0.4, 3);
  private static final Load DASH = new Load(80, 7, 0.5, 0.4, 3);

  private static Discharge mixed(Mixture.Share... shares) {
    return Mixture.between(PACK, List.of(shares), 1, 0.2, Discharge.Ending.RESERVE);
  }

  private static Mixture.Share share(Load load, double weight) {
    return new Mixture.Share(load, weight);
  }

  @Test
  void oneLoadIsThePlainDischarge() {
    var plain = Discharge.of(PACK, HOVER, Until.drained(0.2, 0));

    agrees(mixed(share(HOVER, 17)), plain);
  }

  @Test
  void twoEqualLoadsAreThePlainDischarge() {
    var plain = Discharge.of(PACK, HOVER, Until.drained(0.2, 0));

    agrees(mixed(share(HOVER, 1), share(HOVER, 3)), plain);
  }

  private static void agrees(Discharge mixed, Discharge plain) {
    assertThat(mixed.seconds()).isCloseTo(plain.seconds(), within(1e-6));
    assertThat(mixed.energyJ()).isCloseTo(plain.energyJ(), within(1e-4));
    assertThat(mixed.usedCoulomb()).isCloseTo(plain.usedCoulomb(), within(1e-9));
    assertThat(mixed.endCharge()).isEqualTo(plain.endCharge());
    assertThat(mixed.startVolts()).isCloseTo(plain.startVolts(), within(1e-6));
    assertThat(mixed.startA()).isCloseTo(plain.startA(), within(1e-6));
    assertThat(mixed.endVolts()).isCloseTo(plain.endVolts(), within(1e-6));
    assertThat(mixed.endA()).isCloseTo(plain.endA(), within(1e-6));
  }

  @Test
  void moreOfTheHeavierLoadIsShorter() {
    var last = Double.POSITIVE_INFINITY;
    for (var weight = 1; weight < 10; weight++) {
      var seconds = mixed(share(HOVER, 10 - weight), share(DASH, weight)).seconds();

      assertThat(seconds).isLessThan(last);
      last = seconds;
    }
    assertThat(last)
        .isGreaterThan(Discharge.of(PACK, DASH, Until.drained(0.2, 0)).seconds());
  }

  /** Both balances and the integral by library methods. */
  @Test
  void agreesWithHipparchusQuadrature() {
    var gauss = new GaussIntegratorFactory().legendre(12);
    var seconds = 0.0;
    for (var piece = 20; piece > 4; piece--) {
      var middle = (piece - 0.5) / 20;
      seconds += gauss.integrate(x -> {
            var charge = middle + x / 40;
            var meanA = 0.75 * balanceA(HOVER, charge) + 0.25 * balanceA(DASH, charge);
            return PACK.capacityCoulomb() / meanA;
          })
          / 40;
    }

    assertThat(mixed(share(HOVER, 90), share(DASH, 30)).seconds())
        .isCloseTo(seconds, withinPercentage(0.02));
  }

  private static double balanceA(Load load, double charge) {
    var open = PACK.openVolts(charge);
    var volts = new BracketingNthOrderBrentSolver(1e-13, 1e-12, 5)
        .solve(
            200,
            v -> open - v - PACK.steadyOhm(charge) * load.currentA(v),
            0.6 * open,
            open + 1e-9);
    return load.currentA(volts);
  }

  @Test
  void refusesNothingToMix() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> mixed())
        .withMessage("shares must list at least one, but is empty.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> share(HOVER, 0))
        .withMessage("weight must be a positive number, but is 0.");
  }
}
