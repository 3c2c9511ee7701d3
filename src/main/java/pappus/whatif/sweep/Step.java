package pappus.whatif.sweep;

import java.util.List;
import pappus.change.Changed;
import pappus.ranking.Best;

/**
 * One step of a sweep.
 *
 * @param values one an axis
 * @param best the best build there
 * @param changed how it differs from that of the step before along the last axis; empty where it does not, and at the
 *     first
 * @param isCarriedOver whether it follows from a looser step without a search
 */
public record Step(List<String> values, Best best, List<Changed> changed, boolean isCarriedOver) {
  public Step {
    values = List.copyOf(values);
    changed = List.copyOf(changed);
  }
}
