package pappus.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.with;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.FrameDrawing.Arm;
import pappus.part.FrameDrawing.Pair;
import pappus.part.Layup;
import pappus.part.Parts;

class ArmBendingTest {
  /** 10 to 6 by 3 mm, 75 mm; a motor of 10 g and a propeller of 2.5 g; no round end but the arm itself. */
  private static Frame frame(Arm front, Arm rear) {
    return with(
        with(
            with(Parts.frame(), "armWidthMillimetres", new Frame.ArmWidth(10, 6)),
            "armThicknessMillimetres",
            3.0),
        "drawing",
        new FrameDrawing(List.of(), List.of(front, rear), null, null));
  }

  private static Arm arm(
      Pair pair, double length, double braced, Layup layup, @Nullable Double degrees) {
    return new Arm(pair, length, null, null, braced, layup, degrees, 5.0);
  }

  private static List<ArmBending> of(Frame frame) {
    return ArmBending.of(frame, Parts.motor(), Parts.propeller());
  }

  /** .1556 mm/N, 12.5 g and .526 g that swing: 111.7 Hz held fast, 89.4 as clamped; 6 · 75/(10 · 9) = 5. */
  @Test
  void anArmBendsWithItsMotorAndPropeller() {
    var arms = of(frame(
        arm(Pair.FRONT, 75, 0, Layup.QUASI_ISOTROPIC, null),
        arm(Pair.REAR, 75, 15, Layup.QUASI_ISOTROPIC, null)));

    assertThat(arms.get(0).hertz()).isCloseTo(89.4, within(0.1));
    assertThat(arms.get(0).millimetresPerNewton()).isCloseTo(0.1556 / 0.64, within(0.0002));
    assertThat(arms.get(0).rootStressPerNewton()).isCloseTo(5, within(1e-9));
    // Braced, it is 60 mm long and 9.2 mm wide where it is held.
    assertThat(arms.get(1).rootStressPerNewton()).isCloseTo(360 / (9.2 * 9), within(1e-9));
    assertThat(arms.get(1).hertz()).isGreaterThan(1.3 * arms.get(0).hertz());
  }

  /** √(15/45) and √(52/45) of it. */
  @Test
  void aWeaveAcrossTheArmIsSoft() {
    var plain = of(frame(
            arm(Pair.FRONT, 75, 0, Layup.QUASI_ISOTROPIC, null),
            arm(Pair.REAR, 75, 0, Layup.QUASI_ISOTROPIC, null)))
        .get(0);
    var woven = of(
        frame(arm(Pair.FRONT, 75, 0, Layup.WOVEN, 45.0), arm(Pair.REAR, 75, 0, Layup.WOVEN, null)));

    assertThat(woven.get(0).hertz()).isCloseTo(plain.hertz() / Math.sqrt(3), within(0.01));
    assertThat(woven.get(1).hertz()).isCloseTo(plain.hertz() * Math.sqrt(52.0 / 45), within(0.01));
    assertThat(woven.get(0).isSoft()).isTrue();
    assertThat(plain.isSoft()).isFalse();
  }

  /** 89.4 Hz: 5364 rpm, within 15 % of 4665 to 6311. */
  @Test
  void itMeetsTurnsWithinItsDoubt() {
    var arm = of(frame(
            arm(Pair.FRONT, 75, 0, Layup.QUASI_ISOTROPIC, null),
            arm(Pair.REAR, 75, 0, Layup.QUASI_ISOTROPIC, null)))
        .get(0);

    assertThat(List.of(4600.0, 4700.0, 6250.0, 6350.0))
        .extracting(arm::meets)
        .containsExactly(false, true, true, false);
  }

  @Test
  void whatIsNotDrawnIsNotTold() {
    assertThat(of(Parts.frame())).isEmpty();
    assertThat(of(with(
            frame(
                arm(Pair.FRONT, 75, 0, Layup.WOVEN, null),
                arm(Pair.REAR, 75, 0, Layup.WOVEN, null)),
            "armWidthMillimetres",
            null)))
        .isEmpty();
  }
}
