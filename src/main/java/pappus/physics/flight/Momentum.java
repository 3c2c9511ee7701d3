package pappus.physics.flight;

/**
 * Momentum theory of an ideal rotor: the least power that any rotor of that disc area can do with.
 *
 * <p>Glauert's formula in forward flight (H. Glauert, Aeronautical Research Committee R. &amp; M. 1111, 1926,
 * from memory, not re-read in print).
 */
public final class Momentum {
  private Momentum() {}

  /** Induced speed in hover, m/s: √(T/(2 ρ A)). */
  public static double hoverInducedMPerS(double thrustN, double densityKgPerM3, double discAreaM2) {
    return Math.sqrt(thrustN / (2 * densityKgPerM3 * discAreaM2));
  }

  /** Ideal power in hover, W: thrust times induced speed. */
  public static double idealPowerW(double thrustN, double densityKgPerM3, double discAreaM2) {
    return thrustN * hoverInducedMPerS(thrustN, densityKgPerM3, discAreaM2);
  }

  /**
   * Induced speed in forward flight, m/s: v = v_h²/√((V cos α)² + (V sin α + v)²).
   *
   * @param hoverInducedMPerS v_h at the same thrust, m/s
   * @param airspeedMPerS V, m/s
   * @param tiltSine sine of α, the discs' tilt forward, 0 to 1
   */
  public static double inducedMPerS(
      double hoverInducedMPerS, double airspeedMPerS, double tiltSine) {
    var through = airspeedMPerS * tiltSine;
    var alongSquared = airspeedMPerS * airspeedMPerS * (1 - tiltSine * tiltSine);
    var h2 = hoverInducedMPerS * hoverInducedMPerS;
    // v² ((V cos α)² + (V sin α + v)²) − v_h⁴ rises and is convex: Newton comes down from v_h.
    var induced = hoverInducedMPerS;
    for (var step = 0; step < 60; step++) {
      var across = through + induced;
      var flow = alongSquared + across * across;
      var excess = induced * induced * flow - h2 * h2;
      var next = induced - excess / (2 * induced * (flow + induced * across));
      if (induced - next <= 1e-13 * induced) {
        return next;
      }
      induced = next;
    }
    return induced;
  }
}
