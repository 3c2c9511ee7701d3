package pappus.search.plain;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.FrameAir;
import pappus.assessment.flight.PartialBound;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Question;

/**
 * What a build only begun reaches at most: with the lightest, and the thriftiest, part of every role that is open. It
 * has its own margins rather than those of the other search, which it is to check. Safe for several threads.
 */
final class CrudeBound {
  /** Above the rounding of sums, far below what any pilot could tell. */
  private static final double ROUNDING = 1e-9;

  /** More drag may lengthen a flight at a best speed, which it makes slower, by less than this. */
  private static final double SLOWED_BY_DRAG = 1e-2;

  private static final long MICRO_IN_MILLI = 1000;

  private final Question question;
  private final Assessor assessor;
  private final List<Role> accessories;
  private final Map<Role, Double> leastGrams = new EnumMap<>(Role.class);
  private final Map<Role, Double> leastWatts = new EnumMap<>(Role.class);
  private final OptionalDouble leastOwnLoss;
  private final FrameAir air;

  CrudeBound(Question question, List<Role> accessories) {
    this.question = question;
    this.assessor = question.assessor();
    this.accessories = accessories;
    for (var role : accessories) {
      var options = question.options(role);
      leastGrams.put(
          role, options.stream().mapToDouble(part -> grams(role, part)).min().orElse(0));
      leastWatts.put(role, options.stream().mapToDouble(this::leastWatts).min().orElse(0));
    }
    this.leastOwnLoss = question.options(Role.BOARD).stream()
        .map(board -> assessor.prospects().rippleShare((Board) board))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min();
    this.air = FrameAir.any(question.options(Role.FRAME).stream()
        .map(frame -> assessor.prospects().air((Frame) frame)));
  }

  private double grams(Role role, Part part) {
    var alone = Build.empty().with(role, part);
    return assessor.prospects().begun(alone).grams()
        - assessor.prospects().begun(Build.empty()).grams();
  }

  private double leastWatts(Part part) {
    return question.options(Role.BATTERY).stream()
        .mapToDouble(battery -> assessor.prospects().leastWatts(part, (Battery) battery))
        .min()
        .orElse(0);
  }

  /** Whether a build may keep the mass cap with the lightest of some roles. */
  boolean mayWeigh(Build build, List<Role> open) {
    return assessor.prospects().begun(build).grams() + accessoryGrams(build, open) <= capGrams();
  }

  /** Whether a build may still surpass what is claimed with the lightest and thriftiest of some roles. */
  boolean mayReach(Build build, List<Role> open, long claimed) {
    var frame = build.frame();
    var prospect = assessor.prospects().of(build);
    if (prospect.isEmpty()) {
      return false;
    }
    var counted = assessor.prospects().begun(build);
    var grams = counted.grams() + accessoryGrams(build, open);
    var budget = assessor.scenario().budget();
    if (grams > capGrams() || (budget != null && counted.cents() > budget.cents())) {
      return false;
    }
    var watts = 0.0;
    for (var entry : build.parts().entrySet()) {
      if (!Role.MAIN.contains(entry.getKey())) {
        watts +=
            assessor.prospects().leastWatts(entry.getValue(), build.battery().orElseThrow());
      }
    }
    for (var role : open) {
      watts += isNeeded(build, role) ? leastWatts.getOrDefault(role, 0.0) : 0;
    }
    var around = frame.map(assessor.prospects()::air).orElse(air);
    var slower =
        assessor.prospects().choosesSpeeds() && !around.isDragKnown() ? 1 + SLOWED_BY_DRAG : 1;
    for (var loss : losses(build)) {
      var strong = prospect
          .get()
          .mostGrams(
              assessor.scenario().leastThrustToWeight(),
              new PartialBound.Least(grams, watts, 0, loss, around));
      if (grams > strong * (1 + ROUNDING)) {
        continue;
      }
      var maySlow =
          prospect.get().maySlow(new PartialBound.Least(capGrams(), watts, 0, loss, around));
      var figure =
          prospect.get().figure(new PartialBound.Least(grams, watts, 0, loss, around), maySlow);
      if (figure * slower * (1 + ROUNDING) * Assessment.OBJECTIVE >= leastFlown(claimed)) {
        return true;
      }
    }
    return false;
  }

  /** Microseconds or micrometres that a build has to fly to surpass what is claimed: at least what it can rely on. */
  private long leastFlown(long claimed) {
    var purpose = assessor.purpose();
    var least = purpose.leastFlight() * MICRO_IN_MILLI;
    return switch (purpose.measure()) {
      case FLIGHT -> Math.max(claimed, least);
      case PLAN_WITH -> Math.max(claimed * MICRO_IN_MILLI, least);
      case PRICE, MASS, THRUST, PIECES -> least;
    };
  }

  private double capGrams() {
    return assessor.scenario().massCap().largestMilligrams() / 1000.0 + ROUNDING;
  }

  private List<OptionalDouble> losses(Build build) {
    if (build.board().isPresent()) {
      return List.of(assessor.prospects().rippleShare(build.board().get()));
    }
    return leastOwnLoss.isPresent()
        ? List.of(OptionalDouble.empty(), leastOwnLoss)
        : List.of(OptionalDouble.empty());
  }

  private double accessoryGrams(Build build, List<Role> open) {
    var grams = 0.0;
    for (var role : open) {
      grams += isNeeded(build, role) ? leastGrams.getOrDefault(role, 0.0) : 0;
    }
    return grams;
  }

  /** Whether a role will need a part of its own, whatever is taken for the others. */
  private boolean isNeeded(Build build, Role role) {
    if (role == Role.LEAD || build.fills(role)) {
      return false;
    }
    return accessories.stream()
        .filter(other -> other != role && build.part(other).isEmpty())
        .flatMap(other -> question.options(other).stream())
        .noneMatch(part -> part.fills().contains(role));
  }
}
