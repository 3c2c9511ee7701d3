package pappus.reliance;

import pappus.assessment.flight.Factors;

/** A number of a build that is not known for sure. */
public enum Doubt {
  THRUST("the propeller's thrust coefficient"),
  MERIT("the propeller's figure of merit"),
  RESISTANCE("the motor's resistance"),
  NO_LOAD("the motor's no-load current"),
  CELL_RESISTANCE("the cells' resistance"),
  CAPACITY("the charge the pack delivers"),
  LOSS("the speed controllers' loss at part load"),
  THRUST_LOST("the thrust lost to arms and body"),
  DRAG("the airframe's drag area"),
  MERIT_WITH_SPEED("how the propeller's figure of merit goes with speed"),
  NO_LOAD_GROWTH("how the motor's no-load current grows with speed"),
  DIAMETER("the propeller's diameter"),
  SLOW_RESISTANCE("what minutes of current add to the cells' resistance"),
  AVIONICS("what the electronics draw"),
  WIND("what wind costs"),
  MASS("the mass");

  private final String label;

  Doubt(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /**
   * The numbers with this one moved.
   *
   * @param by ln of the factor on it (of the thrust lost: of the inverse of what is kept); for the mass, grams
   */
  public Factors moved(Factors factors, double by) {
    var factor = StrictMath.exp(by);
    return factors.with(values -> {
      switch (this) {
        case THRUST -> values.thrust *= factor;
        case MERIT -> values.merit *= factor;
        case RESISTANCE -> values.resistance *= factor;
        case NO_LOAD -> values.noLoad *= factor;
        case CELL_RESISTANCE -> values.cellResistance *= factor;
        case CAPACITY -> values.capacity *= factor;
        case LOSS -> values.loss *= factor;
        case THRUST_LOST -> values.thrustKept /= factor;
        case DRAG -> values.drag *= factor;
        case MERIT_WITH_SPEED -> values.merit *= factor;
        case NO_LOAD_GROWTH -> values.noLoadGrowth *= factor;
        case DIAMETER -> values.diameter *= factor;
        case SLOW_RESISTANCE -> values.slow *= factor;
        case AVIONICS -> values.avionics *= factor;
        case WIND -> values.wind *= factor;
        case MASS -> values.addedGrams += by;
      }
    });
  }
}
