package pappus.compatibility;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.fitting.HardwarePlanner;
import pappus.part.Adapter;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Camera;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.MountingHoles;
import pappus.part.Part;
import pappus.part.Screw;
import pappus.part.StackPattern;
import pappus.part.Strap;
import pappus.part.Transmitter;
import pappus.quantity.Require;

/**
 * What small hardware goes with a part, two at a time but for screws through arms; a build takes the lightest of what
 * serves by itself.
 */
public final class HardwareMatch {
  private HardwareMatch() {}

  /** What is to be said of small hardware beside a part; absent where the two have nothing to do with each other. */
  public static Optional<Verdict> of(Part hardware, Part other) {
    if (hardware instanceof Strap strap) {
      return Optional.ofNullable(strap(strap, other));
    }
    if (hardware instanceof Screw screw) {
      return Optional.ofNullable(screw(screw, other));
    }
    return hardware instanceof Adapter adapter
        ? Optional.ofNullable(adapter(adapter, other))
        : Optional.empty();
  }

  private static @Nullable Verdict strap(Strap strap, Part other) {
    if (other instanceof Frame frame) {
      var slots = frame.bay().strapWidthMillimetres();
      return strap.widthMillimetres() <= slots
          ? Verdict.FITS
          : Verdict.clashes(
              "Strap %s is %s mm wide, but the slots of frame %s take %s mm.",
              strap.id(), strap.widthMillimetres(), frame.id(), slots);
    }
    if (other instanceof Battery battery) {
      var girth = HardwarePlanner.girth(battery);
      return strap.lengthMillimetres() >= girth
          ? Verdict.FITS
          : Verdict.clashes(
              "Strap %s is %s mm long, but pack %s needs %s mm.",
              strap.id(), strap.lengthMillimetres(), battery.id(), girth);
    }
    return null;
  }

  private static @Nullable Verdict screw(Screw screw, Part other) {
    if (!(other instanceof Motor motor)) {
      return null;
    }
    if (screw.thread() != motor.screw()) {
      return Verdict.clashes(
          "Screw %s is %s, but motor %s takes %s.",
          screw.id(), screw.thread().label(), motor.id(), motor.screw().label());
    }
    if (screw.material() == Screw.Material.ALUMINIUM || screw.material() == Screw.Material.NYLON) {
      return Verdict.clashes(
          "Screw %s is too soft to hold motor %s: steel or titanium only.", screw.id(), motor.id());
    }
    var thinnest = Math.max(0, screw.lengthMillimetres() - HardwarePlanner.deepest(motor));
    var thickest = screw.lengthMillimetres() - motor.screw().leastMillimetres();
    return thickest >= thinnest
        ? Verdict.fitsBut(
            "Screw %s holds motor %s on arms of %s to %s mm.",
            screw.id(), motor.id(), thinnest, thickest)
        : Verdict.clashes(
            "Screw %s of %s mm holds motor %s on no arm: it must go in %s to %s mm.",
            screw.id(),
            screw.lengthMillimetres(),
            motor.id(),
            motor.screw().leastMillimetres(),
            HardwarePlanner.deepest(motor));
  }

  /** Whether a screw holds a motor on the arms of a frame. */
  public static Verdict onArms(Screw screw, Motor motor, Frame frame) {
    var alone = Objects.requireNonNull(screw(screw, motor));
    if (alone instanceof Verdict.Clashes) {
      return alone;
    }
    if (HardwarePlanner.serves(screw, frame, motor)) {
      return Verdict.FITS;
    }
    return Verdict.clashes(
        "Screw %s goes %s mm into motor %s on the %s mm arms of frame %s, but must go in %s to %s mm.",
        screw.id(),
        Math.max(0, screw.lengthMillimetres() - frame.armThicknessMillimetres()),
        motor.id(),
        frame.armThicknessMillimetres(),
        frame.id(),
        motor.screw().leastMillimetres(),
        HardwarePlanner.deepest(motor));
  }

  private static @Nullable Verdict adapter(Adapter adapter, Part other) {
    return switch (adapter.purpose()) {
      case STACK_PLATE -> plate(adapter, other);
      case CAMERA_SHIMS -> shims(adapter, other);
      case STEPPED_GROMMETS, REDUCING_RINGS -> null;
    };
  }

  private static @Nullable Verdict plate(Adapter adapter, Part other) {
    if (other instanceof Frame frame) {
      return pattern(
          adapter,
          Require.present("stackPattern", adapter.stackPattern()),
          "frame " + frame.id(),
          frame.positions().stream()
              .flatMap(position -> position.patterns().stream())
              .map(MountingHoles::pattern)
              .distinct()
              .toList());
    }
    var mount = other instanceof Board board
        ? board.mount()
        : other instanceof Transmitter transmitter ? transmitter.mount() : null;
    return mount == null
        ? null
        : pattern(
            adapter,
            Require.present("partPattern", adapter.partPattern()),
            other.id(),
            List.of(mount.pattern()));
  }

  private static Verdict pattern(
      Adapter adapter, StackPattern side, String what, List<StackPattern> offered) {
    return offered.stream().anyMatch(pattern -> pattern.takes(side))
        ? Verdict.FITS
        : Verdict.clashes(
            "Adapter %s has %s holes on that side, but %s has %s.",
            adapter.id(),
            side.label(),
            what,
            String.join(", ", offered.stream().map(StackPattern::label).toList()));
  }

  private static @Nullable Verdict shims(Adapter adapter, Part other) {
    if (other instanceof Frame frame) {
      return width(
          adapter,
          Require.present("cageMillimetres", adapter.cageMillimetres()),
          "frame " + frame.id() + " takes",
          frame.cameraWidthsMillimetres());
    }
    return other instanceof Camera camera
        ? width(
            adapter,
            Require.present("cameraMillimetres", adapter.cameraMillimetres()),
            "camera " + camera.id() + " is",
            List.of(camera.widthMillimetres()))
        : null;
  }

  private static Verdict width(Adapter adapter, double side, String what, List<Double> offered) {
    return offered.stream()
            .anyMatch(width -> Math.abs(width - side) <= HardwarePlanner.CAMERA_TOLERANCE_MM)
        ? Verdict.FITS
        : Verdict.clashes(
            "Shims %s are for %s mm on that side, but %s %s mm.",
            adapter.id(),
            side,
            what,
            String.join(", ", offered.stream().map(Require::plain).toList()));
  }
}
