package pappus.inspection;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import pappus.catalog.Catalog;
import pappus.part.Kind;
import pappus.part.Part;

/**
 * Parts of one kind, maker and name under two ids: one part that was entered twice counts as a choice, and one
 * of the two will be forgotten when its price changes.
 */
final class Twins {
  private Twins() {}

  private record Named(Kind kind, String maker, String name) {
    static Named of(Part part) {
      return new Named(part.kind(), folded(part.maker()), folded(part.name()));
    }
  }

  /** Of each pair the later by id, with the earlier. */
  static Map<Part, Part> in(Catalog catalog) {
    var first = new HashMap<Named, Part>();
    var twins = new LinkedHashMap<Part, Part>();
    for (var part : catalog.parts()) {
      var other = first.putIfAbsent(Named.of(part), part);
      if (other != null) {
        twins.put(part, other);
      }
    }
    return twins;
  }

  /** Alike to the eye is alike: case, kinds of blanks and hyphens, and what cannot be seen do not count. */
  private static String folded(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKC)
        .replaceAll("\\p{Cf}", "")
        .replaceAll("[\\s\\p{Pd}_]+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }
}
