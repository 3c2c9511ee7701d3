package pappus.evidence.prior;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.part.Adapter;
import pappus.part.Antenna;
import pappus.part.Buzzer;
import pappus.part.Capacitor;
import pappus.part.Lead;
import pappus.part.Polarisation;
import pappus.part.Screw;
import pappus.part.Strap;
import pappus.part.Sundry;
import pappus.part.Wire;
import pappus.physics.battery.CopperWire;

/**
 * Small hardware: what its size and stuff weigh. Bounds without a source beside them are common practice, no
 * published source.
 */
final class SmallPriors {
  /** Of the cylinder of a thread's outer diameter, what the grooves leave (engineering estimate). */
  private static final double SHANK_SHARE = 0.87;

  /** A head 1.8 diameters wide and 0.8 high, a quarter of it socket (engineering estimate). */
  private static final double HEAD_WIDTH = 1.8;

  private static final double HEAD_HEIGHT = 0.8 * 0.75;

  private SmallPriors() {}

  static List<String> remarks(Screw screw) {
    var diameter = screw.thread().diameterMillimetres();
    var shank = disc(diameter) * screw.lengthMillimetres() * SHANK_SHARE;
    var head = disc(HEAD_WIDTH * diameter) * HEAD_HEIGHT * diameter;
    var law = density(screw.material()) * (shank + head) / 1000;
    // Heads are flat, round or high.
    return about(law, 0.6, 1.6).remark("mass", screw.mass().grams(), " g").stream()
        .toList();
  }

  private static double disc(double diameterMillimetres) {
    return Math.PI / 4 * diameterMillimetres * diameterMillimetres;
  }

  /** g/cm³, of the usual alloys and of polyamide 6.6. */
  private static double density(Screw.Material material) {
    return switch (material) {
      case STEEL -> 7.85;
      case TITANIUM -> 4.43;
      case ALUMINIUM -> 2.70;
      case NYLON -> 1.15;
    };
  }

  static List<String> remarks(Lead lead) {
    var plugs = Stream.of(Optional.ofNullable(lead.boardSide()), Optional.of(lead.batterySide()))
        .flatMap(Optional::stream)
        .toList();
    var metres = 2 * lead.millimetres() / 1000;
    var grams = metres * Wire.ofGauge(lead.gauge()).gramsPerMetre()
        + plugs.stream().mapToDouble(plug -> plug.halfGrams()).sum();
    var mass = about(grams, 0.6, 1.8).remark("mass", lead.mass().grams(), " g");
    var stated = lead.milliohms();
    if (stated == null) {
      return mass.stream().toList();
    }
    var law = 1000 * metres * CopperWire.ohmPerM(lead.gauge())
        + plugs.stream().mapToDouble(plug -> plug.milliohms()).sum();
    return list(mass, about(law, 0.4, 2.5).remark("resistance both ways", stated, " mΩ"));
  }

  static List<String> remarks(Capacitor capacitor) {
    // Low-resistance electrolytic cans: case and legs, and foil for charge times volts.
    var law = 0.35 + 1.35e-4 * capacitor.microfarads() * capacitor.ratedVolts();
    return about(law, 0.5, 2).remark("mass", capacitor.mass().grams(), " g").stream()
        .toList();
  }

  static List<String> remarks(Strap strap) {
    var square = strap.widthMillimetres() * strap.lengthMillimetres();
    return Bounds.hard(1.2, 3.2)
        .remark("mass over area", 1000 * strap.mass().grams() / square, " mg/mm²")
        .stream()
        .toList();
  }

  static List<String> remarks(Antenna antenna) {
    var bounds = switch (antenna.connector()) {
      // A piece of wire, or a cloverleaf on a stem.
      case U_FL, SMALL_U_FL, SOLDERED ->
        antenna.polarisation() == Polarisation.LINEAR
            ? Bounds.hard(0.15, 2.5)
            : Bounds.hard(0.6, 7);
      case MMCX -> Bounds.hard(0.8, 8);
      case SMA, RP_SMA -> Bounds.hard(3, 16);
    };
    // A wire in its null hears less, and what hears more is too large to fly (engineering
    // estimate).
    return Stream.of(
            bounds.remark("mass", antenna.mass().grams(), " g"),
            Bounds.hard(-3, 6).remark("gain", antenna.gainDbi(), " dBi"))
        .flatMap(Optional::stream)
        .toList();
  }

  static List<String> remarks(Buzzer buzzer) {
    var bounds = buzzer.ownCell() ? Bounds.hard(2, 10) : Bounds.hard(0.3, 4);
    return list(
        bounds.remark("mass", buzzer.mass().grams(), " g"),
        Bounds.hard(0, 0.5).remark("power drawn", buzzer.watts(), " W"));
  }

  static List<String> remarks(Adapter adapter) {
    var bounds = switch (adapter.purpose()) {
      case STACK_PLATE -> Bounds.hard(0.4, 5);
      case CAMERA_SHIMS -> Bounds.hard(0.2, 4);
      case STEPPED_GROMMETS -> Bounds.hard(0.1, 1.5);
      case REDUCING_RINGS -> Bounds.hard(0.04, 0.8);
    };
    return bounds.remark("mass of the set", adapter.mass().grams(), " g").stream()
        .toList();
  }

  static List<String> remarks(Sundry sundry) {
    var bounds = switch (sundry.purpose()) {
      case BATTERY_PAD -> Bounds.hard(0.3, 6);
      case STACK_HARDWARE -> Bounds.hard(0.3, 5);
      case PROPELLER_SCREWS -> Bounds.hard(0.6, 4);
      case PROPELLER_NUTS -> Bounds.hard(1.2, 8);
      case SOLDER_AND_TIES -> Bounds.hard(0.5, 8);
    };
    return bounds.remark("mass for one build", sundry.mass().grams(), " g").stream()
        .toList();
  }

  private static Bounds about(double law, double low, double high) {
    return Bounds.hard(low * law, high * law);
  }

  private static List<String> list(Optional<String> first, Optional<String> second) {
    return Stream.of(first, second).flatMap(Optional::stream).toList();
  }
}
