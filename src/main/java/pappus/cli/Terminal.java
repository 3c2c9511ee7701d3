package pappus.cli;

import java.io.Console;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/** Whether a person sits at one of the streams of this process. */
final class Terminal {
  /** Standard input, as systems number it. */
  static final int IN = 0;

  /** Standard error. */
  static final int ERR = 2;

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
}
