package pappus.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** A table of a document between two comments: a run renews its own rows, and every other row keeps its day. */
final class MeasuredTable {
  private static final String HEADER = """
      | what | of | median | worst | unit | besides | day | machine |
      | --- | --- | --- | --- | --- | --- | --- | --- |
      """;
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| (?!what|---)([^|]*)\\|([^|]*)\\|.*$");

  private MeasuredTable() {}

  /**
   * The document with rows renewed or added.
   *
   * @param name of the benchmark, as the comments name it
   * @param command that renews the whole table
   * @param rows without day and machine, each of six cells
   * @param when day and machine, two cells
   * @throws IllegalArgumentException if the document has no such table
   */
  static String renewed(
      String document, String name, String command, List<List<String>> rows, List<String> when) {
    var start = "<!-- measured: " + name + " -->\n";
    var end = "<!-- end: " + name + " -->";
    var from = document.indexOf(start);
    var to = document.indexOf(end, Math.max(from, 0));
    if (from < 0 || to < 0) {
      throw new IllegalArgumentException(
          "the document must hold %s and %s in lines of their own".formatted(start.strip(), end));
    }
    var lines = new LinkedHashMap<String, String>();
    ROW.matcher(document.substring(from, to))
        .results()
        .forEach(row -> lines.put(key(row.group(1), row.group(2)), row.group()));
    rows.forEach(row -> put(lines, row, when));
    return document.substring(0, from)
        + start
        + "\n`"
        + command
        + "`\n\n"
        + HEADER
        + String.join("\n", lines.values())
        + "\n\n"
        + document.substring(to);
  }

  private static void put(Map<String, String> lines, List<String> row, List<String> when) {
    var cells = new ArrayList<>(row);
    cells.addAll(when);
    lines.put(key(row.get(0), row.get(1)), "| " + String.join(" | ", cells) + " |");
  }

  private static String key(String what, String of) {
    return what.strip() + "|" + of.strip();
  }
}
