package pappus.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C and termination. The hook asks the search to stop and waits until its best so far is
 * written; the machine then ends with 129, 130 or 143 by itself.
 */
final class Interruption implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 30;
  private static final CountDownLatch DONE = new CountDownLatch(1);

  private final AtomicBoolean came = new AtomicBoolean();
  private final Thread hook;

  private Interruption(Runnable stop) {
    this.hook = new Thread(() -> stopAndWait(stop));
  }

  /** Calls stop when the user interrupts. */
  static Interruption watch(Runnable stop) {
    var interruption = new Interruption(stop);
    Runtime.getRuntime().addShutdownHook(interruption.hook);
    return interruption;
  }

  private void stopAndWait(Runnable stop) {
    if (DONE.getCount() == 0) {
      return;
    }
    came.set(true);
    stop.run();
    try {
      if (!DONE.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(ExitCode.BUG);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Watches no longer, so that a machine which goes on to other work ends without waiting. */
  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException alreadyEnding) {
      // The hook waits for the end of the run, which is near.
    }
  }

  /** Whether the user has interrupted. */
  boolean came() {
    return came.get();
  }

  /** Everything is written; a waiting hook may let the machine end. */
  static void finished() {
    DONE.countDown();
  }
}
