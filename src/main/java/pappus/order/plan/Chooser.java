package pappus.order.plan;

import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import pappus.order.choice.Choice;
import pappus.order.choice.Exchange;
import pappus.order.choice.Goal;
import pappus.order.choice.Ledger;
import pappus.order.column.Column;

/** Chooses among builds: by changes from several seeds, then by an exchange of pairs. May be stopped from another thread. */
final class Chooser {
  private final long moves;
  private final Consumer<String> progress;
  private volatile boolean stopped;
  private volatile @Nullable Seeds running;

  /**
   * @param moves changes tried for each seed each time
   * @param progress told what is being done
   */
  Chooser(long moves, Consumer<String> progress) {
    this.moves = moves;
    this.progress = progress;
  }

  void stop() {
    stopped = true;
    var now = running;
    if (now != null) {
      now.stop();
    }
  }

  boolean isStopped() {
    return stopped;
  }

  /** Everybody's builds, no worse than where it begins. */
  List<Column> chosen(Choice choice, Goal goal, List<Column> start) {
    if (choice.learners().size() <= 2) {
      var pair = exchanged(choice, goal, start);
      if (Ledger.of(choice, pair).standing().broken() == 0) {
        // There are no more than two to exchange: nothing is better.
        return pair;
      }
    }
    var seeds = new Seeds(choice, goal, moves);
    running = seeds;
    if (stopped) {
      return start;
    }
    progress.accept(
        "choosing among " + choice.columns().stream().mapToInt(List::size).sum());
    var best = start;
    for (var found : seeds.choose(start)) {
      best = better(choice, goal, found, best);
    }
    progress.accept("exchanging");
    return better(choice, goal, exchanged(choice, goal, best), best);
  }

  /** Builds exchanged as long as that makes an order better. */
  List<Column> exchanged(Choice choice, Goal goal, List<Column> start) {
    return new Exchange(choice, goal, () -> stopped).improve(start);
  }

  static List<Column> better(Choice choice, Goal goal, List<Column> one, List<Column> than) {
    return Ledger.of(choice, one).standing().isBetter(Ledger.of(choice, than).standing(), goal)
        ? one
        : than;
  }
}
