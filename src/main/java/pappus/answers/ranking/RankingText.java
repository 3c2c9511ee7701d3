package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.GoalWords;
import pappus.answers.build.Heading;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose.Measure;
import pappus.document.Lines;
import pappus.document.Style;
import pappus.ranking.Candidate;
import pappus.ranking.Pick;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;

/** A ranking for a terminal: what to take first, then what a little less flight saves, then the rows. */
public final class RankingText {
  /** Where names begin, and what they have at least. */
  private static final int NAMES = 41;

  private static final int LEAST_ROOM = 20;
  private static final int NAMES_BELOW = 4;

  private final Scenario scenario;
  private final int width;
  private final Style style;
  private final int details;
  private final Figures figures;

  /**
   * @param width columns of the terminal
   * @param details so many rows are told in full
   */
  public RankingText(Scenario scenario, int width, Style style, int details) {
    this.scenario = scenario;
    this.width = width;
    this.style = style;
    this.details = details;
    this.figures = new Figures(scenario.isForRange());
  }

  /**
   * The whole answer.
   *
   * @param next commands that come next, each a line
   */
  public String of(Ranking ranking, List<String> next) {
    var lines = new Lines(width, style);
    lines.say(Heading.line(scenario));
    lines.blank();
    if (ranking.candidates().isEmpty()) {
      nothing(ranking, lines);
      return lines.text();
    }
    var naming = new Naming(ranking.candidates(), ranking.picks());
    ranking.picks().first().ifPresent(first -> {
      var picks = new PickLines(ranking.picks(), naming, figures, width);
      picks.picks(lines);
      lines.blank();
      if (!ranking.picks().givingUp().isEmpty()) {
        picks.givingUp(lines);
        lines.blank();
      }
    });
    rows(ranking, naming, lines);
    lines.blank();
    detail(ranking, lines);
    for (var i = 0; i < Math.min(details, ranking.candidates().size()); i++) {
      lines.blank();
      reasons(i, ranking.candidates(), lines);
    }
    lines.blank();
    Cautions.inLines(first(ranking), scenario).forEach(lines::caution);
    if (!next.isEmpty()) {
      next.forEach(lines::whole);
    }
    return lines.text();
  }

  private Assessment first(Ranking ranking) {
    return ranking
        .picks()
        .first()
        .map(Pick::build)
        .orElseGet(() -> ranking.candidates().get(0).assessment());
  }

  private void detail(Ranking ranking, Lines lines) {
    var detail = new DetailLines(scenario, figures);
    ranking
        .picks()
        .first()
        .ifPresentOrElse(
            pick -> detail.of(
                "the " + pick.kind().word() + (pick.kind() == Pick.Kind.OWNED ? " one" : ""),
                pick.build(),
                pick.band(),
                lines),
            () -> {
              var row = ranking.candidates().get(0);
              detail.of("row 1", row.assessment(), row.band(), lines);
            });
  }

  private void rows(Ranking ranking, Naming naming, Lines lines) {
    var rows = ranking.candidates();
    var isProof = ranking.coverage().isProof();
    lines.whole("Ranking by " + ranked()
        + (isProof ? ", proven" : "")
        + (rows.size() > 1 ? ", what differs from row 1" : "")
        + (new GoalWords(scenario).isOfFlight() ? "" : ", flights in " + figures.unit()));
    lines.whole(" #   " + figures.heading());
    for (var i = 0; i < rows.size(); i++) {
      row(i, rows, naming, lines);
    }
    var isEqual = rows.stream().anyMatch(row -> row.equalTo().isPresent());
    var isDoubted = rows.stream().anyMatch(row -> row.assessment().isBeyondBelief());
    if (isEqual || isDoubted) {
      lines.say((isEqual ? "= too close to call with the first of its group" : "")
          + (isEqual && isDoubted ? "; " : "")
          + (isDoubted ? "? too good to be true, never a pick" : "")
          + ".");
    }
    if (!isProof) {
      lines.say(Standing.text(ranking, scenario));
    }
  }

  private String ranked() {
    return switch (Measure.ordering(scenario)) {
      case FLIGHT, PLAN_WITH -> scenario.isForRange() ? "kilometres expected" : "minutes expected";
      case PIECES -> "pieces to buy";
      case PRICE -> "price";
      case MASS -> "mass";
      case THRUST -> "T/W";
    };
  }

  private void row(int index, List<Candidate> rows, Naming naming, Lines lines) {
    var row = rows.get(index);
    var build = row.assessment();
    var known = naming.picks().of(build).map(one -> List.of(one.kind().word()));
    var names = new ArrayList<String>();
    if (scenario.prefer() != null) {
      names.add(build.cost().piecesToBuy() + " to buy");
    }
    names.addAll(known.orElseGet(() -> BuildLines.otherwise(build, rows.get(0).assessment())));
    var numbers = String.format(
        Locale.ROOT,
        "%2d %-2s%s  ",
        index + 1,
        (row.equalTo().isPresent() ? "=" : "") + Figures.mark(build),
        figures.of(build));
    if (index == 0 && known.isEmpty()) {
      lines.whole(numbers.stripTrailing());
      lines.row("    " + BuildLines.names(build), NAMES_BELOW);
    } else {
      lines.whole(numbers + BuildLines.within(names, Math.max(LEAST_ROOM, width - NAMES)));
    }
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
            : "No build that keeps every rule and limit was found.");
    ranking.closest().ifPresent(closest -> {
      lines.say("In the way of the closest one (relax says what would help):");
      closest.limits().stream()
          .filter(limit -> !limit.met())
          .forEach(
              limit -> lines.item("Limit (" + limit.id() + "): " + Reasons.broken(limit) + "."));
      Reasons.findings(closest).forEach(lines::item);
      BuildLines.details(closest).forEach(line -> lines.row(line, 2));
    });
    lines.blank();
    lines.say(Standing.text(ranking, scenario));
  }
}
