package pappus.physics.battery;

import pappus.quantity.Require;

/**
 * One cell in the condition in which it is flown.
 *
 * @param openCircuitVolts rested volts over state of charge
 * @param resistanceOhm direct-current resistance after ten seconds over state of charge, Ω
 * @param slowOhm what minutes of current add to that, Ω
 * @param warming how it warms itself
 * @param capacityCoulomb charge from full to empty, A·s
 * @param startCharge state of charge at take-off
 */
public record Cell(
    Curve openCircuitVolts,
    Curve resistanceOhm,
    double slowOhm,
    Warming warming,
    double capacityCoulomb,
    double startCharge) {

  public Cell {
    Require.notNegative("slowOhm", slowOhm);
    Require.positive("capacityCoulomb", capacityCoulomb);
    Require.inRange("startCharge", startCharge, 0, 1);
  }

  /**
   * A cell of a chemistry.
   *
   * @param labelCoulomb charge on the label, A·s
   * @param newOhm resistance when new, after ten seconds, at 25 °C and half charge, Ω
   * @param slowShare of the slow resistance of its chemistry that it has, 1 for the likeliest
   */
  public static Cell of(
      Chemistry chemistry,
      double labelCoulomb,
      double newOhm,
      double slowShare,
      Condition condition) {
    Require.positive("labelCoulomb", labelCoulomb);
    Require.positive("newOhm", newOhm);
    var used = chemistry.temperatureResistanceFactor(condition.temperatureK())
        * chemistry.agedResistanceFactor(condition.ageing());
    var coulomb = labelCoulomb
        * condition.deliveredShare()
        * Temperature.capacityFactor(condition.temperatureK())
        * chemistry.agedCapacityFactor(condition.ageing());
    return new Cell(
        chemistry.openCircuitVolts(),
        chemistry.resistanceShape().times(newOhm * used),
        slowShare * chemistry.slowOhm(labelCoulomb, newOhm) * used,
        Warming.inDownwash(chemistry, condition.temperatureK()),
        coulomb,
        condition.startCharge());
  }

  /** So many of these in parallel, counted as one. */
  public Cell inParallel(int parallel) {
    return parallel == 1
        ? this
        : new Cell(
            openCircuitVolts,
            resistanceOhm.times(1.0 / parallel),
            slowOhm / parallel,
            warming.shared(parallel),
            capacityCoulomb * parallel,
            startCharge);
  }

  /**
   * At least as good as two cells of one chemistry, place and state of charge at take-off: the most charge, the least
   * resistance, the warmest.
   */
  public Cell best(Cell other) {
    return new Cell(
        openCircuitVolts,
        resistanceOhm.at(Pack.HALF_CHARGE) <= other.resistanceOhm.at(Pack.HALF_CHARGE)
            ? resistanceOhm
            : other.resistanceOhm,
        Math.min(slowOhm, other.slowOhm),
        warming.warmer(other.warming),
        Math.max(capacityCoulomb, other.capacityCoulomb),
        startCharge);
  }
}
