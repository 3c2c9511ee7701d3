package pappus.physics.flight;

/**
 * An aircraft hovering in still air. Power from the battery rises with weight, thrust lost, motor power and
 * avionics at any battery volts.
 *
 * @param thrustPerRotorN thrust of one rotor, N: weight over rotors, more by what arms and body take away
 * @param idealPowerW least power by momentum theory to carry the weight with no thrust lost, W; no real
 *     hover may need less
 * @param inducedSpeedMPerS induced speed of an ideal rotor at the rotors' thrust, m/s
 * @param steady what it asks of the battery
 * @param isBeyondTest true if the propeller was not tested at the speed
 */
public record Hover(
    double thrustPerRotorN,
    double idealPowerW,
    double inducedSpeedMPerS,
    SteadyFlight steady,
    boolean isBeyondTest) {

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
        propeller.isBeyondTest(speedRadPerS));
  }

  /**
   * The same in wind, which takes so many times the shaft power, see {@link ForwardFlight#windFactor}.
   *
   * @param factor 1 or more
   */
  public Hover inWind(Aircraft aircraft, double factor) {
    return factor == 1
        ? this
        : new Hover(
            thrustPerRotorN,
            idealPowerW,
            inducedSpeedMPerS,
            SteadyFlight.ofShaftPower(aircraft, factor * steady.shaftPowerW()),
            isBeyondTest);
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
