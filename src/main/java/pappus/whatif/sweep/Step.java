package pappus.whatif.sweep;

import java.util.List;
import java.util.Optional;
import pappus.change.Changed;
import pappus.ranking.Best;
import pappus.whatif.relax.Demand;

/**
 * One step of a sweep.
 *
 * @param values one an axis
 * @param best the best build there
 * @param changed how it differs from that of the step before along the last axis; empty where it does not, and at the
 *     first
 * @param isCarriedOver whether it follows from a looser step without a search
 * @param inTheWay where no build is feasible: demands that together leave none, whatever else is given up; empty if no
 *     build goes together even without any demand. Absent where a build is, or that could not be proven
 */
public record Step(
    List<String> values,
    Best best,
    List<Changed> changed,
    boolean isCarriedOver,
    Optional<List<Demand>> inTheWay) {
  public Step {
    values = List.copyOf(values);
    changed = List.copyOf(changed);
    inTheWay = inTheWay.map(List::copyOf);
  }
}
