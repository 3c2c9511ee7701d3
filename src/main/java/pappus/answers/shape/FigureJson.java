package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.evidence.BuildFigures;
import pappus.evidence.Reason;
import pappus.part.Build;

/** An uncertain figure of a part: what its record states, its class has, and what counts. */
record FigureJson(
    @JsonPropertyDescription("Id of the part.") String part,
    @JsonPropertyDescription("The figure, in words.") String what,

    @JsonPropertyDescription("Unit of the three figures; left out for a pure number.")
    Optional<String> unit,

    @JsonPropertyDescription("What the record states, without the known bias of labels.")
    Optional<Double> stated,

    @JsonPropertyDescription("What parts of its class have.")
    double usualForItsClass,

    @JsonPropertyDescription("The likeliest, which is computed with.")
    double counted,

    @JsonPropertyDescription("One standard deviation of it, %.")
    double deviationPercent,

    @JsonPropertyDescription(
        "What makes it count otherwise than stated: class, narrow-catalogue, scatter, maker, blunder, ceiling.")
    List<String> drawnBy) {
  /** Of all parts of a build. */
  static List<FigureJson> of(Build build, BuildFigures figures) {
    return figures.all(build).stream().map(FigureJson::of).toList();
  }

  private static FigureJson of(BuildFigures.Of one) {
    var figure = one.figure();
    return new FigureJson(
        one.part().id(),
        figure.name(),
        Optional.of(figure.unit()).filter(unit -> !unit.isEmpty()),
        figure.stated(),
        figure.prior(),
        figure.posterior(),
        100 * figure.deviation(),
        figure.drawnBy().stream().map(Reason::key).toList());
  }
}
