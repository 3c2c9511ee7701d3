package pappus.doubt;

import java.util.Comparator;
import java.util.List;

/**
 * How sure an endurance is: nine of ten builds like this one are expected to fly longer than the low
 * end, one of ten longer than the high end. Where the goal is range everything said in seconds is in
 * metres over ground.
 *
 * @param seconds estimate, s
 * @param contributions what each uncertain number does to it
 */
public record EnduranceBand(double seconds, List<Contribution> contributions) {
  /** Standard deviations of a normal distribution at its 10 and 90 % points. */
  private static final double TENTH = 1.2815515655446004;

  public EnduranceBand {
    contributions = List.copyOf(contributions);
  }

  /** One standard deviation, s. */
  public double deviation() {
    return Math.sqrt(
        contributions.stream().mapToDouble(one -> one.seconds() * one.seconds()).sum());
  }

  /** The figure to plan with, s. */
  public double low() {
    return Math.max(0, seconds - TENTH * deviation());
  }

  /** High end, s. */
  public double high() {
    return seconds + TENTH * deviation();
  }

  /** The contributions, largest first. */
  public List<Contribution> largestFirst() {
    return contributions.stream()
        .sorted(Comparator.comparingDouble((Contribution one) -> -Math.abs(one.seconds()))
            .thenComparing(Contribution::source))
        .toList();
  }

  /** One standard deviation of the difference of two endurances, s: doubts they share cancel. */
  public double deviationOfDifference(EnduranceBand other) {
    var sum = 0.0;
    for (var one : contributions) {
      var theirs = other.effectOf(one.source());
      sum += (one.seconds() - theirs) * (one.seconds() - theirs);
    }
    for (var one : other.contributions) {
      if (contributions.stream().noneMatch(mine -> mine.source().equals(one.source()))) {
        sum += one.seconds() * one.seconds();
      }
    }
    return Math.sqrt(sum);
  }

  private double effectOf(String source) {
    return contributions.stream()
        .filter(one -> one.source().equals(source))
        .mapToDouble(Contribution::seconds)
        .findFirst()
        .orElse(0);
  }
}
