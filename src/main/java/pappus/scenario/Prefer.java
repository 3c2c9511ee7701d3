package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What goes before more of a flight among builds that plan with nearly as much as the best.
 *
 * <p>Why:
 * src/site/markdown/decisions.md#what-is-owned-goes-before-more-of-a-flight-only-among-builds-that-plan-with-nearly-as-much
 */
public enum Prefer {
  /** As few pieces to buy as can be, then as little money. */
  @JsonProperty("owned")
  OWNED
}
