package pappus.search.exact;

import pappus.assessment.Assessor;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;

/**
 * What no build of a box surpasses. Motors that take the least shaft power, torque and speed, lose the least and draw
 * the least current, hang on the pack with the most charge and the least resistance: every current is then below that
 * of any build of the box at any volts, so that the flight is longer.
 */
final class BoxBound {
  private static final int ROTORS = 4;
  private static final double GRAVITY = 9.80665;

  private final Bounds bounds;
  private final PropellerFloor.Spans spans;
  private final Adds nothing;
  private final double newtonsPerGram;
  private final SpeedBound speeds;
  private final double share;
  private final double dragArea;
  private final double thrustAtCharge;

  /**
   * @param share of the hover's shaft power that flight takes at least
   * @param dragArea least, m²
   */
  BoxBound(Goods goods, Bounds bounds, PropellerFloor.Spans spans, double share, double dragArea) {
    var assessor = goods.assessor();
    this.bounds = bounds;
    this.spans = spans;
    this.share = share;
    this.dragArea = dragArea;
    this.speeds = new SpeedBound(assessor.scenario(), assessor.models().air().densityKgPerM3());
    var nothing = goods.nothing();
    this.nothing = new Adds(nothing.grams(), nothing.variance(), 0, nothing.cents(), 0);
    this.newtonsPerGram = newtonsPerGram(assessor);
    this.thrustAtCharge = assessor.scenario().flight().thrustAtChargeOrMidFlight();
  }

  /** Thrust that each rotor needs for a gram, N. */
  private static double newtonsPerGram(Assessor assessor) {
    var lost = assessor.scenario().flight().thrustLostOrUsual();
    return GRAVITY / 1000 / (1 - lost) / ROTORS;
  }

  /** What is chosen of motors, propellers and batteries, one box each. */
  record Three(
      Box<MotorFloor> motors, Box<PropellerFloor> propellers, Box<BatteryFloor> batteries) {}

  /**
   * The objective that no build of a box surpasses.
   *
   * @param frame least that a frame adds that goes with all three
   * @param kits accessories, of which the steps from one to before another
   */
  long most(Three three, Adds frame, KitFloor kits, int from, int to) {
    var motor = three.motors.floor();
    var propeller = three.propellers.floor();
    var battery = three.batteries.floor();
    var grams = nothing.grams()
        + motor.adds().grams()
        + propeller.adds().grams()
        + battery.adds().grams()
        + frame.grams()
        + kits.leastGrams(to);
    var variance = nothing.variance()
        + motor.adds().variance()
        + propeller.adds().variance()
        + battery.adds().variance()
        + frame.variance()
        + kits.variance();
    var cents = nothing.cents()
        + motor.adds().cents()
        + propeller.adds().cents()
        + battery.adds().cents()
        + frame.cents()
        + kits.cents();
    if (bounds.isTooMuch(grams, variance, cents)
        || !isStrongEnough(
            motor, propeller, battery.pack().behind(kits.ohm()), battery.floorVolts(), grams)) {
      return Aim.HOPELESS;
    }
    return bounds.objective(figure(motor, propeller, battery, kits, grams, kits.leastWatts(from)));
  }

  /** Seconds, or metres where the goal is range. */
  private double figure(
      MotorFloor motor,
      PropellerFloor propeller,
      BatteryFloor battery,
      KitFloor kits,
      double grams,
      double watts) {
    var thrustN = grams * newtonsPerGram;
    var span = spans.of(thrustN);
    if (span < 0) {
      return Double.POSITIVE_INFINITY;
    }
    var root = Math.sqrt(thrustN);
    var speed = propeller.speed().at(span) * root;
    var drag = motor.dragNm(speed);
    var torque = propeller.torque().at(span) * thrustN + drag;
    var power =
        propeller.shaft().at(span) * thrustN * root + speed * drag + motor.heat() * torque * torque;
    var amps = torque * motor.kvLow();
    if (amps > motor.amps()) {
      return 0;
    }
    var load = new Load(
        ROTORS * power,
        power / amps,
        kits.loss().orElse(motor.loss()),
        ROTORS * motor.idleA(),
        watts);
    var seconds = battery.drain().seconds(load, kits.ohm());
    if (!speeds.asks()) {
      return seconds;
    }
    var shaftW = ROTORS * propeller.shaft().at(span) * thrustN * root;
    return speeds.most(
        seconds,
        new SpeedBound.Costs(
            shaftW / share,
            ROTORS * thrustN * root * propeller.induced(),
            propeller.induced() * root,
            shaftW,
            load.powerW(battery.pack().openVolts(battery.pack().startCharge())),
            dragArea));
  }

  /** Whether the thrust asked for may be had: at that thrust the pack must carry the motors' volts and power. */
  private boolean isStrongEnough(
      MotorFloor motor, PropellerFloor propeller, Pack pack, double floorVolts, double grams) {
    var thrustN = bounds.leastThrustToWeight() * grams * newtonsPerGram;
    var span = spans.of(thrustN);
    if (span < 0) {
      return true;
    }
    var root = Math.sqrt(thrustN);
    var speed = propeller.speed().at(span) * root;
    var drag = motor.dragNm(speed);
    var torque = propeller.torque().at(span) * thrustN + drag;
    var power =
        propeller.shaft().at(span) * thrustN * root + speed * drag + motor.heat() * torque * torque;
    var needed = speed / motor.kvHigh() + motor.drop() * torque;
    var charge = Math.min(thrustAtCharge, pack.startCharge());
    var open = pack.openVolts(charge);
    var volts = Math.max(Math.max(needed, floorVolts), open / 2);
    return volts < open
        && volts * (open - volts) >= pack.burstOhm(charge) * ROTORS * power * (1 - 1e-9);
  }
}
