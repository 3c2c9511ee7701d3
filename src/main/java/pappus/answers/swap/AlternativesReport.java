package pappus.answers.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.result.SaidJson;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.FlightJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.change.Alternative;
import pappus.document.Lines;
import pappus.document.Table;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** What could take the place of a part, for a terminal, a machine or to paste elsewhere. */
public final class AlternativesReport {
  private final Scenario scenario;
  private final Assessment base;
  private final Role role;
  private final Figures figures;
  private final List<Alternative> alternatives;

  /**
   * @param base the quad
   * @param role whose part is to be replaced
   */
  public AlternativesReport(
      Scenario scenario, Assessment base, Role role, List<Alternative> alternatives) {
    this.scenario = scenario;
    this.base = base;
    this.role = role;
    this.figures = new Figures(scenario.isForRange());
    this.alternatives = List.copyOf(alternatives);
  }

  private boolean isForRange() {
    return scenario.isForRange();
  }

  private String currency() {
    return BuildLines.currency(base);
  }

  private boolean isProof() {
    return alternatives.stream().noneMatch(one -> one.swap().isCutShort());
  }

  /** What stands behind the answer. */
  private String standing() {
    var many = alternatives.size() == 1
        ? "The one other part for this role was tried in this quad"
        : "All %s other parts for this role were tried in this quad".formatted(alternatives.size());
    return many
        + (isProof()
            ? "; where plugs do not match, with every small part that could cure it."
            : "; where plugs do not match, with small parts that could cure it, but not all of them together.");
  }

  /**
   * For a terminal.
   *
   * @param width columns
   * @param all whether every part is told
   */
  public String text(int width, boolean all) {
    var foot = new Lines(width);
    if (alternatives.stream().anyMatch(one -> one.swap().assessment().isBeyondBelief())) {
      foot.say(Figures.DOUBTED_MEANS);
    }
    foot.say(standing()).blank().caution(Cautions.brief());
    var lines = new Lines(width);
    lines.say(Heading.line(scenario)).blank();
    new AlternativesText(base, role, alternatives, figures).say(lines, width, foot.size(), all);
    return lines.blank().text() + foot.text();
  }

  /** For a spreadsheet. */
  public String csv() {
    return graded().csv();
  }

  /** For a page. */
  public String markdown() {
    return graded().markdown();
  }

  /** All of them, with how much each asks. */
  private Table graded() {
    var plain = table(alternatives);
    var columns = Stream.concat(
            Stream.of(Table.Column.text("kind", "asks")), plain.columns().stream())
        .toList();
    var rows = new ArrayList<List<Object>>();
    for (var i = 0; i < alternatives.size(); i++) {
      var cells = new ArrayList<Object>();
      cells.add(FlightJson.key(alternatives.get(i).grade()));
      cells.addAll(plain.rows().get(i));
      rows.add(cells);
    }
    return new Table(columns, rows);
  }

  private Table table(List<Alternative> some) {
    var numbers = figures.columns(currency());
    var columns = List.of(
        Table.Column.text("part", "part"),
        Table.Column.text("id", "id"),
        numbers.get(0),
        numbers.get(1),
        Table.Column.text("", "beyond_belief"),
        numbers.get(2),
        Table.Column.number("% under cap", "chance_under_cap_percent", 0),
        numbers.get(3),
        Table.Column.number(currency(), "to_buy_" + currency().toLowerCase(Locale.ROOT), 0),
        Table.Column.number(
            (isForRange() ? "m/" : "s/") + currency(),
            isForRange() ? "m_per_unit" : "s_per_unit",
            1),
        Table.Column.text("changes with it", "what"));
    return new Table(columns, some.stream().map(this::row).toList());
  }

  private List<Object> row(Alternative one) {
    var assessment = one.swap().assessment();
    var cells = new ArrayList<Object>();
    cells.add(one.swap().part().name());
    cells.add(one.swap().part().id());
    var numbers = figures.cells(Optional.of(assessment));
    cells.add(numbers.get(0));
    cells.add(numbers.get(1));
    cells.add(Figures.mark(assessment));
    cells.add(numbers.get(2));
    // A normal sum promises nothing that far out: never a hundred.
    cells.add(Math.min(99, 100 * assessment.mass().chanceUnder(scenario.massCap())));
    cells.add(numbers.get(3));
    cells.add(one.cents() / 100.0);
    cells.add(one.gainedForMoney().isPresent() ? (Object) one.gainedForMoney().getAsDouble() : "");
    cells.add(AlternativeWords.what(one));
    return cells;
  }

  /** With every digit. */
  public String json(Run run) {
    var parts = new NamedParts();
    var answer = new AlternativesJson(
        new SaidJson(isProof(), standing()),
        role,
        BriefJson.of(base, scenario, parts),
        alternatives.stream()
            .map(one -> AlternativesJson.One.of(one, scenario, parts))
            .toList());
    var isAny = alternatives.stream().anyMatch(one -> one.swap().breaksNothing());
    return Document.of(scenario, run, isAny ? "found" : "infeasible", answer, parts);
  }
}
