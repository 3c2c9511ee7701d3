package pappus.change;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * A way to make a build lighter.
 *
 * @param way what is done
 * @param what the thing it is done to, in words
 * @param grams saved
 * @param gained of what builds are ranked by, seconds or metres
 * @param cents more to pay; absent: depends on where it is bought
 * @param swap the swap, where it is one
 */
public record Saving(
    Way way, String what, double grams, double gained, OptionalLong cents, Optional<Swap> swap) {

  /** What is done. */
  public enum Way {
    /** Battery wires cut shorter. */
    SHORTER_WIRES,
    /** A smaller plug between pack and board. */
    SMALLER_PLUG,
    /** Steel motor screws replaced by titanium. */
    TITANIUM_SCREWS,
    /** Another part. */
    SWAP
  }

  /** Cents for each gram; what has no price of its own comes after all that has. */
  double centsPerGram() {
    return cents.isPresent() ? cents.getAsLong() / grams : Double.MAX_VALUE;
  }
}
