package pappus.compatibility;

import pappus.part.Frame;

/**
 * A rule that a frame breaks with parts that are too large for it, and with none that are smaller: a search may ask it
 * with the least sizes of many parts, and what breaks it then breaks it with each of them.
 *
 * <p>Why: src/site/markdown/decisions.md#sizes-need-no-pairs
 */
public interface SizeRule extends CompatibilityRule {
  /** Sizes of which each by itself is the largest that may keep the rule on a frame, mm. */
  Sizes room(Frame frame);

  /** Whether parts of some sizes that have room may keep it together on a frame, whatever is added. */
  default boolean mayTake(Frame frame, Sizes sizes) {
    return true;
  }
}
