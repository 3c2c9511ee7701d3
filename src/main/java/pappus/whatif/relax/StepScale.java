package pappus.whatif.relax;

import pappus.assessment.Assessment;
import pappus.change.Asked;

/** A demand that can be loosened step by step. */
interface StepScale {
  /** Whether each step allows all that the one before does. */
  default boolean isOrdered() {
    return true;
  }

  /** How far it goes; step 0 is as asked. */
  int steps();

  /** What is asked at a step. */
  Asked at(int step);

  /** The value at a step, with its unit. */
  String shown(int step);

  /** The first step that allows what a build has; beyond the last if none does. */
  int first(Assessment build);
}
