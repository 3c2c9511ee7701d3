package pappus.catalog;

/**
 * A part that took the place of one of an earlier folder.
 *
 * @param earlier file and line of the part replaced
 * @param later file and line of the part that counts
 */
public record Replacement(String id, String earlier, String later) {
  /** A sentence for people. */
  @Override
  public String toString() {
    return "%s at %s takes the place of that at %s.".formatted(id, later, earlier);
  }
}
