package pappus.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.catalog.Part;
import pappus.compatibility.Fitting;

/**
 * What has to be bought to fly once, in whole selling units, without spares.
 *
 * @param lines one a part
 * @param cents sum, whole cents
 */
public record CostTable(List<CostLine> lines, long cents) {
  public CostTable {
    lines = List.copyOf(lines);
  }

  static CostTable of(List<CostLine> lines) {
    return new CostTable(lines, lines.stream().mapToLong(CostLine::cents).sum());
  }

  /**
   * Everything a build as it goes together is bought from.
   *
   * @param purse what of it costs nothing
   */
  static CostTable of(Fitting fitting, Purse purse) {
    var build = fitting.build();
    var lines = new ArrayList<CostLine>();
    var taken = new HashMap<String, Integer>();
    build
        .parts()
        .forEach(
            (role, part) -> lines.add(line(role.label(), part, build.count(role), purse, taken)));
    for (var item : fitting.hardware().items()) {
      item.part()
          .ifPresent(part -> lines.add(line(item.label(), part, item.pieces(), purse, taken)));
    }
    return of(lines);
  }

  /** @param taken pieces at hand that went into lines before, by part */
  private static CostLine line(
      String label, Part part, int pieces, Purse purse, Map<String, Integer> taken) {
    if (purse.hasAny(part)) {
      return new CostLine(label, part, pieces, pieces, part.sold().unitsFor(pieces), 0, true);
    }
    var before = taken.getOrDefault(part.id(), 0);
    var fromShelf = Math.min(pieces, Math.max(0, purse.shelf().owned(part) - before));
    if (fromShelf > 0) {
      taken.put(part.id(), before + fromShelf);
    }
    var units = part.sold().unitsFor(pieces - fromShelf);
    return new CostLine(
        label, part, pieces, fromShelf, units, units * part.price().cents(), fromShelf == pieces);
  }

  /** Pieces of each part that fly, whatever they serve as. */
  Map<Part, Integer> pieces() {
    var pieces = new LinkedHashMap<Part, Integer>();
    lines.forEach(line -> pieces.merge(line.part(), line.pieces(), Integer::sum));
    return pieces;
  }
}
