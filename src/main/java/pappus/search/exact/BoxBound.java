package pappus.search.exact;

import java.util.List;
import java.util.stream.IntStream;
import pappus.assessment.flight.FrameAir;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.physics.battery.Load;
import pappus.physics.motor.SpeedController;
import pappus.quantity.Units;

/**
 * What no build of a box surpasses. Motors that take the least shaft power, torque and speed, with the least ripple, hang
 * on the pack with the most charge, the least resistance and the warmest cells: every power is then below that of any
 * build of the box at any volts, and so is every current, since a pack that gives less power has more volts.
 */
final class BoxBound {
  /** No aircraft of the trade has more. */
  private static final double MOST_THRUST_TO_WEIGHT = 100;

  private static final double THRUST_STEP = 0.01;

  /** Between the masses and volts looked at, the rate is hardly less. */
  private static final double SURE_OF_RATE = 0.98;

  private final Bounds bounds;
  private final PropellerRelaxation.Spans spans;
  private final double[] ends;
  private final Adds nothing;
  private final SpeedBound speeds;
  private final double share;
  private final double thrustAtCharge;
  private final double reliance;

  /**
   * @param share of the hover's shaft power that flight takes at least
   */
  BoxBound(Goods goods, Bounds bounds, PropellerRelaxation.Spans spans, double share) {
    var assessor = goods.assessor();
    this.bounds = bounds;
    this.spans = spans;
    this.ends = IntStream.rangeClosed(0, spans.count()).mapToDouble(spans::end).toArray();
    this.share = share;
    this.speeds =
        new SpeedBound(assessor.scenario(), assessor.prospects().models().air().densityKgPerM3());
    var nothing = goods.nothing();
    this.nothing = new Adds(nothing.grams(), nothing.variance(), 0, nothing.cents(), 0);
    this.reliance = reliance(goods, bounds);
    this.thrustAtCharge = assessor.scenario().flight().thrustAtChargeOrMidFlight();
  }

  /** No build of any box can rely on a larger share of its flight. */
  private static double reliance(Goods goods, Bounds bounds) {
    return !bounds.asksForPlan()
        ? 1
        : goods
            .assessor()
            .reliances()
            .most(
                goods.options(Role.PROPELLER).stream()
                    .map(Propeller.class::cast)
                    .toList(),
                goods.options(Role.BATTERY).stream().map(Battery.class::cast).toList());
  }

  /** Thrust that each rotor needs for a gram, N. */
  static double newtonsPerGram(double thrustLost) {
    return Units.GRAVITY_M_PER_S2 / 1000 / (1 - thrustLost) / Frame.ROTORS;
  }

  /** What is chosen of motors, propellers and batteries, one box each. */
  record Three(
      Box<MotorRelaxation> motors,
      Box<PropellerRelaxation> propellers,
      Box<BatteryRelaxation> batteries) {}

  /**
   * The objective that no build of a box surpasses.
   *
   * @param frame least that a frame adds that goes with all three
   * @param air what the frames that go with all three do to it at least
   * @param kits accessories
   */
  long most(Three three, Adds frame, FrameAir air, KitRelaxation kits) {
    var motor = three.motors.relaxation();
    var propeller = three.propellers.relaxation();
    var battery = three.batteries.relaxation();
    var grams = nothing.grams()
        + motor.adds().grams()
        + propeller.adds().grams()
        + battery.adds().grams()
        + frame.grams()
        + kits.leastGrams();
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
    var pieces = motor.adds().pieces()
        + propeller.adds().pieces()
        + battery.adds().pieces()
        + frame.pieces()
        + kits.pieces();
    var newtonsPerGram = newtonsPerGram(air.leastLost(propeller.diameterMm()));
    if (bounds.isTooMuch(grams, variance, cents)
        || !isStrongEnough(three, kits, bounds.leastThrustToWeight() * newtonsPerGram * grams)) {
      return Aim.HOPELESS;
    }
    var watts = watts(three, kits, grams, newtonsPerGram);
    var flown = bounds.flown(figure(
        three,
        kits,
        newtonsPerGram * grams,
        Units.GRAVITY_M_PER_S2 / 1000 * grams,
        watts,
        air.leastDragArea(grams)));
    return bounds.objective(
        flown,
        reliance,
        new Adds(grams, variance, watts, cents, pieces, 0),
        bounds.asksForThrust() ? thrustToWeight(three, kits, newtonsPerGram * grams) : 0);
  }

