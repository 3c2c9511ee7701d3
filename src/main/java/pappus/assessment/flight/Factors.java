package pappus.assessment.flight;

import java.util.function.Consumer;
import pappus.evidence.BoardFigures;

/**
 * Multipliers on the uncertain numbers of a build, to see what a doubt does to endurance and range.
 *
 * @param thrust on the propeller's C_T, its figure of merit kept
 * @param merit on the propeller's figure of merit, C_T kept
 * @param resistance on the resistance of the motor's winding
 * @param noLoad on the motor's no-load current
 * @param cellResistance on the cells' resistance
 * @param capacity on the charge the pack delivers
 * @param loss on the ripple of the controllers at part load
 * @param thrustKept on the share of thrust that arms and body leave
 * @param drag on the airframe's drag area
 * @param avionics on what everything beside the motors draws
 * @param diameter on the propeller's diameter, its coefficients kept
 * @param slow on what minutes of current add to the cells' resistance
 * @param noLoadGrowth on the exponent of the motor's no-load current
 * @param wind on the power that wind takes
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
    double avionics,
    double diameter,
    double slow,
    double noLoadGrowth,
    double wind,
    double addedGrams,
    double addedWatts) {
  /** The numbers as they are. */
  public static final Factors NONE = new Values().factors();

  /** The numbers as they are, with something added. */
  public static Factors added(double grams, double watts) {
    return NONE.with(values -> {
      values.addedGrams = grams;
      values.addedWatts = watts;
    });
  }

  /** The numbers as they are, with controllers of which nothing is known switching twice as often as is taken. */
  public static Factors switchedTwiceAsOften() {
    return NONE.with(
        values -> values.loss = BoardFigures.rippleShareAt(2 * BoardFigures.USUAL_KILOHERTZ));
  }

  /** The numbers as they are, but for the power that propellers need and for what is added to the mass. */
  public static Factors powered(double power, double grams) {
    return NONE.with(values -> {
      values.merit = 1 / power;
      values.addedGrams = grams;
    });
  }

  /** These, but for what is changed. */
  public Factors with(Consumer<Values> change) {
    var values = new Values();
    values.thrust = thrust;
    values.merit = merit;
    values.resistance = resistance;
    values.noLoad = noLoad;
    values.cellResistance = cellResistance;
    values.capacity = capacity;
    values.loss = loss;
    values.thrustKept = thrustKept;
    values.drag = drag;
    values.avionics = avionics;
    values.diameter = diameter;
    values.slow = slow;
    values.noLoadGrowth = noLoadGrowth;
    values.wind = wind;
    values.addedGrams = addedGrams;
    values.addedWatts = addedWatts;
    change.accept(values);
    return values.factors();
  }

  /** Each by its name, to be changed. */
  public static final class Values {
    public double thrust = 1;
    public double merit = 1;
    public double resistance = 1;
    public double noLoad = 1;
    public double cellResistance = 1;
    public double capacity = 1;
    public double loss = 1;
    public double thrustKept = 1;
    public double drag = 1;
    public double avionics = 1;
    public double diameter = 1;
    public double slow = 1;
    public double noLoadGrowth = 1;
    public double wind = 1;
    public double addedGrams;
    public double addedWatts;

    private Values() {}

    private Factors factors() {
      return new Factors(
          thrust,
          merit,
          resistance,
          noLoad,
          cellResistance,
          capacity,
          loss,
          thrustKept,
          drag,
          avionics,
          diameter,
          slow,
          noLoadGrowth,
          wind,
          addedGrams,
          addedWatts);
    }
  }
}
