package pappus.assessment;

import java.util.List;

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
}
