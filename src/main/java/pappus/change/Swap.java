package pappus.change;

import java.util.List;
import pappus.assessment.Assessment;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.assessment.flight.FlightEstimate;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Goal;

/**
 * A build with another part in one role, and with what had to change along with it.
 *
 * <p>Why: src/site/markdown/decisions.md#a-swap-answers-for-what-it-breaks-anew
 *
 * @param role whose part was swapped
 * @param part the new one
 * @param base the build before
 * @param assessment the build after
 * @param alongside other roles that changed
 * @param isCutShort whether more small parts could have been tried to make it go together
 */
public record Swap(
    Role role,
    Part part,
    Assessment base,
    Assessment assessment,
    List<Changed> alongside,
    boolean isCutShort) {
  public Swap {
    alongside = List.copyOf(alongside);
  }

  /** A swap for which all was tried. */
  public Swap(
      Role role, Part part, Assessment base, Assessment assessment, List<Changed> alongside) {
    this(role, part, base, assessment, alongside, false);
  }

  static Swap of(Role role, Part part, Assessment base, Assessment assessment, boolean isCutShort) {
    return new Swap(
        role,
        part,
        base,
        assessment,
        Changed.between(base.build(), assessment.build()).stream()
            .filter(changed -> changed.role() != role)
            .toList(),
        isCutShort);
  }

  /** Rules that are broken after it and were not before. */
  public List<Finding> broken() {
    return assessment.broken().stream()
        .filter(finding ->
            base.broken().stream().noneMatch(before -> before.rule().equals(finding.rule())))
        .toList();
  }

  /** Limits that are missed after it, and were not before or by less. */
  public List<Limit> missed() {
    return assessment.limits().stream()
        .filter(limit -> !limit.met()
            && base.limits().stream()
                .noneMatch(before -> before.id().equals(limit.id())
                    && before.excessMillionths() >= limit.excessMillionths()))
        .toList();
  }

  /** Whether it takes the flight away. */
  public boolean grounds() {
    return assessment.flight().isEmpty() && base.flight().isPresent();
  }

  /** Whether nothing is broken after it that was not broken before. */
  public boolean breaksNothing() {
    return broken().isEmpty() && missed().isEmpty() && !grounds();
  }

  /** What is gained of what builds are ranked by, seconds or metres; below zero for a loss. */
  public double gained() {
    return Assessment.figure(assessment.flown() - base.flown());
  }

  /**
   * What is gained of what a goal asks for: seconds, metres, grams less, or thrust-to-weight; below zero for a loss. Of
   * the price it is the flight, since that is what money buys.
   */
  public double gained(Goal goal) {
    return switch (goal) {
      case ENDURANCE, RANGE, PRICE -> gained();
      case MASS -> -gramsMore();
      case THRUST -> thrust(assessment) - thrust(base);
    };
  }

  private static double thrust(Assessment build) {
    return build.flight().map(FlightEstimate::thrustToWeight).orElse(0.0);
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
