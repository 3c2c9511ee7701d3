package pappus.ranking;

import java.util.List;
import pappus.assessment.Assessment;

/**
 * Builds in the order of a ranking, each of which needs less mass or costs less than all before it: the first that keeps
 * a lower cap and a lower budget is the best of all builds that keep them, however far the search came.
 *
 * @param builds best first
 * @param isWhole whether nothing comes after them
 */
public record Lookup(List<Assessment> builds, boolean isWhole) {
  /** Where nothing can be looked up. */
  public static final Lookup NOTHING = new Lookup(List.of(), false);

  public Lookup {
    builds = List.copyOf(builds);
  }
}
