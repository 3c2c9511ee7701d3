package pappus.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A case of the corpus of bad inputs: one line of a file, its cells apart by tabs, in which backslash n, t, u and
 * backslash stand as in Java.
 *
 * @param command by its name in {@link Workbench}, or its words, where an at sign stands for the folder
 * @param file that is spoiled; empty if none is
 * @param find what stands in it; empty for all of it
 * @param replace what stands there instead
 * @param code wanted
 * @param line wanted among those that are printed, or its beginning where it ends in an ellipsis
 */
record BadInput(String command, String file, String find, String replace, int code, String line) {
  private static final Pattern POINT = Pattern.compile("(?<!\\\\)\\\\u\\{([0-9a-f]+)\\}");
  private static final String REMOVED = "(removed)";

  /** Every case of a file. */
  static List<BadInput> read(Path file) throws IOException {
    var cases = new ArrayList<BadInput>();
    for (var line : Files.readAllLines(file)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        cases.add(of(line));
      }
    }
    return cases;
  }

  /** The case of a line. */
  static BadInput of(String line) {
    var cells = line.split("\t", -1);
    if (cells.length != 6) {
      throw new AssertionError("A case must have 6 cells: " + line);
    }
    return new BadInput(
        cells[0], cells[1], told(cells[2]), told(cells[3]), Integer.parseInt(cells[4]), cells[5]);
  }

  /** Whether a line that was printed is the one that is wanted. */
  boolean isSaid(String printed) {
    return line.endsWith("…")
        ? printed.startsWith(line.substring(0, line.length() - 1))
        : printed.equals(line);
  }

  /** Java reads no backslash u in a text at run time. */
  private static String told(String cell) {
    var text = new StringBuilder();
    var escaped = POINT.matcher(cell);
    while (escaped.find()) {
      escaped.appendReplacement(
          text,
          Matcher.quoteReplacement(Character.toString(Integer.parseInt(escaped.group(1), 16))));
    }
    escaped.appendTail(text);
    return text.toString().translateEscapes();
  }

  /** A case as it stands in a file, without what is wanted. */
  static String written(String command, String file, String find, String replace) {
    return String.join("\t", command, file, escaped(find), escaped(replace), "", "");
  }

  private static String escaped(String text) {
    var written = new StringBuilder();
    text.codePoints().forEach(point -> {
      switch (point) {
        case '\n' -> written.append("\\n");
        case '\t' -> written.append("\\t");
        case '\\' -> written.append("\\\\");
        default -> {
          if (point < ' ' || point >= 0x7F) {
            written.append("\\u{").append(Integer.toHexString(point)).append('}');
          } else {
            written.appendCodePoint(point);
          }
        }
      }
    });
    return written.toString();
  }

  /** Spoils the file. */
  void spoil(Workbench bench) throws IOException {
    if (replace.equals(REMOVED)) {
      Files.delete(bench.file(file));
    } else if (!file.isEmpty()) {
      var good = bench.files().getOrDefault(file, "");
      if (!good.contains(find)) {
        throw new AssertionError(file + " must have " + find);
      }
      var at = good.indexOf(find);
      Files.writeString(
          bench.file(file),
          find.isEmpty()
              ? replace
              : good.substring(0, at) + replace + good.substring(at + find.length()));
    }
  }
}
