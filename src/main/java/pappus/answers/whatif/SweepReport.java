package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Excerpt;
import pappus.document.Lines;
import pappus.document.Table;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.FrameAdvice;
import pappus.whatif.sweep.Step;
import pappus.whatif.sweep.Sweep;

/** What varies, step by step, and what is traded for what; for a terminal, a machine or to paste elsewhere. */
public final class SweepReport {
  private static final int MOST_SHOWN = 24;

  /** Lines below what is traded: what a mark means, and the caution. */
  private static final int FOOT = 9;

  private final Scenario scenario;
  private final String currency;
  private final double deviations;
  private final Figures figures;
  private final @Nullable Sweep sweep;
  private final @Nullable ParetoFront front;
  private final @Nullable FrameAdvice advice;

  /**
   * @param currency of prices
   * @param deviations of mass kept below the cap
   * @param sweep absent where nothing was swept
   * @param front absent where it was not asked for
   * @param advice on the frame; absent where no frame was swept
   */
  public SweepReport(
      Scenario scenario,
      String currency,
      double deviations,
      @Nullable Sweep sweep,
      @Nullable ParetoFront front,
      @Nullable FrameAdvice advice) {
    this.scenario = scenario;
    this.currency = currency;
    this.deviations = deviations;
    this.figures = new Figures(scenario.isForRange());
    this.sweep = sweep;
    this.front = front;
    this.advice = advice;
  }

  /**
   * For a terminal.
   *
   * @param width columns
   * @param all whether every build of a front is told
   */
  public String text(int width, boolean all) {
    var lines = new Lines(width);
    lines.say(Heading.line(scenario));
    if (sweep != null) {
      lines
          .say(SweepWords.varied(sweep, scenario) + " Flights in " + figures.unit() + ".")
          .blank();
      table(sweep, false, figures.brief(currency)).lines(width).forEach(line -> lines.row(line, 4));
      lines.blank();
      SweepWords.slope(sweep, scenario).ifPresent(lines::say);
      new ArmsVaried(sweep).said().forEach(lines::say);
      lines.say(SweepWords.standing(sweep));
    }
    if (advice != null) {
      lines.blank();
      new FrameAdviceText(scenario, advice).say(lines, width);
    }
    if (front != null) {
      say(front, lines, width, all);
    }
    if (isAnyDoubted()) {
      lines.blank().say(Figures.DOUBTED_MEANS);
    }
    return lines.blank().caution(Cautions.brief()).text();
  }

  private void say(ParetoFront shown, Lines lines, int width, boolean all) {
    var text = new FrontText(scenario, shown, deviations);
    lines.blank();
    text.said().forEach(lines::say);
    var excerpt = new Excerpt(width);
    text.add(excerpt, all, width);
    if (all) {
      excerpt.sayAll(lines);
      return;
    }
    excerpt.sayWithin(Excerpt.MOST_LINES - FOOT - (sweep == null ? lines.size() : 0), lines);
    lines.blank().say("--all shows smaller steps, --format csv every build.");
  }

  private boolean isAnyDoubted() {
    return Stream.concat(
            sweep == null
                ? Stream.<Assessment>empty()
                : sweep.steps().stream().flatMap(step -> step.best().build().stream()),
            front == null ? Stream.empty() : front.builds().stream())
        .anyMatch(Assessment::isBeyondBelief);
  }

  /** The answer in sentences, the title first; tables stand by themselves. */
  public List<String> said() {
    var said = new ArrayList<>(List.of(scenario.name()));
    said.add(Heading.line(scenario));
    if (sweep != null) {
      said.add(SweepWords.varied(sweep, scenario));
      SweepWords.slope(sweep, scenario).ifPresent(said::add);
      said.addAll(new ArmsVaried(sweep).said());
    }
    if (advice != null) {
      said.addAll(new FrameAdviceText(scenario, advice).said());
    }
    if (front != null) {
      said.addAll(new FrontText(scenario, front, deviations).said());
    }
    if (isAnyDoubted()) {
      said.add(Figures.DOUBTED_MEANS);
    }
    return said;
  }

  /** Every table, by what it is called. */
  public Map<String, Table> tables() {
    var tables = new LinkedHashMap<String, Table>();
    if (sweep != null) {
      tables.put("The best build at each step", table(sweep, false, figures.columns(currency)));
    }
    if (advice != null) {
      tables.put("Spacing of the motors that propellers need", FrameAdviceText.rooms(advice));
    }
    if (front != null) {
      tables.put("Against price, whatever the mass", inOrder(front.againstPrice()));
      tables.put("Against mass, whatever the price", inOrder(front.againstMass(deviations)));
    }
    return tables;
  }

  /** Some of them, each read after the one before. */
  private Table inOrder(List<Assessment> builds) {
    return table(some(builds), false);
  }

  /** The first, the last and some between them, evenly. */
  private static List<Assessment> some(List<Assessment> builds) {
    if (builds.size() <= MOST_SHOWN) {
      return builds;
    }
    var some = new ArrayList<Assessment>();
    for (var i = 0; i < MOST_SHOWN; i++) {
      some.add(builds.get((int) ((long) i * (builds.size() - 1) / (MOST_SHOWN - 1))));
    }
    return some;
  }

