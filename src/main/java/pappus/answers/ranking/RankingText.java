package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.build.Journey;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.document.Wrapped;
import pappus.ranking.Candidate;
import pappus.ranking.Ranking;
import pappus.scenario.Flight;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;
import pappus.search.Ending;

/** A ranking for a terminal. */
public final class RankingText {
  private static final int REASONED = 3;
  private final Scenario scenario;
  private final int width;

  /**
   * @param width columns of the terminal
   */
  public RankingText(Scenario scenario, int width) {
    this.scenario = scenario;
    this.width = width;
  }

  /** The whole answer. */
  public String of(Ranking ranking) {
    var lines = new ArrayList<String>();
    lines.addAll(heading());
    lines.add("");
    if (ranking.coverage().reach().ending() == Ending.INTERRUPTED) {
      lines.addAll(wrap("You stopped the search early: this is the best it had found by then.", 0));
      lines.add("");
    }
    if (ranking.candidates().isEmpty()) {
      lines.addAll(nothing(ranking));
      return finish(lines);
    }
    lines.add(header());
    var rank = 1;
    for (var candidate : ranking.candidates()) {
      lines.addAll(row(rank++, candidate));
    }
    if (ranking.candidates().stream().anyMatch(candidate -> candidate.equalTo().isPresent())) {
      lines.addAll(wrap(
          "= the shortfall against the first of the group is within the doubt of their difference; * the cheapest of such a group.",
          0));
    }
    if (ranking.candidates().stream()
        .anyMatch(candidate -> candidate.assessment().isBeyondBelief())) {
      lines.addAll(wrap(
          "? better than such aircraft are known to fly: distrust it until one is measured.", 0));
    }
    for (var i = 0; i < Math.min(REASONED, ranking.candidates().size()); i++) {
      lines.add("");
      lines.addAll(reasons(i, ranking.candidates()));
    }
    lines.add("");
    lines.addAll(wrap(Standing.text(ranking, scenario.goalOrEndurance()), 0));
    lines.add("");
    lines.addAll(cautions(ranking.candidates().get(0).assessment()));
    return finish(lines);
  }

  private List<String> heading() {
    return Heading.of(scenario).stream().flatMap(line -> wrap(line, 0).stream()).toList();
  }

  /** Kilometres and the time they take where builds are ranked by range. */
  private String header() {
    if (isForRange()) {
      return " #      km  plan on    min      g   T/W  mean W  price";
    }
    return scenario.flight().style() == Flight.Style.HOVER
        ? " #     min  plan on      g   T/W  hover W  price"
        : " #     min  plan on      g   T/W   mean W  price";
  }

  private boolean isForRange() {
    return scenario.goalOrEndurance() == Goal.RANGE;
  }

  private List<String> row(int rank, Candidate candidate) {
    var assessment = candidate.assessment();
    var flight = assessment.flight().orElseThrow();
    var mark = candidate.equalTo().isPresent() ? "=" : " ";
    var minutes = Spoken.minutes(assessment.milliseconds() / 1000.0);
    var figures = isForRange()
        ? String.format(
            Locale.ROOT,
            "%6s  %7s  %5s",
            Journey.kilometres(flight.rangeMetres()),
            Journey.kilometres(candidate.band().low()),
            minutes)
        : String.format(
            Locale.ROOT, "%5s  %7s", minutes, Spoken.minutes(candidate.band().low()));
    var numbers = String.format(
        Locale.ROOT,
        isForRange()
            ? "%2d %s %s  %5.0f  %4.1f  %6.0f  %s%s"
            : "%2d %s %s  %5.0f  %4.1f  %7.0f  %s%s",
        rank,
        mark,
        figures,
        assessment.mass().grams(),
        flight.thrustToWeight(),
        flight.flownW(),
        Spoken.price(assessment.cost().cents(), BuildLines.currency(assessment)),
        (candidate.cheapestOfGroup() ? " *" : "") + (assessment.isBeyondBelief() ? " ?" : ""));
    var lines = new ArrayList<String>();
    lines.add(numbers);
    lines.addAll(wrap("     " + BuildLines.names(assessment), 5));
    return lines;
  }

  private List<String> reasons(int index, List<Candidate> candidates) {
    var title = (index + 1) + ". " + BuildLines.names(candidates.get(index).assessment());
    var lines = new ArrayList<>(wrap(title, 3));
    for (var said : new CandidateWords(scenario).of(index, candidates)) {
      lines.addAll(said.isNote() ? wrap("   - " + said.text(), 5) : wrap("   " + said.text(), 3));
    }
    return lines;
  }

  private List<String> nothing(Ranking ranking) {
    var lines = new ArrayList<String>();
    lines.addAll(wrap(
        ranking.coverage().isProof()
            ? "No build of this catalogue keeps every rule and limit."
            : "No build keeps every rule and limit, as far as was looked.",
        0));
    ranking.closest().ifPresent(closest -> {
      lines.addAll(wrap("In the way of the closest that was met (relax says what would help):", 0));
      closest.limits().stream()
          .filter(limit -> !limit.met())
          .forEach(limit -> lines.addAll(
              wrap("- Limit (" + limit.id() + "): " + Reasons.broken(limit) + ".", 2)));
      Reasons.findings(closest).forEach(finding -> lines.addAll(wrap("- " + finding, 2)));
      BuildLines.details(closest).forEach(line -> lines.addAll(wrap(line, 2)));
    });
    lines.add("");
    lines.addAll(wrap(Standing.text(ranking, scenario.goalOrEndurance()), 0));
    return lines;
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
