package pappus.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pappus.files.Fingerprint;
import pappus.files.Problem;
import pappus.part.Flown;
import pappus.part.Lump;

/**
 * A catalogue and what it was read from.
 *
 * @param shelf what is at hand and what can be bought; prices on it are those of the catalogue's parts already
 * @param flown what own flights say, by way of flying
 * @param lumps parts already wired, by name
 * @param inputs every file, in the order of reading
 * @param replacements every part that took the place of an earlier one
 * @param places where each part stands, by id
 * @param strangers entries on the shelf for parts that are in no catalogue
 */
public record ReadCatalog(
    Catalog catalog,
    Shelf shelf,
    Map<String, Flown> flown,
    Map<String, Lump> lumps,
    List<Fingerprint> inputs,
    List<Replacement> replacements,
    Map<String, Place> places,
    List<Problem> strangers) {
  /** A shop's list may be long: the first few tell what is the matter. */
  private static final int MOST_STRANGERS = 3;

  /** What a user is to know of it before any answer. */
  public List<String> remarks() {
    var remarks = new ArrayList<String>();
    replacements.forEach(replacement -> remarks.add(replacement.toString()));
    remarks.addAll(first(strangers));
    return remarks;
  }

  /** The first few of what is listed and in no catalogue, and how many more there are. */
  public static List<String> first(List<Problem> strangers) {
    var first = new ArrayList<String>();
    strangers.stream().limit(MOST_STRANGERS).map(Problem::toString).forEach(first::add);
    if (strangers.size() > MOST_STRANGERS) {
      first.add("And %s more on the shelf; check names them."
          .formatted(strangers.size() - MOST_STRANGERS));
    }
    return first;
  }

  /**
   * Where a part stands.
   *
   * @param file as the user typed it
   * @param line where its record begins, from 1
   */
  public record Place(String file, int line) {}
}
