package pappus.structure;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.Layup;
import pappus.part.Motor;
import pappus.part.Propeller;
import pappus.physics.structure.Cantilever;
import pappus.physics.structure.Laminate;

/**
 * How an arm bends with a motor and a propeller at its tip: an engineering estimate, ± 15 %.
 *
 * @param pair which arms
 * @param hertz first bending frequency, up and down, as clamped, Hz
 * @param millimetresPerNewton how far the motor goes for each newton it pulls
 * @param rootStressPerNewton bending stress where the arm leaves the plate or its brace, N/mm², for each newton at its
 *     motor
 */
public record ArmBending(
    FrameDrawing.Pair pair, double hertz, double millimetresPerNewton, double rootStressPerNewton) {
  /** Softer arms are felt by what steadies the flight: about twice its 30 Hz (engineering estimate). */
  public static final double SOFT_HERTZ = 60;

  /** Where a width is not known: the mean of what is usual at both ends. */
  private static final double USUAL_WIDTH_PER_INCH = 1.47;

  /** Of the arms that are drawn, where their width is known too. */
  public static List<ArmBending> of(Frame frame, Motor motor, Propeller propeller) {
    var bending = new ArrayList<ArmBending>();
    var drawing = frame.drawing();
    if (drawing != null && frame.armWidthMillimetres() != null) {
      for (var arm : drawing.arms()) {
        var beam = free(frame, arm);
        var tip = motor.mass().grams() + propeller.mass().grams() + DrawnMass.endGrams(frame, arm);
        bending.add(new ArmBending(
            arm.pair(),
            beam.clampedHertz(tip),
            beam.clampedMillimetresPerNewton(),
            beam.rootStressPerNewton()));
      }
    }
    return bending;
  }

  /** From the plate's edge to the motor, as it weighs. */
  static Cantilever whole(Frame frame, FrameDrawing.Arm arm) {
    return beam(frame, arm, 0);
  }

  /** From the plate's edge or its brace to the motor, as it bends. */
  static Cantilever free(Frame frame, FrameDrawing.Arm arm) {
    return beam(frame, arm, arm.braced());
  }

  private static Cantilever beam(Frame frame, FrameDrawing.Arm arm, double held) {
    var width = frame.armWidthMillimetres();
    var root = width == null ? frame.largestPropellerInches() * USUAL_WIDTH_PER_INCH : width.root();
    var tip = width == null ? root : width.tip();
    return new Cantilever(
        arm.lengthMillimetres() - held,
        root + (tip - root) * held / arm.lengthMillimetres(),
        tip,
        arm.thicknessMillimetres() == null
            ? frame.armThicknessMillimetres()
            : arm.thicknessMillimetres(),
        arm.layup() == Layup.WOVEN
            ? Laminate.wovenGPa(arm.layupDegrees() == null ? 0 : arm.layupDegrees())
            : Laminate.QUASI_ISOTROPIC_GPA,
        Laminate.GRAMS_PER_CM3,
        arm.shareLeft());
  }

  /** Whether the first bending frequency meets so many revolutions a minute, within its doubt. */
  public boolean meets(double rpm) {
    return Math.abs(hertz - rpm / 60) <= Cantilever.DOUBT * rpm / 60;
  }

  /** Whether it is softer than steady flight likes. */
  public boolean isSoft() {
    return hertz < SOFT_HERTZ;
  }
}
