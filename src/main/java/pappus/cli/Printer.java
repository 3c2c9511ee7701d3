package pappus.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import pappus.files.Shown;
import picocli.CommandLine;

/** What commands print, on a terminal or in a pipe: no name in a line can steer the terminal. */
final class Printer {
  private static final String CLEAR_LINE = "\r\u001b[K";

  private final PrintWriter to;

  private Printer(PrintWriter to) {
    this.to = to;
  }

  /** Standard output. */
  static Printer out(CommandLine command) {
    return new Printer(command.getOut());
  }

  /** Standard error. */
  static Printer err(CommandLine command) {
    return new Printer(command.getErr());
  }

  /** One line, whatever it holds. */
  void line(@Nullable Object said) {
    to.println(Shown.safe(String.valueOf(said)));
    to.flush();
  }

  /** A document with lines of its own, made safe where it was written. */
  void document(String text) {
    to.print(text);
    to.flush();
  }

  /** In place of the line the cursor stands in, which stays open. */
  void inPlace(String said) {
    document(CLEAR_LINE + Shown.safe(said));
  }
}
