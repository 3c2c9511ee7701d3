package pappus.assessment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Aircraft;

/**
 * The quad that a builder has: what may not change of it is there, mounted and paid.
 *
 * <p>Why: src/site/markdown/decisions.md#a-quad-that-is-there-is-parts-at-hand-and-rules-that-it-breaks-already
 *
 * @param build as it flies now
 * @param asked which of its parts may change
 */
public record Aboard(Build build, Aircraft asked) {
  /** What is plugged in or screwed on, and leaves every joint and tie as it is. */
  private static final Set<Role> UNSOLDERED = Collections.unmodifiableSet(
      EnumSet.of(Role.PROPELLER, Role.BATTERY, Role.VIDEO_ANTENNA, Role.RADIO_ANTENNA));

  /** Whether a role keeps the part that it has, or stays empty. */
  public boolean keeps(Role role) {
    return !asked.mayChange(role);
  }

  /** Parts that stay, by role. */
  public Map<Role, Part> kept() {
    var kept = new EnumMap<Role, Part>(Role.class);
    build.parts().forEach((role, part) -> {
      if (keeps(role)) {
        kept.put(role, part);
      }
    });
    return kept;
  }

  /** Whether a part is aboard now, whatever it is for. */
  public boolean has(Part part) {
    return build.parts().values().stream().anyMatch(there -> there.id().equals(part.id()));
  }

  /** Whether a build has in some roles what is there now, and nothing where nothing is. */
  boolean isAsItIs(Build other, Set<Role> roles) {
    return roles.stream()
        .allMatch(role -> build.part(role).map(Part::id).equals(other.part(role).map(Part::id)));
  }

  /** Whether each part of a build only begun that is for one of some roles is there now. */
  boolean hasAll(Build begun, Set<Role> roles) {
    return begun.parts().entrySet().stream()
        .filter(entry -> roles.contains(entry.getKey()))
        .allMatch(entry -> build
            .part(entry.getKey())
            .filter(there -> there.id().equals(entry.getValue().id()))
            .isPresent());
  }

  /** Whether a build asks for solder, heat-shrink and ties again. */
  boolean isSolderedAnew(Build other) {
    return !isAsItIs(other, EnumSet.complementOf(EnumSet.copyOf(UNSOLDERED)));
  }
}
