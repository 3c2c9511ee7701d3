package pappus.catalog;

import java.util.List;
import java.util.Map;
import pappus.files.Fingerprint;
import pappus.files.Problem;
import pappus.part.Flown;

/**
 * A catalogue and what it was read from.
 *
 * @param shelf what is at hand and what can be bought; prices on it are those of the catalogue's parts already
 * @param flown what own flights say, by way of flying
 * @param inputs every file, in the order of reading
 * @param replacements every part that took the place of an earlier one
 * @param places where each part stands, by id
 * @param strangers entries on the shelf for parts that are in no catalogue
 */
public record ReadCatalog(
    Catalog catalog,
    Shelf shelf,
    Map<String, Flown> flown,
    List<Fingerprint> inputs,
    List<Replacement> replacements,
    Map<String, Place> places,
    List<Problem> strangers) {
  /**
   * Where a part stands.
   *
   * @param file as the user typed it
   * @param line where its record begins, from 1
   */
  public record Place(String file, int line) {}
}
