package pappus.search.exact;

import java.util.List;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.physics.flight.LandingRule;

/**
 * How long a pack lasts at most, in a fraction of the time that its discharge takes to integrate: in each part of the
 * charge the current is that of its middle.
 *
 * <p>Loads that draw no more power at any volts have no more current, see {@link Load#balanceVolts}, and although they
 * warm the cells less, not so much less that these would sag more, see {@link Pack#warmedBy}.
 *
 * @param pack as it takes off
 * @param coulomb in each of the equal parts of the charge that may be used, A·s
 * @param openVolts rested volts in the middle of each part, V
 * @param ohms resistance there at take-off's warmth, Ω
 * @param highOpenVolts rested volts where each part begins, V
 * @param highOhms resistance there at take-off's warmth, Ω
 * @param leastVolts at which the flight ends, V
 */
record Drain(
    Pack pack,
    double coulomb,
    Numbers openVolts,
    Numbers ohms,
    Numbers highOpenVolts,
    Numbers highOhms,
    double leastVolts) {
  private static final int PARTS = 32;

  /** What curves within a part hide from its middle. */
  private static final double WITHIN = 5e-4;

  static Drain of(Pack pack, LandingRule landing) {
    var start = pack.startCharge();
    var part = Math.max(0, start - landing.reserve()) / PARTS;
    return new Drain(
        pack,
        pack.capacityCoulomb() * part,
        Numbers.of(PARTS, place -> pack.openVolts(start - (place + 0.5) * part)),
        Numbers.of(PARTS, place -> pack.steadyOhm(start - (place + 0.5) * part)),
        Numbers.of(PARTS, place -> pack.openVolts(start - place * part)),
        Numbers.of(PARTS, place -> pack.steadyOhm(start - place * part)),
        landing.voltsPerCell() * pack.series());
  }

  /**
   * No flight lasts longer, s.
   *
   * @param loads of which at any volts the one counts that draws least
   * @param moreOhm resistance of board and lead, Ω
   */
  double seconds(List<Load> loads, double moreOhm) {
    var wiringOhm = pack.wiringOhm() + moreOhm;
    var half = pack.openVolts(Pack.HALF_CHARGE);
    var warmth = pack.warmth(
        loads.stream().mapToDouble(load -> load.currentA(half)).min().orElse(0));
    var seconds = 0.0;
    for (var part = 0; part < PARTS; part++) {
      var open = openVolts.at(part);
      var ohm = warmth * (ohms.at(part) - pack.wiringOhm()) + wiringOhm;
      var volts = volts(loads, open, ohm);
      if (volts < leastVolts) {
        var highOhm = warmth * (highOhms.at(part) - pack.wiringOhm()) + wiringOhm;
        var high = volts(loads, highOpenVolts.at(part), highOhm);
        if (high < leastVolts || volts <= 0) {
          break;
        }
      }
      seconds += coulomb * ohm / (open - volts);
    }
    return seconds * (1 + WITHIN);
  }

  /** The most that the terminals have under any of some loads, V; −1 if they cannot carry any. */
  private static double volts(List<Load> loads, double open, double ohm) {
    var volts = -1.0;
    for (var load : loads) {
      if (volts < 0 || load.powerW(volts) < volts * (open - volts) / ohm) {
        volts = Math.max(volts, load.balanceVolts(open, ohm, volts < 0 ? open : volts));
      }
    }
    return volts;
  }
}
