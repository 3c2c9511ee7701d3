package pappus.physics.battery;

import java.util.stream.DoubleStream;
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
  private final double[] charges;
  private final double[] openVolts;
  private final double[] ohms;

  private Pack(Cell cell, int series, int parallel, double wiringOhm) {
    this.series = (int) Require.inRange("series", series, 1, 24);
    Require.inRange("parallel", parallel, 1, 100);
    this.wiringOhm = Require.notNegative("wiringOhm", wiringOhm);
    this.capacityCoulomb = cell.capacityCoulomb() * parallel;
    this.startCharge = cell.startCharge();
    this.charges = DoubleStream.concat(
            DoubleStream.of(cell.openCircuitVolts().charges()),
            DoubleStream.of(cell.resistanceOhm().charges()))
        .sorted()
        .distinct()
        .toArray();
    this.openVolts = DoubleStream.of(charges)
        .map(z -> series * cell.openCircuitVolts().at(z))
        .toArray();
    this.ohms = DoubleStream.of(charges)
        .map(z -> series * cell.resistanceOhm().at(z) / parallel + wiringOhm)
        .toArray();
  }

  /**
   * A pack of equal cells.
   *
   * @param wiringOhm leads, both ways, and connector, Ω
   */
  public static Pack of(Cell cell, int series, int parallel, double wiringOhm) {
    return new Pack(cell, series, parallel, wiringOhm);
  }

  /** The pack behind so much more resistance of leads, Ω. */
  public Pack behind(double moreOhm) {
    return moreOhm == 0 ? this : new Pack(this, Require.notNegative("moreOhm", moreOhm));
  }

  private Pack(Pack pack, double moreOhm) {
    this.series = pack.series;
    this.wiringOhm = pack.wiringOhm + moreOhm;
    this.capacityCoulomb = pack.capacityCoulomb;
    this.startCharge = pack.startCharge;
    this.charges = pack.charges;
    this.openVolts = pack.openVolts;
    this.ohms = pack.ohms.clone();
    for (var knot = 0; knot < ohms.length; knot++) {
      ohms[knot] += moreOhm;
    }
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

  /** Resistance after ten seconds with leads and connector, Ω: hover and cruise. */
  public double steadyOhm(double charge) {
    return interpolated(ohms, charge);
  }

  /** Resistance within a second with leads and connector, Ω: full throttle. */
  public double burstOhm(double charge) {
    return Chemistry.BURST_RESISTANCE_SHARE * (steadyOhm(charge) - wiringOhm) + wiringOhm;
  }

  /** The pack under a load that has lasted ten seconds or more. */
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
    return ohms[knot];
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
