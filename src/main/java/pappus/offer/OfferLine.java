package pappus.offer;

import pappus.part.Part;

/**
 * One part of an offered build, in whole selling units.
 *
 * @param what it serves as
 * @param part which
 * @param pieces that fly
 * @param units selling units to buy, spares among them
 * @param spareUnits of those beyond what flies
 * @param cents price of all of them; 0 for what the customer has
 * @param standing whether it can be had
 * @param inStock selling units in stock; 0 where they were not counted
 */
public record OfferLine(
    String what,
    Part part,
    int pieces,
    int units,
    int spareUnits,
    long cents,
    Standing standing,
    int inStock) {
  /** Whether there is enough of it but for spares. */
  public boolean isEnoughToFly() {
    return inStock >= units - spareUnits;
  }

  /** Whether a part can be had. */
  public enum Standing {
    /** No stock was told. */
    NOT_COUNTED,
    /** Enough of it. */
    IN_STOCK,
    /** Too few of it. */
    SHORT,
    /** The shop does not list it. */
    TO_ORDER,
    /** The customer has it already. */
    CUSTOMERS
  }
}
