package pappus.weighing;

/**
 * One flight beside what is computed for it.
 *
 * @param row as it was logged
 * @param computedMilliampHours that the flight takes by the estimate
 * @param factor on the power of the propellers with which it takes what the charger put back
 */
public record FlightFit(FlightRow row, double computedMilliampHours, double factor) {}
