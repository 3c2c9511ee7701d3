package pappus.cli;

import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import pappus.document.Style;

/** Whether a person sits at one of the streams of this process, and what is known of the terminal. */
final class Terminal {
  /** Standard input, as systems number it. */
  static final int IN = 0;

  /** Standard output. */
  static final int OUT = 1;

  /** Standard error. */
  static final int ERR = 2;

  private static final int USUAL_COLUMNS = 80;
  private static final String COLUMNS = "[1-9][0-9]{1,3}";
  private static final long PATIENCE_SECONDS = 2;

  private static final Map<Integer, Boolean> KNOWN = new ConcurrentHashMap<>();

  private Terminal() {}

  /**
   * Whether a stream is a terminal, which does not change in a run. Java tells of input and output together alone, and so
   * would take an answer that goes into a file for a run that nobody watches: the shell is asked, and Java only where
   * there is none.
   */
  static boolean isThere(int stream) {
    return KNOWN.computeIfAbsent(stream, Terminal::ask);
  }

  private static boolean ask(int stream) {
    try {
      var asked =
          new ProcessBuilder("/bin/sh", "-c", "test -t " + stream).inheritIO().start();
      if (!asked.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        asked.destroy();
        return false;
      }
      return asked.exitValue() == 0;
    } catch (IOException noShell) {
      return hasConsole();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Up to Java 21 there is no console in a pipe; from 22 on there is one that says it is none. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean hasConsole() {
    var console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException olderJava) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /** COLUMNS where it is set, else what the terminal says, else 80. */
  static int columns() {
    var set = System.getenv("COLUMNS");
    if (set != null && set.matches(COLUMNS)) {
      return Integer.parseInt(set);
    }
    return isThere(OUT) ? ofTerminal().orElse(USUAL_COLUMNS) : USUAL_COLUMNS;
  }

  private static OptionalInt ofTerminal() {
    try {
      var process = new ProcessBuilder("stty", "size")
          .redirectInput(new File("/dev/tty"))
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        return OptionalInt.empty();
      }
      var said =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
      var columns = said.substring(said.indexOf(' ') + 1);
      return columns.matches(COLUMNS)
          ? OptionalInt.of(Integer.parseInt(columns))
          : OptionalInt.empty();
    } catch (IOException noSuchProgram) {
      return OptionalInt.empty();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return OptionalInt.empty();
    }
  }

  /** Bold and faint on a terminal alone, and not where NO_COLOR asks for none. */
  static Style style() {
    var none = System.getenv("NO_COLOR");
    return isThere(OUT) && (none == null || none.isEmpty()) ? Style.WEIGHTED : Style.PLAIN;
  }
}
