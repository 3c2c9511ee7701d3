package pappus.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * One line on a terminal that says what is being done, for how long, and what Ctrl-C does; nothing in a pipe. It runs by
 * itself, so that it is there however long a step takes.
 */
final class Progress implements AutoCloseable {
  /** Four times a second, and so within half a second of the start. */
  private static final long EACH_MILLIS = 250;

  /** What Ctrl-C does to a search. */
  static final String KEEPS = "Ctrl-C keeps it";

  /** What Ctrl-C does to what has no best so far. */
  static final String ENDS = "Ctrl-C ends it";

  private static final int WIDTH = 79;

  private static final long BEGAN_NANOS = System.nanoTime();

  private final Printer err;
  private final String interruption;
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread thread;
  private volatile String doing;

  private Progress(Printer err, BooleanSupplier isWanted, String doing, String interruption) {
    this.err = err;
    this.doing = doing;
    this.interruption = interruption;
    this.thread = new Thread(() -> run(isWanted), "progress");
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Begins to tell.
   *
   * @param quiet whether nothing is to be told
   * @param doing what is being done until more is known of it
   * @param interruption what Ctrl-C does to it
   */
  static Progress of(Printer err, boolean quiet, String doing, String interruption) {
    return on(err, () -> !quiet && Terminal.isThere(Terminal.ERR), doing, interruption);
  }

  /**
   * Where a test says whether there is a terminal.
   *
   * @param isWanted asked once, where nobody waits for it
   */
  static Progress on(Printer err, BooleanSupplier isWanted, String doing, String interruption) {
    return new Progress(err, isWanted, doing, interruption);
  }

  /** What is being done now. */
  void show(String text) {
    doing = text;
  }

  private void run(BooleanSupplier isWanted) {
    try {
      if (closed.getCount() == 0 || !isWanted.getAsBoolean()) {
        return;
      }
      var isShown = false;
      while (!closed.await(isShown ? EACH_MILLIS : 0, TimeUnit.MILLISECONDS)) {
        var seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - BEGAN_NANOS);
        err.inPlace(line(doing, seconds, interruption));
        isShown = true;
      }
      if (isShown) {
        err.inPlace("");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** In one line of any terminal: what is longer would not be overwritten. */
  static String line(String doing, long seconds, String interruption) {
    var end = "; %s s, %s".formatted(seconds, interruption);
    var room = WIDTH - end.length();
    return (doing.length() > room ? doing.substring(0, room - 1) + "…" : doing) + end;
  }

  /** Ends the line and takes it away. */
  @Override
  public void close() {
    closed.countDown();
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
