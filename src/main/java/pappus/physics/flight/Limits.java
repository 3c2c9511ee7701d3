package pappus.physics.flight;

import pappus.quantity.Require;

/**
 * Currents that parts allow, A; infinity where none is known. Continuous ones hold in hover and cruise, burst
 * ones at full throttle: the caller says which by what it passes.
 *
 * @param motorA current of one motor
 * @param controllerA motor current through one controller
 * @param packA current of the whole battery
 * @param connectorA same, through its connector
 * @param leadA same, through its leads
 */
public record Limits(
    double motorA, double controllerA, double packA, double connectorA, double leadA) {
  /** No limit known. */
  public static final Limits NONE = new Limits(
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY);

  public Limits {
    requirePositive("motorA", motorA);
    requirePositive("controllerA", controllerA);
    requirePositive("packA", packA);
    requirePositive("connectorA", connectorA);
    requirePositive("leadA", leadA);
  }

  double busA() {
    return Math.min(packA, Math.min(connectorA, leadA));
  }

  double eachMotorA() {
    return Math.min(motorA, controllerA);
  }

  private static void requirePositive(String name, double value) {
    if (value != Double.POSITIVE_INFINITY) {
      Require.positive(name, value);
    }
  }
}
