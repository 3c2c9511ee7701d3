package pappus.whatif.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import pappus.change.Asked;
import pappus.change.Changed;
import pappus.ranking.Best;
import pappus.ranking.Finder;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.search.Question;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Relaxer;

/**
 * Finds the best build at each step of a sweep. The loosest steps come first: where a proven winner keeps a tighter
 * limit too, it wins there as well, and where nothing is feasible, nothing is under a tighter one, so that only
 * steps at which the winner changes are searched.
 *
 * <p>Why: src/site/markdown/decisions.md#a-step-of-a-sweep-is-searched-only-where-the-winner-changes
 */
public final class Sweeper {
  private final Asked asked;
  private final List<Axis> axes;
  private final Finder finder;
  private final Consumer<String> progress;
  private int searches;

  /**
   * @param axes one or two
   */
  public Sweeper(Asked asked, List<Axis> axes, Finder finder, Consumer<String> progress) {
    this.asked = asked;
    this.axes = List.copyOf(axes);
    this.finder = finder;
    this.progress = progress;
  }

  /**
   * A build that was found.
   *
   * @param isCarriedOver whether that took no search
   * @param inTheWay demands in conflict where there is none; absent where that is not known
   */
  private record Found(Best best, boolean isCarriedOver, Optional<List<Demand>> inTheWay) {
    static Found of(Best best, boolean isCarriedOver) {
      return new Found(best, isCarriedOver, Optional.empty());
    }
  }

  /**
   * Finds all of it.
   *
   * @throws IllegalArgumentException if the scenario refuses a value
   */
  public Sweep sweep() {
    var all = product();
    all.forEach(this::at);
    var found = new LinkedHashMap<List<String>, Found>();
    for (var values : loosestFirst(all)) {
      found.put(values, find(values, found));
      progress.accept("%s of %s steps".formatted(found.size(), all.size()));
    }
    var steps = new ArrayList<Step>();
    Optional<Best> before = Optional.empty();
    for (var values : all) {
      var now = Objects.requireNonNull(found.get(values));
      var isFirst =
          values.get(axes.size() - 1).equals(axes.get(axes.size() - 1).values().get(0));
      steps.add(new Step(
          values,
          now.best(),
          isFirst ? List.of() : changed(before, now.best()),
          now.isCarriedOver(),
          now.inTheWay()));
      before = Optional.of(now.best());
    }
    return new Sweep(axes, steps, searches);
  }

  private static List<Changed> changed(Optional<Best> before, Best now) {
    var old = before.flatMap(Best::build);
    return old.isPresent() && now.build().isPresent()
        ? Changed.between(old.get().build(), now.build().get().build())
        : List.of();
  }

  private List<List<String>> product() {
    var all = List.<List<String>>of(List.of());
    for (var axis : axes) {
      all = all.stream()
          .flatMap(begun -> axis.values().stream().map(value -> {
            var longer = new ArrayList<>(begun);
            longer.add(value);
            return List.copyOf(longer);
          }))
          .toList();
    }
    if (all.size() > Axes.MOST_STEPS) {
      throw new IllegalArgumentException(
          "must have at most %s steps in all, but has %s.".formatted(Axes.MOST_STEPS, all.size()));
    }
    return all;
  }

  /** Each step after all that are looser in every way. */
  private List<List<String>> loosestFirst(List<List<String>> all) {
    var order = new ArrayList<>(all);
    for (var i = axes.size() - 1; i >= 0; i--) {
      var place = i;
      Comparator<List<String>> byValue =
          Comparator.comparingDouble(values -> Double.parseDouble(values.get(place)));
      switch (axes.get(i).tightens()) {
        case DOWNWARD -> order.sort(byValue.reversed());
        case UPWARD -> order.sort(byValue);
        case NEITHER -> {}
      }
    }
    return order;
  }

  private Asked at(List<String> values) {
    var one = asked;
    for (var i = 0; i < axes.size(); i++) {
      one = axes.get(i).change().at(one, values.get(i));
    }
    return one;
  }

  private Found find(List<String> values, Map<List<String>, Found> known) {
    var here = at(values);
    var question = here.question();
    for (var entry : known.entrySet()) {
      var looser = entry.getValue().best();
      if (isWithin(values, entry.getKey()) && looser.isProof()) {
        if (looser.build().isEmpty()) {
          return new Found(looser, true, stillInTheWay(here, entry.getValue()));
        }
        var winner = looser.build().get().build();
        var same = question.assessor().assess(winner);
        // A wish by property is no limit that the assessment holds it to.
        if (same.isFeasible() && question.permits(winner) && !goesByOthers(question)) {
          return Found.of(new Best(Optional.of(same), looser.proof()), true);
        }
      }
    }
    if (finder.isStopped()) {
      return Found.of(new Best(Optional.empty(), Proof.of(Ending.INTERRUPTED)), false);
    }
    searches++;
    var best = finder.best(question);
    return best.build().isEmpty() && best.isProof()
        ? new Found(best, false, new Relaxer(here, finder).conflict())
        : Found.of(best, false);
  }

  /** Whether the best is the best of those that come near another one, which may be gone. */
  private static boolean goesByOthers(Question question) {
    return question.assessor().scenario().prefer() != null;
  }

  /** What leaves no build leaves none where one of it is asked for more strictly. */
  private static Optional<List<Demand>> stillInTheWay(Asked here, Found looser) {
    return looser
        .inTheWay()
        .map(demands -> Relaxer.demands(here, demands.stream().map(Demand::id).toList()));
  }

  private boolean isWithin(List<String> values, List<String> looser) {
    return IntStream.range(0, axes.size())
        .allMatch(i -> axes.get(i).isWithin(values.get(i), looser.get(i)));
  }
}
