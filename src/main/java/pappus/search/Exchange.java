package pappus.search;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Puts another part in the place of one of a build, and tells whether that can be of use before it is assessed. Not safe
 * for several threads.
 *
 * <p>Why: src/site/markdown/decisions.md#several-starts-and-a-sweep
 */
final class Exchange {
  /** Share of the mass cap by which a build may be above it: what another part may mend. */
  private static final double BEYOND = 0.03;

  private static final Set<Role> LINKED = Collections.unmodifiableSet(
      EnumSet.of(Role.TRANSMITTER, Role.RECEIVER, Role.VIDEO_ANTENNA, Role.RADIO_ANTENNA));

  private final Question question;
  private final Pairs pairs;

  Exchange(Question question) {
    this.question = question;
    this.pairs = new Pairs(question);
  }

  /** A build with another part, and without what that brings along. */
  static Build with(Build build, Role role, Part part) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    chosen.putAll(build.parts());
    chosen.put(role, part);
    return Question.tidy(chosen);
  }

  /** A build with another part, and instead of each accessory that does not go with it the lightest that does. */
  Build mended(Build build, Role changed, Part part) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    chosen.putAll(build.parts());
    chosen.put(changed, part);
    if (!Role.FLYING.contains(changed) || !goesWithFlying(changed, part, chosen)) {
      return Question.tidy(chosen);
    }
    for (var role : Role.ACCESSORIES) {
      var present = chosen.get(role);
      if (role != changed && present != null && !pairs.fit(changed, part, role, present)) {
        pairs.byMass(role).stream()
            .filter(option ->
                pairs.fit(changed, part, role, option) && pairs.fitsAll(role, option, chosen))
            .findFirst()
            .ifPresent(option -> chosen.put(role, option));
      }
    }
    return Question.tidy(chosen);
  }

  private boolean goesWithFlying(Role changed, Part part, Map<Role, Part> chosen) {
    return chosen.entrySet().stream()
        .filter(other -> other.getKey() != changed && Role.FLYING.contains(other.getKey()))
        .allMatch(other -> pairs.fit(changed, part, other.getKey(), other.getValue()));
  }

  /** Whether a part that no motor's current passes is no lighter, thriftier or cheaper than another. */
  boolean isNoGain(Build build, Role role, Part option, Part present) {
    var battery = build.battery();
    if (role.turn() == Role.Turn.MAIN || role.turn() == Role.Turn.WIRING || battery.isEmpty()) {
      return false;
    }
    var assessor = question.assessor();
    if (LINKED.contains(role) && assessor.scenario().reachMetres() != null) {
      // It may reach farther, or as far with less power.
      return false;
    }
    return option.mass().grams() >= present.mass().grams()
        && assessor.prospects().leastWatts(option, battery.get())
            >= assessor.prospects().leastWatts(present, battery.get())
        && cents(option) >= cents(present);
  }

  private long cents(Part part) {
    return question.assessor().purse().ownedIds().contains(part.id())
        ? 0
        : part.price().cents();
  }

  /** Whether a changed part goes with each of the others, and mass and price are not far beyond their limits. */
  boolean mayBeFeasible(Build build, Role changed) {
    var part = build.part(changed);
    if (part.isPresent() && !pairs.fitsAll(changed, part.get(), build.parts())) {
      return false;
    }
    var begun = question.assessor().prospects().begun(build);
    var scenario = question.assessor().scenario();
    var budget = scenario.budget();
    return 1000 * begun.grams() <= (1 + BEYOND) * scenario.massCap().largestMilligrams()
        && (budget == null || begun.cents() <= budget.cents());
  }
}
