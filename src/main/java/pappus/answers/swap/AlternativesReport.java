package pappus.answers.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Changes;
import pappus.answers.build.Heading;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.result.SaidJson;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.FlightJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FlightEstimate;
import pappus.change.Alternative;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** What could take the place of a part, for a terminal, a machine or to paste elsewhere. */
public final class AlternativesReport {
  private final Scenario scenario;
  private final Assessment base;
  private final Role role;
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
        ? "The one other part of the catalogue for this role was assessed in this quad"
        : "Each of the %s other parts of the catalogue for this role was assessed in this quad"
            .formatted(alternatives.size());
    return many
        + (isProof()
            ? "; what does not plug together was tried with every small part that could cure it."
            : "; what does not plug together was tried with small parts that could cure it, but not with all of them together.");
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    Heading.brief(scenario).forEach(lines::say);
    lines
        .blank()
        .say("In place of %s [%s] as %s of this quad:"
            .formatted(
                base.build().part(role).map(part -> part.name()).orElse("nothing"),
                base.build().part(role).map(Part::id).orElse("-"),
                role.label()));
    lines.say(BuildWords.of(base));
    // Flights are told to what they are known to; what is to be compared, to the tenth.
    base.flight()
        .ifPresent(flight -> lines.say("To compare with: %s %s, %s g."
            .formatted(
                Spoken.number(flight.figure() / (isForRange() ? 1000 : 60), 1),
                isForRange() ? "km" : "min",
                Spoken.number(base.mass().grams(), 0))));
    if (!base.isFeasible()) {
      lines.say("As it is, this quad breaks %s; what follows is told beside that."
          .formatted(Changes.allBroken(base)));
    }
    for (var grade : Alternative.Grade.values()) {
      var some = alternatives.stream().filter(one -> one.grade() == grade).toList();
      if (!some.isEmpty()) {
        lines.blank().say(AlternativeWords.heading(grade));
        if (grade == Alternative.Grade.DOES_NOT_FIT) {
          some.forEach(
              one -> lines.item(one.swap().part().id() + ": " + AlternativeWords.what(one) + "."));
        } else {
          withoutNames(table(some)).lines(width).forEach(line -> lines.row(line, 4));
        }
      }
    }
    return lines.blank().say(standing()).blank().caution(Cautions.brief()).text();
  }

  /** For a spreadsheet. */
  public String csv() {
    return graded().csv();
  }

  /** For a page. */
  public String markdown() {
    return graded().markdown();
  }

  /** Ids are what a person types next; names are much the same. */
  private static Table withoutNames(Table table) {
    return new Table(
        table.columns().subList(1, table.columns().size()),
        table.rows().stream().map(row -> row.subList(1, row.size())).toList());
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
    var columns = List.of(
        Table.Column.text("part", "part"),
        Table.Column.text("id", "id"),
        isForRange()
            ? Table.Column.number("km", "range_km", 1)
            : Table.Column.number("min", "flight_min", 1),
        Table.Column.number("g", "all_up_g", 0),
        Table.Column.number("% under cap", "chance_under_cap_percent", 0),
        Table.Column.number("T/W", "thrust_over_weight", 1),
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
    cells.add(assessment
        .flight()
        .<Object>map(flight -> flight.figure() / (isForRange() ? 1000 : 60))
        .orElse(""));
    cells.add(assessment.mass().grams());
    // A normal sum promises nothing that far out: never a hundred.
    cells.add(Math.min(99, 100 * assessment.mass().chanceUnder(scenario.massCap())));
    cells.add(assessment.flight().<Object>map(FlightEstimate::thrustToWeight).orElse(""));
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
