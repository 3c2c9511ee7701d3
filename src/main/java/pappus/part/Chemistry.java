package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * Kinds of lithium cells, with the volts people fly them at (common practice, no published source).
 *
 * <p>Why: src/site/markdown/decisions.md#two-enums-of-chemistries
 */
public enum Chemistry {
  @JsonProperty("lipo")
  LIPO("LiPo", 3.7, 4.20, 3.5, 3.0, 0.20),
  @JsonProperty("lihv")
  LIHV("high-voltage LiPo", 3.8, 4.35, 3.5, 3.0, 0.20),
  @JsonProperty("li-ion-power")
  LI_ION_POWER("Li-ion, power cells", 3.6, 4.20, 3.0, 2.5, 0.10),
  @JsonProperty("li-ion-energy")
  LI_ION_ENERGY("Li-ion, energy cells", 3.6, 4.20, 3.0, 2.5, 0.10);

  private final String label;
  private final double nominalVolts;
  private final double fullVolts;
  private final double landingVolts;
  private final double floorVolts;
  private final double reserve;

  Chemistry(
      String label,
      double nominalVolts,
      double fullVolts,
      double landingVolts,
      double floorVolts,
      double reserve) {
    this.label = label;
    this.nominalVolts = nominalVolts;
    this.fullVolts = fullVolts;
    this.landingVolts = landingVolts;
    this.floorVolts = floorVolts;
    this.reserve = reserve;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Nominal volts of a cell, by which label energy is counted. */
  public double nominalVolts() {
    return nominalVolts;
  }

  /** Volts of a full cell. */
  public double fullVolts() {
    return fullVolts;
  }

  /** Volts of a cell in steady flight at which to land. */
  public double landingVolts() {
    return landingVolts;
  }

  /** Volts of a cell at full throttle that must not be passed. */
  public double floorVolts() {
    return floorVolts;
  }

  /** Share of the charge that stays in the pack at landing. */
  public double reserve() {
    return reserve;
  }

  /** Capacities an hour at which packs are charged where nothing else is known. */
  public double usualChargeRate() {
    return isLithiumIon() ? 0.5 : 1;
  }

  /** Whether the cells are cylindrical Li-ion. */
  public boolean isLithiumIon() {
    return this == LI_ION_POWER || this == LI_ION_ENERGY;
  }
}
