package pappus.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.Pappus;
import pappus.answers.ranking.RankingJson;
import pappus.answers.ranking.RankingPage;
import pappus.answers.ranking.RankingTable;
import pappus.answers.ranking.RankingText;
import pappus.answers.ranking.UpgradeText;
import pappus.assessment.Purpose.Measure;
import pappus.change.Upgrades;
import pappus.files.Shown;
import pappus.ranking.Finder;
import pappus.ranking.Lookup;
import pappus.ranking.ParetoFront;
import pappus.ranking.Ranking;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;
import pappus.search.Question;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Which builds, and why these. */
@Command(
    name = "recommend",
    description =
        "Ranks builds for a scenario by flight time and says why they stand where they stand.",
    footer = {
      "pappus recommend scenarios/bird-survey.json",
      "pappus recommend scenarios/bird-survey.json --count 3 --report"
    })
final class RecommendCommand extends ScenarioCommand implements Callable<Integer> {
  /** What flies less than half as long as the best is no trade that anybody makes. */
  static final double FRONT_SHARE = 0.5;

  /** Some seconds; what is open then, the page says. */
  private static final long FRONT_LOOKS = 400_000;

  /** Looks at a course for which one at a hover could be had: every speed is tried. */
  private static final long DEARER_COURSE = 2;

  @Option(
      names = "--count",
      paramLabel = "N",
      description = "How many candidates; default: as the scenario says.")
  private @Nullable Integer count;

  @Option(
      names = "--search",
      paramLabel = "auto|exact|heuristic",
      defaultValue = "auto",
      description =
          "exact proves that nothing does better; heuristic tries changes and proves nothing; auto proves where it can, and says so (default).")
  private Finder.Way way;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "Most choices a proof looks into; it then ends with the best so far and what more is possible.")
  private @Nullable Long effort;

  @Option(
      names = "--details",
      paramLabel = "N|all",
      defaultValue = "0",
      description = "Rows of the ranking told in full: a number, or all; default none.")
  private String details = "0";

  @Mixin
  private ReportOption page = new ReportOption();

  /** What there is to print. */
  private record Found(
      Ranking ranking,
      Optional<Upgrades> upgrades,
      @Nullable ParetoFront front,
      Lookup lookup) {}

  @Override
  public Integer call() {
    format(Format.CSV, Format.MARKDOWN);
    if (count != null && (count < 1 || count > 100)) {
      throw new ParameterException(
          spec().commandLine(), "--count must be from 1 to 100, but is " + count + ".");
    }
    if (!details.matches("all|[0-9]{1,3}")) {
      throw new ParameterException(
          spec().commandLine(),
          "--details must be a number of rows or all, but is the text " + Shown.text(details)
              + ".");
    }
    if (effort != null && effort < 1) {
      throw new ParameterException(
          spec().commandLine(), "--effort must be at least 1, but is " + effort + ".");
    }
    var inputs = read();
    var wanted = count == null ? inputs.scenario().count() : count;
    var question = inputs.question();
    var found = finding(way, effort == null ? Finder.EFFORT : effort, Finder.MOVES, finder -> {
      var ranking = Pappus.recommend(inputs, wanted, finder);
      var front = page.isWanted() ? front(question, ranking, finder) : null;
      var lookup = front == null ? Lookup.NOTHING : lookup(question, front, finder);
      return new Found(ranking, upgrades(question, ranking, finder), front, lookup);
    });
    return answer(inputs, wanted, found);
  }

  /** What changes gain, where the scenario starts from a quad that is there. */
  private static Optional<Upgrades> upgrades(Question question, Ranking ranking, Finder finder) {
    return question
        .assessor()
        .aboard()
        .map(quad -> Upgrades.of(quad.build(), question, ranking, finder));
  }

  private int details(Ranking ranking) {
    return details.equals("all") ? ranking.candidates().size() : Integer.parseInt(details);
  }

  /** What is written, and what comes next. */
  private List<String> next(Scenario scenario, Ranking ranking) {
    var result = folder(scenario).resolve("result.json");
    var build = ranking
        .picks()
        .first()
        .map(pick -> result + "#" + pick.kind().word())
        .orElse(result + "#1");
    var file = scenarioFile();
    var lines = new ArrayList<>(List.of("Written: " + result + ". Next:"));
    if (!file.toString().equals("-") && settings().isEmpty()) {
      lines.add("  pappus explain " + file + " " + build);
    }
    lines.add("  pappus sheet " + build);
    return lines;
  }

  private static long frontLooks(Question question) {
    var style = question.assessor().scenario().flight().style();
    return style == Flight.Style.HOVER ? FRONT_LOOKS : FRONT_LOOKS / DEARER_COURSE;
  }

  /** Where the first pick under lower limits is looked up: on the front itself where that is the best flight. */
  private static Lookup lookup(Question question, ParetoFront front, Finder finder) {
    return question.assessor().purpose().measure().isOfFlight()
        ? new Lookup(front.builds(), front.isProof())
        : finder.lookup(question, frontLooks(question));
  }

  /** What is traded for what; where its search comes to nothing in time, among what the ranking has met. */
  private static ParetoFront front(Question question, Ranking ranking, Finder finder) {
    var front = finder.front(question, Measure.PLAN_WITH, FRONT_SHARE, frontLooks(question));
    if (!front.builds().isEmpty()) {
      return front;
    }
    var met = ranking.candidates().stream()
        .flatMap(row -> Stream.concat(Stream.of(row.assessment()), row.variants().stream()))
        .toList();
    return ParetoFront.of(met, question, Measure.PLAN_WITH, FRONT_SHARE, front.proof());
  }

  private int answer(Inputs inputs, int wanted, Found found) {
    var ranking = found.ranking();
    var front = found.front();
    var run = run(inputs, Finder.MOVES);
    var json = RankingJson.of(inputs.assessor(), run, ranking, wanted, found.upgrades());
    var files = new TreeMap<>(Map.of("result.json", json));
    if (front != null) {
      files.put(
          "report.html",
          new RankingPage(inputs.assessor(), Version.tool()).of(ranking, front, found.lookup()));
    }
    output(inputs.scenario()).write(files);
    var table = RankingTable.of(inputs.scenario(), ranking.candidates());
    print(
        () -> json,
        () -> found
                .upgrades()
                .map(upgrades -> new UpgradeText(inputs.scenario(), upgrades, columns()).of())
                .orElse("")
            + new RankingText(inputs.scenario(), columns(), Terminal.style(), details(ranking))
                .of(ranking, next(inputs.scenario(), ranking)),
        table::csv,
        () -> table.withoutLast().markdown());
    return ranking.candidates().isEmpty() ? ExitCode.NO : ExitCode.OK;
  }
}
