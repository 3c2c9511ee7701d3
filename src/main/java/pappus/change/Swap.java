package pappus.change;

import java.util.List;
import pappus.assessment.Assessment;
import pappus.catalog.Part;
import pappus.catalog.Role;

/**
 * A build with another part in one role, and with what had to change along with it.
 *
 * @param role whose part was swapped
 * @param part the new one
 * @param base the build before
 * @param assessment the build after
 * @param alongside other roles that changed
 */
public record Swap(
    Role role, Part part, Assessment base, Assessment assessment, List<Changed> alongside) {
  public Swap {
    alongside = List.copyOf(alongside);
  }

  static Swap of(Role role, Part part, Assessment base, Assessment assessment) {
    return new Swap(
        role,
        part,
        base,
        assessment,
        Changed.between(base.build(), assessment.build()).stream()
            .filter(changed -> changed.role() != role)
            .toList());
  }

  /** What is gained of what builds are ranked by, seconds or metres; below zero for a loss. */
  public double gained() {
    return Assessment.figure(assessment.objective() - base.objective());
  }

  /** Cents more; below zero for less. */
  public long centsMore() {
    return assessment.cost().cents() - base.cost().cents();
  }

  /** Grams more; below zero for less. */
  public double gramsMore() {
    return assessment.mass().grams() - base.mass().grams();
  }
}
