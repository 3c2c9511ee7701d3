package pappus.answers.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import pappus.answers.build.ArmWords;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.answers.build.LinkWords;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.assessment.Purpose.Measure;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Scenario;
import pappus.sight.Sight;

/** Builds beside each other, line by line: what differs first, then what is the same in all. */
public final class SideBySide {
  private static final String NOTHING = "-";
  private static final String PLANNED = "plan on";
  private static final String EXPECTED = "expect";
  private static final String POWER = "power as flown";
  private static final String MASS = "all-up mass";
  private static final String THRUST = "T/W";
  private static final String PRICE = "price";
  private static final String PIECES = "pieces to buy";

  /** A role that a part chosen for another fills along with its own. */
  private static final String BUILT_IN = "(built in)";

  private static final int NARROWEST_COLUMN = 14;

  private final Scenario scenario;
  private final List<Assessment> builds;

  public SideBySide(Scenario scenario, List<Assessment> builds) {
    this.scenario = scenario;
    this.builds = builds;
  }

  /** One line: what it is about, and a text a build. */
  public record Row(String label, List<String> values) {
    /** Whether the builds are not all alike in it. */
    public boolean differs() {
      return values.stream().distinct().count() > 1;
    }
  }

  /** Every line, those that differ first. */
  public List<Row> rows() {
    var rows = new ArrayList<Row>();
    for (var role : Role.values()) {
      rows.add(row(role.label(), build -> part(build, role)));
    }
    rows.addAll(numbers());
    rows.removeIf(row -> row.values().stream().allMatch(NOTHING::equals));
    var ordered = new ArrayList<>(rows.stream().filter(Row::differs).toList());
    rows.stream().filter(row -> !row.differs()).forEach(ordered::add);
    return ordered;
  }

  /** Lines for a page that tells parts, flight, mass, thrust, power and price of each by itself. */
  public List<Row> more() {
    var told = new HashSet<>(List.of(PLANNED, EXPECTED, MASS, THRUST, POWER, PRICE));
    Stream.of(Role.values()).map(Role::label).forEach(told::add);
    return rows().stream()
        .filter(row -> !told.contains(row.label()) || row.values().contains(BUILT_IN))
        .toList();
  }

  private static String part(Assessment assessment, Role role) {
    var build = assessment.build();
    return build.part(role).map(Part::name).orElse(build.fills(role) ? BUILT_IN : NOTHING);
  }

  /** Its numbers, what builds are ranked by first. */
  private List<Row> numbers() {
    var rows = new ArrayList<Row>();
    rows.add(
        row("candidate", build -> build.isFeasible() ? "yes" : "no: " + Changes.broken(build)));
    var figures = new Figures(scenario.isForRange());
    var unit = " " + figures.unit();
    rows.add(row(PLANNED, build -> told(build, figures.planned(build) + unit)));
    rows.add(row(EXPECTED, build -> told(build, figures.expected(build) + unit)));
    if (builds.stream().anyMatch(Assessment::isBeyondBelief)) {
      rows.add(row("credible", build -> build.isBeyondBelief() ? "? too good to be true" : "yes"));
    }
    rows.add(row(MASS, build -> Spoken.number(build.mass().grams(), 1) + " g"));
    rows.add(row("chance under the mass cap", build -> BuildLines.chance(build, scenario)));
    rows.add(flown(THRUST, flight -> Spoken.number(flight.thrustToWeight(), 2)));
    rows.add(flown(POWER, flight -> Spoken.number(flight.flownW(), 1) + " W"));
    rows.add(flown("electronics", flight -> Spoken.number(flight.split().avionicsW(), 1) + " W"));
    rows.add(flown("throttle in hover", flight -> Spoken.number(100 * flight.duty(), 0) + " %"));
    rows.add(row("arms bend at", SideBySide::arms));
    rows.add(row("an arm's root", this::root));
    rows.add(row("clear ahead of the camera", SideBySide::clear));
    rows.add(row("video reaches", build -> LinkWords.video(build).orElse(NOTHING)));
    rows.add(row("control reaches", build -> LinkWords.control(build).orElse(NOTHING)));
    rows.add(row(PRICE, build -> Spoken.price(build.cost().cents(), BuildLines.currency(build))));
    if (builds.stream().anyMatch(build -> build.outlay().isPresent())) {
      rows.add(row(
          "outlay in all",
          build -> Spoken.price(
              build.outlay().orElse(build.cost()).cents(), BuildLines.currency(build))));
    }
    rows.add(
        row("tightest limit", build -> build.tightest().map(SideBySide::binding).orElse(NOTHING)));
    rows.add(flown("end of flight", Reasons::ending));
    var ordering = Measure.ordering(scenario);
    if (ordering == Measure.PIECES) {
      rows.add(row(PIECES, build -> "" + build.cost().piecesToBuy()));
    }
    var asked = switch (ordering) {
      case FLIGHT, PLAN_WITH -> PLANNED;
      case PRICE -> PRICE;
      case MASS -> MASS;
      case THRUST -> THRUST;
      case PIECES -> PIECES;
    };
    rows.sort(Comparator.comparing(row -> !row.label().equals(asked)));
    return rows;
  }

