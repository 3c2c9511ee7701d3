package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
   * @param owned ids of parts that cost nothing
   */
  static CostTable of(Fitting fitting, Set<String> owned) {
    var build = fitting.build();
    var lines = new ArrayList<CostLine>();
    build
        .parts()
        .forEach((role, part) -> lines.add(line(role.label(), part, build.count(role), owned)));
    for (var item : fitting.hardware().items()) {
      item.part().ifPresent(part -> lines.add(line(item.label(), part, item.pieces(), owned)));
    }
    return of(lines);
  }

  private static CostLine line(String label, Part part, int pieces, Set<String> owned) {
    var has = owned.contains(part.id());
    var units = part.sold().unitsFor(pieces);
    return new CostLine(
        label, part, pieces, units, has ? 0 : units * part.price().cents(), has);
  }
}
