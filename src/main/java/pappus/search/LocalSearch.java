package pappus.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Improves what a search met: accessories one after the other, then each part of which the flight depends, and of the
 * most promising of those two at a time.
 *
 * <p>Why: src/site/markdown/decisions.md#several-starts-and-a-sweep
 */
public final class LocalSearch {
  private static final int MOST_ROUNDS = 8;
  private static final int MOST_NEARLY = 24;

  /** So many leaders of a round are changed in two parts at once. */
  private static final int PAIRED = 8;

  /** So many parts of a role are tried with as many of another. */
  private static final int PROMISING = 12;

  /** Millionths by which limits may be missed by what another part may mend. */
  private static final long NEARLY = 60_000;

  private final Question question;
  private final Incumbents incumbents;
  private final Exchange exchange;

  public LocalSearch(Question question, Incumbents incumbents) {
    this.question = question;
    this.incumbents = incumbents;
    this.exchange = new Exchange(question);
  }

  /**
   * Swaps every part of every leading candidate, and of some that only just miss, for every other of its role that fits,
   * until none gets better. This also finds each candidate its best accessories.
   *
   * @param count candidates wanted
   * @param stopped asked now and then whether to give up early
   */
  public void improve(int count, BooleanSupplier stopped) {
    var done = new LinkedHashSet<Build>();
    for (var round = 0; round < MOST_ROUNDS; round++) {
      var leaders = new ArrayList<>(
          incumbents.distinct(count + 5, question.assessor().scenario().differences()));
      var worst = leaders.isEmpty() ? 0 : leaders.get(leaders.size() - 1).objective();
      incumbents.nearlyFeasible().stream()
          .filter(near -> near.objective() > worst)
          .limit(MOST_NEARLY)
          .forEach(leaders::add);
      var fresh = leaders.stream().map(Assessment::build).filter(done::add).toList();
      if (fresh.isEmpty()) {
        return;
      }
      var first = 0;
      for (var build : fresh) {
        if (!improve(build, first < PAIRED, stopped)) {
          return;
        }
        first++;
      }
    }
  }

  /** Whether it was not stopped. */
  private boolean improve(Build start, boolean inPairs, BooleanSupplier stopped) {
    var best = question.assessor().assess(start);
    // Each accessory is chosen beside those chosen before: what they save together lets others fly.
    for (var role : Role.ACCESSORIES) {
      if (stopped.getAsBoolean()) {
        return false;
      }
      for (var swapped : swapAll(best.build(), role, true)) {
        best = Incumbents.CLOSEST_FIRST.compare(swapped, best) < 0 ? swapped : best;
      }
    }
    var promising = new EnumMap<Role, List<Part>>(Role.class);
    for (var role : Role.FLYING) {
      if (stopped.getAsBoolean()) {
        return false;
      }
      promising.put(role, promising(role, swapAll(best.build(), role, true)));
    }
    return !inPairs || swapTwo(best.build(), promising, stopped);
  }

  /** Parts of swaps that would fly longest, were they not a little beyond a limit. */
  private static List<Part> promising(Role role, List<Assessment> swaps) {
    return swaps.stream()
        .filter(swap -> swap.shortfall() <= NEARLY)
        .sorted(Incumbents.BEST_FIRST)
        .flatMap(swap -> swap.build().part(role).stream())
        .distinct()
        .limit(PROMISING)
        .toList();
  }

  /** Swaps two parts at once: what one takes of thrust or mass another may give. */
  private boolean swapTwo(Build build, Map<Role, List<Part>> promising, BooleanSupplier stopped) {
    for (var one : promising.entrySet()) {
      for (var other : promising.entrySet()) {
        if (stopped.getAsBoolean()) {
          return false;
        }
        if (one.getKey().compareTo(other.getKey()) < 0) {
          for (var part : one.getValue()) {
            var swapped = exchange.mended(build, one.getKey(), part);
            for (var with : other.getValue()) {
              offer(exchange.mended(swapped, other.getKey(), with), other.getKey());
            }
          }
        }
      }
    }
    return true;
  }

  /** Swaps every part of the build that comes closest, where none is feasible, until none comes closer. */
  public void improveClosest(BooleanSupplier stopped) {
    var done = new LinkedHashSet<Build>();
    for (var round = 0; round < MOST_ROUNDS; round++) {
      var closest = incumbents.closest();
      if (closest.isEmpty() || stopped.getAsBoolean() || !done.add(closest.get().build())) {
        return;
      }
      for (var role : Role.values()) {
        swapAll(closest.get().build(), role, false);
      }
    }
  }

  /**
   * Swaps every part of a role.
   *
   * @param onlyFitting whether accessories change that do not go with the part, and builds are left out that two of their
   *     parts keep from being feasible, or their mass or price, and accessories that gain nothing
   */
  private List<Assessment> swapAll(Build build, Role role, boolean onlyFitting) {
    var present = build.part(role);
    var swaps = new ArrayList<Assessment>();
    for (var option : question.options(role)) {
      if (onlyFitting
          && present.isPresent()
          && exchange.isNoGain(build, role, option, present.get())) {
        continue;
      }
      var swapped =
          onlyFitting ? exchange.mended(build, role, option) : Exchange.with(build, role, option);
      if (swapped.equals(build)) {
        continue;
      }
      if (onlyFitting) {
        offer(swapped, role).ifPresent(swaps::add);
      } else {
        incumbents.offer(question.assessor().assess(swapped));
      }
    }
    return swaps;
  }

  /** Takes note of a build, unless two of its parts keep it from being feasible, or its mass or price. */
  private Optional<Assessment> offer(Build build, Role changed) {
    if (!exchange.mayBeFeasible(build, changed)) {
      return Optional.empty();
    }
    var assessment = question.assessor().assess(build);
    incumbents.offer(assessment);
    return Optional.of(assessment);
  }
}
