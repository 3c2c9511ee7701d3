package pappus.assessment;

import java.util.ArrayList;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Frame;
import pappus.catalog.Role;
import pappus.compatibility.Fitting;
import pappus.evidence.Weighing;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.LandingRule;
import pappus.physics.flight.Limits;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;

/** Flies builds as a scenario asks, by one weighing of their uncertain figures. */
final class Flights {
  private static final double HALF_CHARGE = 0.5;

  /** Of a frame that states none, m²: an engineering estimate. */
  private static final double ASSUMED_DRAG_AREA = 0.005;

  private final Scenario scenario;
  private final FlightModels models;
  private final CoursePlanner courses;

  Flights(Scenario scenario, Weighing weighing) {
    this.scenario = scenario;
    this.models = new FlightModels(scenario, weighing);
    this.courses = new CoursePlanner(scenario);
  }

  /** As it is rated, by the figures as they count. */
  FlightEstimate fly(Fitting fitting, double grams) {
    return fly(fitting, grams, Factors.NONE, FlightModels.continuous(fitting.build()));
  }

  /**
   * With numbers changed.
   *
   * @param grams all-up mass, g
   * @param continuous currents that steady flight must not pass
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  FlightEstimate fly(Fitting fitting, double grams, Factors factors, Limits continuous) {
    var build = fitting.build();
    var battery = build.battery().orElseThrow();
    var lost = Math.max(0, 1 - (1 - scenario.flight().thrustLostOrUsual()) * factors.thrustKept());
    var drag = build.frame().orElseThrow().dragAreaSquareMetres();
    var airframe = new Airframe(
        (grams + factors.addedGrams()) / 1000,
        lost,
        factors.drag() * (drag == null ? ASSUMED_DRAG_AREA : drag));
    var rotor = models.rotor(build, factors);
    var draws = Avionics.draws(fitting);
    var avionicsW = draws.stream().mapToDouble(Draw::watts).sum();
    var aircraft = new Aircraft(airframe, build.frame().orElseThrow().rotors(), rotor, avionicsW);
    var pack = models.pack(build, factors);
    var hover = Hover.of(aircraft);
    var burst = FlightModels.burst(build);
    var floor = floorVolts(battery);
    var fullCharge = Math.min(scenario.flight().thrustAtChargeOrMidFlight(), pack.startCharge());
    var full = FullThrottle.of(aircraft, pack, fullCharge, floor, burst);
    var fresh = FullThrottle.of(aircraft, pack, pack.startCharge(), floor, burst);
    var flown = courses.hovers()
        ? Optional.<CoursePlanner.Flown>empty()
        : Optional.of(courses.fly(aircraft, hover, full, pack, landing(build), continuous));
    var endurance = flown.isPresent()
        ? flown.get().endurance()
        : Endurance.of(hover.steady(), pack, landing(build), continuous);
    var delivery = pack.deliver(hover.steady().load(), HALF_CHARGE);
    var volts = delivery instanceof Delivery.Delivered now ? now.terminalVolts() : 0;
    var disbelief = Hints.disbelief(
        build,
        airframe.massKg(),
        courses.hovers(),
        hover,
        volts,
        full.thrustToWeight(airframe),
        endurance.seconds());
    var hints = new ArrayList<>(disbelief);
    hints.addAll(Hints.knownBadly(build, rotor, hover, full, volts));
    flown.ifPresent(course -> hints.addAll(Hints.course(course.course(), drag == null)));
    return new FlightEstimate(
        hover,
        volts,
        volts > 0 ? hover.steady().busCurrentA(volts) : 0,
        volts > 0 ? hover.steady().duty(volts) : 1,
        split(hover, volts),
        volts > 0 ? hover.efficiency(volts) : 0,
        draws,
        endurance,
        flown.map(CoursePlanner.Flown::course),
        full.thrustToWeight(airframe),
        fresh.thrustToWeight(airframe),
        full,
        continuous,
        burst,
        hints,
        !disbelief.isEmpty());
  }

  /**
   * The most that a build only begun can reach, whatever is added.
   *
   * @param begun has motor, propeller and battery; its board and lead count if they are chosen
   * @param grams least all-up mass, g
   * @param watts least draw of everything but the motors at the battery, W
   * @param loss least part-load loss of the controllers; absent: by the law
   * @param dragArea least drag area, m²
   */
  Ceiling most(Build begun, double grams, double watts, OptionalDouble loss, double dragArea) {
    var battery = begun.battery().orElseThrow();
    var airframe = new Airframe(grams / 1000, scenario.flight().thrustLostOrUsual(), dragArea);
    var rotor = models.rotor(begun.motor().orElseThrow(), begun.propeller().orElseThrow(), loss);
    var rotors = begun.count(Role.MOTOR);
    var aircraft = new Aircraft(airframe, rotors, rotor, watts);
    var pack = models.packBegun(begun);
    var hover = Hover.of(aircraft);
    var continuous = FlightModels.continuous(begun);
    var fullCharge = Math.min(scenario.flight().thrustAtChargeOrMidFlight(), pack.startCharge());
    var full =
        FullThrottle.of(aircraft, pack, fullCharge, floorVolts(battery), FlightModels.burst(begun));
    var thrustToWeight = full.thrustToWeight(airframe);
    if (!courses.hovers()) {
      var flown = courses.fly(aircraft, hover, full, pack, landing(begun), continuous);
      return new Ceiling(
          scenario.goalOrEndurance() == Goal.RANGE
              ? flown.course().rangeMetres()
              : flown.endurance().seconds(),
          thrustToWeight);
    }
    if (!isCarriedInHover(hover, pack, continuous)) {
      return new Ceiling(0, thrustToWeight);
    }
    return new Ceiling(
        Endurance.of(hover.steady(), pack, landing(begun), continuous).seconds(), thrustToWeight);
  }

