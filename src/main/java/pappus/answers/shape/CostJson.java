package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.assessment.CostTable;
import pappus.scenario.OwnLine;

/** What a build costs. */
record CostJson(
    @JsonPropertyDescription("What is to buy, cents.") long cents,
    @JsonPropertyDescription("Every part.") List<Line> lines,

    @JsonPropertyDescription("What is no part; left out where there is nothing.")
    Optional<List<Own>> own) {
  /** What is no part. */
  record Own(
      @JsonPropertyDescription("What it is.") String text,
      @JsonPropertyDescription("Its price, cents.") long cents) {
    static Own of(OwnLine line) {
      return new Own(line.text(), line.cents());
    }
  }

  /** One line of it. */
  record Line(
      @JsonPropertyDescription("What it is.") String what,
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("How many fly.") int pieces,

      @JsonPropertyDescription("How many are wanted beyond those; left out where none is.")
      Optional<Integer> spares,

      @JsonPropertyDescription("How many of all of them are at hand.")
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
          Optional.of(line.spares()).filter(spares -> spares > 0),
          line.fromHand(),
          line.units(),
          line.cents(),
          line.part().price().currency(),
          line.owned());
    }
  }

  static CostJson of(CostTable cost, NamedParts parts) {
    return new CostJson(
        cost.cents(),
        cost.lines().stream().map(line -> Line.of(line, parts)).toList(),
        Optional.of(cost.own().stream().map(Own::of).toList()).filter(own -> !own.isEmpty()));
  }
}
