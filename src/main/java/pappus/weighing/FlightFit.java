package pappus.weighing;

import java.util.OptionalDouble;

/**
 * One flight beside what is computed for it.
 *
 * @param row as it was logged
 * @param computedMilliampHours that the flight takes by the estimate
 * @param factor on the power of the propellers with which it takes what the charger put back
 * @param computedLandingVolts of the pack in flight after what the charger put back, with that factor; absent where the
 *     record has not so much charge
 * @param cells of its pack in series
 */
public record FlightFit(
    FlightRow row,
    double computedMilliampHours,
    double factor,
    OptionalDouble computedLandingVolts,
    int cells) {
  /**
   * How far a reading in flight and an estimate may lie apart, V a cell: the display's last digit, and what 3 % of
   * charge are near the end of a pack (engineering estimate).
   */
  public static final double LANDING_DOUBT = 0.1;

  /** Volts a cell that were read at landing above those computed; absent where either is. */
  public OptionalDouble landingDifference() {
    return row.landingVolts().isPresent() && computedLandingVolts.isPresent()
        ? OptionalDouble.of(
            (row.landingVolts().getAsDouble() - computedLandingVolts.getAsDouble()) / cells)
        : OptionalDouble.empty();
  }
}
