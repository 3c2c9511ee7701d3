package pappus.physics.battery;

/** How used up a pack is: engineering estimates, no published source. */
public enum Ageing {
  NEW(1, 1, 1, 1),
  /** About 100 flights, or a year. */
  USED(0.93, 1.3, 0.95, 1.2),
  /** At the end of its useful life. */
  TIRED(0.80, 2.0, 0.80, 1.8);

  private final double pouchCapacityFactor;
  private final double pouchResistanceFactor;
  private final double cylindricalCapacityFactor;
  private final double cylindricalResistanceFactor;

  Ageing(
      double pouchCapacityFactor,
      double pouchResistanceFactor,
      double cylindricalCapacityFactor,
      double cylindricalResistanceFactor) {
    this.pouchCapacityFactor = pouchCapacityFactor;
    this.pouchResistanceFactor = pouchResistanceFactor;
    this.cylindricalCapacityFactor = cylindricalCapacityFactor;
    this.cylindricalResistanceFactor = cylindricalResistanceFactor;
  }

  double pouchCapacityFactor() {
    return pouchCapacityFactor;
  }

  double pouchResistanceFactor() {
    return pouchResistanceFactor;
  }

  double cylindricalCapacityFactor() {
    return cylindricalCapacityFactor;
  }

  double cylindricalResistanceFactor() {
    return cylindricalResistanceFactor;
  }
}
