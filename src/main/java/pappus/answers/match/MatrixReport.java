package pappus.answers.match;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import pappus.compatibility.Match;
import pappus.document.Lines;
import pappus.document.Table;
import pappus.part.Kind;
import pappus.part.Part;

/** What goes with each of some parts by itself: one column a part, for a product page. */
public final class MatrixReport {
  private final List<Part> given;
  private final List<Map<Kind, List<Match>>> matches;

  /**
   * @param matches one a part
   */
  public MatrixReport(List<Part> given, List<Map<Kind, List<Match>>> matches) {
    this.given = List.copyOf(given);
    this.matches = List.copyOf(matches);
  }

  private Table table() {
    var columns = new ArrayList<Table.Column>();
    columns.add(Table.Column.text("kind", "kind"));
    columns.add(Table.Column.text("part", "name"));
    columns.add(Table.Column.text("id", "id"));
    given.forEach(part -> columns.add(Table.Column.text(part.name(), part.id())));
    var cells = new EnumMap<Kind, Map<String, String[]>>(Kind.class);
    var parts = new TreeMap<String, Part>();
    for (var column = 0; column < given.size(); column++) {
      var place = column;
      matches
          .get(column)
          .forEach((kind, list) -> list.forEach(match -> {
            parts.put(match.part().id(), match.part());
            cells.computeIfAbsent(kind, fresh -> new TreeMap<>())
                    .computeIfAbsent(match.part().id(), fresh -> new String[given.size()])[place] =
                MatchWords.cell(match);
          }));
    }
    var rows = new ArrayList<List<Object>>();
    cells.forEach((kind, byId) -> byId.forEach((id, row) -> {
      var line = new ArrayList<Object>();
      line.add(kind.key());
      line.add(Objects.requireNonNull(parts.get(id)).name());
      line.add(id);
      for (var cell : row) {
        line.add(cell == null ? "" : cell);
      }
      rows.add(line);
    }));
    return new Table(columns, rows);
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    table().lines(width).forEach(line -> lines.row(line, 4));
    return lines
        .blank()
        .say(MatchWords.STANDING)
        .blank()
        .caution(MatchWords.CAUTION)
        .text();
  }

  /** For a spreadsheet. */
  public String csv() {
    return table().csv();
  }

  /** For a page. */
  public String markdown() {
    return table().markdown();
  }

  /** With every digit. */
  public String json() {
    return MatrixJson.of(given, matches);
  }
}
