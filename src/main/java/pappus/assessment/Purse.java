package pappus.assessment;

import java.util.Set;
import pappus.catalog.Shelf;
import pappus.part.Part;
import pappus.scenario.AlsoBuy;

/**
 * What a builder has, and how much of what can be bought.
 *
 * @param ownedIds parts of which the scenario says that what one build needs is there
 * @param shelf parts that were counted
 * @param alsoBuy what is bought beside a build
 */
public record Purse(Set<String> ownedIds, Shelf shelf, AlsoBuy alsoBuy) {
  public Purse {
    ownedIds = Set.copyOf(ownedIds);
  }

  /** Whether what a build needs of a part costs nothing, however many that are. */
  boolean hasAny(Part part) {
    return ownedIds.contains(part.id());
  }

  /** Whether so many pieces of a part can be had at all. */
  public boolean canHave(Part part, int pieces) {
    return hasAny(part) || shelf.has(part, pieces);
  }
}
