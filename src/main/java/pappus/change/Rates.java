package pappus.change;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;

/**
 * What a gram and a watt are worth to a build that flies: it is flown again with each of them more and less.
 *
 * @param perGram lost of what builds are ranked by for one gram more, seconds or metres
 * @param perWatt lost for one watt more beside the motors
 */
public record Rates(double perGram, double perWatt) {
  /** Far enough that the tolerance of the flight's own solvers does not show, near enough to be straight. */
  private static final double GRAMS = 1;

  private static final double WATTS = 0.25;

  /** Flies a build four times; empty where the physics refuses both a little more and a little less. */
  public static Optional<Rates> of(Assessment assessment, Assessor assessor) {
    var flown = assessor.likeliest().whatIf(assessment);
    var perGram = lost(flown, grams -> Factors.added(grams, 0), GRAMS);
    var perWatt = lost(flown, watts -> Factors.added(0, watts), WATTS);
    return perGram.isPresent() && perWatt.isPresent()
        ? Optional.of(new Rates(perGram.getAsDouble(), perWatt.getAsDouble()))
        : Optional.empty();
  }

  /** By the difference of a step up and a step down, or of the one that the physics takes and none. */
  private static OptionalDouble lost(
      ToDoubleFunction<Factors> flown, DoubleFunction<Factors> added, double step) {
    var less = flown(flown, added.apply(-step));
    var more = flown(flown, added.apply(step));
    var here = flown(flown, Factors.NONE);
    if (here.isEmpty() || (less.isEmpty() && more.isEmpty())) {
      return OptionalDouble.empty();
    }
    var steps = less.isPresent() && more.isPresent() ? 2 : 1;
    return OptionalDouble.of(
        (less.orElse(here.getAsDouble()) - more.orElse(here.getAsDouble())) / (steps * step));
  }

  private static OptionalDouble flown(ToDoubleFunction<Factors> flown, Factors factors) {
    try {
      return OptionalDouble.of(flown.applyAsDouble(factors));
    } catch (IllegalArgumentException outsideTheModel) {
      return OptionalDouble.empty();
    }
  }
}
