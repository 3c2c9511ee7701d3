package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.answers.build.BuildLines;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.ranking.Candidate;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/** A ranking as a table: one row a candidate, the build by ids in the last column. */
public final class RankingTable {
  private final Scenario scenario;
  private final boolean isForRange;
  private final boolean inHalves;

  private RankingTable(Scenario scenario, boolean inHalves) {
    this.scenario = scenario;
    this.isForRange = scenario.isForRange();
    this.inHalves = inHalves;
  }

  /** With every digit. */
  public static Table exact(Scenario scenario, List<Candidate> rows) {
    return new RankingTable(scenario, false).of(rows);
  }

  /** Minutes to the half, as sentences tell them. */
  public static Table spoken(Scenario scenario, List<Candidate> rows) {
    return new RankingTable(scenario, true).of(rows);
  }

  private Table of(List<Candidate> rows) {
    var currency = rows.isEmpty() ? "" : BuildLines.currency(rows.get(0).assessment());
    var columns = new ArrayList<Table.Column>();
    columns.add(Table.Column.number("#", "rank", 0));
    columns.add(Table.Column.text("build", "names"));
    if (isForRange) {
      columns.add(Table.Column.number("km", "range_km", 2));
      columns.add(Table.Column.number("plan on, km", "plan_km", 2));
    }
    columns.add(Table.Column.number("min", "flight_min", 1));
    if (!isForRange) {
      columns.add(Table.Column.number("plan on, min", "plan_min", 1));
    }
    columns.add(Table.Column.number("g", "all_up_g", 0));
    columns.add(Table.Column.number("thrust over weight", "thrust_over_weight", 1));
    columns.add(Table.Column.number(
        scenario.flight().style() == Flight.Style.HOVER ? "W in hover" : "W, mean", "flown_w", 0));
    columns.add(Table.Column.number(currency, "price_" + currency.toLowerCase(Locale.ROOT), 0));
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
    var flight = build.flight().orElseThrow();
    var cells = new ArrayList<Object>();
    cells.add(index + 1);
    cells.add(BuildLines.names(build));
    if (isForRange) {
      cells.add(Assessment.figure(build.flown()) / 1000);
      cells.add(row.band().low() / 1000);
    }
    cells.add(minutes(build.milliseconds() / 1000.0));
    if (!isForRange) {
      cells.add(minutes(row.band().low()));
    }
    cells.add(build.mass().grams());
    cells.add(flight.thrustToWeight());
    cells.add(flight.flownW());
    cells.add(build.cost().cents() / 100.0);
    cells.add(String.join("; ", marks(row)));
    cells.add(build.build().toString());
    return cells;
  }

  private double minutes(double seconds) {
    return inHalves ? Double.parseDouble(Spoken.minutes(seconds)) : seconds / 60;
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
