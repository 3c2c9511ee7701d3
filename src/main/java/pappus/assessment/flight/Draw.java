package pappus.assessment.flight;

/**
 * One consumer beside the motors.
 *
 * @param label what it is
 * @param watts at the battery, regulator losses included, W
 */
public record Draw(String label, double watts) {}
