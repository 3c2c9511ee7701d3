package pappus.answers.ranking;

import java.util.List;
import java.util.Locale;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.build.Journey;
import pappus.answers.build.Reasons;
import pappus.document.Lines;
import pappus.document.Spoken;
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
    var lines = new Lines(width);
    Heading.of(scenario).forEach(lines::say);
    lines.blank();
    if (ranking.coverage().proof().ending() == Ending.INTERRUPTED) {
      lines.say("You stopped the search early: this is the best it had found by then.");
      lines.blank();
    }
    if (ranking.candidates().isEmpty()) {
      nothing(ranking, lines);
      return lines.text();
    }
    lines.whole(header());
    var rank = 1;
    for (var candidate : ranking.candidates()) {
      row(rank++, candidate, lines);
    }
    if (ranking.candidates().stream().anyMatch(candidate -> candidate.equalTo().isPresent())) {
      lines.say(
          "= the shortfall against the first of the group is within the doubt of their difference; * the cheapest of such a group.");
    }
    if (ranking.candidates().stream()
        .anyMatch(candidate -> candidate.assessment().isBeyondBelief())) {
      lines.say("? better than such aircraft are known to fly: distrust it until one is measured.");
    }
    for (var i = 0; i < Math.min(REASONED, ranking.candidates().size()); i++) {
      lines.blank();
      reasons(i, ranking.candidates(), lines);
    }
    lines.blank();
    lines.say(Standing.text(ranking, scenario.goalOrEndurance()));
    lines.blank();
    Cautions.of(ranking.candidates().get(0).assessment(), scenario).forEach(lines::caution);
    return lines.text();
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

  private void row(int rank, Candidate candidate, Lines lines) {
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
    lines.whole(numbers);
    lines.row("     " + BuildLines.names(assessment), 5);
  }

  private void reasons(int index, List<Candidate> candidates, Lines lines) {
    lines.row((index + 1) + ". " + BuildLines.names(candidates.get(index).assessment()), 3);
    for (var said : new CandidateWords(scenario).of(index, candidates)) {
      lines.row((said.isNote() ? "   - " : "   ") + said.text(), said.isNote() ? 5 : 3);
    }
  }

  private void nothing(Ranking ranking, Lines lines) {
    lines.say(
        ranking.coverage().isProof()
            ? "No build of this catalogue keeps every rule and limit."
            : "No build keeps every rule and limit, as far as was looked.");
    ranking.closest().ifPresent(closest -> {
      lines.say("In the way of the closest that was met (relax says what would help):");
      closest.limits().stream()
          .filter(limit -> !limit.met())
          .forEach(
              limit -> lines.item("Limit (" + limit.id() + "): " + Reasons.broken(limit) + "."));
      Reasons.findings(closest).forEach(lines::item);
      BuildLines.details(closest).forEach(line -> lines.row(line, 2));
    });
    lines.blank();
    lines.say(Standing.text(ranking, scenario.goalOrEndurance()));
  }
}
