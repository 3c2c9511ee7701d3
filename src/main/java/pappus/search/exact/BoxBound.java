package pappus.search.exact;

import java.util.stream.IntStream;
import pappus.assessment.Assessor;
import pappus.part.Frame;
import pappus.physics.battery.Load;
import pappus.physics.battery.Pack;
import pappus.quantity.Units;

/**
 * What no build of a box surpasses. Motors that take the least shaft power, torque and speed, lose the least and draw
 * the least current, hang on the pack with the most charge and the least resistance: every current is then below that
 * of any build of the box at any volts, so that the flight is longer.
 */
final class BoxBound {
  /** Between the masses and volts looked at, the rate is hardly less. */
  private static final double SURE_OF_RATE = 0.98;

  private final Bounds bounds;
  private final PropellerFloor.Spans spans;
  private final double[] ends;
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
    this.ends = IntStream.rangeClosed(0, spans.count()).mapToDouble(spans::end).toArray();
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
    return Units.GRAVITY_M_PER_S2 / 1000 / (1 - lost) / Frame.ROTORS;
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
    return bounds.objective(
        figure(motor, propeller, battery, kits, grams, watts(three, kits, grams, from)));
  }

  /** Whether accessories have to be looked at in spans, since nobody knows what a gram of them costs. */
  boolean asksForSpans() {
    return speeds.asks();
  }

  /** Least watts beside the motors, with each gram of accessories above the least counted as what it costs. */
  private double watts(Three three, KitFloor kits, double grams, int from) {
    if (asksForSpans()) {
      return kits.leastWatts(from);
    }
    var rate = wattsPerGram(three, kits, grams);
    return Math.max(kits.watts().at(0), kits.traded(rate) - rate * kits.leastGrams());
  }

  /**
   * So many watts beside the motors cost no build of a box more than a gram does: looked at where spans of thrust begin
   * and end, at the highest and the lowest volts.
   *
   * @param grams of the lightest
   */
  private double wattsPerGram(Three three, KitFloor kits, double grams) {
    var motor = three.motors.floor();
    var propeller = three.propellers.floor();
    var pack = three.batteries.floor().pack();
    var high = pack.openVolts(pack.startCharge());
    var low = pack.openVolts(0);
    var lightN = grams * newtonsPerGram;
    var heavyN = bounds.capGrams() * newtonsPerGram;
    var first = spans.of(lightN);
    if (first < 0) {
      return 0;
    }
    var loss = kits.loss().orElse(motor.loss());
    var light = new Turning(motor, propeller, first, lightN);
    var lightHighW = light.busW(high, loss);
    var lightLowW = light.busW(low, loss);
    var rate = Double.POSITIVE_INFINITY;
    for (var span = first;
        span < ends.length - 1 && (span == first || ends[span] < heavyN);
        span++) {
      for (var end = span; end <= span + 1; end++) {
        var more = (ends[end] - lightN) / newtonsPerGram;
        if (more > 0) {
          var heavy = new Turning(motor, propeller, span, ends[end]);
          rate = Math.min(
              rate,
              Math.min(heavy.busW(high, loss) - lightHighW, heavy.busW(low, loss) - lightLowW)
                  / more);
        }
      }
    }
    return Double.isInfinite(rate) ? 0 : Math.max(0, rate * SURE_OF_RATE);
  }

  /** Four motors at a thrust, with the least of everything that a box has. */
  private static final class Turning {
    private final double speed;
    private final double torque;
    private final double power;
    private final double amps;

    Turning(MotorFloor motor, PropellerFloor propeller, int span, double thrustN) {
      var root = Math.sqrt(thrustN);
      this.speed = propeller.speed().at(span) * root;
      var drag = motor.dragNm(speed);
      this.torque = propeller.torque().at(span) * thrustN + drag;
      this.power = propeller.shaft().at(span) * thrustN * root
          + speed * drag
          + motor.heat() * torque * torque;
      this.amps = torque * motor.kvLow();
    }

    /** Power of all motors and their controllers at some volts, W. */
    double busW(double volts, double loss) {
      return Frame.ROTORS * power * volts / ((1 - loss) * volts + loss * power / amps);
    }
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
    var turning = new Turning(motor, propeller, span, thrustN);
    if (turning.amps > motor.amps()) {
      return 0;
    }
    var load = new Load(
        Frame.ROTORS * turning.power,
        turning.power / turning.amps,
        kits.loss().orElse(motor.loss()),
        Frame.ROTORS * motor.idleA(),
        watts);
    var seconds = battery.drain().seconds(load, kits.ohm());
    if (!speeds.asks()) {
      return seconds;
    }
    var root = Math.sqrt(thrustN);
    var shaftW = Frame.ROTORS * propeller.shaft().at(span) * thrustN * root;
    return speeds.most(
        seconds,
        new SpeedBound.Costs(
            shaftW / share,
            Frame.ROTORS * thrustN * root * propeller.induced(),
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
    var turning = new Turning(motor, propeller, span, thrustN);
    var needed = turning.speed / motor.kvHigh() + motor.drop() * turning.torque;
    var charge = Math.min(thrustAtCharge, pack.startCharge());
    var open = pack.openVolts(charge);
    var volts = Math.max(Math.max(needed, floorVolts), open / 2);
    return volts < open
        && volts * (open - volts)
            >= pack.burstOhm(charge) * Frame.ROTORS * turning.power * (1 - 1e-9);
  }
}
