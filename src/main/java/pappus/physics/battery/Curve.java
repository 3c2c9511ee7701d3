package pappus.physics.battery;

import java.util.Arrays;
import pappus.quantity.Require;

/** A quantity against state of charge, 0 empty to 1 full, linear between its knots. Immutable. */
public final class Curve {
  private final double[] charges;
  private final double[] values;

  private Curve(double[] charges, double[] values) {
    this.charges = charges;
    this.values = values;
  }

  /**
   * From knots.
   *
   * @param charges states of charge, rising from 0 to 1
   * @param values positive, one for each
   */
  public static Curve of(double[] charges, double[] values) {
    Require.inRange("number of values", values.length, charges.length, charges.length);
    Require.inRange("first state of charge", charges[0], 0, 0);
    Require.inRange("last state of charge", charges[charges.length - 1], 1, 1);
    for (var knot = 0; knot < charges.length; knot++) {
      Require.positive("value", values[knot]);
      if (knot > 0) {
        Require.positive("step of state of charge", charges[knot] - charges[knot - 1]);
      }
    }
    return new Curve(charges.clone(), values.clone());
  }

  /** One value at every state of charge. */
  public static Curve constant(double value) {
    return of(new double[] {0, 1}, new double[] {value, value});
  }

  /** From values at equal steps of the state of charge, 0 to 1. */
  static Curve evenly(double... values) {
    var charges = new double[values.length];
    for (var knot = 0; knot < values.length; knot++) {
      charges[knot] = (double) knot / (values.length - 1);
    }
    return of(charges, values);
  }

  /** The states of charge of the knots, rising from 0 to 1. */
  public double[] charges() {
    return charges.clone();
  }

  /** Those of this curve and another, each once. */
  double[] chargesWith(Curve other) {
    var both = new double[charges.length + other.charges.length];
    var count = 0;
    var theirs = 0;
    for (var charge : charges) {
      for (; other.charges[theirs] < charge; theirs++) {
        both[count++] = other.charges[theirs];
      }
      both[count++] = charge;
      // Both end at 1.
      theirs += other.charges[theirs] == charge && charge < 1 ? 1 : 0;
    }
    return Arrays.copyOf(both, count);
  }

  /** The value at a state of charge from 0 to 1. */
  public double at(double charge) {
    Require.inRange("state of charge", charge, 0, 1);
    var knot = 1;
    while (charges[knot] < charge) {
      knot++;
    }
    var share = (charge - charges[knot - 1]) / (charges[knot] - charges[knot - 1]);
    return values[knot - 1] + share * (values[knot] - values[knot - 1]);
  }

  /** The curve with every value multiplied. */
  public Curve times(double factor) {
    var multiplied = values.clone();
    for (var knot = 0; knot < multiplied.length; knot++) {
      multiplied[knot] *= factor;
    }
    return of(charges, multiplied);
  }

  /** The highest state of charge at which a rising curve is at a value; 1 if it never is so high. */
  double chargeAt(double value) {
    var knot = charges.length - 1;
    if (value >= values[knot]) {
      return 1;
    }
    while (knot > 0 && values[knot - 1] > value) {
      knot--;
    }
    if (knot == 0) {
      return 0;
    }
    var share = (value - values[knot - 1]) / (values[knot] - values[knot - 1]);
    return charges[knot - 1] + share * (charges[knot] - charges[knot - 1]);
  }
}
