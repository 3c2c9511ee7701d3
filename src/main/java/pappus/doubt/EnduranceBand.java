package pappus.doubt;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * How sure an endurance is: nine of ten builds like this one are expected to fly longer than the low
 * end, one of ten longer than the high end.
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
    return root(Contribution::seconds);
  }

  private double root(ToDoubleFunction<Contribution> effect) {
    var sum = 0.0;
    for (var one : contributions) {
      sum += effect.applyAsDouble(one) * effect.applyAsDouble(one);
    }
    return Math.sqrt(sum);
  }

  /** Half of the band over the estimate, share; 0 if there is no flight. */
  public double halfWidth() {
    return halfWidth(deviation());
  }

  /** The same after a measurement. */
  public double halfWidthAfter(Measurement measurement) {
    return halfWidth(
        Math.sqrt(contributions.stream().mapToDouble(measurement::varianceAfter).sum()));
  }

  private double halfWidth(double deviation) {
    return seconds > 0 ? TENTH * deviation / seconds : 0;
  }

  /** The measurements that narrow it by half a percent or more, the one that narrows it most first. */
  public List<Measurement> worthMeasuring() {
    return Stream.of(Measurement.values())
        .filter(measurement -> halfWidth() - halfWidthAfter(measurement) >= 0.005)
        .sorted(Comparator.comparingDouble(this::halfWidthAfter))
        .toList();
  }

  /** The figure to plan with, s. */
  public double low() {
    return Math.max(0, seconds - TENTH * root(Contribution::lostSeconds));
  }

  /** High end, s. */
  public double high() {
    return seconds + TENTH * root(Contribution::gainedSeconds);
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
