package pappus.physics.flight;

import pappus.physics.motor.WindingHeat;

/**
 * An aircraft hovering in still air. Power from the battery rises with weight, thrust lost, motor power and
 * avionics at any battery volts.
 *
 * @param thrustPerRotorN thrust of one rotor, N: weight over rotors, more by what arms and body take away
 * @param idealPowerW least power by momentum theory to carry the weight with no thrust lost, W; no real
 *     hover may need less
 * @param inducedSpeedMPerS induced speed of an ideal rotor at the rotors' thrust, m/s
 * @param steady what it asks of the battery
 * @param isHeld true if the propeller's table ends short of the speed, so that its end value was held
 */
public record Hover(
    double thrustPerRotorN,
    double idealPowerW,
    double inducedSpeedMPerS,
    SteadyFlight steady,
    boolean isHeld) {

  /** Solves for the motors' speed; the battery does not enter. */
  public static Hover of(Aircraft aircraft) {
    var propeller = aircraft.rotor().propeller();
    var weightN = aircraft.airframe().weightN();
    var thrustN = weightN / (1 - aircraft.airframe().thrustLost());
    var perRotorN = thrustN / aircraft.rotorCount();
    var speedRadPerS = propeller.speedForThrustRadPerS(perRotorN);
    var point = aircraft.rotor().motor().at(propeller.torqueNm(speedRadPerS), speedRadPerS);
    return new Hover(
        perRotorN,
        Momentum.idealPowerW(weightN, propeller.densityKgPerM3(), aircraft.discAreaM2()),
        Momentum.hoverInducedMPerS(thrustN, propeller.densityKgPerM3(), aircraft.discAreaM2()),
        new SteadyFlight(
            aircraft.rotorCount(), point, aircraft.rotor().controller(), aircraft.avionicsW()),
        propeller.isHeld(speedRadPerS));
  }

  /**
   * As {@link #of(Aircraft)} with each winding as warm as this hover makes it.
   *
   * @param thermalResistanceKPerW from winding to air, see {@link WindingHeat}
   */
  public static Hover warm(Aircraft aircraft, double thermalResistanceKPerW, double airK) {
    var cold = of(aircraft);
    var rotor = aircraft.rotor();
    var windingK = cold.windingK(rotor, thermalResistanceKPerW, airK);
    var warmRotor =
        new Rotor(rotor.propeller(), rotor.motor().withWindingAt(windingK), rotor.controller());
    return of(
        new Aircraft(aircraft.airframe(), aircraft.rotorCount(), warmRotor, aircraft.avionicsW()));
  }

  /** Temperature of a winding in this hover, K; an engineering estimate, see {@link WindingHeat}. */
  public double windingK(Rotor rotor, double thermalResistanceKPerW, double airK) {
    // Torque fixes the current, so the winding's own temperature does not move it.
    return WindingHeat.windingK(
        rotor.motor(), steady.point().currentA(), thermalResistanceKPerW, airK);
  }

  /** Least power over battery power; {@link EfficiencyBand} says what to expect. */
  public double efficiency(double busVolts) {
    return idealPowerW / steady.busPowerW(busVolts);
  }

  /** Share of the shaft power that induces the downwash, with {@link ForwardFlight#INDUCED_FACTOR}. */
  public double inducedPowerW() {
    return Math.min(
        ForwardFlight.INDUCED_FACTOR * steady.rotorCount() * thrustPerRotorN * inducedSpeedMPerS,
        steady.shaftPowerW());
  }

  /** Rest of the shaft power, which drags the blades through the air. */
  public double profilePowerW() {
    return steady.shaftPowerW() - inducedPowerW();
  }
}
