package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What a ranking trusts.
 *
 * <p>Why: src/site/markdown/decisions.md#a-cautious-outlook-moves-each-figure-half-a-deviation
 */
public enum Outlook {
  /** Uncertain figures count by their likeliest value. */
  @JsonProperty("expected")
  EXPECTED,
  /**
   * Each uncertain figure of a part counts half its deviation worse where more or less of it is known to be worse: all
   * but the thrust coefficient.
   */
  @JsonProperty("cautious")
  CAUTIOUS
}
