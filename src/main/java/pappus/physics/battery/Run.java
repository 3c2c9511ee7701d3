package pappus.physics.battery;

import pappus.physics.battery.Discharge.Ending;

/** One integration of a {@link Discharge}, piece by piece between knots, from full to empty. */
final class Run {
  private static final double GAUSS = 1 / Math.sqrt(3); // nodes of two-point Gauss quadrature

  private final Pack pack;
  private final Load load;
  private final Until until;

  /**
   * Whether the volts allowed are met before the battery collapses. Then, at those volts and the current
   * they fix, the end is where a straight line crosses; otherwise it has to be searched for.
   */
  private final boolean straight;

  private final double leastVoltsA; // current at the volts allowed
  private double volts; // the latest balance, the next one's guess
  private double seconds;
  private double energyJ;

  Run(Pack pack, Load load, Until until) {
    this.pack = pack;
    this.load = load;
    this.until = until;
    var least = until.leastVolts();
    this.leastVoltsA = least > 0 ? load.currentA(least) : 0;
    this.straight = least > 0 && least >= mostOhm(pack) * leastVoltsA;
  }

  /** Told where pieces end. */
  interface Mark {
    /**
     * One piece has ended.
     *
     * @param charge state of charge there
     * @param seconds since the start
     */
    void at(double charge, double seconds);
  }

  Discharge from(double fromCharge) {
    return from(fromCharge, (charge, since) -> {});
  }

  Discharge from(double fromCharge, Mark mark) {
    var top = pack.knots() - 1;
    while (top > 1 && pack.knotCharge(top - 1) >= fromCharge) {
      top--;
    }
    volts = open(top, fromCharge);
    if (!isCarried(top, fromCharge)) {
      return nothing(fromCharge, refusal(top, fromCharge));
    }
    volts = balance(top, fromCharge);
    var startVolts = volts;
    var charge = fromCharge;
    var ending = Ending.RESERVE;
    for (var knot = top; knot > 0 && charge > until.reserve() && ending == Ending.RESERVE; knot--) {
      var low = Math.max(pack.knotCharge(knot - 1), until.reserve());
      if (!isCarried(knot, low)) {
        low = lastCarried(knot, low, charge);
        ending = refusal(knot, low);
      }
      charge = piece(knot, low, charge);
      mark.at(charge, seconds);
      if (seconds >= until.longestSeconds()) {
        ending = Ending.TIME;
        top = knot;
        break;
      }
      top = knot;
    }
    return result(top, fromCharge, charge, startVolts, ending);
  }

  private Discharge result(
      int knot, double fromCharge, double charge, double startVolts, Ending ending) {
    // On the very edge of collapse rounding can hide the balance: the volts just before stand in.
    var last = balance(knot, charge);
    var endVolts = last > 0 ? last : volts;
    return new Discharge(
        seconds,
        ending,
        charge,
        energyJ,
        pack.capacityCoulomb() * (fromCharge - charge),
        startVolts,
        load.currentA(startVolts),
        endVolts,
        load.currentA(endVolts));
  }

  private static Discharge nothing(double charge, Ending ending) {
    return new Discharge(0, ending, charge, 0, 0, 0, 0, 0, 0);
  }

  /** Adds the time and energy of one piece, and returns where it ended: sooner if the time is up. */
  private double piece(int knot, double low, double high) {
    var startSeconds = seconds;
    var startEnergyJ = energyJ;
    quadrature(knot, low, high);
    if (seconds <= until.longestSeconds()) {
      return low;
    }
    var charge =
        high - (high - low) * (until.longestSeconds() - startSeconds) / (seconds - startSeconds);
    for (var step = 0; step < 4; step++) { // Newton: the integrand is the slope
      seconds = startSeconds;
      energyJ = startEnergyJ;
      quadrature(knot, charge, high);
      volts = balance(knot, charge);
      charge += (seconds - until.longestSeconds()) * load.currentA(volts) / pack.capacityCoulomb();
      charge = Math.min(Math.max(charge, low), high);
    }
    seconds = startSeconds;
    energyJ = startEnergyJ;
    quadrature(knot, charge, high);
    seconds = until.longestSeconds();
    return charge;
  }

  /** Between two states of charge with no knot between them, which the load is carried through, s. */
  double seconds(double low, double high) {
    var knot = pack.knots() - 1;
    while (knot > 1 && pack.knotCharge(knot - 1) >= high) {
      knot--;
    }
    var before = seconds;
    quadrature(knot, low, high);
    var taken = seconds - before;
    seconds = before;
    return taken;
  }

  private void quadrature(int knot, double low, double high) {
    var middle = 0.5 * (low + high);
    var half = 0.5 * (high - low);
    var coulomb = pack.capacityCoulomb() * half;
    volts = balanceOrLast(knot, middle + GAUSS * half);
    seconds += coulomb / load.currentA(volts);
    energyJ += coulomb * volts;
    volts = balanceOrLast(knot, middle - GAUSS * half);
    seconds += coulomb / load.currentA(volts);
    energyJ += coulomb * volts;
  }

  private double balanceOrLast(int knot, double charge) {
    var balanced = balance(knot, charge);
    return balanced > 0 ? balanced : volts;
  }

  private boolean isCarried(int knot, double charge) {
    if (straight) {
      return excessVolts(knot, charge) >= 0;
    }
    return balance(knot, charge) >= Math.max(until.leastVolts(), Double.MIN_VALUE);
  }

  private Ending refusal(int knot, double charge) {
    if (straight) {
      return Ending.LEAST_VOLTS;
    }
    // A hair past the end: does the balance exist, only too low?
    var past = Math.max(charge - 1e-9, 0);
    return balance(knot, past) > 0 ? Ending.LEAST_VOLTS : Ending.UNDELIVERABLE;
  }

  /** Where in a piece that starts well and ends badly the load stops being carried. */
  private double lastCarried(int knot, double low, double high) {
    if (straight) {
      var good = excessVolts(knot, high);
      var bad = excessVolts(knot, low);
      return Math.min(high, low + (high - low) * -bad / (good - bad));
    }
    var carried = high;
    var refused = low;
    for (var step = 0; step < 50; step++) {
      var middle = 0.5 * (carried + refused);
      if (isCarried(knot, middle)) {
        carried = middle;
      } else {
        refused = middle;
      }
    }
    return carried;
  }

  /** Volts left above the volts allowed, were the load to run at those: linear between knots. */
  private double excessVolts(int knot, double charge) {
    return open(knot, charge) - ohm(knot, charge) * leastVoltsA - until.leastVolts();
  }

  private double balance(int knot, double charge) {
    return load.balanceVolts(open(knot, charge), ohm(knot, charge), volts);
  }

  private double open(int knot, double charge) {
    return between(knot, charge, pack.knotOpenVolts(knot - 1), pack.knotOpenVolts(knot));
  }

  private double ohm(int knot, double charge) {
    return between(knot, charge, pack.knotOhm(knot - 1), pack.knotOhm(knot));
  }

  private double between(int knot, double charge, double low, double high) {
    var lowCharge = pack.knotCharge(knot - 1);
    return low + (high - low) * (charge - lowCharge) / (pack.knotCharge(knot) - lowCharge);
  }

  private static double mostOhm(Pack pack) {
    var most = 0.0;
    for (var knot = 0; knot < pack.knots(); knot++) {
      most = Math.max(most, pack.knotOhm(knot));
    }
    return most;
  }
}
