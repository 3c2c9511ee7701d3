package pappus.physics.flight;

import pappus.physics.battery.Load;
import pappus.physics.motor.OperatingPoint;
import pappus.physics.motor.SpeedController;

/**
 * What steady flight asks of a battery. The motors' side depends on the thrust alone and not on the battery's
 * volts; what the controllers add does.
 *
 * @param point each motor's speed, torque, current and volts
 * @param avionicsW everything but the motors, W
 */
public record SteadyFlight(
    int rotorCount, OperatingPoint point, SpeedController controller, double avionicsW) {

  /** With the propellers turning as fast as takes a shaft power of all rotors, W. */
  static SteadyFlight ofShaftPower(Aircraft aircraft, double shaftPowerW) {
    var propeller = aircraft.rotor().propeller();
    var speed = propeller.speedForPowerRadPerS(shaftPowerW / aircraft.rotorCount());
    var point = aircraft.rotor().motor().at(propeller.torqueNm(speed), speed);
    return new SteadyFlight(
        aircraft.rotorCount(), point, aircraft.rotor().controller(), aircraft.avionicsW());
  }

  /** Power from the battery, W, while its terminals are at busVolts. */
  public double busPowerW(double busVolts) {
    return rotorCount * controller.busPowerW(point, busVolts) + avionicsW;
  }

  /** Current from the battery, A, while its terminals are at busVolts. */
  public double busCurrentA(double busVolts) {
    return busPowerW(busVolts) / busVolts;
  }

  /** How far the controllers are open; above 1 the battery is too low for this flight. */
  public double duty(double busVolts) {
    return point.volts() / busVolts;
  }

  public double shaftPowerW() {
    return rotorCount * point.shaftPowerW();
  }

  public Load load() {
    return new Load(
        rotorCount * point.electricalPowerW(),
        point.volts(),
        rotorCount * controller.rippleS(),
        rotorCount * controller.idleA(),
        avionicsW);
  }
}
