package pappus.evidence;

import pappus.part.Kind;
import pappus.physics.battery.Chemistry;
import pappus.physics.motor.PartLoadLaw;

/** A figure that records state and that is uncertain. */
enum Trait {
  WINDING(Kind.MOTOR, "winding resistance", "mΩ", 0.15),
  NO_LOAD(Kind.MOTOR, "no-load current", "A", 0.20),
  THRUST(Kind.PROPELLER, "thrust coefficient", "", 0.08),
  MERIT(Kind.PROPELLER, "figure of merit", "", 0.07),
  CELL_RESISTANCE(Kind.BATTERY, "cell resistance", "mΩ", 0.30),
  DELIVERED(Kind.BATTERY, "charge delivered", "mAh", Chemistry.DELIVERED_SHARE_DOUBT),
  LOSS(Kind.BOARD, "part-load loss", "", PartLoadLaw.DOUBT_LN_RIPPLE);

  private final Kind kind;
  private final String words;
  private final String unit;
  private final double classSpread;

  Trait(Kind kind, String words, String unit, double classSpread) {
    this.kind = kind;
    this.words = words;
    this.unit = unit;
    this.classSpread = classSpread;
  }

  /** Of which parts. */
  Kind kind() {
    return kind;
  }

  /** Its name. */
  String words() {
    return words;
  }

  /** As in the catalogue; empty for a pure number. */
  String unit() {
    return unit;
  }

  /**
   * One standard deviation of ln within a class: engineering estimates, low rather than high, since the scatter of
   * records holds their errors too.
   */
  double classSpread() {
    return classSpread;
  }
}
