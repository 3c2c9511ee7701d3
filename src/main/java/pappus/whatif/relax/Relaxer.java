package pappus.whatif.relax;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.assessment.Assessment;
import pappus.assessment.LimitKind;
import pappus.change.Asked;
import pappus.ranking.Best;
import pappus.ranking.Finder;
import pappus.scenario.MassCap;

/**
 * Finds what stands in the way of a scenario: demands in conflict by taking out one after another for good as long as
 * nothing becomes possible, and the smallest change of each of them by halving.
 *
 * <p>Why: src/site/markdown/decisions.md#a-conflict-is-found-by-taking-demands-out-for-good
 */
public final class Relaxer {
  /** More pairs of demands are not tried. */
  private static final int MOST_PAIRS = 40;

  /** What small quads weigh at most, the usual ones first. */
  private static final List<Double> USUAL_GRAMS = List.of(249.0, 700.0, 1500.0);

  /** What flies well; less is asked for in the end, if it must be. */
  private static final double USUAL_THRUST = 2;

  private static final long FEW_LOOKS = 20_000;

  /** Of many searches none may take longer than some ten seconds: what that leaves open is said. */
  private static final long LOOKS = 400_000;

  private final Asked asked;
  private final Finder finder;
  private boolean isProof = true;
  private int searches;

  public Relaxer(Asked asked, Finder finder) {
    this.asked = asked;
    this.finder = finder;
  }

  /** Those of its demands that have one of these names, as they stand. */
  public static List<Demand> demands(Asked asked, List<String> ids) {
    return Demands.of(asked).stream()
        .filter(demand -> ids.contains(demand.id()))
        .toList();
  }

  /** Finds all of it; on a feasible scenario the best build alone. */
  public Relaxation relax() {
    var best = best(asked);
    if (best.build().isPresent()) {
      return new Relaxation(
          best, List.of(), List.of(), List.of(), List.of(), isProof, finder.isStopped(), searches);
    }
    var demands = Demands.of(asked);
    var conflict = conflict(demands);
    var reliefs = new ArrayList<SmallestRelaxation>();
    // What is not in one conflict cannot help by itself: that conflict stays.
    for (var demand : conflict) {
      relief(demand).ifPresent(reliefs::add);
    }
    confidence(conflict).flatMap(this::relief).ifPresent(reliefs::add);
    return new Relaxation(
        best,
        conflict,
        reliefs,
        reliefs.isEmpty() ? together(conflict, demands) : List.of(),
        Clashes.of(asked.question()),
        isProof && !finder.isStopped(),
        finder.isStopped(),
        searches);
  }

  /**
   * Demands of a scenario that has no feasible build which together leave none, and no one of which can be taken out
   * without one becoming possible, all others set aside. Empty if no build goes together even without any demand.
   *
   * @return absent where that could not be proven
   */
  public Optional<List<Demand>> conflict() {
    var conflict = conflict(Demands.of(asked));
    return isProof && !finder.isStopped() ? Optional.of(conflict) : Optional.empty();
  }

  private Best best(Asked one) {
    return counted(finder.best(one.question()));
  }

  /** A build, and whether it is proven that none is better. */
  private record Found(Assessment build, boolean isBest) {}

  /** The best build, or the better of that and one that was met already where the search ends early. */
  private Optional<Found> best(Asked one, Optional<Assessment> met) {
    searches++;
    var best = finder.best(one.question(), LOOKS);
    return Stream.concat(best.build().stream(), met.stream())
        .max(Comparator.comparingLong(Assessment::objective))
        .map(build -> new Found(build, best.isProof()));
  }

