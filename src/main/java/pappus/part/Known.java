package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How a number of a record is known, which decides how much it is trusted. */
public enum Known {
  /** Put on a scale or a bench by the one who wrote the record. */
  @JsonProperty("measured")
  MEASURED(0.02),
  /** The maker's own figure. */
  @JsonProperty("maker")
  MAKER(0.05),
  /** Worked out from similar parts. */
  @JsonProperty("estimated")
  ESTIMATED(0.10);

  private final double figureDoubt;

  Known(double figureDoubt) {
    this.figureDoubt = figureDoubt;
  }

  /** One standard deviation of a coefficient so known, share of its value (engineering estimate). */
  public double figureDoubt() {
    return figureDoubt;
  }
}
