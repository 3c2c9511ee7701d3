package pappus.document;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import pappus.files.CsvTable;
import pappus.files.Shown;
import pappus.quantity.Require;

/** Writes CSV that a spreadsheet opens without running what it holds. */
public final class CsvText {
  private CsvText() {}

  /**
   * A table with its columns in the first line.
   *
   * @param rows cells of texts and numbers, an empty text for none
   */
  public static String of(List<String> columns, List<List<Object>> rows) {
    var text = new StringWriter();
    try (var writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      writer.writeRecord(columns);
      for (var row : rows) {
        writer.writeRecord(row.stream().map(CsvText::cell).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static String cell(Object value) {
    if (value instanceof Double number) {
      return Require.plain(number);
    }
    // After the guard, which looks at the signs themselves.
    return value instanceof Number ? value.toString() : Shown.seen(guarded(value.toString()));
  }

  /**
   * A text that begins like a formula would be run by spreadsheets, some of which pass over blanks before it; an
   * apostrophe keeps it text.
   */
  private static String guarded(String text) {
    var first = text.isEmpty() ? ' ' : text.charAt(0);
    var seen = withoutBlanksBefore(text);
    if (CsvTable.isPlainNumber(text)) {
      return text;
    }
    return "\t\r\n".indexOf(first) >= 0
            || (!seen.isEmpty() && "=+-@\uFF1D\uFF0B\uFF0D\uFF20".indexOf(seen.charAt(0)) >= 0)
        ? "'" + text
        : text;
  }

  /** Blanks of every kind, those that do not break and those of no width too. */
  private static String withoutBlanksBefore(String text) {
    var start = 0;
    while (start < text.length() && isBlank(text.charAt(start))) {
      start++;
    }
    return text.substring(start);
  }

  private static boolean isBlank(char sign) {
    return Character.isWhitespace(sign)
        || Character.isSpaceChar(sign)
        || Character.isISOControl(sign)
        || Character.getType(sign) == Character.FORMAT;
  }
}
