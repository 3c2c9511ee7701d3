package pappus.catalog;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.files.json.JsonReader;
import pappus.part.Lump;

/** Lumps of catalogue files by their names; one of a later file takes the place of an earlier one's. */
final class LumpFiles {
  private final Map<String, Lump> byName = new TreeMap<>();
  private final Map<String, String> places = new TreeMap<>();

  /**
   * Reads one file.
   *
   * @param problems gain what is wrong in it
   * @return what took the place of a lump of an earlier file
   */
  List<Replacement> read(Source source, Problems problems) {
    var replaced = new ArrayList<Replacement>();
    var inFile = new TreeMap<String, Integer>();
    for (var listed : JsonReader.readList(source, Lump.LIST, Lump.LIST, Lump.class, problems)) {
      var lump = listed.value();
      var twin = inFile.putIfAbsent(lump.name(), listed.line());
      var place = source.name() + ":" + listed.line();
      if (twin != null) {
        var record = Lump.LIST + "[" + listed.index() + "]";
        problems.add(JsonPlaces.of(source, listed, record)
            .problem(
                record + ".name",
                "must be there once, but %s is in line %s too.".formatted(lump.name(), twin)));
        continue;
      }
      byName.put(lump.name(), lump);
      var before = places.put(lump.name(), place);
      if (before != null) {
        replaced.add(new Replacement("The lump " + lump.name(), before, place));
      }
    }
    return replaced;
  }

  Map<String, Lump> values() {
    return Collections.unmodifiableMap(byName);
  }
}
