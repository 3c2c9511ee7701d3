package pappus.catalog;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How a number of a record is known, which decides how much it is trusted. */
public enum Known {
  /** Put on a scale or a bench by the one who wrote the record. */
  @JsonProperty("measured")
  MEASURED,
  /** The maker's own figure. */
  @JsonProperty("maker")
  MAKER,
  /** Worked out from similar parts. */
  @JsonProperty("estimated")
  ESTIMATED
}
