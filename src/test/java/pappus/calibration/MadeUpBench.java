package pappus.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A stand whose every coefficient is known, worked out step by step and apart from the fit's own code. */
final class MadeUpBench {
  static final double LOSS = 0.09;
  static final double IDLE_A = 0.06;
  static final double GROWTH = 0.5;

  private static final double DENSITY = 1.2;
  private static final double DIAMETER_M = 0.127;

  private final Random random;
  private final double noise;
  private int line = 1;

  /** Relative noise of power; that of speed, and of everything at full throttle, is a quarter of it. */
  MadeUpBench(long seed, double noise) {
    this.random = new Random(seed);
    this.noise = noise;
  }

  /** Kv in rpm/V under load, Ω, the no-load current at 1000 rad/s in A, the stator's diameter in mm. */
  record Motor(String key, double labelKv, double kv, double ohm, double noLoadA, double stator) {}

  /** Coefficients at 10 000 rpm; the figure of merit rises with the speed as propellers' does, n^.15. */
  record Propeller(String key, double thrust, double power) {
    double powerAt(double turns) {
      return power * Math.pow(60 * turns / 10_000, -0.15);
    }
  }

  static final List<Motor> MOTORS = List.of(
      new Motor("m1", 2300, 2200, 0.11, 0.9, 22),
      new Motor("m2", 2600, 2450, 0.09, 1.2, 22),
      new Motor("m3", 1900, 1820, 0.16, 0.6, 14));

  static final List<Propeller> PROPELLERS = List.of(
      new Propeller("p1", 0.13, 0.062),
      new Propeller("p2", 0.16, 0.081),
      new Propeller("p3", 0.20, 0.108));

  /** Every motor with every propeller at two voltages. */
  List<BenchRow> rows() {
    var rows = new ArrayList<BenchRow>();
    for (var motor : MOTORS) {
      for (var propeller : PROPELLERS) {
        for (var volts : new double[] {7.4, 11.1}) {
          for (var grams : new double[] {20, 50, 90, 140, 200}) {
            rows.add(partLoad(motor, propeller, volts, grams));
          }
          rows.add(fullThrottle(motor, propeller, volts));
        }
      }
    }
    return rows;
  }

  /** At a thrust, or at 0.95 of the fastest if that would be less. */
  BenchRow partLoad(Motor motor, Propeller propeller, double volts, double grams) {
    var perTurnsSquared = propeller.thrust() * DENSITY * Math.pow(DIAMETER_M, 4) / 9.80665 * 1000;
    var turns =
        Math.min(Math.sqrt(grams / perTurnsSquared), 0.95 * fullTurns(motor, propeller, volts));
    var current = motorA(motor, propeller, turns);
    var motorVolts = turns * 60 / motor.kv() + current * motor.ohm();
    var ripple = LOSS
        * Math.pow(Math.max(1, 18 / motor.stator()), 2)
        * Math.pow(motorVolts, 2)
        * Math.pow(1 - motorVolts / volts, 1.5)
        / motor.ohm();
    var power = current * motorVolts + ripple + volts * IDLE_A;
    return row(
        motor,
        propeller,
        volts,
        1500,
        perTurnsSquared * turns * turns,
        power / volts * noisy(noise),
        turns);
  }

  BenchRow fullThrottle(Motor motor, Propeller propeller, double volts) {
    var turns = fullTurns(motor, propeller, volts);
    var grams =
        propeller.thrust() * DENSITY * turns * turns * Math.pow(DIAMETER_M, 4) / 9.80665 * 1000;
    var current = (motorA(motor, propeller, turns) + IDLE_A) * noisy(noise / 4);
    return row(motor, propeller, volts, 2000, grams, current, turns);
  }

  private static double fullTurns(Motor motor, Propeller propeller, double volts) {
    var low = 1.0;
    var high = 1000.0;
    while (high - low > 1e-9) {
      var turns = (low + high) / 2;
      if (turns * 60 / motor.kv() + motorA(motor, propeller, turns) * motor.ohm() < volts) {
        low = turns;
      } else {
        high = turns;
      }
    }
    return low;
  }

  private static double motorA(Motor motor, Propeller propeller, double turns) {
    var torque = propeller.powerAt(turns)
        * DENSITY
        * turns
        * turns
        * StrictMath.pow(DIAMETER_M, 5)
        / (2 * Math.PI);
    return torque * motor.kv() * Math.PI / 30
        + motor.noLoadA() * StrictMath.pow(2 * Math.PI * turns / 1000, GROWTH);
  }

  private BenchRow row(
      Motor motor,
      Propeller propeller,
      double volts,
      double pulse,
      double grams,
      double current,
      double turns) {
    line++;
    return new BenchRow(
        "made-up.csv",
        line,
        motor.key(),
        motor.labelKv(),
        propeller.key(),
        volts,
        pulse,
        grams,
        volts,
        current,
        turns * 60 * noisy(noise / 4),
        127,
        DENSITY,
        0,
        motor.stator());
  }

  private double noisy(double deviation) {
    return StrictMath.exp(deviation * random.nextGaussian());
  }
}
