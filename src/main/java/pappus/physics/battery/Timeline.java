package pappus.physics.battery;

import java.util.Arrays;
import pappus.quantity.Require;

/**
 * One discharge from which the time between any two states of charge can be told without integrating all of it anew.
 */
public final class Timeline {
  private final Run run;
  private final Discharge discharge;

  /** States of charge, falling: the start, every knot that is passed, the end. */
  private final double[] charges;

  /** Since the start, s. Row: state of charge. */
  private final double[] seconds;

  private Timeline(Run run, Discharge discharge, double[] charges, double[] seconds) {
    this.run = run;
    this.discharge = discharge;
    this.charges = charges;
    this.seconds = seconds;
  }

  /** From a state of charge until something ends it. Not safe for several threads. */
  public static Timeline of(Pack pack, Load load, Until until, double fromCharge) {
    Require.inRange("fromCharge", fromCharge, 0, 1);
    var run = new Run(pack, load, until);
    var charges = new double[pack.knots() + 1];
    var seconds = new double[charges.length];
    var count = new int[] {0};
    charges[0] = fromCharge;
    var discharge = run.from(fromCharge, (charge, since) -> {
      count[0]++;
      charges[count[0]] = charge;
      seconds[count[0]] = since;
    });
    return new Timeline(
        run, discharge, Arrays.copyOf(charges, count[0] + 1), Arrays.copyOf(seconds, count[0] + 1));
  }

  /** The whole of it. */
  public Discharge discharge() {
    return discharge;
  }

  /** From the start to a state of charge on the way, s; to the end for one beyond it. */
  public double secondsTo(double charge) {
    var before = before(charge);
    return before == charges.length - 1
        ? seconds[before]
        : seconds[before] + run.seconds(charge, charges[before]);
  }

  /** From a state of charge on the way to the end, s; 0 from one beyond it. */
  public double secondsFrom(double charge) {
    var after = before(charge) + 1;
    return after >= charges.length
        ? 0
        : run.seconds(charges[after], charge) + seconds[seconds.length - 1] - seconds[after];
  }

  /** The last place that is not passed before a state of charge. */
  private int before(double charge) {
    var place = 0;
    while (place + 1 < charges.length && charges[place + 1] >= charge) {
      place++;
    }
    return place;
  }
}
