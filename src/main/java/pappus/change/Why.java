package pappus.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Limit;
import pappus.assessment.Margins;
import pappus.assessment.flight.Factors;
import pappus.part.Role;
import pappus.scenario.Goal;
import pappus.search.Question;

/**
 * Why a build is as it is.
 *
 * @param margins room to everything that bounds it
 * @param rates what a gram and a watt are worth; absent without a flight
 * @param forSwitching what is gained, seconds or metres, if controllers of which nothing is known switch twice as often
 *     as is taken of them; absent where something is known of them
 * @param forMoney the swap that gains most of what is asked for ({@link Swap#gained(Goal)}) for each unit of money; absent if none that
 *     costs more gains anything
 * @param toGiveUp the swap that saves most money for what it loses; absent if none saves a hundredth of the price
 * @param savings where grams can be saved, the cheapest first
 * @param swaps the best single swap of each role
 */
public record Why(
    List<Limit> margins,
    Optional<Rates> rates,
    Optional<Double> forSwitching,
    Optional<Swap> forMoney,
    Optional<Swap> toGiveUp,
    List<Saving> savings,
    List<BestSwaps> swaps) {
  /** Less is no price that anybody reads. */
  private static final long LEAST_CENTS = 50;

  /** Less of the price is not worth a swap. */
  private static final double LEAST_SAVED = 0.01;

  /** Gains of less are no loss for what is saved: seconds, metres, grams or thrust-to-weight. */
  private static final double LEAST_LOST = 1e-3;

  public Why {
    margins = List.copyOf(margins);
    savings = List.copyOf(savings);
    swaps = List.copyOf(swaps);
  }

  /** Everything about a build, by assessing it with each other part of each role. */
  public static Why of(Assessment assessment, Question question) {
    Assessor assessor = question.assessor();
    var swapper = new Swapper(question);
    var all = new ArrayList<Swap>();
    var best = new ArrayList<BestSwaps>();
    for (Role role : swapper.roles(assessment.build())) {
      var swaps = swapper.all(assessment, role);
      all.addAll(swaps);
      best.add(BestSwaps.of(role, swaps));
    }
    var goal = assessor.scenario().goalOrEndurance();
    var flies =
        assessment.flight().filter(flight -> flight.endurance().seconds() > 0).isPresent();
    return new Why(
        Margins.of(assessment, assessor),
        flies ? Rates.of(assessment, assessor) : Optional.empty(),
        flies ? forSwitching(assessment, assessor) : Optional.empty(),
        forMoney(all, goal),
        toGiveUp(assessment, all, goal),
        flies ? Savings.of(assessor, assessment, all) : List.of(),
        best);
  }

  private static Optional<Double> forSwitching(Assessment assessment, Assessor assessor) {
    var board = assessment.build().board();
    if (board.isEmpty() || assessor.prospects().rippleShare(board.get()).isPresent()) {
      return Optional.empty();
    }
    var flown = assessor.likeliest().whatIf(assessment);
    return Optional.of(
        flown.applyAsDouble(Factors.switchedTwiceAsOften()) - flown.applyAsDouble(Factors.NONE));
  }

  private static Optional<Swap> forMoney(List<Swap> swaps, Goal goal) {
    return swaps.stream()
        .filter(swap -> swap.assessment().isFeasible()
            && swap.centsMore() >= LEAST_CENTS
            && swap.gained(goal) > 0)
        .max(Comparator.comparingDouble(swap -> swap.gained(goal) / swap.centsMore()));
  }

  private static Optional<Swap> toGiveUp(Assessment base, List<Swap> swaps, Goal goal) {
    return swaps.stream()
        .filter(swap -> swap.assessment().isFeasible()
            && -swap.centsMore() > LEAST_SAVED * base.cost().cents())
        .max(Comparator.comparingDouble(
            swap -> -swap.centsMore() / Math.max(LEAST_LOST, -swap.gained(goal))));
  }
}
