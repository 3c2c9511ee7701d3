package pappus.evidence;

import pappus.part.Known;

/**
 * What one record says of one figure, before anything is weighed.
 *
 * @param name in words; the trait's, unless how it was read matters
 * @param maker whose part it is
 * @param known how the figure is known
 * @param stated the record's own, without the known bias of labels
 * @param prior median of what parts of its class have
 * @param doubt one standard deviation of ln of the record's own figure
 * @param doubtIsOwn whether the record states that doubt
 */
record Reading(
    Trait trait,
    String name,
    String maker,
    Known known,
    double stated,
    double prior,
    double doubt,
    boolean doubtIsOwn) {
  /** An estimate as near to its prior says nothing about the part: it was worked out from the prior. */
  private static final double SAME_AS_PRIOR = 0.002;

  Reading(
      Trait trait,
      String maker,
      Known known,
      double stated,
      double prior,
      double doubt,
      boolean doubtIsOwn) {
    this(trait, trait.words(), maker, known, stated, prior, doubt, doubtIsOwn);
  }

  /** ln of the stated over the usual. */
  double away() {
    return StrictMath.log(stated / prior);
  }

  /** Whether it was worked out from the class, and so says nothing of the part. */
  boolean isOnItsLaw() {
    return known == Known.ESTIMATED && Math.abs(away()) < SAME_AS_PRIOR;
  }

  /** Whether nothing of a catalogue can make it more doubtful: its own bench says how sure it is. */
  boolean isBenched() {
    return known == Known.MEASURED && doubtIsOwn;
  }

  /** The same, known no better than what is worked out from similar parts. */
  Reading derived() {
    var asEstimated = doubt * Known.ESTIMATED.figureDoubt() / known.figureDoubt();
    return new Reading(trait, name, maker, Known.ESTIMATED, stated, prior, asEstimated, doubtIsOwn);
  }
}
