package pappus.cli;

import java.io.Console;

/** One line on a terminal that says what is being done; nothing in a pipe. */
final class Progress {
  private static final long LEAST_NANOS = 250_000_000;

  private final Printer err;
  private final boolean shown;
  private long lastNanos = System.nanoTime() - LEAST_NANOS;

  Progress(Printer err, boolean quiet) {
    this.err = err;
    this.shown = !quiet && isTerminal();
  }

  /** Up to Java 21 there is no console in a pipe; from 22 on there is one that says it is none. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
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

  /** At most four times a second. */
  void show(String text) {
    if (shown && System.nanoTime() - lastNanos >= LEAST_NANOS) {
      lastNanos = System.nanoTime();
      err.inPlace(text);
    }
  }

  void clear() {
    if (shown) {
      err.inPlace("");
    }
  }
}
