package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.ranking.Candidate;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/** A ranking as a table: one row a candidate, the build by ids in the last column. */
public final class RankingTable {
  private final Scenario scenario;
  private final Figures figures;

  private RankingTable(Scenario scenario) {
    this.scenario = scenario;
    this.figures = new Figures(scenario.isForRange());
  }

  /** With every digit, told as every answer tells it. */
  public static Table of(Scenario scenario, List<Candidate> rows) {
    return new RankingTable(scenario).of(rows);
  }

  private Table of(List<Candidate> rows) {
    var currency = rows.isEmpty() ? "" : BuildLines.currency(rows.get(0).assessment());
    var columns = new ArrayList<Table.Column>();
    columns.add(Table.Column.number("#", "rank", 0));
    columns.add(Table.Column.text("build", "names"));
    columns.addAll(figures.columns(currency));
    if (scenario.isForRange()) {
      columns.add(
          Table.Column.number("min", "flight_min", minutes -> Spoken.minutes(minutes * 60)));
    }
    columns.add(Table.Column.number(
        scenario.flight().style() == Flight.Style.HOVER ? "W in hover" : "W, mean", "flown_w", 0));
    columns.add(Table.Column.text("to know", "to_know"));
    columns.add(Table.Column.text("", "build"));
    var cells = new ArrayList<List<Object>>();
    for (var i = 0; i < rows.size(); i++) {
      cells.add(cells(i, rows.get(i)));
    }
    return new Table(columns, cells);
  }

  private List<Object> cells(int index, Candidate row) {
    var build = row.assessment();
    var cells = new ArrayList<Object>();
    cells.add(index + 1);
    cells.add(BuildLines.names(build));
    cells.addAll(figures.cells(Optional.of(build)));
    if (scenario.isForRange()) {
      cells.add(build.milliseconds() / 60_000.0);
    }
    cells.add(build.flight().orElseThrow().flownW());
    cells.add(String.join("; ", marks(row)));
    cells.add(build.build().toString());
    return cells;
  }

  private static List<String> marks(Candidate row) {
    var marks = new ArrayList<String>();
    row.equalTo().ifPresent(head -> marks.add("as good as " + head + " within the doubt"));
    if (row.cheapestOfGroup()) {
      marks.add("the cheapest of such");
    }
    if (row.assessment().isBeyondBelief()) {
      marks.add("better than such aircraft are known to fly: distrust it until one is measured");
    }
    return marks;
  }
}
