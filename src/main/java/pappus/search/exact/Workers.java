package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Threads that do the same to many things; answers come in the order of what was asked. */
final class Workers implements AutoCloseable {
  /** Nobody else: all is done by who asks. */
  static final Workers NONE = new Workers(null, 1);

  private final @Nullable ExecutorService threads;
  private final int atOnce;

  private Workers(@Nullable ExecutorService threads, int atOnce) {
    this.threads = threads;
    this.atOnce = atOnce;
  }

  /** So many threads. */
  static Workers of(int threads) {
    return new Workers(Executors.newFixedThreadPool(threads), 1);
  }

  /**
   * These threads with other batches.
   *
   * @param number of things that are handed over together, so that handing over costs little beside the work
   */
  Workers atOnce(int number) {
    return new Workers(threads, number);
  }

  <A, B> List<B> each(List<A> asked, Function<A, B> what) {
    if (threads == null) {
      return asked.stream().map(what).toList();
    }
    var futures = new ArrayList<Future<List<B>>>();
    for (var from = 0; from < asked.size(); from += atOnce) {
      var part = asked.subList(from, Math.min(from + atOnce, asked.size()));
      futures.add(threads.submit(() -> part.stream().map(what).toList()));
    }
    var answers = new ArrayList<B>();
    for (var future : futures) {
      answers.addAll(answer(future));
    }
    return answers;
  }

  private static <T> T answer(Future<T> future) {
    try {
      return future.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  @Override
  public void close() {
    if (threads != null) {
      threads.shutdownNow();
    }
  }
}