  /** Thrust over weight that no build of a box surpasses. */
  private double thrustToWeight(Three three, KitRelaxation kits, double hoverN) {
    var low = bounds.leastThrustToWeight();
    var high = MOST_THRUST_TO_WEIGHT;
    while (high - low > THRUST_STEP) {
      var middle = (low + high) / 2;
      if (isStrongEnough(three, kits, middle * hoverN)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /**
   * Least watts beside the motors, with each gram of accessories above the least counted as what it costs: of a flight at
   * speeds nobody knows that before three parts are decided.
   */
  private double watts(Three three, KitRelaxation kits, double grams, double newtonsPerGram) {
    if (speeds.asks()) {
      return kits.leastWatts();
    }
    var rate = wattsPerGram(three, kits, grams, newtonsPerGram);
    return Math.max(kits.watts().at(0), kits.support().traded(rate) - rate * kits.leastGrams());
  }

  /**
   * So many watts beside the motors cost no build of a box more than a gram does: looked at where spans of thrust begin
   * and end, at the highest and the lowest volts.
   *
   * @param grams of the lightest
   */
  private double wattsPerGram(
      Three three, KitRelaxation kits, double grams, double newtonsPerGram) {
    var motor = three.motors.relaxation();
    var propeller = three.propellers.relaxation();
    var pack = three.batteries.relaxation().pack();
    var high = pack.openVolts(pack.startCharge());
    var low = pack.openVolts(0);
    var lightN = grams * newtonsPerGram;
    var heavyN = bounds.capGrams() * newtonsPerGram;
    var first = spans.of(lightN);
    if (first < 0) {
      return 0;
    }
    var ripple = kits.loss().orElse(1);
    var light = new Turning(motor, propeller, ripple, first, lightN);
    var lightHighW = light.busW(high);
    var lightLowW = light.busW(low);
    var rate = Double.POSITIVE_INFINITY;
    for (var span = first;
        span < ends.length - 1 && (span == first || ends[span] < heavyN);
        span++) {
      for (var end = span; end <= span + 1; end++) {
        var more = (ends[end] - lightN) / newtonsPerGram;
        if (more > 0) {
          var heavy = new Turning(motor, propeller, ripple, span, ends[end]);
          rate = Math.min(
              rate, Math.min(heavy.busW(high) - lightHighW, heavy.busW(low) - lightLowW) / more);
        }
      }
    }
    return Double.isInfinite(rate) ? 0 : Math.max(0, rate * SURE_OF_RATE);
  }

  /**
   * Four motors at a thrust, with the least of everything that a box has.
   *
   * <p>With a motor's H = R Kv² and w = ω + H (Q + a), its volts are w/Kv and its ripple takes
   * (c/H) w² (1 − w/(Kv V))^1.5: no less than with the least c, the largest H and the least Kv at one end of all w,
   * since w² (1 − w/(Kv V))^1.5 has one hump.
   */
  private static final class Turning {
    private final double speed;
    private final double torque;
    private final double power;
    private final double amps;
    private final List<Load> loads;

    /**
     * @param share ripple of the boards over that of the law at least
     */
    Turning(
        MotorRelaxation motor,
        PropellerRelaxation propeller,
        double share,
        int span,
        double thrustN) {
      var root = Math.sqrt(thrustN);
      this.speed = propeller.speed().at(span) * root;
      var drag = motor.dragNm(speed);
      this.torque = propeller.torque().at(span) * thrustN + drag;
      this.power = propeller.shaft().at(span) * thrustN * root
          + speed * drag
          + motor.heat() * torque * torque;
      this.amps = torque * motor.kvLow();
      var speedHigh = propeller.speedHigh().at(span) * root;
      var torqueHigh = propeller.torqueHigh().at(span) * thrustN + motor.dragHighNm(speedHigh);
      var low = speed + motor.heat() * torque;
      var high = speedHigh + motor.warmHigh() * torqueHigh;
      var rises = motor.heat() * torque
          > SpeedController.RISES_WITH_THRUST * motor.rippleHigh() * share * high;
      var ripple = rises
          ? Frame.ROTORS * share * motor.ripple() * motor.kvLow() * motor.kvLow() / motor.heatHigh()
          : 0;
      this.loads = ripple == 0
          ? List.of(load(motor, low, 0))
          : List.of(load(motor, low, ripple), load(motor, high, ripple));
    }

    private Load load(MotorRelaxation motor, double turning, double ripple) {
      return new Load(
          Frame.ROTORS * power, turning / motor.kvLow(), ripple, Frame.ROTORS * motor.idleA(), 0);
    }

    /** Power of all motors and their controllers at some volts, W. */
    double busW(double volts) {
      return loads.stream().mapToDouble(load -> load.powerW(volts)).min().orElseThrow();
    }

    /** With so much for everything else, W. */
    List<Load> with(double watts) {
      return loads.stream().map(load -> load.and(watts)).toList();
    }
  }

  /** Seconds, or metres where the goal is range. */
  private double figure(
      Three three,
      KitRelaxation kits,
      double thrustN,
      double weightN,
      double watts,
      double dragArea) {
    var motor = three.motors.relaxation();
    var propeller = three.propellers.relaxation();
    var battery = three.batteries.relaxation();
    var span = spans.of(thrustN);
    if (span < 0) {
      return Double.POSITIVE_INFINITY;
    }
    var turning = new Turning(motor, propeller, kits.loss().orElse(1), span, thrustN);
    if (turning.amps > motor.amps()) {
      return 0;
    }
    var seconds = battery.drain().seconds(turning.with(watts), kits.ohm());
    if (!speeds.asks()) {
      return seconds;
    }
    var root = Math.sqrt(thrustN);
    var shaftW = Frame.ROTORS * propeller.shaft().at(span) * thrustN * root;
    return speeds.most(
        seconds,
        new SpeedBound.Costs(
            shaftW / share,
            Frame.ROTORS * thrustN,
            propeller.induced() * root,
            propeller.leastInduced() * root,
            propeller.diameterMm() / 2000 * propeller.speedHigh().at(span) * root,
            weightN,
            shaftW,
            turning.busW(battery.pack().openVolts(battery.pack().startCharge())) + watts,
            dragArea));
  }

  /**
   * Whether a thrust of each rotor may be had: at that thrust the motors stand their current, and the pack carries their
   * volts and power with no more than what it stands.
   */
  private boolean isStrongEnough(Three three, KitRelaxation kits, double thrustN) {
    var motor = three.motors.relaxation();
    var battery = three.batteries.relaxation();
    var span = spans.of(thrustN);
    if (span < 0) {
      return true;
    }
    var whole = three.propellers.relaxation().whole();
    var root = Math.sqrt(thrustN);
    var speed = whole.speed().at(span) * root;
    var drag = motor.dragNm(speed);
    var torque = whole.torque().at(span) * thrustN + drag;
    var power =
        whole.shaft().at(span) * thrustN * root + speed * drag + motor.heat() * torque * torque;
    var pack = battery.pack().behind(kits.ohm());
    var needed = speed / motor.kvHigh() + motor.drop() * torque;
    var charge = Math.min(thrustAtCharge, pack.startCharge());
    var open = pack.openVolts(charge);
    var ohm = pack.burstOhm(charge);
    var volts = Math.max(
        Math.max(needed, battery.floorVolts()),
        Math.max(open / 2, open - ohm * battery.burstAmps()));
    var amps = (open - volts) / ohm;
    return volts < open
        && torque * motor.kvLow() <= motor.burstAmps() * (1 + 1e-9)
        && volts * (amps - Frame.ROTORS * motor.idleA())
            >= (Frame.ROTORS * power + kits.leastWatts()) * (1 - 1e-9);
  }
}
