package pappus.physics.flight;

/**
 * Level flight at an airspeed.
 *
 * @param airspeedMPerS speed through the air, m/s
 * @param tiltRad tilt of the discs forward, rad
 * @param thrustN thrust of all rotors, N, before what arms and body take away
 * @param steady what it asks of the battery
 * @param isClamped true if theory promised less power than multirotors have been seen to need
 * @param isBeyondTest true if the propeller was not tested at the speed
 */
public record Cruise(
    double airspeedMPerS,
    double tiltRad,
    double thrustN,
    SteadyFlight steady,
    boolean isClamped,
    boolean isBeyondTest) {}
