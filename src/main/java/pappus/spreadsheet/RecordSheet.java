package pappus.spreadsheet;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
  /** Title of the column that says what each row is. */
  public static final String KIND = "kind";

  private static final int LONGEST_ID = 64;

  private static final Pattern COMMA = Pattern.compile("(?<=[0-9]),(?=[0-9])");

  /** Rows made into JSON together, which bounds the memory. */
  private static final int AT_A_TIME = 5000;

  private final CsvTable table;
  private final String file;
  private final String list;
  private final BiFunction<Source, Problems, List<Listed<T>>> reading;
  private final Set<String> listPaths = new HashSet<>();
  private final boolean isOfOneKind;
  private List<Column> columns = List.of();
  private List<Columns.Trade> trade = List.of();

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
      BiFunction<Source, Problems, List<Listed<T>>> reading,
      boolean isOfOneKind) {
    this.isOfOneKind = isOfOneKind;
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
    var table = table(source, problems);
    return table.header().isEmpty()
        ? List.of()
        : new RecordSheet<>(source.name(), table, list, reading, true).read(problems);
  }

  /** As above, of a table of several kinds, of which those of one were picked. */
  public static <T> List<Entry<T>> read(
      String file,
      CsvTable ofKind,
      String list,
      BiFunction<Source, Problems, List<Listed<T>>> reading,
      Problems problems) {
    return new RecordSheet<>(file, ofKind, list, reading, false).read(problems);
  }

  /**
   * A spreadsheet's cells. Where semicolons separate them, decimals may stand after commas, in the whole file or nowhere:
   * a point among them could part thousands.
   */
  public static CsvTable table(Source source, Problems problems) {
    var table = CsvTable.read(source, true, problems);
    if (!table.isBySemicolons()) {
      return table;
    }
    var commas = new ArrayList<CsvTable.Row>();
    for (var row : table.rows()) {
      if (row.cells().stream().anyMatch(RecordSheet::hasDecimalComma)) {
        commas.add(row);
      }
    }
    if (commas.isEmpty()) {
      return table;
    }
    for (var row : table.rows()) {
      for (var cell : row.cells()) {
        if (CsvTable.isPlainNumber(cell) && cell.contains(".")) {
          problems.add(new Problem(
              source.name(),
              row.line(),
              "row %s must write decimals as row %s does, after a comma, but has %s, which could be %s or %s."
                  .formatted(
                      row.number(),
                      commas.get(0).number(),
                      Shown.text(cell),
                      cell.replace('.', ','),
                      cell.replace(".", ""))));
        }
      }
    }
    return table.withCells(cell -> COMMA.matcher(cell).replaceAll("."));
  }

  private static boolean hasDecimalComma(String cell) {
    return COMMA.matcher(cell).find();
  }

  private List<Entry<T>> read(Problems problems) {
    var wrongColumns = new Problems();
    var found = new Columns(list, isOfOneKind).of(file, table, wrongColumns);
    columns = found.plain();
    trade = found.trade();
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
    for (var column : trade) {
      var cell = row.cells().get(column.index());
      if (cell.isEmpty()) {
        continue;
      }
      var values = column.word().read(list, cell);
      if (values.isEmpty()) {
        unreadable
            .computeIfAbsent(index, key -> new HashSet<>())
            .addAll(column.word().fields(list));
        problems.add(new Problem(
            file,
            row.line(),
            "%s must be %s, but is %s."
                .formatted(place(row, column), column.word().expected(), Shown.text(cell))));
      } else {
        // A column that is titled as the field itself says it more exactly.
        values.get().forEach((path, value) -> JsonObject.putNew(object, path, value));
      }
    }
    if (!list.equals("shelf") && !object.containsKey("id")) {
      id(object).ifPresent(id -> object.put("id", id));
    }
    // A list without a cell is an empty one; whether it may be is the record's to say.
    listPaths.forEach(path -> JsonObject.putIfAbsent(object, path, List.of()));
    return object;
  }

  /** Maker and name in the letters of an id; none if no letter is left. */
  private static Optional<String> id(Map<String, Object> object) {
    var said = (object.getOrDefault("maker", "") + " " + object.getOrDefault("name", ""));
    var plain = Normalizer.normalize(said, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9.]+", "-")
        .replaceAll("\\.{2,}", ".")
        .replaceAll("^[-.]+|[-.]+$", "");
    var id = plain.length() > LONGEST_ID ? plain.substring(0, LONGEST_ID) : plain;
    return Optional.of(id).filter(text -> !text.isEmpty());
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
        .or(() -> said(path)
            .filter(each -> !row.cells().get(each.index()).isEmpty())
            .map(each -> "%s is %s: %s %s"
                .formatted(
                    place(row, each),
                    Shown.text(row.cells().get(each.index())),
                    path,
                    told.group(3))))
        .orElse("row %s: %s %s".formatted(row.number(), path, told.group(3)));
    return Optional.of(new Problem(file, row.line(), sentence));
  }

  /** The column titled as in shops that a field comes from, if any does. */
  private Optional<Columns.Trade> said(String path) {
    return trade.stream()
        .filter(each -> each.word().fields(list).stream()
            .anyMatch(field -> path.equals(field)
                || path.startsWith(field + ".")
                || path.startsWith(field + "[")
                || field.startsWith(path + ".")))
        .findFirst();
  }

  private static String place(CsvTable.Row row, Columns.Trade column) {
    return "row %s, column %s %s,"
        .formatted(row.number(), column.letters(), Shown.text(column.title()));
  }

  private static String place(CsvTable.Row row, Column column) {
    return "row %s, column %s %s,"
        .formatted(row.number(), column.letters(), Shown.text(column.title()));
  }
}