  private static String clear(Assessment build) {
    return Sight.of(build.build())
        .map(sight -> Spoken.number(2 * sight.freeHalfAngle(), 0) + "°")
        .orElse(NOTHING);
  }

  private static String arms(Assessment build) {
    return ArmWords.hertz(build)
        .map(hertz -> "%s Hz, a rough figure".formatted(Spoken.number(hertz, 0)))
        .orElse(NOTHING);
  }

  /** Beside the first build whose arms are drawn. */
  private String root(Assessment build) {
    var first = builds.stream().filter(one -> ArmWords.hertz(one).isPresent()).findFirst();
    if (first.isEmpty() || ArmWords.hertz(build).isEmpty()) {
      return NOTHING;
    }
    return first.get().equals(build)
        ? "bears %s N/mm² with its weight on one motor"
            .formatted(Spoken.number(ArmWords.stressAtWeight(build).orElseThrow(), 0))
        : ArmWords.beside(build, first.get(), "build " + (builds.indexOf(first.get()) + 1))
                .orElse(NOTHING)
            + ", each loaded by the same multiple of its weight (no promise)";
  }

  private static String told(Assessment build, String text) {
    return build.flight().isEmpty() ? NOTHING : text;
  }

  private static String binding(Limit limit) {
    return limit.met() ? limit.label() + ", " + Reasons.room(limit) : Reasons.broken(limit);
  }

  private Row row(String label, Function<Assessment, String> value) {
    return new Row(label, builds.stream().map(value).toList());
  }

  private Row flown(String label, Function<FlightEstimate, String> value) {
    return row(label, build -> build.flight().map(value).orElse(NOTHING));
  }

  /** As a table: one column a build. */
  Table table() {
    var columns = new ArrayList<Table.Column>();
    columns.add(Table.Column.text("", "what"));
    for (var i = 1; i <= builds.size(); i++) {
      columns.add(Table.Column.text("build " + i, "build_" + i));
    }
    var rows = new ArrayList<List<Object>>();
    rows().forEach(row -> {
      var cells = new ArrayList<Object>();
      cells.add(row.label());
      cells.addAll(row.values());
      rows.add(cells);
    });
    return new Table(columns, rows);
  }

  /** Lines for a terminal: columns where they have room, else one build below the other. */
  void say(Lines lines, int width) {
    var rows = rows();
    var differing = rows.stream().filter(Row::differs).toList();
    var labels = rows.stream().mapToInt(row -> row.label().length()).max().orElse(0) + 2;
    var column = (width - labels) / builds.size() - 2;
    if (differing.isEmpty()) {
      lines.say("They do not differ in anything told here.");
    }
    for (var row : differing) {
      if (column >= NARROWEST_COLUMN) {
        columns(row, labels, column).forEach(line -> lines.row(line, labels));
      } else {
        lines.say(row.label() + ":");
        for (var i = 0; i < row.values().size(); i++) {
          lines.row("  %s. %s".formatted(i + 1, row.values().get(i)), 5);
        }
      }
    }
    var same = rows.stream().filter(row -> !row.differs()).toList();
    if (!same.isEmpty()) {
      lines
          .blank()
          .say("The same in all: "
              + String.join(
                  "; ",
                  same.stream()
                      .map(row -> row.label() + ": " + row.values().get(0).replaceAll("\\.$", ""))
                      .toList())
              + ".");
    }
  }

  private static List<String> columns(Row row, int labels, int column) {
    var cells = row.values().stream().map(value -> broken(value, column)).toList();
    var height = cells.stream().mapToInt(List::size).max().orElse(0);
    var lines = new ArrayList<String>();
    for (var line = 0; line < height; line++) {
      var text = new StringBuilder(padded(line == 0 ? row.label() : "", labels));
      for (var cell : cells) {
        text.append(padded(line < cell.size() ? cell.get(line) : "", column + 2));
      }
      lines.add(text.toString().stripTrailing());
    }
    return lines;
  }

  /** Broken at blanks, a word that is longer than a line wherever the line ends. */
  private static List<String> broken(String text, int width) {
    var lines = new ArrayList<String>();
    var rest = text;
    while (rest.length() > width) {
      var end = rest.lastIndexOf(' ', width);
      lines.add(rest.substring(0, end <= 0 ? width : end));
      rest = rest.substring(end <= 0 ? width : end).strip();
    }
    lines.add(rest);
    return lines;
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }
}
