package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What a flight is to have as much of as it can. */
public enum Goal {
  /** Time in the air. */
  @JsonProperty("endurance")
  ENDURANCE,
  /** Distance over ground. */
  @JsonProperty("range")
  RANGE
}
