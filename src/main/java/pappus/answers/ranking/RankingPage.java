package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.answers.build.Reasons;
import pappus.answers.explain.SideBySide;
import pappus.answers.whatif.Sliders;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.document.Chart;
import pappus.document.Pages;
import pappus.document.Shell;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.ranking.Lookup;
import pappus.ranking.ParetoFront;
import pappus.ranking.Pick;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;

/** A ranking as a page: what to take, what giving up a little saves, one chart, the ranking, each build. */
public final class RankingPage {
  private final Scenario scenario;
  private final Assessor assessor;
  private final String tool;

  /**
   * @param assessor who judged
   * @param tool its version, told at the foot
   */
  public RankingPage(Assessor assessor, String tool) {
    this.scenario = assessor.scenario();
    this.assessor = assessor;
    this.tool = tool;
  }

  /** The build in large. */
  private record Chosen(Assessment build, Band band, String anchor) {}

  /**
   * The page.
   *
   * @param front what is traded for what in the same scenario
   * @param lookup what is best under lower limits; where nothing can be looked up, the page has no sliders
   */
  public String of(Ranking ranking, ParetoFront front, Lookup lookup) {
    var content = new LinkedHashMap<String, Object>();
    content.put("heading", Heading.of(scenario));
    content.put("standing", Standing.text(ranking, scenario));
    content.put("tool", tool);
    if (ranking.candidates().isEmpty()) {
      content.put("shell", Shell.still(scenario.name() + ": ranking"));
      content.put("nothing", nothing(ranking));
      content.put("cautions", List.of(Cautions.brief()));
      return Pages.of("nothing", content);
    }
    var limits = new Sliders(scenario, front, lookup, assessor.deviations());
    var sliders = limits.areThere() ? Optional.of(limits) : Optional.<Sliders>empty();
    var found = sliders.map(Sliders::found).orElse(List.of());
    var builds = new PageBuilds(ranking, limits.shown(found), found, assessor.deviations());
    var chosen = chosen(ranking);
    var first =
        new FirstScreens(assessor, ranking, builds).of(chosen.build, chosen.band, chosen.anchor);
    var views = new CandidateViews(assessor, ranking, builds).all();
    var table = RankingTable.of(scenario, ranking.candidates()).withoutLast().withoutLast();
    var charts = views.stream().flatMap(CandidateView::charts).toList();
    content.put(
        "shell",
        Shell.drawing(
            scenario.name() + ": ranking",
            charts,
            data(ranking, builds, first, chosen, sliders, found, views),
            "trade.js",
            "builds.js",
            "ranking.js"));
    content.put("first", first);
    content.put("sliders", sliders.orElse(null));
    content.put("columns", table.columns());
    content.put("rows", RankedRow.of(ranking, table, builds));
    content.put("candidates", views);
    content.put("cautions", Cautions.of(chosen.build, scenario));
    return Pages.of("ranking", content);
  }

  /** The first pick, else the first row. */
  private Chosen chosen(Ranking ranking) {
    return ranking
        .picks()
        .first()
        .map(pick -> new Chosen(pick.build(), pick.band(), CandidateViews.anchor(pick)))
        .orElseGet(() -> {
          var row = ranking.candidates().get(0);
          return new Chosen(row.assessment(), row.band(), CandidateViews.anchor(0, ranking));
        });
  }

  private Map<String, Object> data(
      Ranking ranking,
      PageBuilds builds,
      FirstScreen first,
      Chosen chosen,
      Optional<Sliders> sliders,
      List<Assessment> found,
      List<CandidateView> views) {
    var data = new LinkedHashMap<String, Object>(builds.content());
    data.put("unit", new Figures(scenario.isForRange()).unit());
    data.put("currency", BuildLines.currency(chosen.build));
    data.put("confidence", Spoken.number(100 * scenario.massCap().confidenceOrUsual(), 0));
    data.put("chosen", first.chosen().number());
    data.put("high", Chart.rounded(chosen.band.high()));
    data.put("titles", new TreeMap<>(Map.of("mass", first.byMass(), "price", first.byPrice())));
    data.put(
        "ranked",
        ranking.candidates().stream()
            .map(row -> builds.number(row.assessment()))
            .toList());
    data.put("picks", words(ranking, builds));
    data.put("saving", first.savings().stream().map(FirstScreen.Saving::number).toList());
    var steepest = new LinkedHashMap<String, Object>();
    for (var saving : first.savings()) {
      if (saving.isSteepestInMass()) {
        steepest.put("mass", saving.number());
      }
      if (saving.isSteepestInPrice()) {
        steepest.put("price", saving.number());
      }
    }
    data.put("steepest", steepest);
    var anchors = new ArrayList<Object>();
    views.forEach(view -> anchors.add(List.of(view.number(), view.anchor())));
    data.put("anchors", anchors);
    sliders.ifPresent(there -> {
      var limits = new LinkedHashMap<String, Object>(there.content());
      if (!there.isOfFlight()) {
        limits.put("order", found.stream().map(builds::number).toList());
      }
      data.put("front", limits);
    });
    data.put("compare", compared(views, builds));
    data.put("details", Details.of(views));
    return data;
  }

  private static List<Object> words(Ranking ranking, PageBuilds builds) {
    var words = new ArrayList<Object>();
    for (Pick pick : ranking.picks().picks()) {
      words.add(List.of(builds.number(pick.build()), pick.kind().word()));
    }
    return words;
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

  /** What a comparison says beside numbers and parts, with a text for each of the builds told in full. */
  private List<Object> compared(List<CandidateView> views, PageBuilds builds) {
    var all = builds.all().toList();
    var told = views.stream().map(view -> all.get(view.number())).toList();
    return new SideBySide(scenario, told)
        .more().stream().<Object>map(row -> List.of(row.label(), row.values())).toList();
  }
}
