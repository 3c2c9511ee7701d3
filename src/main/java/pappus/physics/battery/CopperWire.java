package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * Resistance of copper wire by its gauge: diameters of ASTM B258, resistivity of annealed copper at 20 °C of
 * IEC 60028, taken as solid. Stranded wire is about 2 % above it.
 */
public final class CopperWire {
  private static final double RESISTIVITY_OHM_M = 1.7241e-8;

  private CopperWire() {}

  /** Resistance of a single conductor, Ω/m; current flows out and back, so a lead counts twice. */
  public static double ohmPerM(int gauge) {
    Require.inRange("gauge", gauge, 4, 40);
    var diameterM = 0.127e-3 * StrictMath.pow(92, (36 - gauge) / 39.0);
    return RESISTIVITY_OHM_M / (Math.PI / 4 * diameterM * diameterM);
  }
}
