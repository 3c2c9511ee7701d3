package pappus.whatif.relax;

import java.util.List;
import pappus.assessment.Assessment;
import pappus.ranking.Best;

/**
 * What stands in the way of a scenario.
 *
 * <p>Why: src/site/markdown/decisions.md#relaxing-looks-400-000-times-at-most-in-each-search
 *
 * @param best the best build as it is asked, if there is one after all
 * @param conflict demands that together leave no build, and no one of which can be taken out without one becoming
 *     possible, all other demands set aside; empty if no build goes together even without any demand
 * @param reliefs the smallest change of each demand that helps by itself
 * @param together where none helps by itself: pairs of demands of which giving up both makes a build possible; where no
 *     pair does, demands of which none can be kept once the others are
 * @param clashes which rules set parts apart
 * @param isProof whether every "no" in it is proven
 * @param isCutShort whether it was ended before it was done
 * @param searches how many searches it took
 */
public record Relaxation(
    Best best,
    List<Demand> conflict,
    List<SmallestRelaxation> reliefs,
    List<Together> together,
    List<ClashCount> clashes,
    boolean isProof,
    boolean isCutShort,
    int searches) {
  public Relaxation {
    conflict = List.copyOf(conflict);
    reliefs = List.copyOf(reliefs);
    together = List.copyOf(together);
    clashes = List.copyOf(clashes);
  }

  /**
   * Demands given up together, and the best build then.
   *
   * @param isBest whether it is proven that no build then is better
   */
  public record Together(List<Demand> demands, Assessment build, boolean isBest) {
    public Together {
      demands = List.copyOf(demands);
    }
  }

  /** Whether anything was found that makes a build possible. */
  public boolean helps() {
    return best.build().isPresent() || !reliefs.isEmpty() || !together.isEmpty();
  }
}
