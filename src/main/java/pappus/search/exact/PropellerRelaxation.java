package pappus.search.exact;

import java.util.BitSet;
import pappus.compatibility.Sizes;
import pappus.physics.propeller.PropellerInAir;

/**
 * Numbers at least as good as those of some propellers, four of them. Shaft power over T^1.5, torque over T and speed
 * over √T hardly change with thrust T: the least of each is known for spans of thrust.
 *
 * @param adds mass and price
 * @param diameterMm largest
 * @param induced most induced speed of hover over √T, m/s/√N
 * @param leastInduced the least
 * @param shaft least shaft power over T^1.5 in each span, W/N^1.5
 * @param torque least torque over T, m
 * @param speed least speed over √T, rad/s/√N
 * @param whole the least of the three where all of the hover's power is taken
 * @param torqueHigh largest torque over T, m
 * @param speedHigh largest speed over √T, rad/s/√N
 * @param sizes least
 * @param frames that one of them goes on whatever its size, in the order of {@link Frames}
 * @param motors sorts of motors that one of them goes on
 */
record PropellerRelaxation(
    Adds adds,
    double diameterMm,
    double induced,
    double leastInduced,
    Numbers shaft,
    Numbers torque,
    Numbers speed,
    Whole whole,
    Numbers torqueHigh,
    Numbers speedHigh,
    Sizes sizes,
    BitSet frames,
    BitSet motors) {

  /**
   * Thrusts between which numbers are known.
   *
   * @param leastN lower end of the first span, N
   * @param step from each end to the next
   * @param count spans
   */
  record Spans(double leastN, double step, int count) {
    /** Ends so many spans that reach from one thrust to another. */
    static Spans between(double leastN, double mostN, int count) {
      return new Spans(leastN, StrictMath.pow(mostN / leastN, 1.0 / count), count);
    }

    double end(int place) {
      return leastN * StrictMath.pow(step, place);
    }

    /** The span of a thrust; −1 below the first. */
    int of(double thrustN) {
      return thrustN < leastN
          ? -1
          : Math.min(count - 1, (int) (Math.log(thrustN / leastN) / Math.log(step)));
    }
  }

  /**
   * Numbers of hover.
   *
   * @param shaft least shaft power over T^1.5 in each span, W/N^1.5
   * @param torque least torque over T, m
   * @param speed least speed over √T, rad/s/√N
   */
  record Whole(Numbers shaft, Numbers torque, Numbers speed) {
    private Whole least(Whole other) {
      return new Whole(
          shaft.least(other.shaft), torque.least(other.torque), speed.least(other.speed));
    }
  }

  /** What a span may hide: coefficients go in straight lines between rows, ratios of them almost. */
  private static final double BETWEEN = 5e-4;

  /**
   * One propeller.
   *
   * @param share of the hover's shaft power that flight takes at least
   */
  static PropellerRelaxation of(
      PropellerInAir propeller,
      Spans spans,
      double share,
      Adds adds,
      Sizes sizes,
      BitSet frames,
      BitSet motors) {
    var flown = Ends.of(propeller, spans, share);
    var hover = share == 1 ? flown : Ends.of(propeller, spans, 1);
    var shaft = between(flown.shaft);
    var torque = between(flown.torque);
    var speed = between(flown.speed);
    var whole = share == 1
        ? new Whole(shaft, torque, speed)
        : new Whole(between(hover.shaft), between(hover.torque), between(hover.speed));
    var induced = 1 / Math.sqrt(2 * propeller.densityKgPerM3() * propeller.discAreaM2());
    return new PropellerRelaxation(
        adds,
        1000 * propeller.diameterM(),
        induced,
        induced,
        shaft,
        torque,
        speed,
        whole,
        beyond(hover.torque),
        beyond(hover.speed),
        sizes,
        frames,
        motors);
  }

  /** Numbers at the ends of spans. */
  private static final class Ends {
    private final double[] shaft;
    private final double[] torque;
    private final double[] speed;

    private Ends(int count) {
      this.shaft = new double[count];
      this.torque = new double[count];
      this.speed = new double[count];
    }

    private static Ends of(PropellerInAir propeller, Spans spans, double share) {
      var ends = new Ends(spans.count + 1);
      for (var end = 0; end <= spans.count; end++) {
        var thrustN = spans.end(end);
        var hover = propeller.speedForThrustRadPerS(thrustN);
        var shaftW = share * propeller.shaftPowerW(hover);
        var turns = share == 1 ? hover : propeller.speedForPowerRadPerS(shaftW);
        ends.shaft[end] = shaftW / (thrustN * Math.sqrt(thrustN));
        ends.torque[end] = shaftW / turns / thrustN;
        ends.speed[end] = turns / Math.sqrt(thrustN);
      }
      return ends;
    }
  }

  /** The least in each span from what holds at its ends. */
  private static Numbers between(double[] ends) {
    return Numbers.of(
        ends.length - 1, span -> Math.min(ends[span], ends[span + 1]) * (1 - BETWEEN));
  }

  /** The most in each span from what holds at its ends. */
  private static Numbers beyond(double[] ends) {
    return Numbers.of(
        ends.length - 1, span -> Math.max(ends[span], ends[span + 1]) * (1 + BETWEEN));
  }

  static PropellerRelaxation least(PropellerRelaxation one, PropellerRelaxation other) {
    return new PropellerRelaxation(
        one.adds.least(other.adds),
        Math.max(one.diameterMm, other.diameterMm),
        Math.max(one.induced, other.induced),
        Math.min(one.leastInduced, other.leastInduced),
        one.shaft.least(other.shaft),
        one.torque.least(other.torque),
        one.speed.least(other.speed),
        one.whole.least(other.whole),
        one.torqueHigh.most(other.torqueHigh),
        one.speedHigh.most(other.speedHigh),
        one.sizes.least(other.sizes),
        MotorRelaxation.either(one.frames, other.frames),
        MotorRelaxation.either(one.motors, other.motors));
  }
}
