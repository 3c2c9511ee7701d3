package pappus.fitting;

import java.util.Optional;
import java.util.OptionalDouble;
import pappus.part.Frame;
import pappus.part.Role;

/**
 * Moves the pack along the bay until the centre of mass is between the motors, as far as the bay
 * allows.
 */
public final class BalancePlanner {
  /** The pack may reach so far beyond either end of the bay (common practice, no published source). */
  public static final double OVERHANG_MM = 15;

  private BalancePlanner() {}

  static Optional<Placing> place(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.battery().isEmpty()) {
      return Optional.empty();
    }
    var frame = build.frame().get();
    var battery = build.battery().get();
    var bay = frame.bay();
    var half = battery.lengthMillimetres() / 2;
    var rearmost = rearmost(frame, battery.lengthMillimetres());
    var foremost = foremost(frame, battery.lengthMillimetres());
    if (rearmost > foremost) {
      return Optional.empty();
    }
    var moments = 0.0;
    var total = 0.0;
    for (var entry : fitting.gramsByRole().entrySet()) {
      if (entry.getKey() != Role.BATTERY) {
        total += entry.getValue();
        moments += entry.getValue() * xOf(entry.getKey(), frame, fitting);
      }
    }
    var lump = fitting.scenario().lump();
    if (lump != null) {
      // Wired parts sit about the middle.
      total += lump.grams();
    }
    var payload = fitting.scenario().payload();
    if (payload != null) {
      total += payload.massGrams();
      moments += payload.massGrams() * payload.xMillimetres();
    }
    var pack = battery.mass().grams();
    var wanted = -moments / pack;
    var x = Math.max(rearmost, Math.min(foremost, wanted));
    var overhang = Math.max(
        0, Math.max(bay.rearXMillimetres() - (x - half), x + half - bay.frontXMillimetres()));
    return Optional.of(new Placing(
        x,
        (moments + pack * x) / (total + pack),
        overhang,
        build
            .propeller()
            .map(propeller -> Discs.clearance(
                frame,
                propeller.diameterMillimetres(),
                x,
                battery.lengthMillimetres(),
                battery.widthMillimetres()))));
  }

  /** Where the middle of a pack can be that is nearest to that of the motors, mm forward; empty if it is too long. */
  public static OptionalDouble nearestToMiddle(Frame frame, double lengthMillimetres) {
    var rearmost = rearmost(frame, lengthMillimetres);
    var foremost = foremost(frame, lengthMillimetres);
    return rearmost > foremost
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.max(rearmost, Math.min(foremost, 0)));
  }

  private static double rearmost(Frame frame, double lengthMillimetres) {
    return frame.bay().rearXMillimetres() + lengthMillimetres / 2 - OVERHANG_MM;
  }

  private static double foremost(Frame frame, double lengthMillimetres) {
    return frame.bay().frontXMillimetres() - lengthMillimetres / 2 + OVERHANG_MM;
  }

  /** Where a role's part sits; motors and propellers balance by themselves. */
  private static double xOf(Role role, Frame frame, Fitting fitting) {
    return switch (role) {
      case FRAME -> frame.centreOfMassXMillimetres();
      case MOTOR, PROPELLER, BATTERY -> 0;
      case CAMERA, PAYLOAD_CAMERA -> frame.cameraXMillimetres();
      case BOARD, TRANSMITTER ->
        fitting.stackPlan().flatMap(plan -> plan.xMillimetres(role)).orElse(rearX(frame));
      case RECEIVER, VIDEO_ANTENNA, RADIO_ANTENNA, GPS, BUZZER, CAPACITOR, LEAD -> rearX(frame);
    };
  }

  private static double rearX(Frame frame) {
    return frame.positions().stream()
        .mapToDouble(Frame.Position::xMillimetres)
        .min()
        .orElseThrow();
  }
}
