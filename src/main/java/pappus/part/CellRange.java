package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** Cells in series a part allows. */
public record CellRange(
    @JsonPropertyDescription("Fewest.") int from,
    @JsonPropertyDescription("Most.") int to) {
  public CellRange {
    Require.inRange("from", from, 1, 14);
    Require.inRange("to", to, from, 14);
  }

  /** Whether so many cells are allowed. */
  public boolean holds(int cells) {
    return cells >= from && cells <= to;
  }

  @Override
  public String toString() {
    return from == to ? Integer.toString(from) : from + " to " + to;
  }
}
