package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What a ranking trusts. */
public enum Outlook {
  /** Uncertain figures count by their likeliest value. */
  @JsonProperty("expected")
  EXPECTED,
  /** Each uncertain figure of a part counts half its deviation worse. */
  @JsonProperty("cautious")
  CAUTIOUS
}
