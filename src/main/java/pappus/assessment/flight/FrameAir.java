package pappus.assessment.flight;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Frame;
import pappus.physics.airframe.ArmShadow;
import pappus.scenario.Flight;

/**
 * What frames do to the air about an aircraft, of one or of several of which one will be taken: the thrust that arms
 * block, and drag.
 *
 * @param leastDrag least drag area that a record states, m²; infinite if none does
 * @param mostDrag largest that one states, m²; 0 if none does
 * @param isDragAssumed whether some state none, so that it goes with the mass
 * @param leastArm narrowest mean width of arms, mm; infinite if none is known
 * @param mostArm widest, mm; 0 if none is known
 * @param isArmAssumed whether the width of some is not known
 * @param thrustLost share of thrust lost whatever the arms, if the scenario says so
 */
public record FrameAir(
    double leastDrag,
    double mostDrag,
    boolean isDragAssumed,
    double leastArm,
    double mostArm,
    boolean isArmAssumed,
    @Nullable Double thrustLost) {
  /** Of 250 g, m²; goes with the mass to the power of 2/3: an engineering estimate, give or take 35 %. */
  private static final double USUAL_DRAG_AREA = 0.0065;

  private static final double USUAL_KG = 0.25;

  /** Of one frame. */
  public static FrameAir of(Frame frame, Flight flight) {
    var drag = frame.dragAreaSquareMetres();
    var arm = frame.armWidthMillimetres();
    return new FrameAir(
        drag == null ? Double.POSITIVE_INFINITY : drag,
        drag == null ? 0 : drag,
        drag == null,
        arm == null ? Double.POSITIVE_INFINITY : arm.mean(),
        arm == null ? 0 : arm.mean(),
        arm == null,
        flight.thrustLost());
  }

  /** Of any of some frames, at least one, in one scenario. */
  public static FrameAir any(Stream<FrameAir> some) {
    return some.reduce(FrameAir::or).orElseThrow();
  }

  private FrameAir or(FrameAir other) {
    return new FrameAir(
        Math.min(leastDrag, other.leastDrag),
        Math.max(mostDrag, other.mostDrag),
        isDragAssumed || other.isDragAssumed,
        Math.min(leastArm, other.leastArm),
        Math.max(mostArm, other.mostArm),
        isArmAssumed || other.isArmAssumed,
        thrustLost);
  }

  /** Drag area of an aircraft whose frame states none, m². */
  public static double usualDragArea(double grams) {
    return USUAL_DRAG_AREA * StrictMath.pow(grams / 1000 / USUAL_KG, 2.0 / 3);
  }

  /** Least drag area at a mass, m². */
  public double leastDragArea(double grams) {
    return isDragAssumed ? Math.min(leastDrag, usualDragArea(grams)) : leastDrag;
  }

  /** Largest drag area at a mass, m². */
  public double mostDragArea(double grams) {
    return isDragAssumed ? Math.max(mostDrag, usualDragArea(grams)) : mostDrag;
  }

  /** Whether the drag area at a mass is the same of all. */
  public boolean isDragKnown() {
    return isDragAssumed ? mostDrag == 0 : leastDrag == mostDrag;
  }

  /** Least share of thrust lost under propellers of a diameter. */
  public double leastLost(double diameterMm) {
    if (thrustLost != null) {
      return thrustLost;
    }
    var known = leastArm < Double.POSITIVE_INFINITY
        ? new ArmShadow(leastArm).lost(diameterMm)
        : Double.POSITIVE_INFINITY;
    return isArmAssumed ? Math.min(known, ArmShadow.UNKNOWN) : known;
  }

  /** Largest share of thrust lost under propellers of a diameter. */
  public double mostLost(double diameterMm) {
    if (thrustLost != null) {
      return thrustLost;
    }
    var known = mostArm > 0 ? new ArmShadow(mostArm).lost(diameterMm) : 0;
    return isArmAssumed ? Math.max(known, ArmShadow.UNKNOWN) : known;
  }
}
