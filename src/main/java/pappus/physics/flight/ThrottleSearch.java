package pappus.physics.flight;

import pappus.physics.motor.MotorModel;
import pappus.physics.motor.OperatingPoint;
import pappus.physics.motor.SpeedController;
import pappus.physics.propeller.PropellerInAir;
import pappus.quantity.Root;

/**
 * Finds the speed of {@link FullThrottle}. At each limit either the motor's current or the battery's, and with
 * it its volts, is known, so that one equation in the speed is left.
 */
final class ThrottleSearch {
  private final Aircraft aircraft;
  private final PropellerInAir propeller;
  private final MotorModel motor;
  private final double openVolts;
  private final double ohm;
  private final double floorVolts;

  ThrottleSearch(Aircraft aircraft, double openVolts, double ohm, double floorVolts) {
    this.aircraft = aircraft;
    this.propeller = aircraft.rotor().propeller();
    this.motor = aircraft.rotor().motor();
    this.openVolts = openVolts;
    this.ohm = ohm;
    this.floorVolts = floorVolts;
  }

  FullThrottle within(Limits limits) {
    if (openVolts - ohm * idleBusA(floorVolts) <= floorVolts || fullExcessVolts(0) <= 0) {
      return atRest(ThrottleLimit.FLOOR_VOLTS);
    }
    var speed = fullSpeedRadPerS();
    var motorA = motorA(speed);
    var volts = motor.volts(motorA, speed);
    var busA = aircraft.rotorCount() * motorA + idleBusA(Math.max(volts, floorVolts));
    var limit = ThrottleLimit.FULL_DUTY;
    var allowedBusA = Math.min(limits.busA(), (openVolts - floorVolts) / ohm);
    var busVolts = volts;
    if (busA > allowedBusA) {
      limit = busLimit(limits, allowedBusA);
      busVolts = openVolts - ohm * allowedBusA;
      if (allowedBusA <= busA(0, busVolts)) {
        return atRest(limit);
      }
      speed = speedAtBusA(allowedBusA, busVolts, speed);
      motorA = motorA(speed);
      busA = allowedBusA;
    }
    if (motorA > limits.eachMotorA()) {
      if (limits.eachMotorA() <= motorA(0)) {
        return atRest(motorLimit(limits));
      }
      limit = motorLimit(limits);
      speed = speedAtMotorA(limits.eachMotorA(), speed);
      return balanced(speed, limit);
    }
    return result(speed, limit, busA, busVolts);
  }

  /** At a speed of the motors below that of full throttle. */
  FullThrottle at(double speedRadPerS) {
    return balanced(speedRadPerS, ThrottleLimit.FULL_DUTY);
  }

  /** Speed with the controllers fully open; below the floor the avionics' current is that at the floor. */
  private double fullSpeedRadPerS() {
    var top = motor.kvRadPerSPerV() * openVolts;
    return Root.ofFalling(this::fullExcessVolts, 0, top, fullGuess(top));
  }

  private double fullExcessVolts(double speed) {
    var motorA = motorA(speed);
    var volts = motor.volts(motorA, speed);
    var busA = aircraft.rotorCount() * motorA + idleBusA(Math.max(volts, floorVolts));
    return openVolts - ohm * busA - volts;
  }

  /** Full speed if torque went with the square of the speed and the no-load current were that of 0.7 of the top. */
  private double fullGuess(double top) {
    var speed = 0.7 * top;
    var pathOhm = motor.resistanceOhm() + aircraft.rotorCount() * ohm;
    var square = motor.kvRadPerSPerV() * propeller.torqueNm(speed) / (speed * speed) * pathOhm;
    var linear = 1 / motor.kvRadPerSPerV();
    var constant = openVolts - ohm * idleBusA(openVolts) - motor.noLoadCurrentA(speed) * pathOhm;
    var root = Math.sqrt(linear * linear + 4 * square * Math.max(constant, 0));
    return 2 * Math.max(constant, 0) / (linear + root);
  }

  private double speedAtMotorA(double allowedA, double top) {
    var guess = top * Math.sqrt(allowedA / motorA(top));
    return Root.ofFalling(speed -> allowedA - motorA(speed), 0, top, guess);
  }

  private double speedAtBusA(double allowedA, double busVolts, double top) {
    var eachA = (allowedA - idleBusA(busVolts)) / aircraft.rotorCount();
    var guess = top * StrictMath.cbrt(Math.min(eachA / driveA(top, busVolts), 1));
    return Root.ofFalling(speed -> eachA - driveA(speed, busVolts), 0, top, guess);
  }

  /** Battery current of one motor and its controller, without the controller's idle current. */
  private double driveA(double speed, double busVolts) {
    var motorA = motorA(speed);
    var volts = motor.volts(motorA, speed);
    var ripple = aircraft.rotor().controller().rippleS();
    return (motorA * volts + SpeedController.ripplePowerW(ripple, volts, busVolts)) / busVolts;
  }

  /** The battery under a speed of the motors that it is known to carry at more than the floor. */
  private FullThrottle balanced(double speed, ThrottleLimit limit) {
    var volts = motor.volts(motorA(speed), speed);
    var least = Math.max(volts, floorVolts);
    var busVolts = Root.ofFalling(
        bus -> openVolts - ohm * busA(speed, bus) - bus, least, openVolts, openVolts);
    return result(speed, limit, busA(speed, busVolts), busVolts);
  }

  private double busA(double speed, double busVolts) {
    return aircraft.rotorCount() * driveA(speed, busVolts) + idleBusA(busVolts);
  }

  private double idleBusA(double busVolts) {
    return aircraft.rotorCount() * aircraft.rotor().controller().idleA()
        + aircraft.avionicsW() / busVolts;
  }

  private double motorA(double speed) {
    return motor.currentA(propeller.torqueNm(speed), speed);
  }

  private FullThrottle result(double speed, ThrottleLimit limit, double busA, double busVolts) {
    var point = motor.at(propeller.torqueNm(speed), speed);
    return new FullThrottle(
        aircraft.rotorCount() * propeller.thrustN(speed),
        Math.min(point.volts() / busVolts, 1),
        limit,
        point,
        busA,
        busVolts,
        propeller.isBeyondTest(speed));
  }

  private FullThrottle atRest(ThrottleLimit limit) {
    return new FullThrottle(0, 0, limit, new OperatingPoint(0, 0, 0, 0), 0, openVolts, false);
  }

  private static ThrottleLimit motorLimit(Limits limits) {
    return limits.motorA() <= limits.controllerA() ? ThrottleLimit.MOTOR : ThrottleLimit.CONTROLLER;
  }

  private static ThrottleLimit busLimit(Limits limits, double allowedA) {
    if (allowedA < limits.busA()) {
      return ThrottleLimit.FLOOR_VOLTS;
    }
    if (allowedA == limits.packA()) {
      return ThrottleLimit.PACK;
    }
    return allowedA == limits.connectorA() ? ThrottleLimit.CONNECTOR : ThrottleLimit.LEAD;
  }
}
