package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.assessment.CostTable;

/** What a build costs. */
record CostJson(
    @JsonPropertyDescription("What is to buy, cents.") long cents,
    @JsonPropertyDescription("Every part.") List<Line> lines) {
  /** One line of it. */
  record Line(
      @JsonPropertyDescription("What it is.") String what,
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("How many fly.") int pieces,

      @JsonPropertyDescription("How many of them are at hand.")
      int atHand,

      @JsonPropertyDescription("Selling units to buy.") int units,

      @JsonPropertyDescription("Price of them, cents; 0 if owned.")
      long cents,

      @JsonPropertyDescription("Three capital letters as in ISO 4217.")
      String currency,

      @JsonPropertyDescription("Whether all of them are owned.")
      boolean owned) {
    static Line of(CostTable.Line line, NamedParts parts) {
      return new Line(
          line.label(),
          parts.id(line.part()),
          line.pieces(),
          line.fromHand(),
          line.units(),
          line.cents(),
          line.part().price().currency(),
          line.owned());
    }
  }

  static CostJson of(CostTable cost, NamedParts parts) {
    return new CostJson(
        cost.cents(), cost.lines().stream().map(line -> Line.of(line, parts)).toList());
  }
}
