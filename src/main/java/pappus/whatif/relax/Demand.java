package pappus.whatif.relax;

import java.util.Optional;
import pappus.change.Asked;

/**
 * Something that a scenario asks for, and that may be given up.
 *
 * @param id its name in results
 * @param text what it asks for, in words
 * @param givenUp what is done about it where it has no steps, or none of them helps, in words; empty where its last
 *     step allows as much as giving it up
 * @param dial to loosen it by steps; absent if it is kept or not
 * @param change takes it out of what is asked
 */
public record Demand(
    String id, String text, String givenUp, Optional<StepScale> dial, Change change) {
  /** Takes a demand out of what is asked. */
  interface Change {
    Asked without(Asked asked);
  }
}
