package pappus.search.exact;

import java.util.BitSet;
import pappus.physics.motor.MotorModel;

/**
 * Numbers at least as good as those of some motors, four of them.
 *
 * <p>A motor at torque Q and speed ω takes i = Kv (Q + a) and i (ω/Kv + i R) = ω (Q + a) + R Kv² (Q + a)², where a is
 * the torque that its no-load current costs: both rise with each number here.
 *
 * @param adds mass and price without what fastens and wires them
 * @param fastening what does
 * @param kvLow least loaded Kv, rad/s per volt
 * @param kvHigh largest, which needs the least volts
 * @param heat least R Kv², Ω rad²/(V s)²
 * @param drop least R Kv, Ω rad/(V s)
 * @param ripple least c of the law of part load
 * @param rippleHigh largest
 * @param heatHigh largest R Kv² at the resistance that law is stated in, Ω rad²/(V s)²
 * @param warmHigh largest R Kv² with the winding as warm as it may be
 * @param idleA least idle current of a controller, A
 * @param dragNm no-load torque at speeds from slow to fast, N m
 * @param dragHighNm the largest
 * @param amps most current without end, A
 * @param burstAmps most current for some seconds, A
 * @param frames that one of them goes on, in the order of {@link Frames}
 * @param byPropeller their sorts against propellers
 * @param byBattery their sorts against batteries
 */
record MotorRelaxation(
    Adds adds,
    Frames.Fastening fastening,
    double kvLow,
    double kvHigh,
    double heat,
    double drop,
    double ripple,
    double rippleHigh,
    double heatHigh,
    double warmHigh,
    double idleA,
    Numbers dragNm,
    Numbers dragHighNm,
    double amps,
    double burstAmps,
    BitSet frames,
    BitSet byPropeller,
    BitSet byBattery) {
  /** No-load torque is known at so many speeds, a tenth apart. */
  private static final int COUNT = 48;

  private static final double SLOWEST = 200;
  private static final double STEP = 1.1;

  static Numbers dragNm(MotorModel motor) {
    return Numbers.of(
        COUNT,
        place ->
            motor.noLoadCurrentA(SLOWEST * StrictMath.pow(STEP, place)) / motor.kvRadPerSPerV());
  }

  /** No-load torque at a speed at least, N m. */
  double dragNm(double speedRadPerS) {
    if (speedRadPerS < SLOWEST) {
      return 0;
    }
    var place = (int) (Math.log(speedRadPerS / SLOWEST) / Math.log(STEP) - 1e-9);
    return dragNm.at(Math.min(place, COUNT - 1));
  }

  /** No-load torque at a speed at most, N m; beyond the speeds known, none is. */
  double dragHighNm(double speedRadPerS) {
    var place = speedRadPerS <= SLOWEST
        ? 0
        : (int) Math.ceil(Math.log(speedRadPerS / SLOWEST) / Math.log(STEP) + 1e-9);
    return place < COUNT ? dragHighNm.at(place) : Double.POSITIVE_INFINITY;
  }

  static MotorRelaxation least(MotorRelaxation one, MotorRelaxation other) {
    return new MotorRelaxation(
        one.adds.least(other.adds),
        one.fastening.least(other.fastening),
        Math.min(one.kvLow, other.kvLow),
        Math.max(one.kvHigh, other.kvHigh),
        Math.min(one.heat, other.heat),
        Math.min(one.drop, other.drop),
        Math.min(one.ripple, other.ripple),
        Math.max(one.rippleHigh, other.rippleHigh),
        Math.max(one.heatHigh, other.heatHigh),
        Math.max(one.warmHigh, other.warmHigh),
        Math.min(one.idleA, other.idleA),
        one.dragNm.least(other.dragNm),
        one.dragHighNm.most(other.dragHighNm),
        Math.max(one.amps, other.amps),
        Math.max(one.burstAmps, other.burstAmps),
        either(one.frames, other.frames),
        either(one.byPropeller, other.byPropeller),
        either(one.byBattery, other.byBattery));
  }

  static BitSet either(BitSet one, BitSet other) {
    if (one.equals(other)) {
      return one;
    }
    var either = (BitSet) one.clone();
    either.or(other);
    return either;
  }
}
