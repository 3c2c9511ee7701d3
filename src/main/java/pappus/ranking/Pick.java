package pappus.ranking;

import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.doubt.Band;

/**
 * A build that stands for what one may want most.
 *
 * @param kind what it is picked for
 * @param build our opinion on it
 * @param band how sure its flight is
 * @param isProven whether no build that is believed serves better
 */
public record Pick(Kind kind, Assessment build, Band band, boolean isProven) {
  /** What one may want most. */
  public enum Kind {
    /** The longest flight to plan with. */
    LONGEST,
    /** The farthest flight to plan with. */
    FARTHEST,
    /** The cheapest that plans with nearly as much. */
    THRIFTY,
    /** The most thrust over weight of those that still plan with most of it. */
    STRONGEST,
    /** The lightest of them. */
    LIGHTEST,
    /** The cheapest that flies as much as is asked for. */
    CHEAPEST,
    /** What is most of it at hand. */
    OWNED;

    /** Whether it is picked for its flight alone. */
    public boolean isOfFlight() {
      return this == LONGEST || this == FARTHEST;
    }

    /** In results, on the command line and in tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
