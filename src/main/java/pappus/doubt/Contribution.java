package pappus.doubt;

import pappus.reliance.Doubt;

/**
 * What one uncertain number does to what builds are ranked by: seconds of flight, or metres over ground.
 *
 * <p>Why: src/site/markdown/decisions.md#the-drag-area-is-a-doubt-of-forward-flight-alone
 *
 * @param doubt the number
 * @param source what it belongs to; the same for two builds that share it
 * @param deviation one standard deviation of its ln; of the mass, g
 * @param effect change at one standard deviation more, with its sign; mean of both ways
 * @param loss what is lost at one standard deviation the harmful way, at least 0
 * @param gain what is gained at one standard deviation the other way, at least 0
 */
public record Contribution(
    Doubt doubt, String source, double deviation, double effect, double loss, double gain) {

  /**
   * From the estimate itself and those at one deviation more and one less.
   */
  static Contribution of(
      Doubt doubt, String source, double deviation, double estimate, double more, double less) {
    return new Contribution(
        doubt,
        source,
        deviation,
        (more - less) / 2,
        Math.max(0, estimate - Math.min(more, less)),
        Math.max(0, Math.max(more, less) - estimate));
  }
}
