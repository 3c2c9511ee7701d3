package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.assessment.MassTable;
import pappus.part.Known;
import pappus.scenario.MassCap;

/** What a build weighs at take-off. */
record MassJson(
    @JsonPropertyDescription("All of it, g.") double grams,
    @JsonPropertyDescription("One standard deviation, g.") double doubtGrams,

    @JsonPropertyDescription("Chance that it is under the cap, 0 to 1.")
    double chanceUnderCap,

    @JsonPropertyDescription("Everything that leaves the ground.")
    List<Line> lines) {
  /** One line of it. */
  record Line(
      @JsonPropertyDescription("What it is.") String what,

      @JsonPropertyDescription("Id of the part; left out for wire, payload and the like.")
      Optional<String> part,

      @JsonPropertyDescription("How many fly.") int pieces,

      @JsonPropertyDescription("Mass of all, g; below 0 for what is cut off.")
      double grams,

      @JsonPropertyDescription("One standard deviation of all, g.")
      double doubtGrams,

      @JsonPropertyDescription("How the mass is known.") Known known) {
    static Line of(MassTable.Line line, NamedParts parts) {
      return new Line(
          line.label(),
          line.part().map(parts::id),
          line.pieces(),
          line.grams(),
          line.doubtGrams(),
          line.each().known());
    }
  }

  static MassJson of(MassTable mass, MassCap cap, NamedParts parts) {
    return new MassJson(
        mass.grams(),
        mass.doubtGrams(),
        mass.chanceUnder(cap),
        mass.lines().stream().map(line -> Line.of(line, parts)).toList());
  }
}
