package pappus.physics.battery;

import java.util.ArrayList;
import java.util.List;
import pappus.quantity.Require;

/**
 * Loads that take turns on a pack, over and over. At each state of charge the pack gives the mean of their
 * currents weighted by time, each at the volts that it has by itself: turns are taken to be short against the
 * whole discharge, and the pack to settle within each.
 */
public final class Mixture {
  private static final double GAUSS = 1 / Math.sqrt(3); // nodes of two-point Gauss quadrature

  private final Pack pack;
  private final List<Share> shares;
  private final double[] volts; // the latest balance of each load, the next one's guess
  private double meanA;
  private double meanVolts;
  private double meanW;

  /**
   * A load and how much of the time it lasts.
   *
   * @param weight time of one turn, in any unit, the same for all
   */
  public record Share(Load load, double weight) {
    public Share {
      Require.positive("weight", weight);
    }
  }

  private Mixture(Pack pack, List<Share> shares) {
    this.pack = pack;
    this.shares = shares;
    this.volts = new double[shares.size()];
  }

  /**
   * The discharge from one state of charge down to a lower one, as far as all loads can be carried. Its volts
   * and currents are means over time.
   *
   * @param ending what ends it there
   */
  public static Discharge between(
      Pack pack, List<Share> shares, double fromCharge, double toCharge, Discharge.Ending ending) {
    Require.notEmpty("shares", shares);
    Require.inRange("fromCharge", fromCharge, 0, 1);
    Require.inRange("toCharge", toCharge, 0, fromCharge);
    var weights = shares.stream().mapToDouble(Share::weight).sum();
    var normal = shares.stream()
        .map(share -> new Share(share.load, share.weight / weights))
        .toList();
    return new Mixture(pack, normal).run(fromCharge, toCharge, ending);
  }

  /**
   * The moments of the same discharge at its start, at each knot of the pack's curves and at its end, in order of time.
   *
   * @param fromCharge where it starts, 0 to 1
   * @param toCharge where it ends, as far as all loads can be carried
   */
  public static List<Discharge.Moment> trace(
      Pack pack, List<Share> shares, double fromCharge, double toCharge) {
    var charges = new ArrayList<Double>();
    for (var knot = pack.knots() - 1; knot >= 0; knot--) {
      var charge = pack.knotCharge(knot);
      if (charge < fromCharge && charge > toCharge) {
        charges.add(charge);
      }
    }
    charges.add(toCharge);
    var start = between(pack, shares, fromCharge, fromCharge, Discharge.Ending.RESERVE);
    var moments = new ArrayList<Discharge.Moment>();
    moments.add(new Discharge.Moment(0, fromCharge, start.startVolts(), start.startA(), 0));
    for (var charge : charges) {
      var part = between(pack, shares, fromCharge, charge, Discharge.Ending.RESERVE);
      moments.add(new Discharge.Moment(
          part.seconds(), charge, part.endVolts(), part.endA(), part.usedCoulomb()));
    }
    return List.copyOf(moments);
  }

  private Discharge run(double fromCharge, double toCharge, Discharge.Ending ending) {
    for (var share = 0; share < volts.length; share++) {
      volts[share] = pack.openVolts(fromCharge);
    }
    balance(fromCharge);
    var startVolts = meanVolts;
    var startA = meanA;
    var seconds = 0.0;
    var energyJ = 0.0;
    var high = fromCharge;
    for (var knot = pack.knots() - 2; knot >= 0 && high > toCharge; knot--) {
      var low = Math.max(pack.knotCharge(knot), toCharge);
      if (low >= high) {
        continue;
      }
      var coulomb = pack.capacityCoulomb() * 0.5 * (high - low);
      for (var node = 1; node >= -1; node -= 2) {
        balance(0.5 * (low + high) + node * GAUSS * 0.5 * (high - low));
        seconds += coulomb / meanA;
        energyJ += coulomb * meanW / meanA;
      }
      high = low;
    }
    balance(toCharge);
    return new Discharge(
        seconds,
        ending,
        toCharge,
        energyJ,
        pack.capacityCoulomb() * (fromCharge - toCharge),
        startVolts,
        startA,
        meanVolts,
        meanA);
  }

  private void balance(double charge) {
    var open = pack.openVolts(charge);
    var ohm = pack.steadyOhm(charge);
    meanA = 0;
    meanVolts = 0;
    meanW = 0;
    for (var i = 0; i < volts.length; i++) {
      var share = shares.get(i);
      // On the very edge of collapse rounding can hide the balance: the volts just before stand in.
      var balanced = share.load.balanceVolts(open, ohm, volts[i]);
      volts[i] = balanced > 0 ? balanced : volts[i];
      var currentA = share.load.currentA(volts[i]);
      meanA += share.weight * currentA;
      meanVolts += share.weight * volts[i];
      meanW += share.weight * currentA * volts[i];
    }
  }
}
