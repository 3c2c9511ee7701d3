package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import pappus.answers.build.Figures;
import pappus.document.Table;
import pappus.ranking.Ranking;

/**
 * One row of a ranking on a page.
 *
 * @param rank from 1
 * @param number of its build among the page's builds
 * @param anchor where its details stand; empty for none
 * @param marks how it stands to those above, and whether to believe it
 * @param values of its columns, for sorting
 * @param cells of its columns as they are told
 */
public record RankedRow(
    int rank, int number, String anchor, String marks, List<Object> values, List<String> cells) {
  public RankedRow {
    values = List.copyOf(values);
    cells = List.copyOf(cells);
  }

  /**
   * All of a ranking.
   *
   * @param table of it as {@link RankingTable} has it
   */
  static List<RankedRow> of(Ranking ranking, Table table, PageBuilds builds) {
    var rows = new ArrayList<RankedRow>();
    for (var i = 0; i < ranking.candidates().size(); i++) {
      var row = ranking.candidates().get(i);
      rows.add(new RankedRow(
          i + 1,
          builds.number(row.assessment()),
          CandidateViews.anchor(i, ranking),
          (row.equalTo().isPresent() ? "=" : "") + Figures.mark(row.assessment()),
          table.rows().get(i),
          table.shown(table.rows().get(i))));
    }
    return rows;
  }

  /** What a number of a column is, in as few letters as a phone has room for. */
  public static String unit(Table.Column column) {
    return switch (column.key()) {
      case "plan_min", "plan_km" -> "plan";
      case "flight_min" -> "min";
      case "range_km" -> "km";
      case "flown_w" -> "W";
      default -> column.title();
    };
  }
}
