package pappus.spreadsheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.JsonText;
import pappus.files.json.Listed;
import pappus.files.json.SchemaFields;

/**
 * Reads records from a spreadsheet saved as CSV: the first line names the columns, each row is a record.
 *
 * <p>Rows become JSON and go through the same strict reading as a catalogue file, so that a record from a
 * spreadsheet is held to no less; what is wrong is told by row and column.
 *
 * <p>Why: src/site/markdown/decisions.md#a-spreadsheets-row-becomes-json
 */
public final class RecordSheet<T> {
  /** Rows made into JSON together, which bounds the memory. */
  private static final int AT_A_TIME = 5000;

  private final CsvTable table;
  private final String file;
  private final String list;
  private final BiFunction<Source, Problems, List<Listed<T>>> reading;
  private final Set<String> listPaths = new HashSet<>();
  private List<Column> columns = List.of();

  /** Paths of cells that could not be read, by the index of their record among those read together. */
  private final Map<Integer, Set<String>> unreadable = new HashMap<>();

  /**
   * A record and where it stands.
   *
   * @param line of the file, from 1
   * @param row as a spreadsheet counts, from 1
   */
  public record Entry<T>(T value, int line, int row) {}

  private RecordSheet(
      String file,
      CsvTable table,
      String list,
      BiFunction<Source, Problems, List<Listed<T>>> reading) {
    this.file = file;
    this.table = table;
    this.list = list;
    this.reading = reading;
  }

  /** The line that names every column a kind of record may have; of lists their first place. */
  public static List<String> titles(String list) {
    return new Columns(list).titles();
  }

  /**
   * The records of a file in its order; what is wrong is added to the problems, and the records are then of no use.
   *
   * @param list name of the list in the JSON file of such records, which is also that of its schema
   * @param reading of that file
   */
  public static <T> List<Entry<T>> read(
      Source source,
      String list,
      BiFunction<Source, Problems, List<Listed<T>>> reading,
      Problems problems) {
    var table = CsvTable.read(source, problems);
    if (table.header().isEmpty()) {
      return List.of();
    }
    var sheet = new RecordSheet<>(source.name(), table, list, reading);
    return sheet.read(problems);
  }

  private List<Entry<T>> read(Problems problems) {
    var wrongColumns = new Problems();
    columns = new Columns(list).of(file, table, wrongColumns);
    if (!wrongColumns.isEmpty()) {
      // Every cell of a column that is not understood would be a problem of its own.
      problems.addAll(wrongColumns);
      return List.of();
    }
    for (var field : SchemaFields.of(list)) {
      if (field.required()
          && field.type().startsWith("list of ")
          && !field.path().contains("[]")) {
        listPaths.add(field.path());
      }
    }
    var entries = new ArrayList<Entry<T>>();
    for (var from = 0; from < table.rows().size(); from += AT_A_TIME) {
      var to = Math.min(from + AT_A_TIME, table.rows().size());
      entries.addAll(read(table.rows().subList(from, to), problems));
    }
    return entries;
  }

  private List<Entry<T>> read(List<CsvTable.Row> rows, Problems problems) {
    var isFull = problems.isFull(file);
    unreadable.clear();
    var records = new ArrayList<Map<String, Object>>();
    for (var i = 0; i < rows.size(); i++) {
      var row = record(rows.get(i), i, problems);
      if (!isFull || !unreadable.containsKey(i)) {
        records.add(row);
      }
    }
    var json = JsonText.of(Map.of(list, records)).getBytes(StandardCharsets.UTF_8);
    var wrong = isFull ? Problems.counted() : new Problems();
    var read = reading.apply(Source.of(file, json), wrong);
    wrong.sorted().forEach(problem -> inTable(problem, rows).ifPresent(problems::add));
    if (isFull) {
      return List.of();
    }
    return read.stream()
        .map(listed -> new Entry<>(
            listed.value(),
            rows.get(listed.index()).line(),
            rows.get(listed.index()).number()))
        .toList();
  }

  /** One row as the JSON object of its record. */
  private Map<String, Object> record(CsvTable.Row row, int index, Problems problems) {
    var object = new LinkedHashMap<String, Object>();
    for (var column : columns) {
      var cell = row.cells().get(column.index());
      if (cell.isEmpty()) {
        continue;
      }
      var value = Cell.value(column, cell);
      if (value.isEmpty()) {
        unreadable.computeIfAbsent(index, key -> new HashSet<>()).add(column.path());
        problems.add(new Problem(
            file,
            row.line(),
            "%s must be %s, but is %s.%s"
                .formatted(
                    place(row, column),
                    Cell.expected(column),
                    Shown.text(cell),
                    Cell.advice(cell))));
      } else {
        JsonObject.put(object, column.path(), value.get());
        column
            .currency()
            .ifPresent(currency -> JsonObject.put(
                object, column.path().replaceFirst("amount$", "currency"), currency));
      }
    }
    // A list without a cell is an empty one; whether it may be is the record's to say.
    listPaths.forEach(path -> JsonObject.putIfAbsent(object, path, List.of()));
    return object;
  }

  /** A problem of the JSON as one of the table; none if its cell was refused already. */
  private Optional<Problem> inTable(Problem problem, List<CsvTable.Row> rows) {
    var told = Pattern.compile(
            Pattern.quote(list) + "\\[([0-9]+)\\]\\.?(\\S*) ((?:must|is) .*)", Pattern.DOTALL)
        .matcher(problem.text());
    if (!told.matches()) {
      return Optional.of(Problem.ofFile(file, problem.text()));
    }
    var index = Integer.parseInt(told.group(1));
    var path = told.group(2);
    var row = rows.get(index);
    if (unreadable.getOrDefault(index, Set.of()).stream()
        .anyMatch(
            bad -> bad.equals(path) || bad.startsWith(path + ".") || bad.startsWith(path + "["))) {
      return Optional.empty();
    }
    var column = columns.stream()
        .filter(each -> each.path().equals(path) || each.path().startsWith(path + "."))
        .findFirst();
    var sentence = column
        .map(each -> told.group(3).equals("is missing.")
            ? "%s must have a value, but is empty.".formatted(place(row, each))
            : "%s is %s: %s %s"
                .formatted(
                    place(row, each),
                    Shown.text(row.cells().get(each.index())),
                    path,
                    told.group(3)))
        .orElse("row %s: %s %s".formatted(row.number(), path, told.group(3)));
    return Optional.of(new Problem(file, row.line(), sentence));
  }

  private static String place(CsvTable.Row row, Column column) {
    return "row %s, column %s %s,"
        .formatted(row.number(), column.letters(), Shown.text(column.title()));
  }
}
