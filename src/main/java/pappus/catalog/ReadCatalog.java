package pappus.catalog;

import java.util.List;
import java.util.Map;
import pappus.files.Fingerprint;

/**
 * A catalogue and what it was read from.
 *
 * @param inputs every file, in the order of reading
 * @param replacements every part that took the place of an earlier one
 * @param places where each part stands, by id
 */
public record ReadCatalog(
    Catalog catalog,
    List<Fingerprint> inputs,
    List<Replacement> replacements,
    Map<String, Place> places) {
  /**
   * Where a part stands.
   *
   * @param file as the user typed it
   * @param line where its record begins, from 1
   */
  public record Place(String file, int line) {}
}
