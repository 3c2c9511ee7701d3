package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.answers.build.Against;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
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

  private final Scenario scenario;
  private final String currency;
  private final double deviations;
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
    this.sweep = sweep;
    this.front = front;
    this.advice = advice;
  }

  private boolean isForRange() {
    return scenario.isForRange();
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    Heading.brief(scenario).forEach(lines::say);
    if (sweep != null) {
      lines.say(SweepWords.varied(sweep, scenario)).blank();
      table(sweep).withoutLast().lines(width).forEach(line -> lines.row(line, 4));
      lines.blank();
      SweepWords.slope(sweep, isForRange()).ifPresent(lines::say);
      lines.say(SweepWords.standing(sweep));
    }
    if (advice != null) {
      lines.blank();
      new FrameAdviceText(scenario, advice).say(lines, width);
    }
    if (front != null) {
      say(front, lines, width);
    }
    return lines.blank().caution(Cautions.brief()).text();
  }

  /** The answer in sentences, the title first; tables stand by themselves. */
  public List<String> said() {
    var said = new ArrayList<>(List.of(scenario.name()));
    said.addAll(Heading.brief(scenario));
    if (sweep != null) {
      said.add(SweepWords.varied(sweep, scenario));
      SweepWords.slope(sweep, isForRange()).ifPresent(said::add);
    }
    if (advice != null) {
      said.addAll(new FrameAdviceText(scenario, advice).said());
    }
    if (front != null) {
      said.add(counted(front));
      said.add(SweepWords.standing(front, new Against(scenario)));
    }
    return said;
  }

  /** Every table, by what it is called. */
  public Map<String, Table> tables() {
    var tables = new LinkedHashMap<String, Table>();
    if (sweep != null) {
      tables.put("The best build at each step", table(sweep).withoutLast());
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

  private static String counted(ParetoFront shown) {
    return "%s builds that no other surpasses in flight, mass and price at once; mass is what is needed at the confidence asked for."
        .formatted(shown.builds().size());
  }

  private void say(ParetoFront shown, Lines lines, int width) {
    lines.blank().say(counted(shown));
    lines.say(SweepWords.standing(shown, new Against(scenario)));
    lines.blank().say("Against price, whatever the mass:");
    inOrder(shown.againstPrice()).lines(width).forEach(line -> lines.row(line, 4));
    lines.blank().say("Against mass, whatever the price:");
    inOrder(shown.againstMass(deviations)).lines(width).forEach(line -> lines.row(line, 4));
    lines.blank().say("--format csv has all of them.");
  }

  /** Some of them, each read after the one before. */
  private Table inOrder(List<Assessment> builds) {
    return table(some(builds), true).withoutLast();
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
    return whole(false).csv();
  }

  /** For a page. */
  public String markdown() {
    return whole(true).withoutLast().markdown();
  }

  private Table whole(boolean inOrder) {
    return sweep != null
        ? table(sweep)
        : table(front == null ? List.of() : front.builds(), inOrder);
  }

  private List<Table.Column> numbers() {
    return List.of(
        isForRange()
            ? Table.Column.number("km", "range_km", 1)
            : Table.Column.number("min", "flight_min", 1),
        Table.Column.number("g", "all_up_g", 0),
        Table.Column.number("g needed", "needed_g", 1),
        Table.Column.number("T/W", "thrust_over_weight", 1),
        Table.Column.number("W", "flown_w", 0),
        Table.Column.number(currency, "price_" + currency.toLowerCase(Locale.ROOT), 0));
  }

  private List<Object> numbers(Optional<Assessment> build) {
    if (build.isEmpty()) {
      return List.of("", "", "", "", "", "");
    }
    var found = build.get();
    var flight = found.flight();
    var cells = new ArrayList<Object>();
    cells.add(Assessment.figure(found.flown()) / (isForRange() ? 1000 : 60));
    cells.add(found.mass().grams());
    cells.add(found.mass().neededMilligrams(deviations) / 1000.0);
    cells.add(flight.map(FlightEstimate::thrustToWeight).orElse(0.0));
    cells.add(flight.map(FlightEstimate::flownW).orElse(0.0));
    cells.add(found.cost().cents() / 100.0);
    return cells;
  }

  /** Small letters, with the unit: mass_cap_g, frame_drag_area_m2. */
  private static String key(Axis axis) {
    return (axis.id() + " " + axis.unit())
        .strip()
        .replace('²', '2')
        .replaceAll("[^a-zA-Z0-9]+", "_")
        .toLowerCase(Locale.ROOT);
  }

  private Table table(Sweep shown) {
    var columns = new ArrayList<Table.Column>();
    for (var axis : shown.axes()) {
      columns.add(Table.Column.text(
          axis.id() + (axis.unit().isEmpty() ? "" : " " + axis.unit()), key(axis)));
    }
    columns.addAll(numbers());
    columns.add(Table.Column.text("", "proven"));
    columns.add(Table.Column.text("best build", "best"));
    columns.add(Table.Column.text("", "build"));
    var rows = new ArrayList<List<Object>>();
    for (var step : shown.steps()) {
      var cells = new ArrayList<Object>(step.values());
      cells.addAll(numbers(step.best().build()));
      cells.add(step.best().isProof() ? "" : "?");
      cells.add(SweepWords.winner(step, isFirst(shown, step)));
      cells.add(step.best().build().map(build -> build.build().toString()).orElse(""));
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
   * @param inOrder whether each row is read after the one before, and need not repeat what both have
   */
  private Table table(List<Assessment> builds, boolean inOrder) {
    var columns = new ArrayList<>(numbers());
    columns.add(Table.Column.text("build", "names"));
    columns.add(Table.Column.text("", "build"));
    var rows = new ArrayList<List<Object>>();
    for (var i = 0; i < builds.size(); i++) {
      var build = builds.get(i);
      var cells = new ArrayList<>(numbers(Optional.of(build)));
      var names = BuildLines.names(build);
      var isAlike = inOrder && i > 0 && names.equals(BuildLines.names(builds.get(i - 1)));
      cells.add(isAlike ? SweepWords.beside(builds.get(i - 1), build) : names);
      cells.add(build.build().toString());
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
