package pappus.doubt;

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
  Factors moved(Factors factors, double by) {
    var factor = this == MASS ? 1 : StrictMath.exp(by);
    return new Factors(
        factors.thrust() * (this == THRUST ? factor : 1),
        factors.merit() * (this == MERIT ? factor : 1),
        factors.resistance() * (this == RESISTANCE ? factor : 1),
        factors.noLoad() * (this == NO_LOAD ? factor : 1),
        factors.cellResistance() * (this == CELL_RESISTANCE ? factor : 1),
        factors.capacity() * (this == CAPACITY ? factor : 1),
        factors.loss() * (this == LOSS ? factor : 1),
        factors.thrustKept() / (this == THRUST_LOST ? factor : 1),
        factors.drag() * (this == DRAG ? factor : 1),
        factors.addedGrams() + (this == MASS ? by : 0),
        factors.addedWatts());
  }
}
