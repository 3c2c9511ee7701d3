package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What a part needs of the board's serial ports. */
public enum SerialNeed {
  @JsonProperty("full")
  FULL,
  /** Half a port, for control alone; the part also works without. */
  @JsonProperty("half")
  HALF,
  @JsonProperty("none")
  NONE
}