  /** For a spreadsheet. */
  public String csv() {
    return whole(true).csv();
  }

  /** For a page. */
  public String markdown() {
    return whole(false).markdown();
  }

  private Table whole(boolean isWhole) {
    return sweep != null
        ? table(sweep, isWhole, figures.columns(currency))
        : table(front == null ? List.of() : front.builds(), isWhole);
  }

  /** What an answer for a machine has besides. */
  private static List<Table.Column> more() {
    return List.of(
        Table.Column.number("g needed", "needed_g", 1),
        Table.Column.number("W", "flown_w", 0),
        Table.Column.text("", "build"));
  }

  private List<Object> more(Optional<Assessment> build) {
    return List.of(
        build
            .<Object>map(found -> found.mass().neededMilligrams(deviations) / 1000.0)
            .orElse(""),
        build.flatMap(Assessment::flight).<Object>map(FlightEstimate::flownW).orElse(""),
        build.map(found -> found.build().toString()).orElse(""));
  }

  /** Small letters, with the unit: mass_cap_g, frame_drag_area_m2. */
  private static String key(Axis axis) {
    return (axis.id() + " " + axis.unit())
        .strip()
        .replace('²', '2')
        .replaceAll("[^a-zA-Z0-9]+", "_")
        .toLowerCase(Locale.ROOT);
  }

  /**
   * @param isWhole whether it is for a machine, with all there is
   * @param numbers columns of them
   */
  private Table table(Sweep shown, boolean isWhole, List<Table.Column> numbers) {
    var columns = new ArrayList<Table.Column>();
    for (var axis : shown.axes()) {
      columns.add(Table.Column.text(
          axis.id() + (axis.unit().isEmpty() ? "" : " " + axis.unit()), key(axis)));
    }
    columns.addAll(numbers);
    columns.add(Table.Column.text("", "beyond_belief"));
    var areArmsTold = new ArmsVaried(shown).areTold();
    if (areArmsTold) {
      columns.add(Table.Column.number("arms Hz", "arms_hz", 0));
    }
    if (isWhole) {
      columns.add(Table.Column.text("proven", "proven"));
    }
    columns.add(Table.Column.text("best build", "best"));
    if (isWhole) {
      columns.addAll(more());
    }
    var rows = new ArrayList<List<Object>>();
    for (var step : shown.steps()) {
      var best = step.best();
      var winner = SweepWords.winner(step, isFirst(shown, step));
      var cells = new ArrayList<Object>(step.values());
      cells.addAll(figures.cells(best.build()));
      cells.add(best.build().map(Figures::mark).orElse(""));
      if (areArmsTold) {
        cells.add(ArmsVaried.hertz(step).<Object>map(hertz -> hertz).orElse(""));
      }
      if (isWhole) {
        cells.add(best.isProof() ? "yes" : "no");
      }
      cells.add(
          isWhole || best.isProof() || best.build().isEmpty() ? winner : "not proven: " + winner);
      if (isWhole) {
        cells.addAll(more(best.build()));
      }
      rows.add(cells);
    }
    return new Table(columns, rows);
  }

  /** Whether it is the first step along the last axis. */
  private static boolean isFirst(Sweep sweep, Step step) {
    var last = sweep.axes().size() - 1;
    var before = sweep.steps().indexOf(step) - 1;
    return step.values().get(last).equals(sweep.axes().get(last).values().get(0))
        || sweep.steps().get(before).best().build().isEmpty();
  }

  /**
   * @param isWhole whether it is for a machine, with all there is; else each row is read after the one before, and does
   *     not repeat what both have
   */
  private Table table(List<Assessment> builds, boolean isWhole) {
    var columns = new ArrayList<>(figures.columns(currency));
    columns.add(Table.Column.text("", "beyond_belief"));
    columns.add(Table.Column.text("build", "names"));
    if (isWhole) {
      columns.addAll(more());
    }
    var rows = new ArrayList<List<Object>>();
    for (var i = 0; i < builds.size(); i++) {
      var build = builds.get(i);
      var cells = new ArrayList<>(figures.cells(Optional.of(build)));
      cells.add(Figures.mark(build));
      var names = BuildLines.names(build);
      var isAlike = !isWhole && i > 0 && names.equals(BuildLines.names(builds.get(i - 1)));
      cells.add(isAlike ? SweepWords.beside(builds.get(i - 1), build) : names);
      if (isWhole) {
        cells.addAll(more(Optional.of(build)));
      }
      rows.add(cells);
    }
    return new Table(columns, rows);
  }

  /** With every digit. */
  public String json(Run run) {
    var parts = new NamedParts();
    var answer = SweepJson.of(
        Optional.ofNullable(sweep),
        Optional.ofNullable(front),
        Optional.ofNullable(advice),
        scenario,
        deviations,
        parts);
    return Document.of(scenario, run, "varied", answer, parts);
  }
}
