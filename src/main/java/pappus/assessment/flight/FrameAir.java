package pappus.assessment.flight;

import java.util.Objects;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.physics.airframe.ArmShadow;
import pappus.physics.airframe.Silhouette;
import pappus.scenario.Flight;

/**
 * What frames do to the air about an aircraft, of one or of several of which one will be taken: the thrust that arms
 * block, and drag.
 *
 * @param leastDrag least drag area that a record states, m²; infinite if none does
 * @param mostDrag largest that one states, m²; 0 if none does
 * @param leastSeen what those that state none show at least; absent if none of them has arms of known width
 * @param mostSeen what they show at most
 * @param isDragAssumed whether of some neither is known, so that drag goes with the mass
 * @param leastArm narrowest mean width of arms, mm; infinite if none is known
 * @param mostArm widest, mm; 0 if none is known
 * @param isArmAssumed whether the width of some is not known
 * @param thrustLost share of thrust lost whatever the arms, if the scenario says so
 */
public record FrameAir(
    double leastDrag,
    double mostDrag,
    @Nullable Silhouette leastSeen,
    @Nullable Silhouette mostSeen,
    boolean isDragAssumed,
    double leastArm,
    double mostArm,
    boolean isArmAssumed,
    @Nullable Double thrustLost) {
  /** One standard deviation of ln of a drag area that no record states (engineering estimate). */
  public static final double UNSTATED_SPREAD = 0.35;

  /** As all that a record leaves out, a drag area counts half a spread the harmful way. */
  private static final double UNSTATED = StrictMath.exp(0.5 * UNSTATED_SPREAD);

  /** Of 250 g, m²; goes with the mass to the power of 2/3: an engineering estimate. */
  private static final double USUAL_DRAG_AREA = 0.0065;

  /** No less of 250 g, m², however little is seen of it; goes with the mass likewise: an engineering estimate. */
  private static final double LEAST_DRAG_AREA = 0.006;

  private static final double USUAL_KG = 0.25;

  /** Where a frame names no camera, mm: the least that the trade makes for such frames (from memory). */
  private static final double USUAL_CAMERA = 14;

  /** Of one frame. */
  public static FrameAir of(Frame frame, Flight flight) {
    var drag = frame.dragAreaSquareMetres();
    var arm = frame.armWidthMillimetres();
    var seen = drag == null && arm != null ? seen(frame, arm.mean()) : null;
    return new FrameAir(
        drag == null ? Double.POSITIVE_INFINITY : drag,
        drag == null ? 0 : drag,
        seen,
        seen,
        drag == null && arm == null,
        arm == null ? Double.POSITIVE_INFINITY : arm.mean(),
        arm == null ? 0 : arm.mean(),
        arm == null,
        flight.thrustLost());
  }

  /** The body is as long as the plate under the pack, as wide as the bay, and as high as its least inner height. */
  private static Silhouette seen(Frame frame, double armWidth) {
    var bay = frame.bay();
    return Silhouette.of(
        bay.frontXMillimetres() - bay.rearXMillimetres(),
        bay.widthMillimetres(),
        height(frame),
        frame.frontSpacingMillimetres(),
        frame.sideSpacingMillimetres(),
        armWidth,
        frame.armThicknessMillimetres());
  }

  /** Where no plate is above, what stands there is as high as its camera, and cameras are as high as they are wide. */
  private static double height(Frame frame) {
    return frame.heights().stream()
        .mapToDouble(Frame.PlateHeight::millimetres)
        .min()
        .orElseGet(() -> frame.cameraWidthsMillimetres().stream()
            .mapToDouble(width -> width)
            .min()
            .orElse(USUAL_CAMERA));
  }

  /** Of any of some frames, at least one, in one scenario. */
  public static FrameAir any(Stream<FrameAir> some) {
    return some.reduce(FrameAir::or).orElseThrow();
  }

  private FrameAir or(FrameAir other) {
    return new FrameAir(
        Math.min(leastDrag, other.leastDrag),
        Math.max(mostDrag, other.mostDrag),
        both(Silhouette::least, leastSeen, other.leastSeen),
        both(Silhouette::most, mostSeen, other.mostSeen),
        isDragAssumed || other.isDragAssumed,
        Math.min(leastArm, other.leastArm),
        Math.max(mostArm, other.mostArm),
        isArmAssumed || other.isArmAssumed,
        thrustLost);
  }

  private static @Nullable Silhouette both(
      BinaryOperator<Silhouette> of, @Nullable Silhouette one, @Nullable Silhouette other) {
    if (one == null) {
      return other;
    }
    return other == null ? one : of.apply(one, other);
  }

  /** Least drag area at a mass with any pack, m². */
  public double leastDragArea(double grams) {
    return leastDragArea(grams, null);
  }

  /**
   * Least drag area at a mass, m².
   *
   * @param pack absent: any
   */
  public double leastDragArea(double grams, @Nullable Battery pack) {
    var least = isDragAssumed ? Math.min(leastDrag, byMass(USUAL_DRAG_AREA, grams)) : leastDrag;
    return leastSeen == null ? least : Math.min(least, seen(leastSeen, grams, pack));
  }

  /** Largest drag area at a mass with a pack, m². */
  public double mostDragArea(double grams, Battery pack) {
    var most = isDragAssumed ? Math.max(mostDrag, byMass(USUAL_DRAG_AREA, grams)) : mostDrag;
    return mostSeen == null ? most : Math.max(most, seen(mostSeen, grams, pack));
  }

  private static double seen(Silhouette silhouette, double grams, @Nullable Battery pack) {
    var area = pack == null
        ? silhouette.dragAreaM2(0, 0, 0)
        : silhouette.dragAreaM2(
            pack.lengthMillimetres(), pack.widthMillimetres(), pack.heightMillimetres());
    return Math.max(byMass(LEAST_DRAG_AREA, grams), UNSTATED * area);
  }

  private static double byMass(double areaOfUsual, double grams) {
    return UNSTATED * areaOfUsual * StrictMath.pow(grams / 1000 / USUAL_KG, 2.0 / 3);
  }

  /** Whether the drag area at a mass with a pack is the same of all. */
  public boolean isDragKnown() {
    if (isDragAssumed) {
      return mostDrag == 0 && mostSeen == null;
    }
    return mostSeen == null ? leastDrag == mostDrag : mostDrag == 0 && mostSeen.equals(leastSeen);
  }

  /** Whether the least and the largest drag area are those of another at any mass and with any pack. */
  public boolean hasDragOf(FrameAir other) {
    return leastDrag == other.leastDrag
        && mostDrag == other.mostDrag
        && Objects.equals(leastSeen, other.leastSeen)
        && Objects.equals(mostSeen, other.mostSeen)
        && isDragAssumed == other.isDragAssumed;
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
