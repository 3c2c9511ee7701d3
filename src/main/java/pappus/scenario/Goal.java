package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What builds are ranked by. */
public enum Goal {
  /** As long in the air as can be. */
  @JsonProperty("endurance")
  ENDURANCE,
  /** As far over ground as can be. */
  @JsonProperty("range")
  RANGE,
  /** As cheap as can be. */
  @JsonProperty("price")
  PRICE,
  /** As light as can be, all-up. */
  @JsonProperty("mass")
  MASS,
  /** As much thrust-to-weight as can be. */
  @JsonProperty("thrust")
  THRUST;

  /** Whether it is more of a flight; else there is a least flight that is good enough. */
  public boolean isOfFlight() {
    return this == ENDURANCE || this == RANGE;
  }
}
