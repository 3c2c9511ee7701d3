package pappus.physics.motor;

/**
 * A motor turning steadily under load.
 *
 * @param speedRadPerS shaft speed, rad/s
 * @param torqueNm torque at the shaft, N·m
 * @param currentA motor current, A; at part throttle it is above what the battery gives
 * @param volts mean volts across the motor, its controller's path and leads
 */
public record OperatingPoint(double speedRadPerS, double torqueNm, double currentA, double volts) {

  public double shaftPowerW() {
    return torqueNm * speedRadPerS;
  }

  public double electricalPowerW() {
    return currentA * volts;
  }

  /** Shaft power over electrical power; 0 at rest. */
  public double efficiency() {
    return electricalPowerW() > 0 ? shaftPowerW() / electricalPowerW() : 0;
  }
}
