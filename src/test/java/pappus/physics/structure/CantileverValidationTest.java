package pappus.physics.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the closed forms of textbooks on beams. */
class CantileverValidationTest {
  private static final double E = 45;
  private static final double DENSITY = 1.55;

  private static Cantilever beam(double length, double root, double tip, double thickness) {
    return new Cantilever(length, root, tip, thickness, E, DENSITY, 1);
  }

  /** 10 to 6 by 3 mm, 75 mm long, 12 g at the tip: computed by hand from the closed form. */
  @Test
  void aTaperedArmWithAMotorAtItsTip() {
    var arm = beam(75, 10, 6, 3);

    assertThat(arm.millimetresPerNewton()).isCloseTo(0.1556, within(0.00005));
    assertThat(arm.hertz(12)).isCloseTo(114.0, within(0.05));
    assertThat(arm.clampedHertz(12)).isCloseTo(91.2, within(0.05));
    assertThat(arm.clampedMillimetresPerNewton()).isCloseTo(0.1556 / 0.64, within(0.0001));
  }

  /** L³/(3 E I), 33/140 of the mass, 6 L/(b h²). */
  @ParameterizedTest(name = "{0} × {1}, L {2}, {3} g: {4} Hz")
  @CsvSource({
    "8, 3, 75, 12, 107",
    "7, 2, 75, 12, 55",
    "8, 2.5, 60, 10, 126",
    "6, 2, 45, 6.5, 150",
    "14, 5, 75, 36, 177"
  })
  void aStraightArmIsThatOfTheTextbook(
      double width, double thickness, double length, double tipGrams, double hertz) {
    var arm = beam(length, width, width, thickness);
    var inertia = width * thickness * thickness * thickness / 12;

    assertThat(arm.millimetresPerNewton())
        .isCloseTo(length * length * length / (3 * 1000 * E * inertia), within(1e-12));
    assertThat(arm.grams()).isCloseTo(DENSITY / 1000 * length * width * thickness, within(1e-12));
    assertThat(arm.swingingGrams()).isCloseTo(33.0 / 140 * arm.grams(), within(1e-9));
    assertThat(arm.centreMm()).isCloseTo(length / 2, within(1e-12));
    assertThat(arm.rootStressPerNewton())
        .isCloseTo(length * (thickness / 2) / inertia, within(1e-12));
    assertThat(arm.hertz(tipGrams)).isCloseTo(hertz, within(0.6));
  }

  /** J = ((1+k)² ln(1+k) − k − 1.5 k²)/k³, of which compliance is 12 L³ J/(E h³ b). */
  @ParameterizedTest
  @ValueSource(doubles = {-0.9, -0.5, -0.4, -0.11, -0.09, 0.09, 0.11, 1, 4})
  void aTaperGivesWayByTheClosedForm(double k) {
    var arm = beam(60, 8, 8 * (1 + k), 2.5);
    var grown = 1 + k;
    var j = (grown * grown * StrictMath.log(grown) - k - 1.5 * k * k) / (k * k * k);

    assertThat(arm.millimetresPerNewton())
        .isCloseTo(12 * 60 * 60 * 60 * j / (1000 * E * 2.5 * 2.5 * 2.5 * 8), within(1e-9));
  }

  /** By unit load, ∫ (1 − s)² L³/(E I(s)), and the kinetic energy of the shape, by another rule of integration. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.8, -0.4, -0.05, 0, 0.05, 0.5, 2})
  void shapeAndSwingingMassAreThoseOfAnIntegrationOfItsOwn(double k) {
    var arm = beam(60, 8, 8 * (1 + k), 2.5);
    var n = 20_000;
    var step = 1.0 / n;
    var slope = 0.0;
    var deflection = 0.0;
    var energy = 0.0;
    for (var i = 0; i < n; i++) {
      var middle = (i + 0.5) * step;
      var bend = (1 - middle) / (1 + k * middle);
      deflection += slope * step + bend * step * step / 2;
      slope += bend * step;
    }
    var end = deflection;
    slope = 0;
    deflection = 0;
    for (var i = 0; i < n; i++) {
      var middle = (i + 0.5) * step;
      var bend = (1 - middle) / (1 + k * middle);
      var at = deflection + slope * step / 2;
      energy += (1 + k * middle) * at * at / (end * end) * step;
      deflection += slope * step + bend * step * step / 2;
      slope += bend * step;
    }

    assertThat(arm.millimetresPerNewton())
        .isCloseTo(12 * 216_000 * end / (1000 * E * 15.625 * 8), within(1e-7));
    assertThat(arm.swingingGrams()).isCloseTo(DENSITY / 1000 * 60 * 8 * 2.5 * energy, within(1e-4));
  }

  /** The centre of a trapezoid, and a cut that takes of weight, stiffness and strength alike. */
  @Test
  void aCutTakesOfAllAlike() {
    var whole = beam(75, 10, 6, 3);
    var cut = new Cantilever(75, 10, 6, 3, E, DENSITY, 0.8);

    assertThat(whole.centreMm()).isCloseTo(75 * 22 / 48.0, within(1e-12));
    assertThat(cut.grams()).isCloseTo(0.8 * whole.grams(), within(1e-12));
    assertThat(cut.millimetresPerNewton())
        .isCloseTo(whole.millimetresPerNewton() / 0.8, within(1e-12));
    assertThat(cut.rootStressPerNewton())
        .isCloseTo(whole.rootStressPerNewton() / 0.8, within(1e-12));
  }

  @Test
  void aWeaveIsStiffAlongItsFibresAndSoftBetweenThem() {
    assertThat(Laminate.wovenGPa(0)).isCloseTo(52, within(1e-9));
    assertThat(Laminate.wovenGPa(90)).isCloseTo(52, within(1e-9));
    assertThat(Laminate.wovenGPa(45)).isCloseTo(15, within(1e-9));
    assertThat(Laminate.wovenGPa(20))
        .isBetween(15.0, 52.0)
        .isCloseTo(Laminate.wovenGPa(70), within(1e-9));
  }
}
