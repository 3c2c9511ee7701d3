package pappus.whatif.sweep;

import java.util.List;

/**
 * The best build at each step of one or two things that vary.
 *
 * @param axes one or two
 * @param steps the last axis fastest
 * @param searches how many searches it took
 */
public record Sweep(List<Axis> axes, List<Step> steps, int searches) {
  public Sweep {
    axes = List.copyOf(axes);
    steps = List.copyOf(steps);
  }

  /** Whether every step is proven. */
  public boolean isProof() {
    return steps.stream().allMatch(step -> step.best().isProof());
  }
}