  /** The limits on currents and throttle in hover: what breaks them with the least load is never feasible. */
  private static boolean isCarriedInHover(Hover hover, Pack pack, Limits continuous) {
    var steady = hover.steady();
    var motorA = steady.point().currentA();
    if (motorA > continuous.motorA() || motorA > continuous.controllerA()) {
      return false;
    }
    if (!(pack.deliver(steady.load(), HALF_CHARGE) instanceof Delivery.Delivered now)) {
      return false;
    }
    var amps = now.currentA();
    return amps <= continuous.packA()
        && amps <= continuous.connectorA()
        && amps <= continuous.leadA()
        && steady.duty(now.terminalVolts()) <= LimitTable.MOST_DUTY;
  }

  /** A board's own part-load loss, if it has one. */
  OptionalDouble ownLoss(Board board) {
    return models.ownLoss(board);
  }

  /** Drag area that counts for a frame, m². */
  static double dragArea(Frame frame) {
    var own = frame.dragAreaSquareMetres();
    return own == null ? ASSUMED_DRAG_AREA : own;
  }

  private static PowerSplit split(Hover hover, double volts) {
    var steady = hover.steady();
    var electrical = steady.rotorCount() * steady.point().electricalPowerW();
    var rotors = volts > 0 ? steady.busPowerW(volts) - steady.avionicsW() : electrical;
    return new PowerSplit(
        hover.inducedPowerW(),
        hover.profilePowerW(),
        electrical - steady.shaftPowerW(),
        rotors - electrical,
        steady.avionicsW());
  }

  private LandingRule landing(Build build) {
    var chemistry = build.battery().orElseThrow().chemistry();
    var reserve = scenario.flight().reserve();
    var volts = scenario.flight().landingVoltsPerCell();
    return new LandingRule(
        reserve == null ? chemistry.reserve() : reserve,
        volts == null ? chemistry.landingVolts() : volts);
  }

  private double floorVolts(pappus.catalog.Battery battery) {
    var asked = scenario.flight().floorVoltsPerCell();
    return asked == null ? battery.chemistry().floorVolts() : asked;
  }
}
