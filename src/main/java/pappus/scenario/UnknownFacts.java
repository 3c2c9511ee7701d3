package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What to do with a part of which the catalogue does not say enough. */
public enum UnknownFacts {
  /** Keep it and say what has to be looked up. */
  @JsonProperty("keep")
  KEEP,
  /** Leave it out. */
  @JsonProperty("leave-out")
  LEAVE_OUT
}
