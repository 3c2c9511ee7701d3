package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How used up the pack is. */
public enum PackAge {
  @JsonProperty("new")
  NEW,
  /** About 100 flights, or a year. */
  @JsonProperty("used")
  USED,
  /** At the end of its useful life. */
  @JsonProperty("tired")
  TIRED
}
