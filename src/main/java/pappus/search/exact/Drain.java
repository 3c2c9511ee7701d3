package pappus.search.exact;

import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.physics.flight.LandingRule;

/**
 * How long a pack lasts at most, in a fraction of the time that its discharge takes to integrate: current from above
 * the true volts is below the true current.
 *
 * @param coulomb in each of the equal parts of the charge that may be used, A·s
 * @param openVolts rested volts in the middle of each part, V
 * @param ohms resistance there, Ω
 * @param highOpenVolts rested volts where each part begins, V
 * @param leastVolts at which the flight ends, V
 */
record Drain(
    double coulomb, Numbers openVolts, Numbers ohms, Numbers highOpenVolts, double leastVolts) {
  private static final int PARTS = 32;

  /** What curves within a part hide from its middle. */
  private static final double WITHIN = 5e-4;

  static Drain of(Pack pack, LandingRule landing) {
    var start = pack.startCharge();
    var part = Math.max(0, start - landing.reserve()) / PARTS;
    return new Drain(
        pack.capacityCoulomb() * part,
        Numbers.of(PARTS, place -> pack.openVolts(start - (place + 0.5) * part)),
        Numbers.of(PARTS, place -> pack.steadyOhm(start - (place + 0.5) * part)),
        Numbers.of(PARTS, place -> pack.openVolts(start - place * part)),
        landing.voltsPerCell() * pack.series());
  }

  /**
   * No flight lasts longer, s.
   *
   * @param moreOhm resistance of board and lead, Ω
   */
  double seconds(Load load, double moreOhm) {
    var seconds = 0.0;
    for (var part = 0; part < PARTS; part++) {
      var open = openVolts.at(part);
      var ohm = ohms.at(part) + moreOhm;
      var amps = load.currentA(open);
      var sag = ohm * amps;
      if (highOpenVolts.at(part) - sag < leastVolts || open - sag <= 0) {
        break;
      }
      amps = load.currentA(open - sag);
      sag = ohm * amps;
      if (open - sag <= 0) {
        break;
      }
      seconds += coulomb / load.currentA(open - sag);
    }
    return seconds * (1 + WITHIN);
  }
}
