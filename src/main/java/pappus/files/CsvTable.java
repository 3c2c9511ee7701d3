package pappus.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.List;

/**
 * A CSV file read strictly: lines that start with # are remarks, the first other one names the columns, and
 * every row has a cell for each.
 */
public final class CsvTable {
  private final String file;
  private final List<String> columns;
  private final List<Row> rows;

  private CsvTable(String file, List<String> columns, List<Row> rows) {
    this.file = file;
    this.columns = List.copyOf(columns);
    this.rows = List.copyOf(rows);
  }

  /**
   * Reads a table; what is wrong with it is added to the problems, and rows of another length are left out.
   *
   * @param required columns it must have
   * @param optional columns it may have; any other is refused
   */
  public static CsvTable read(
      Source source, List<String> required, List<String> optional, Problems problems) {
    var text = source.text();
    // Spreadsheets put a byte order mark first.
    var content = text.startsWith("\uFEFF") ? text.substring(1) : text;
    List<String> columns = List.of();
    var rows = new ArrayList<Row>();
    if (content.indexOf('\uFFFD') >= 0) {
      problems.add(Problem.ofFile(source.name(), "must be UTF-8, but is not."));
    }
    try (var reader = CsvReader.builder()
        .commentStrategy(CommentStrategy.SKIP)
        .skipEmptyLines(true)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .ofCsvRecord(content)) {
      for (var record : reader) {
        var line = (int) record.getStartingLineNumber();
        var cells = record.getFields().stream().map(String::strip).toList();
        if (columns.isEmpty()) {
          columns = cells;
          if (cells.size() == 1 && cells.get(0).indexOf(';') >= 0) {
            problems.add(new Problem(
                source.name(), line, "must separate its cells by commas, but has semicolons."));
            return new CsvTable(source.name(), List.of(), List.of());
          }
          checkColumns(source.name(), line, columns, required, optional, problems);
        } else if (cells.size() != columns.size()) {
          problems.add(new Problem(
              source.name(),
              line,
              "must have %s cells, but has %s.".formatted(columns.size(), cells.size())));
        } else {
          rows.add(new Row(line, cells));
        }
      }
    } catch (CsvParseException e) {
      problems.add(Problem.ofFile(
          source.name(),
          "must be CSV, but is not: " + Shown.sentence(String.valueOf(e.getMessage()))));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    if (columns.isEmpty()) {
      problems.add(
          Problem.ofFile(source.name(), "must name its columns in the first line, but is empty."));
    }
    return new CsvTable(source.name(), columns, rows);
  }

  private static void checkColumns(
      String file,
      int line,
      List<String> columns,
      List<String> required,
      List<String> optional,
      Problems problems) {
    var known = new ArrayList<>(required);
    known.addAll(optional);
    for (var name : required) {
      if (!columns.contains(name)) {
        problems.add(new Problem(file, line, "must have a column " + name + ", but has none."));
      }
    }
    for (var i = 0; i < columns.size(); i++) {
      var name = columns.get(i);
      if (!known.contains(name)) {
        problems.add(new Problem(
            file,
            line,
            "column %s is not known.%s".formatted(Shown.text(name), Closest.advice(name, known))));
      } else if (columns.indexOf(name) < i) {
        problems.add(
            new Problem(file, line, "column " + name + " must be there once, but is twice."));
      }
    }
  }

  public List<Row> rows() {
    return rows;
  }

  public boolean has(String column) {
    return columns.contains(column);
  }

  /** True if a cell is empty, or its column is not there. */
  public boolean isBlank(Row row, String column) {
    return cell(row, column).isEmpty();
  }

  /** A cell that must hold text of at most 60 characters; empty text after a problem. */
  public String text(Row row, String column, Problems problems) {
    var cell = cell(row, column);
    if (cell.isEmpty() || cell.length() > 60 || !Shown.name(cell).equals(cell)) {
      problems.add(new Problem(
          file,
          row.line(),
          "%s must be plain text of 1 to 60 characters, but is %s."
              .formatted(column, Shown.text(cell))));
      return "";
    }
    return cell;
  }

  /** A cell that must hold a plain decimal number from low to high; the low end after a problem. */
  public double number(Row row, String column, double low, double high, Problems problems) {
    var cell = cell(row, column);
    if (cell.matches("-?[0-9]{1,15}(\\.[0-9]{1,15})?")) {
      var value = Double.parseDouble(cell);
      if (value >= low && value <= high) {
        return value;
      }
    }
    problems.add(new Problem(
        file,
        row.line(),
        "%s must be a plain number from %s to %s, but is %s."
            .formatted(
                column,
                pappus.quantity.Require.plain(low),
                pappus.quantity.Require.plain(high),
                Shown.text(cell))));
    return low;
  }

  private String cell(Row row, String column) {
    var index = columns.indexOf(column);
    return index < 0 ? "" : row.cells().get(index);
  }

  /**
   * One row.
   *
   * @param line it starts on, from 1
   */
  public record Row(int line, List<String> cells) {}
}
