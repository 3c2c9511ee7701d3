package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Threads that do the same to many things; answers come in the order of what was asked. */
record Workers(ExecutorService threads) {
  /** Enough work that handing it over costs little beside it. */
  private static final int AT_ONCE = 8;

  <A, B> List<B> each(List<A> asked, Function<A, B> what) {
    var futures = new ArrayList<Future<List<B>>>();
    for (var from = 0; from < asked.size(); from += AT_ONCE) {
      var part = asked.subList(from, Math.min(from + AT_ONCE, asked.size()));
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
}
