package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * Cells in series and parallel behind a connector, in the condition in which they are flown. Immutable;
 * build it once, then ask it without allocation.
 *
 * <p>Charge does not depend on the current (no Peukert factor): the loss is in the resistance, and would
 * be counted twice.
 */
public final class Pack {
  /** State of charge at which a flight is half over, as good as: what is asked there stands for all of it. */
  public static final double HALF_CHARGE = 0.5;

  private final int series;
  private final double capacityCoulomb;
  private final double startCharge;
  private final double wiringOhm;
  private final double slowOhm;
  private final double warmth;
  private final Warming warming;
  private final double[] charges;
  private final double[] openVolts;
  private final double[] cellOhms; // of all cells, after ten seconds, at take-off

  private Pack(Cell cell, int series, double wiringOhm) {
    this.series = (int) Require.inRange("series", series, 1, 24);
    this.wiringOhm = Require.notNegative("wiringOhm", wiringOhm);
    this.capacityCoulomb = cell.capacityCoulomb();
    this.startCharge = cell.startCharge();
    this.slowOhm = series * cell.slowOhm();
    this.warmth = 1;
    this.warming = cell.warming();
    this.charges = cell.openCircuitVolts().chargesWith(cell.resistanceOhm());
    this.openVolts = new double[charges.length];
    this.cellOhms = new double[charges.length];
    for (var knot = 0; knot < charges.length; knot++) {
      openVolts[knot] = series * cell.openCircuitVolts().at(charges[knot]);
      cellOhms[knot] = series * cell.resistanceOhm().at(charges[knot]);
    }
  }

  private Pack(Pack pack, double wiringOhm, double warmth) {
    this.series = pack.series;
    this.wiringOhm = wiringOhm;
    this.capacityCoulomb = pack.capacityCoulomb;
    this.startCharge = pack.startCharge;
    this.slowOhm = pack.slowOhm;
    this.warmth = warmth;
    this.warming = pack.warming;
    this.charges = pack.charges;
    this.openVolts = pack.openVolts;
    this.cellOhms = pack.cellOhms;
  }

  /**
   * A pack of equal cells.
   *
   * @param parallel 1 to 100
   * @param wiringOhm leads, both ways, and connector, Ω
   */
  public static Pack of(Cell cell, int series, int parallel, double wiringOhm) {
    Require.inRange("parallel", parallel, 1, 100);
    return new Pack(cell.inParallel(parallel), series, wiringOhm);
  }

  /** The pack behind so much more resistance of leads, Ω. */
  public Pack behind(double moreOhm) {
    return moreOhm == 0
        ? this
        : new Pack(this, wiringOhm + Require.notNegative("moreOhm", moreOhm), warmth);
  }

  /**
   * The pack as warm as a load makes it half-way through the discharge, by the load's current at the rested volts of half
   * charge: a little less than flows, and simply the more the more is asked for.
   *
   * <p>More load makes cells warmer and so their resistance less, but never by so much that they would sag less.
   */
  public Pack warmedBy(Load load) {
    return new Pack(this, wiringOhm, warmth(load.currentA(openVolts(HALF_CHARGE))));
  }

  /** Resistance of the cells over that at take-off, half-way through a discharge of about a current, A. */
  public double warmth(double currentA) {
    if (currentA <= 0) {
      return 1;
    }
    var cellOhm = (interpolated(cellOhms, HALF_CHARGE) + slowOhm) / series;
    return warming.resistanceFactor(
        currentA, cellOhm, 0.5 * startCharge * capacityCoulomb / currentA);
  }

  public int series() {
    return series;
  }

  /** Charge from full to empty, A·s. */
  public double capacityCoulomb() {
    return capacityCoulomb;
  }

  /** State of charge at take-off. */
  public double startCharge() {
    return startCharge;
  }

  /** Rested volts at a state of charge. */
  public double openVolts(double charge) {
    return interpolated(openVolts, charge);
  }

  /** Resistance after minutes with leads and connector, Ω: hover and cruise. */
  public double steadyOhm(double charge) {
    return steadyOhmOf(interpolated(cellOhms, charge));
  }

  private double steadyOhmOf(double cellOhm) {
    return warmth * (cellOhm + slowOhm) + wiringOhm;
  }

  /** Of that the leads and the connector, which no warmth eases, Ω. */
  public double wiringOhm() {
    return wiringOhm;
  }

  /** Resistance within a second with leads and connector, at take-off's warmth, Ω: full throttle. */
  public double burstOhm(double charge) {
    return Chemistry.BURST_RESISTANCE_SHARE * interpolated(cellOhms, charge) + wiringOhm;
  }

  /** The pack under a load that has lasted minutes. */
  public Delivery deliver(Load load, double charge) {
    var open = openVolts(charge);
    var ohm = steadyOhm(charge);
    var volts = load.balanceVolts(open, ohm, open);
    if (volts < 0) {
      return new Delivery.Undeliverable(open * open / (4 * ohm));
    }
    return new Delivery.Delivered(load.currentA(volts), volts);
  }

  int knots() {
    return charges.length;
  }

  double knotCharge(int knot) {
    return charges[knot];
  }

  double knotOpenVolts(int knot) {
    return openVolts[knot];
  }

  double knotOhm(int knot) {
    return steadyOhmOf(cellOhms[knot]);
  }

  private double interpolated(double[] values, double charge) {
    Require.inRange("state of charge", charge, 0, 1);
    var knot = 1;
    while (charges[knot] < charge) {
      knot++;
    }
    var share = (charge - charges[knot - 1]) / (charges[knot] - charges[knot - 1]);
    return values[knot - 1] + share * (values[knot] - values[knot - 1]);
  }
}