  /**
   * Some build, not the best one. Without a cap, what promises most are monsters that no motor lifts: what keeps to
   * usual masses is looked at first, and counts as well.
   */
  private Optional<Assessment> any(Asked one) {
    if (one.scenario().massCap().grams() >= MassCap.MOST_GRAMS) {
      for (var grams : USUAL_GRAMS) {
        var thrust = Math.max(USUAL_THRUST, one.scenario().leastThrustToWeight());
        var usual = one.with(LimitKind.MASS_CAP, BigDecimal.valueOf(grams))
            .with(LimitKind.THRUST_TO_WEIGHT, BigDecimal.valueOf(thrust));
        searches++;
        var found = finder.any(usual.question(), FEW_LOOKS).build();
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return counted(finder.any(one.question(), LOOKS)).build();
  }

  private Best counted(Best best) {
    searches++;
    if (best.build().isEmpty() && !best.isProof()) {
      isProof = false;
    }
    return best;
  }

  /** Demands of which each is needed for the conflict; empty if there is no build without any demand. */
  private List<Demand> conflict(List<Demand> demands) {
    if (any(without(demands)).isEmpty()) {
      return List.of();
    }
    var kept = new ArrayList<>(demands);
    for (var demand : demands) {
      if (finder.isStopped()) {
        return kept;
      }
      var fewer = new ArrayList<>(kept);
      fewer.remove(demand);
      var others = new ArrayList<>(demands);
      others.removeAll(fewer);
      if (any(without(others)).isEmpty()) {
        kept = fewer;
      }
    }
    return kept;
  }

  private Asked without(List<Demand> demands) {
    var left = asked;
    for (var demand : demands) {
      left = demand.change().without(left);
    }
    return left;
  }

  /** To be surer of the mass than needed is a demand of its own once the cap is in the way. */
  private Optional<Demand> confidence(List<Demand> conflict) {
    return conflict.stream()
        .filter(demand -> demand.id().equals(LimitKind.MASS_CAP.id()))
        .findFirst()
        .map(cap -> new Demand(
            "confidence",
            "confidence of keeping the cap",
            "",
            Optional.of(StepScales.confidence(asked)),
            cap.change()));
  }

  private Optional<SmallestRelaxation> relief(Demand demand) {
    if (finder.isStopped()) {
      return Optional.empty();
    }
    var dial = demand.dial();
    if (dial.isEmpty()) {
      return whole(demand, true);
    }
    var least = least(demand, dial.get());
    return least.isPresent() || demand.givenUp().isEmpty()
        ? least
        : whole(demand, isProof && dial.get().isOrdered());
  }

  private Optional<SmallestRelaxation> whole(Demand demand, boolean isLeast) {
    var without = demand.change().without(asked);
    return best(without, any(without))
        .map(found ->
            new SmallestRelaxation(demand, "", "", found.build(), found.isBest(), isLeast));
  }

  /** The first step that makes a build possible: by doubling, then by halving. */
  private Optional<SmallestRelaxation> least(Demand demand, StepScale dial) {
    var before = isProof;
    isProof = true;
    var no = 0;
    var yes = 0;
    Optional<Assessment> found = Optional.empty();
    var met = found;
    for (var step = 1; found.isEmpty() && no < dial.steps(); step *= 2) {
      var at = Math.min(step, dial.steps());
      found = any(dial.at(at));
      if (found.isPresent()) {
        yes = Math.min(at, dial.first(found.get()));
        met = found;
      } else {
        no = at;
      }
    }
    if (found.isEmpty()) {
      isProof &= before;
      return Optional.empty();
    }
    while (yes - no > 1 && !finder.isStopped()) {
      var middle = no + (yes - no) / 2;
      var better = any(dial.at(middle));
      if (better.isPresent()) {
        yes = Math.min(middle, dial.first(better.get()));
        met = better;
      } else {
        no = middle;
      }
    }
    var isLeast = isProof && !finder.isStopped() && dial.isOrdered();
    isProof &= before;
    var from = dial.shown(0);
    var to = dial.shown(yes);
    return best(dial.at(yes), met)
        .map(
            best -> new SmallestRelaxation(demand, from, to, best.build(), best.isBest(), isLeast));
  }

  private List<Relaxation.Together> together(List<Demand> conflict, List<Demand> demands) {
    var pairs = pairs(conflict, demands);
    return pairs.isEmpty() && !conflict.isEmpty() ? many(demands) : pairs;
  }

  private Optional<Relaxation.Together> together(
      List<Demand> demands, Asked without, Optional<Assessment> met) {
    return best(without, met)
        .map(found -> new Relaxation.Together(demands, found.build(), found.isBest()));
  }

  /** All demands given up, and one after another kept as long as a build is left. */
  private List<Relaxation.Together> many(List<Demand> demands) {
    var givenUp = new ArrayList<>(demands);
    for (var demand : demands) {
      if (finder.isStopped()) {
        return List.of();
      }
      var fewer = new ArrayList<>(givenUp);
      fewer.remove(demand);
      if (any(without(fewer)).isPresent()) {
        givenUp = fewer;
      }
    }
    var all = List.copyOf(givenUp);
    var without = without(all);
    return together(all, without, any(without)).stream().toList();
  }

  private List<Relaxation.Together> pairs(List<Demand> conflict, List<Demand> demands) {
    var pairs = new ArrayList<Relaxation.Together>();
    var tried = 0;
    for (var one : conflict) {
      for (var other : demands) {
        var isMet =
            conflict.contains(other) ? conflict.indexOf(other) <= conflict.indexOf(one) : false;
        if (isMet || finder.isStopped()) {
          continue;
        }
        if (tried == MOST_PAIRS) {
          isProof = false;
          return pairs;
        }
        tried++;
        var without = without(List.of(one, other));
        var met = any(without);
        if (met.isPresent()) {
          together(List.of(one, other), without, met).ifPresent(pairs::add);
        }
      }
    }
    return pairs;
  }
}
