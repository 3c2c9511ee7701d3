package pappus.doubt;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import pappus.quantity.Require;
import pappus.reliance.Doubt;
import pappus.reliance.Reliance;

/**
 * How sure an endurance or a range is: nine of ten builds like this one are expected to fly longer or farther than
 * the low end, one of ten more than the high end. Everything is in seconds, or in metres over ground where the goal
 * is range.
 *
 * <p>Why: src/site/markdown/decisions.md#doubts-are-flown-without-continuous-ratings
 *
 * @param estimate at the likeliest figures, whatever the outlook of the ranking
 * @param contributions what each uncertain number does to it
 * @param planWith the figure to plan with over the estimate, 0 to 1
 */
public record Band(double estimate, List<Contribution> contributions, double planWith) {
  /** Thousandths of a second or of a metre are what is told of the figure to plan with. */
  private static final double GRAIN = 1000;

  public Band {
    contributions = List.copyOf(contributions);
    Require.inRange("planWith", planWith, 0, 1);
  }

  /** One standard deviation. */
  public double deviation() {
    return root(Contribution::effect);
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
    return halfWidth(one -> 1);
  }

  /** Half of the band over the estimate after a measurement, share. */
  public double halfWidthAfter(Measurement measurement) {
    return halfWidth(measurement::shareLeft);
  }

  /** Half of the band over the estimate if one number were known for sure, share. */
  public double halfWidthWithout(Doubt known) {
    return halfWidth(one -> one.doubt() == known ? 0 : 1);
  }

  /** With only so much of each contribution left. */
  private double halfWidth(ToDoubleFunction<Contribution> share) {
    var loss = root(one -> share.applyAsDouble(one) * one.loss());
    var gain = root(one -> share.applyAsDouble(one) * one.gain());
    return estimate > 0 ? Reliance.TENTH * (loss + gain) / 2 / estimate : 0;
  }

  /** The measurements that narrow it by half a percent or more, the one that narrows it most first. */
  public List<Measurement> worthMeasuring() {
    return Stream.of(Measurement.values())
        .filter(measurement -> halfWidth() - halfWidthAfter(measurement) >= 0.005)
        .sorted(Comparator.comparingDouble(this::halfWidthAfter))
        .toList();
  }

  /** The figure to plan with, in whole thousandths, rounded down. */
  public double low() {
    return Math.floor(planWith * estimate * GRAIN) / GRAIN;
  }

  /** High end. */
  public double high() {
    return estimate + Reliance.TENTH * root(Contribution::gain);
  }

  /** The contributions, largest first. */
  public List<Contribution> largestFirst() {
    return contributions.stream()
        .sorted(Comparator.comparingDouble((Contribution one) -> -(one.loss() + one.gain()))
            .thenComparing(Contribution::source))
        .toList();
  }

  /** One standard deviation of the difference of two estimates: doubts they share cancel, but for masses. */
  public double deviationOfDifference(Band other) {
    var sum = 0.0;
    for (var one : contributions) {
      var theirs = other.effectOf(one.source());
      sum += (one.effect() - theirs) * (one.effect() - theirs);
    }
    for (var one : other.contributions) {
      if (contributions.stream().noneMatch(mine -> mine.source().equals(one.source()))) {
        sum += one.effect() * one.effect();
      }
    }
    return Math.sqrt(sum);
  }

  private double effectOf(String source) {
    return contributions.stream()
        .filter(one -> one.source().equals(source))
        .mapToDouble(Contribution::effect)
        .findFirst()
        .orElse(0);
  }
}
