package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * Battery plugs. Currents, resistance and mass are common practice without a published source.
 */
public enum Connector {
  @JsonProperty("ph2")
  PH2("PH 2 mm", 3, 6, 15, 0.3),
  @JsonProperty("rcy")
  RCY("RCY type", 3, 8, 8, 0.5),
  @JsonProperty("one-cell-low-resistance")
  ONE_CELL("low-resistance one-cell type", 8, 15, 3, 0.4),
  @JsonProperty("xt30")
  XT30("XT30", 15, 30, 1.1, 1.25),
  @JsonProperty("xt60")
  XT60("XT60", 30, 60, 0.6, 3.5);

  private final String label;
  private final double continuousAmps;
  private final double burstAmps;
  private final double milliohms;
  private final double halfGrams;

  Connector(
      String label, double continuousAmps, double burstAmps, double milliohms, double halfGrams) {
    this.label = label;
    this.continuousAmps = continuousAmps;
    this.burstAmps = burstAmps;
    this.milliohms = milliohms;
    this.halfGrams = halfGrams;
  }

  /** Whether chargers with it charge one cell: a pack of more must not have it. */
  public boolean isForOneCell() {
    return this == ONE_CELL;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Current without end, A. */
  public double continuousAmps() {
    return continuousAmps;
  }

  /** Current for some seconds, A. */
  public double burstAmps() {
    return burstAmps;
  }

  /** Resistance of a mated pair, both poles, mΩ. */
  public double milliohms() {
    return milliohms;
  }

  /** Mass of one half, g. */
  public double halfGrams() {
    return halfGrams;
  }
}
