package pappus.evidence;

import pappus.physics.battery.Chemistry;
import pappus.physics.motor.PartLoadLaw;

/** A figure that records state and that is uncertain. */
enum Trait {
  WINDING("winding resistance", "mΩ", 0.15),
  NO_LOAD("no-load current", "A", 0.20),
  THRUST("thrust coefficient", "", 0.08),
  MERIT("figure of merit", "", 0.07),
  CELL_RESISTANCE("cell resistance", "mΩ", 0.30),
  DELIVERED("charge delivered", "mAh", Chemistry.DELIVERED_SHARE_DOUBT),
  LOSS("part-load loss", "", PartLoadLaw.DOUBT_LN_RIPPLE);

  private final String words;
  private final String unit;
  private final double classSpread;

  Trait(String words, String unit, double classSpread) {
    this.words = words;
    this.unit = unit;
    this.classSpread = classSpread;
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
