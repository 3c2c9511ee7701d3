package pappus.assessment;

import java.util.Set;
import pappus.catalog.Shelf;
import pappus.part.Part;

/**
 * What a builder has, and how much of what can be bought.
 *
 * @param ownedIds parts that the scenario says are there in any number
 * @param shelf parts that were counted
 */
public record Purse(Set<String> ownedIds, Shelf shelf) {
  public Purse {
    ownedIds = Set.copyOf(ownedIds);
  }

  /** Whether a part costs nothing, however many of it are needed. */
  boolean hasAny(Part part) {
    return ownedIds.contains(part.id());
  }

  /** Whether so many pieces of a part can be had at all. */
  public boolean canHave(Part part, int pieces) {
    return hasAny(part) || shelf.has(part, pieces);
  }
}
