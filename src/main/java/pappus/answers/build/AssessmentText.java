package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.document.Wrapped;
import pappus.doubt.Band;
import pappus.scenario.Goal;
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
  public String of(Assessment assessment, java.util.Optional<Band> band) {
    var lines = new ArrayList<String>();
    lines.addAll(heading());
    lines.add("");
    lines.addAll(wrap(
        assessment.isFeasible()
            ? "This build goes together and keeps every limit."
            : "This build is not a candidate.",
        0));
    for (var limit : assessment.limits()) {
      if (!limit.met()) {
        lines.addAll(wrap("- Limit (" + limit.id() + "): " + Reasons.broken(limit) + ".", 2));
      }
    }
    for (var finding : Reasons.findings(assessment)) {
      lines.addAll(wrap("- " + finding, 2));
    }
    assessment
        .whyNoFlight()
        .ifPresent(why -> lines.addAll(
            wrap("- No flight can be computed: " + why + (why.endsWith(".") ? "" : "."), 2)));
    assessment.flight().ifPresent(flight -> {
      lines.add("");
      lines.addAll(wrap(
          flown(flight)
              + band.map(found -> ", plan with " + planned(found)).orElse("")
              + "; "
              + Spoken.number(assessment.mass().grams(), 0)
              + " g; thrust over weight "
              + Spoken.number(flight.thrustToWeight(), 1)
              + " in mid-flight, "
              + Spoken.number(flight.freshThrustToWeight(), 1)
              + " fresh; "
              + Spoken.number(flight.split().totalW(), 0)
              + " W in hover"
              + flight
                  .course()
                  .map(course -> ", " + Spoken.number(flight.flownW(), 0) + " W in the mean")
                  .orElse("")
              + ".",
          0));
      Journey.of(flight, band.map(Band::planWith).orElse(1.0))
          .forEach(line -> lines.addAll(wrap(line, 0)));
      lines.addAll(wrap(Reasons.ending(flight), 0));
      band.ifPresent(found -> lines.addAll(wrap(Reasons.doubt(found), 0)));
      Reasons.cap(flight).ifPresent(cap -> lines.addAll(wrap(cap, 0)));
      Reasons.counted(assessment.build()).forEach(counted -> lines.addAll(wrap("- " + counted, 2)));
      Hints.of(assessment).forEach(hint -> lines.addAll(wrap("- " + hint, 2)));
      Journey.power(flight).ifPresent(power -> lines.addAll(wrap(power, 0)));
      Cautions.windings(assessment, scenario).ifPresent(heat -> lines.addAll(wrap(heat, 0)));
    });
    lines.add("");
    BuildLines.details(assessment).forEach(line -> lines.addAll(wrap(line, 2)));
    lines.add("");
    massTable(assessment).forEach(line -> lines.addAll(wrap(line, 19)));
    lines.add("");
    lines.addAll(limitTable(assessment));
    lines.add("");
    lines.addAll(cautions(assessment));
    return finish(lines);
  }

  private String flown(FlightEstimate flight) {
    var minutes = Spoken.minutes(flight.endurance().seconds()) + " min";
    return isForRange()
        ? Journey.kilometres(flight.rangeMetres()) + " km in " + minutes
        : minutes + (flight.course().isPresent() ? " in the air" : " in hover");
  }

  private String planned(Band band) {
    return isForRange()
        ? Journey.kilometres(band.low()) + " (to " + Journey.kilometres(band.high()) + ")"
        : Spoken.minutes(band.low()) + " (to " + Spoken.minutes(band.high()) + ")";
  }

  private boolean isForRange() {
    return scenario.goalOrEndurance() == Goal.RANGE;
  }

  private List<String> massTable(Assessment assessment) {
    var lines = new ArrayList<String>();
    for (var line : assessment.mass().lines()) {
      lines.addAll(wrap(
          String.format(
              Locale.ROOT,
              "%8.1f g  ±%4.1f  %s%s",
              line.grams(),
              line.doubtGrams(),
              line.pieces() > 1 ? line.pieces() + " × " : "",
              line.part()
                  .map(part -> line.label() + ", " + Spoken.safe(part.name()))
                  .orElse(line.label())),
          18));
    }
    lines.addAll(wrap(
        String.format(
            Locale.ROOT,
            "%8.1f g  ±%4.1f  all-up; %s chance of keeping the cap; costs %s",
            assessment.mass().grams(),
            assessment.mass().doubtGrams(),
            BuildLines.chance(assessment, scenario),
            Spoken.price(assessment.cost().cents(), BuildLines.currency(assessment))),
        18));
    BuildLines.atHand(assessment).ifPresent(line -> lines.addAll(wrap(line, 2)));
    return lines;
  }

  private List<String> limitTable(Assessment assessment) {
    var lines = new ArrayList<String>();
    for (var limit : assessment.limits()) {
      if (limit.isPlain()) {
        continue;
      }
      lines.addAll(wrap(
          limit.met()
              ? "kept    " + limit.id() + ": " + Reasons.room(limit)
              : "broken  " + limit.id() + ": " + Reasons.broken(limit),
          8));
    }
    return lines;
  }

  private List<String> heading() {
    return Heading.of(scenario).stream().flatMap(line -> wrap(line, 0).stream()).toList();
  }

  private List<String> cautions(Assessment assessment) {
    var lines = new ArrayList<String>();
    for (var caution : Cautions.of(assessment, scenario)) {
      lines.addAll(wrap("! " + caution, 2));
    }
    return lines;
  }

  private List<String> wrap(String text, int indent) {
    return Wrapped.lines(text, indent, width);
  }

  private static String finish(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }
}
