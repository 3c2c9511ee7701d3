package pappus.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.fitting.Fitting;
import pappus.part.Part;

/**
 * What has to be bought to fly once, in whole selling units, without spares.
 *
 * @param lines one a part
 * @param cents sum, whole cents
 */
public record CostTable(List<Line> lines, long cents) {
  /**
   * One line of what is bought.
   *
   * @param label what it is
   * @param part the part
   * @param pieces how many fly
   * @param fromHand how many of them are at hand
   * @param units selling units to buy
   * @param cents price of them, whole cents; 0 if owned
   * @param owned whether the builder has all of them already
   */
  public record Line(
      String label, Part part, int pieces, int fromHand, int units, long cents, boolean owned) {}

  public CostTable {
    lines = List.copyOf(lines);
  }

  static CostTable of(List<Line> lines) {
    return new CostTable(lines, lines.stream().mapToLong(Line::cents).sum());
  }

  /**
   * Everything a build as it goes together is bought from.
   *
   * @param purse what of it costs nothing
   */
  static CostTable of(Fitting fitting, Purse purse) {
    var build = fitting.build();
    var lines = new ArrayList<Line>();
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
  private static Line line(
      String label, Part part, int pieces, Purse purse, Map<String, Integer> taken) {
    if (purse.hasAny(part)) {
      return new Line(label, part, pieces, pieces, part.sold().unitsFor(pieces), 0, true);
    }
    var before = taken.getOrDefault(part.id(), 0);
    var fromShelf = Math.min(pieces, Math.max(0, purse.shelf().owned(part) - before));
    if (fromShelf > 0) {
      taken.put(part.id(), before + fromShelf);
    }
    var units = part.sold().unitsFor(pieces - fromShelf);
    return new Line(
        label, part, pieces, fromShelf, units, units * part.price().cents(), fromShelf == pieces);
  }

  /** Pieces of each part that fly, whatever they serve as. */
  Map<Part, Integer> pieces() {
    var pieces = new LinkedHashMap<Part, Integer>();
    lines.forEach(line -> pieces.merge(line.part(), line.pieces(), Integer::sum));
    return pieces;
  }
}
