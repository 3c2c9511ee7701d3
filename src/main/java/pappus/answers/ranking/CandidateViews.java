package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.answers.build.LinkWords;
import pappus.answers.drawing.BuildCharts;
import pappus.answers.drawing.PlanDrawing;
import pappus.answers.drawing.Rings;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.document.Spoken;
import pappus.ranking.Candidate;
import pappus.ranking.Pick;
import pappus.ranking.Ranking;

/** Each pick and each row of a ranking for a page, what is both once. */
final class CandidateViews {
  /** More would make the page too heavy to send to anybody. */
  static final int MOST_DRAWN = 10;

  private final Assessor assessor;
  private final Ranking ranking;
  private final PageBuilds builds;

  CandidateViews(Assessor assessor, Ranking ranking, PageBuilds builds) {
    this.assessor = assessor;
    this.ranking = ranking;
    this.builds = builds;
  }

  /** Where a row stands in the page; empty if it is not drawn. */
  static String anchor(int index, Ranking ranking) {
    var pick = ranking.picks().of(ranking.candidates().get(index).assessment());
    return pick.map(CandidateViews::anchor)
        .orElse(index < MOST_DRAWN ? "candidate-" + (index + 1) : "");
  }

  static String anchor(Pick pick) {
    return pick.kind().word();
  }

  /** Picks first. */
  List<CandidateView> all() {
    var views = new ArrayList<CandidateView>();
    var rows = ranking.candidates();
    for (var pick : ranking.picks().picks()) {
      var row = row(pick.build());
      var word = Spoken.sentence(pick.kind().word());
      views.add(
          row.isPresent()
              ? view(anchor(pick), word + ", row " + (row.getAsInt() + 1), row.getAsInt(), rows)
              : view(anchor(pick), word, 0, List.of(alone(pick))));
    }
    for (var i = 0; i < Math.min(MOST_DRAWN, rows.size()); i++) {
      if (ranking.picks().of(rows.get(i).assessment()).isEmpty()) {
        views.add(view(anchor(i, ranking), "Row " + (i + 1), i, rows));
      }
    }
    return views;
  }

  private OptionalInt row(Assessment build) {
    for (var i = 0; i < ranking.candidates().size(); i++) {
      if (ranking.candidates().get(i).assessment().build().equals(build.build())) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** A pick that is no row has nothing it stands before. */
  private static Candidate alone(Pick pick) {
    return new Candidate(
        pick.build(), pick.band(), List.of(), false, Map.of(), OptionalInt.empty(), false);
  }

  private CandidateView view(String anchor, String title, int index, List<Candidate> rows) {
    var scenario = assessor.scenario();
    var row = rows.get(index);
    var build = row.assessment();
    var curves = assessor.curves(build).orElseThrow();
    var charts = new BuildCharts(scenario, build, curves, row.band(), anchor + "-");
    var bars = charts.bars();
    return new CandidateView(
        anchor,
        title,
        builds.number(build),
        BuildLines.names(build),
        "%s; %s g; %s%s"
            .formatted(
                new Figures(scenario.isForRange()).sentence(build),
                Spoken.number(build.mass().grams(), 0),
                Spoken.price(build.cost().cents(), BuildLines.currency(build)),
                Optional.of("; " + Figures.DOUBTED_MEANS)
                    .filter(doubted -> build.isBeyondBelief())
                    .orElse("")),
        new CandidateWords(scenario).of(index, rows),
        bars.get(0),
        bars.get(1),
        charts.inTheAir(),
        PlanDrawing.of(scenario, build),
        LinkWords.matter(scenario) ? Rings.of(build, row.band().planWith()).orElse(null) : null,
        BuildTables.parts(build),
        BuildTables.rooms(build, assessor));
  }
}
