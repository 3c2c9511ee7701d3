package pappus.order.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;
import pappus.order.column.Column;
import pappus.order.timefold.OrderChooser;

/** Chooses an order by several seeds at once; the answers come in the order of the seeds. */
final class Seeds {
  private static final int SEEDS = 2;

  private final List<OrderChooser> choosers = new ArrayList<>();

  Seeds(Choice choice, Goal goal, long moves) {
    for (var seed = 0; seed < SEEDS; seed++) {
      choosers.add(new OrderChooser(choice, goal, moves, OrderChooser.SEED + seed));
    }
  }

  /** Ends the runs soon; may be called from another thread. */
  void stop() {
    choosers.forEach(OrderChooser::stop);
  }

  List<List<Column>> choose(List<Column> start) {
    var threads = Executors.newFixedThreadPool(SEEDS);
    try {
      var futures = new ArrayList<Future<List<Column>>>();
      for (var chooser : choosers) {
        futures.add(threads.submit(() -> chooser.choose(start)));
      }
      var answers = new ArrayList<List<Column>>();
      for (var future : futures) {
        answers.add(future.get());
      }
      return answers;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    } finally {
      threads.shutdownNow();
    }
  }
}
