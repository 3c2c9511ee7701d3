package pappus.answers.build;

import java.util.Locale;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.scenario.Scenario;

/** One build for a terminal, feasible or not. */
public final class AssessmentText {
  private final Scenario scenario;
  private final int width;

  /**
   * @param width columns of the terminal
   */
  public AssessmentText(Scenario scenario, int width) {
    this.scenario = scenario;
    this.width = width;
  }

  /**
   * The whole answer.
   *
   * @param band of a build that flies
   */
  public String of(Assessment assessment, Optional<Band> band) {
    var lines = new Lines(width);
    Heading.of(scenario).forEach(lines::say);
    lines.blank();
    lines.say(
        assessment.isFeasible() ? "Everything fits, and every limit is kept." : "Not feasible:");
    for (var limit : assessment.limits()) {
      if (!limit.met()) {
        lines.item("Limit (" + limit.id() + "): " + Reasons.broken(limit) + ".");
      }
    }
    for (var finding : Reasons.findings(assessment)) {
      lines.item(finding);
    }
    assessment
        .whyNoFlight()
        .ifPresent(why ->
            lines.item("No flight can be computed: " + why + (why.endsWith(".") ? "" : ".")));
    assessment.flight().ifPresent(flight -> {
      lines.blank();
      lines.say(flown(flight)
          + band.map(found -> ", plan on " + planned(found)).orElse("")
          + "; "
          + Spoken.number(assessment.mass().grams(), 0)
          + " g; T/W "
          + Spoken.number(flight.thrustToWeight(), 1)
          + " in mid-flight, "
          + Spoken.number(flight.freshThrustToWeight(), 1)
          + " fresh; "
          + Spoken.number(flight.split().totalW(), 0)
          + " W in hover"
          + flight
              .course()
              .map(course -> ", " + Spoken.number(flight.flownW(), 0) + " W on average")
              .orElse("")
          + ".");
      Journey.of(assessment, band.map(Band::planWith).orElse(1.0)).forEach(lines::say);
      LinkWords.of(assessment).forEach(lines::say);
      lines.say(Reasons.ending(flight));
      band.ifPresent(found -> lines.say(Reasons.doubt(found)));
      Reasons.cap(flight).ifPresent(lines::say);
      Hints.of(assessment).forEach(lines::item);
      Journey.power(flight).ifPresent(lines::say);
      Cautions.windings(assessment, scenario).ifPresent(lines::say);
      ArmWords.sentence(assessment).ifPresent(lines::say);
      SightWords.sentence(assessment).ifPresent(lines::say);
      var counted = Reasons.counted(assessment.build(), flight.figures());
      if (!counted.isEmpty()) {
        lines.blank().say(Reasons.COUNTED);
        counted.forEach(lines::item);
      }
    });
    lines.blank();
    BuildLines.details(assessment).forEach(line -> lines.row(line, 2));
    lines.blank();
    massTable(assessment, lines);
    OutlayWords.of(assessment, scenario, band.map(Band::planWith).orElse(1.0))
        .forEach(line -> lines.row(line, 2));
    lines.blank();
    limitTable(assessment, lines);
    lines.blank();
    Cautions.of(assessment, scenario).forEach(lines::caution);
    return lines.text();
  }

  private String flown(FlightEstimate flight) {
    var minutes = Spoken.minutes(flight.seconds()) + " min";
    return isForRange()
        ? Journey.kilometres(flight.rangeMetres()) + " km in " + minutes
        : minutes
            + flight
                .course()
                .map(course ->
                    course.stayed().map(stayed -> " " + stayed.where()).orElse(" in the air"))
                .orElse(" in hover");
  }

  private String planned(Band band) {
    var figures = new Figures(isForRange());
    return figures.planned(band.low()) + " (to " + figures.planned(band.high()) + ")";
  }

  private boolean isForRange() {
    return scenario.isForRange();
  }

  private void massTable(Assessment assessment, Lines lines) {
    for (var line : assessment.mass().lines()) {
      lines.row(
          String.format(
              Locale.ROOT,
              "%8.1f g  ±%4.1f  %s%s",
              line.grams(),
              line.doubtGrams(),
              line.pieces() > 1 ? line.pieces() + " × " : "",
              line.part().map(part -> line.label() + ", " + part.name()).orElse(line.label())),
          18);
    }
    lines.row(
        String.format(
            Locale.ROOT,
            "%8.1f g  ±%4.1f  all-up mass; %s chance under the mass cap; costs %s",
            assessment.mass().grams(),
            assessment.mass().doubtGrams(),
            BuildLines.chance(assessment, scenario),
            Spoken.price(assessment.cost().cents(), BuildLines.currency(assessment))),
        18);
    BuildLines.atHand(assessment).ifPresent(line -> lines.row(line, 2));
  }

  private void limitTable(Assessment assessment, Lines lines) {
    for (var limit : assessment.limits()) {
      if (limit.isPlain()) {
        continue;
      }
      lines.row(
          limit.met()
              ? "kept    " + limit.id() + ": " + Reasons.room(limit)
              : "broken  " + limit.id() + ": " + Reasons.broken(limit),
          8);
    }
  }
}
