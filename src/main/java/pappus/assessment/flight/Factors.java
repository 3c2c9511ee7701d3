package pappus.assessment.flight;

/**
 * Multipliers on the uncertain numbers of a build, to see what a doubt does to endurance and range.
 *
 * @param thrust on the propeller's C_T, its figure of merit kept
 * @param merit on the propeller's figure of merit, C_T kept
 * @param resistance on the resistance of the motor's winding
 * @param noLoad on the motor's no-load current
 * @param cellResistance on the cells' resistance
 * @param capacity on the charge the pack delivers
 * @param loss on the controllers' part-load loss
 * @param thrustKept on the share of thrust that arms and body leave
 * @param drag on the airframe's drag area
 * @param addedGrams on top of the mass, g
 * @param addedWatts on top of what everything beside the motors draws, W at the battery
 */
public record Factors(
    double thrust,
    double merit,
    double resistance,
    double noLoad,
    double cellResistance,
    double capacity,
    double loss,
    double thrustKept,
    double drag,
    double addedGrams,
    double addedWatts) {
  /** The numbers as they are. */
  public static final Factors NONE = new Factors(1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0);

  /** The numbers as they are, with something added. */
  public static Factors added(double grams, double watts) {
    return new Factors(1, 1, 1, 1, 1, 1, 1, 1, 1, grams, watts);
  }

  /** The numbers as they are, but for the power that propellers need and for what is added to the mass. */
  public static Factors powered(double power, double grams) {
    return new Factors(1, 1 / power, 1, 1, 1, 1, 1, 1, 1, grams, 0);
  }
}
