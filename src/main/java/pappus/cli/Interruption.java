package pappus.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Ctrl-C and termination. The hook asks the search to stop and waits until its best so far is
 * written; the machine then ends with 130 or 143 by itself.
 */
final class Interruption {
  private static final long PATIENCE_SECONDS = 30;
  private static final CountDownLatch DONE = new CountDownLatch(1);

  private final AtomicBoolean came = new AtomicBoolean();

  private Interruption() {}

  /** Calls stop when the user interrupts. */
  static Interruption watch(Runnable stop) {
    var interruption = new Interruption();
    Runtime.getRuntime().addShutdownHook(new Thread(() -> {
      if (DONE.getCount() == 0) {
        return;
      }
      interruption.came.set(true);
      stop.run();
      try {
        if (!DONE.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
          Runtime.getRuntime().halt(ExitCode.BUG);
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }));
    return interruption;
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
