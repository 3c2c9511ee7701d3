package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * One cell in the condition in which it is flown.
 *
 * @param openCircuitVolts rested volts over state of charge
 * @param resistanceOhm direct-current resistance after ten seconds over state of charge, Ω
 * @param capacityCoulomb charge from full to empty, A·s
 * @param startCharge state of charge at take-off
 */
public record Cell(
    Curve openCircuitVolts, Curve resistanceOhm, double capacityCoulomb, double startCharge) {

  public Cell {
    Require.positive("capacityCoulomb", capacityCoulomb);
    Require.inRange("startCharge", startCharge, 0, 1);
  }

  /**
   * A cell of a chemistry.
   *
   * @param labelCoulomb charge on the label, A·s
   * @param newOhm resistance when new, after ten seconds, at 25 °C and half charge, Ω
   */
  public static Cell of(
      Chemistry chemistry, double labelCoulomb, double newOhm, Condition condition) {
    Require.positive("labelCoulomb", labelCoulomb);
    Require.positive("newOhm", newOhm);
    var ohm = newOhm
        * chemistry.temperatureResistanceFactor(condition.temperatureK())
        * chemistry.agedResistanceFactor(condition.ageing());
    var coulomb = labelCoulomb
        * condition.deliveredShare()
        * Temperature.capacityFactor(condition.temperatureK())
        * chemistry.agedCapacityFactor(condition.ageing());
    return new Cell(
        chemistry.openCircuitVolts(),
        chemistry.resistanceShape().times(ohm),
        coulomb,
        condition.startCharge());
  }
}
