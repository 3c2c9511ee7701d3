package pappus.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import pappus.quantity.Require;

/**
 * A CSV file read strictly: lines that start with # are remarks, the first other one names the columns, and
 * every row has a cell for each.
 */
public final class CsvTable {
  private static final Pattern PLAIN_NUMBER = Pattern.compile("-?[0-9]{1,15}(\\.[0-9]{1,15})?");
  private static final Pattern LINE = Pattern.compile("record starting at line ([0-9]{1,9})");

  private final String file;
  private final Optional<Row> header;
  private final List<Row> rows;
  private final boolean isBySemicolons;

  private CsvTable(String file, Optional<Row> header, List<Row> rows) {
    this(file, header, rows, false);
  }

  private CsvTable(String file, Optional<Row> header, List<Row> rows, boolean isBySemicolons) {
    this.isBySemicolons = isBySemicolons;
    this.file = file;
    this.header = header;
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
    var table = read(source, problems);
    table.header.ifPresent(header ->
        checkColumns(source.name(), header.line(), table.columns(), required, optional, problems));
    return table;
  }

  /** As above, but takes whatever columns there are; without columns it is empty after a problem. */
  public static CsvTable read(Source source, Problems problems) {
    return read(source, false, problems);
  }

  /**
   * As above.
   *
   * @param mayBeSemicolons whether semicolons may separate the cells: in a file whose first line has them and no comma
   */
  public static CsvTable read(Source source, boolean mayBeSemicolons, Problems problems) {
    if (!source.isText(problems)) {
      return new CsvTable(source.name(), Optional.empty(), List.of());
    }
    var text = source.text();
    // Spreadsheets put a byte order mark first.
    var content = text.startsWith("\uFEFF") ? text.substring(1) : text;
    var isBySemicolons = mayBeSemicolons && isBySemicolons(content);
    Optional<Row> header = Optional.empty();
    var rows = new ArrayList<Row>();
    try (var reader = CsvReader.builder()
        .fieldSeparator(isBySemicolons ? ';' : ',')
        .commentStrategy(CommentStrategy.READ)
        .skipEmptyLines(false)
        .allowUnclosedQuote(false)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .ofCsvRecord(content)) {
      var number = 0;
      for (var record : reader) {
        number++;
        var cells = record.getFields().stream().map(String::strip).toList();
        if (record.isComment() || cells.stream().allMatch(String::isEmpty)) {
          continue;
        }
        var row = new Row((int) record.getStartingLineNumber(), number, cells);
        if (header.isEmpty()) {
          header = Optional.of(row);
          var separator = cells.size() > 1 ? Optional.<String>empty() : separator(cells.get(0));
          if (separator.isPresent()) {
            problems.add(new Problem(
                source.name(),
                row.line(),
                "must separate its cells by commas, but has %s. Maybe export it again with commas, and points in numbers."
                    .formatted(separator.get())));
            return new CsvTable(source.name(), Optional.empty(), List.of());
          }
        } else if (cells.size() != header.get().cells().size()) {
          problems.add(new Problem(
              source.name(),
              row.line(),
              "must have %s cells, but has %s."
                  .formatted(header.get().cells().size(), cells.size())));
        } else {
          rows.add(row);
        }
      }
    } catch (CsvParseException e) {
      problems.add(notCsv(source.name(), String.valueOf(e.getMessage())));
      return new CsvTable(source.name(), Optional.empty(), List.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (header.isEmpty()) {
      problems.add(
          Problem.ofFile(source.name(), "must name its columns in the first line, but is empty."));
    }
    return new CsvTable(source.name(), header, rows, isBySemicolons);
  }

  private static boolean isBySemicolons(String content) {
    return content
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .findFirst()
        .filter(line -> line.indexOf(';') >= 0 && line.indexOf(',') < 0)
        .isPresent();
  }

  /** Whether semicolons separate its cells. */
  public boolean isBySemicolons() {
    return isBySemicolons;
  }

  /** The same with other texts in its cells. */
  public CsvTable withCells(UnaryOperator<String> change) {
    var changed = rows.stream()
        .map(row ->
            new Row(row.line(), row.number(), row.cells().stream().map(change).toList()))
        .toList();
    return new CsvTable(file, header, changed, isBySemicolons);
  }

  /** The same with some of its rows. */
  public CsvTable withRows(Predicate<Row> kept) {
    return new CsvTable(file, header, rows.stream().filter(kept).toList(), isBySemicolons);
  }

  /** What a line without a comma seems to separate its cells by. */
  private static Optional<String> separator(String line) {
    return line.indexOf(';') >= 0
        ? Optional.of("semicolons")
        : line.indexOf('\t') >= 0 ? Optional.of("tabs") : Optional.empty();
  }

  /** The parser's own words, at the line where they belong. */
  private static Problem notCsv(String file, String message) {
    var line = LINE.matcher(message);
    return new Problem(
        file,
        line.find() ? Integer.parseInt(line.group(1)) : 0,
        "must be CSV, but is not: %s. Maybe a quote is not closed."
            .formatted(Shown.sentence(message.replaceFirst(" *\\(record starting.*", ""))));
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

  /** The row that names the columns; none in a file that cannot be read. */
  public Optional<Row> header() {
    return header;
  }

  /** Names of the columns, as they stand there. */
  public List<String> columns() {
    return header.map(Row::cells).orElse(List.of());
  }

  public boolean has(String column) {
    return columns().contains(column);
  }

  /** True if a cell is empty, or its column is not there. */
  public boolean isBlank(Row row, String column) {
    return cell(row, column).isEmpty();
  }

  /** A cell that must hold text of at most 60 characters; empty text after a problem. */
  public String text(Row row, String column, Problems problems) {
    var cell = cell(row, column);
    if (cell.isEmpty() || cell.length() > 60 || !Shown.safe(cell).equals(cell)) {
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
    if (isPlainNumber(cell)) {
      var value = Double.parseDouble(cell);
      if (value >= low && value <= high) {
        return value;
      }
    }
    problems.add(new Problem(
        file,
        row.line(),
        "%s must be a plain number from %s to %s, but is %s."
            .formatted(column, Require.plain(low), Require.plain(high), Shown.text(cell))));
    return low;
  }

  /** Whether a cell is a decimal number as people write it, without exponent, unit or grouping. */
  public static boolean isPlainNumber(String cell) {
    return PLAIN_NUMBER.matcher(cell).matches();
  }

  private String cell(Row row, String column) {
    var index = columns().indexOf(column);
    return index < 0 ? "" : row.cells().get(index);
  }

  /**
   * One row.
   *
   * @param line it starts on, from 1
   * @param number as a spreadsheet counts rows, from 1; a cell of several lines makes it less than the line
   */
  public record Row(int line, int number, List<String> cells) {}
}
