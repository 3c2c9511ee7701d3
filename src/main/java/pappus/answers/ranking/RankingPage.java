package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.answers.build.Reasons;
import pappus.answers.drawing.BuildCharts;
import pappus.answers.drawing.PlanDrawing;
import pappus.answers.explain.SideBySide;
import pappus.answers.whatif.FrontCharts;
import pappus.answers.whatif.Picker;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Limit;
import pappus.assessment.Margins;
import pappus.document.Pages;
import pappus.document.Shell;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.ranking.Candidate;
import pappus.ranking.ParetoFront;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;

/** A ranking as a page: pictures first, then dials, the ranking, and each candidate. */
public final class RankingPage {
  /** More would make the page too heavy to send to anybody. */
  private static final int MOST_DRAWN = 10;

  private final Scenario scenario;
  private final Assessor assessor;
  private final String tool;
  private final boolean isForRange;

  /**
   * @param assessor who judged
   * @param tool its version, told at the foot
   */
  public RankingPage(Assessor assessor, String tool) {
    this.scenario = assessor.scenario();
    this.assessor = assessor;
    this.tool = tool;
    this.isForRange = scenario.isForRange();
  }

  /**
   * The page.
   *
   * @param front what is traded for what in the same scenario
   */
  public String of(Ranking ranking, ParetoFront front) {
    var candidates = new ArrayList<CandidateView>();
    var rows = ranking.candidates();
    for (var i = 0; i < Math.min(MOST_DRAWN, rows.size()); i++) {
      candidates.add(candidate(i, rows));
    }
    var overviews = new FrontCharts(scenario, front, rows).all();
    var picker = front.builds().isEmpty()
        ? Optional.<Picker>empty()
        : Optional.of(new Picker(scenario, front, assessor.deviations()));
    var data = new LinkedHashMap<String, Object>();
    picker.ifPresent(found -> data.put("pick", found.content()));
    data.put("compare", rows.isEmpty() ? List.of() : compared(rows));
    var charts = Stream.concat(
            overviews.stream(), candidates.stream().flatMap(CandidateView::charts))
        .toList();
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.drawing(scenario.name(), charts, data, "ranking.js"));
    content.put("heading", Heading.of(scenario));
    content.put("standing", Standing.text(ranking, scenario.goalOrEndurance()));
    content.put("overviews", overviews);
    content.put("picker", picker.orElse(null));
    content.put("ranking", RankingTable.of(scenario, rows).withoutLast());
    content.put("candidates", candidates);
    content.put("nothing", nothing(ranking));
    content.put("cautions", cautions(ranking));
    content.put("tool", tool);
    return Pages.of("ranking", content);
  }

  private List<String> nothing(Ranking ranking) {
    return ranking
        .closest()
        .map(closest -> closest.limits().stream()
            .filter(limit -> !limit.met())
            .map(limit -> Reasons.broken(limit) + ".")
            .toList())
        .orElse(List.of());
  }

  private List<String> cautions(Ranking ranking) {
    return ranking.candidates().isEmpty()
        ? List.of(Cautions.brief())
        : Cautions.of(ranking.candidates().get(0).assessment(), scenario);
  }

  /** Every line of a comparison, with a text for each candidate. */
  private List<Map<String, Object>> compared(List<Candidate> rows) {
    var builds = rows.stream().map(Candidate::assessment).toList();
    return new SideBySide(scenario, builds)
        .rows().stream()
            .map(row -> {
              Map<String, Object> content = new LinkedHashMap<>();
              content.put("label", row.label());
              content.put("values", row.values());
              return content;
            })
            .toList();
  }

  private CandidateView candidate(int index, List<Candidate> rows) {
    var row = rows.get(index);
    var build = row.assessment();
    var prefix = "c" + (index + 1) + "-";
    var curves = assessor.curves(build).orElseThrow();
    var charts = new BuildCharts(scenario, build, curves, row.band(), prefix);
    return new CandidateView(
        index + 1,
        BuildLines.names(build),
        "%s; %s g; %s"
            .formatted(
                new Figures(isForRange).sentence(build),
                Spoken.number(build.mass().grams(), 0),
                Spoken.price(build.cost().cents(), BuildLines.currency(build))),
        new CandidateWords(scenario).of(index, rows),
        charts.bars(),
        charts.inTheAir(),
        PlanDrawing.of(scenario, build),
        parts(build),
        margins(build),
        Cautions.of(build, scenario));
  }

  /** What it is bought from, with all that is bought beside it. */
  private static Table parts(Assessment build) {
    var currency = BuildLines.currency(build);
    var hasSpares = build.outlay().isPresent();
    var bought = build.outlay().orElse(build.cost());
    var rows = new ArrayList<List<Object>>();
    for (var line : bought.lines()) {
      var row = new ArrayList<Object>(
          List.of(line.label(), line.part().name(), line.part().id(), line.pieces()));
      if (hasSpares) {
        row.add(line.spares());
      }
      row.add(line.cents() / 100.0);
      rows.add(row);
    }
    for (var own : bought.own()) {
      rows.add(List.of(own.text(), "", "", "", "", own.cents() / 100.0));
    }
    var total = new ArrayList<Object>(List.of("all of it", "", "", ""));
    if (hasSpares) {
      total.add("");
    }
    total.add(bought.cents() / 100.0);
    rows.add(total);
    var columns = new ArrayList<>(List.of(
        Table.Column.text("what", "what"),
        Table.Column.text("part", "part"),
        Table.Column.text("id", "id"),
        Table.Column.number("pieces", "pieces", 0)));
    if (hasSpares) {
      columns.add(Table.Column.number("spare", "spares", 0));
    }
    columns.add(Table.Column.number(currency, "price", 2));
    return new Table(columns, rows);
  }

  private Table margins(Assessment build) {
    var rows = new ArrayList<List<Object>>();
    for (var limit : Margins.of(build, assessor)) {
      rows.add(List.of(
          limit.label(),
          number(limit, limit.value()),
          (limit.most() ? "at most " : "at least ") + number(limit, limit.bound()),
          number(limit, limit.margin()),
          limit.unit()));
    }
    return new Table(
        List.of(
            Table.Column.text("what", "what"),
            Table.Column.text("it has", "value"),
            Table.Column.text("allowed", "bound"),
            Table.Column.text("room", "room"),
            Table.Column.text("", "unit")),
        rows);
  }

  private static String number(Limit limit, double value) {
    return Spoken.number(value, limit.isCount() ? 0 : Math.abs(value) >= 100 ? 1 : 2);
  }
}
