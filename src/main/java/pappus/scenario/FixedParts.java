package pappus.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import pappus.catalog.Catalog;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Lead;
import pappus.part.Part;
import pappus.part.Role;

/** The parts that every build is to have, each in its role, and what they leave room for. */
public final class FixedParts {
  private final Map<Part, Set<Role>> roles;
  private final Map<Role, List<Part>> byRole = new EnumMap<>(Role.class);
  private final Build together;

  private FixedParts(Map<Part, Set<Role>> roles) {
    this.roles = roles;
    roles.forEach((part, each) -> each.forEach(
        role -> byRole.computeIfAbsent(role, fresh -> new ArrayList<>()).add(part)));
    var firsts = new EnumMap<Role, Part>(Role.class);
    byRole.forEach((role, parts) -> firsts.put(role, parts.get(0)));
    this.together = Build.of(firsts);
  }

  /** Those of a scenario that a catalogue holds. */
  public static FixedParts of(Scenario scenario, Catalog catalog) {
    return of(
        scenario.choice().fixedIds().stream()
            .flatMap(id -> catalog.part(id).stream())
            .toList(),
        scenario::permits,
        catalog);
  }

  /** Those of a choice that a catalogue holds. */
  public static FixedParts of(Choice choice, Catalog catalog) {
    return of(
        choice.fixedIds().stream().flatMap(id -> catalog.part(id).stream()).toList(),
        (role, part) -> choice.permits(role, part.id()),
        catalog);
  }

  /**
   * Some parts in the roles that they are allowed for. What is for several roles leaves those to others that have but
   * one.
   *
   * @param permits whether a part may fill a role
   */
  public static FixedParts of(
      Collection<Part> fixed, BiPredicate<Role, Part> permits, Catalog catalog) {
    var roles = new LinkedHashMap<Part, Set<Role>>();
    var taken = EnumSet.noneOf(Role.class);
    for (var part : fixed) {
      var each = catalog.roles(part);
      each.removeIf(role -> !permits.test(role, part));
      roles.put(part, each);
      if (each.size() == 1) {
        taken.addAll(each);
        taken.addAll(part.fills());
      }
    }
    for (var each : roles.values()) {
      if (each.size() > 1 && !taken.containsAll(each)) {
        each.removeAll(taken);
      }
    }
    return new FixedParts(roles);
  }

  /** These and others, each in a role that it has already. */
  public FixedParts with(Map<Role, Part> others) {
    var all = new LinkedHashMap<Part, Set<Role>>();
    roles.forEach((part, each) -> all.put(part, EnumSet.copyOf(each)));
    others.forEach((role, part) ->
        all.computeIfAbsent(part, fresh -> EnumSet.noneOf(Role.class)).add(role));
    return new FixedParts(all);
  }

  /** Those for a role, in the order they are told. */
  public List<Part> in(Role role) {
    return List.copyOf(byRole.getOrDefault(role, List.of()));
  }

  /** Roles of one of them; none where it is for nothing, or not allowed. */
  public Set<Role> roles(Part fixed) {
    return roles.getOrDefault(fixed, Set.of());
  }

  /** Whether each of them may fill some role. */
  public boolean haveRoles() {
    return roles.values().stream().noneMatch(Set::isEmpty);
  }

  /** Whether one build can have all of them. */
  public boolean goTogether() {
    return byRole.values().stream().allMatch(parts -> parts.size() == 1)
        && haveRoles()
        && keeps(together);
  }

  /** Whether one of them has no place beside the others, since they bring along what it is for. */
  public boolean isNeedless(Part fixed) {
    return together.tidy().parts().keySet().stream().noneMatch(roles(fixed)::contains);
  }

  /** The one that brings a role along, if any does. */
  public Optional<Part> bringing(Role role) {
    return together.parts().values().stream()
        .filter(part -> part.fills().stream().skip(1).anyMatch(role::equals))
        .findFirst();
  }

  /** Whether a part of another role brings along what one of them is for, and so would push that one out. */
  public boolean areDisplacedBy(Part part) {
    if (together.parts().isEmpty() || part.fills().isEmpty()) {
      return false;
    }
    return !keeps(together.with(part.fills().get(0), part)) || !leavesTheLead(part);
  }

  private boolean keeps(Build build) {
    return build.tidy().parts().keySet().containsAll(together.parts().keySet());
  }

  /** Of packs a fixed lead leaves those of its plug, of boards those that do not take such a pack without it. */
  private boolean leavesTheLead(Part part) {
    return together.lead().map(Lead::batterySide).stream()
        .allMatch(plug -> !(part instanceof Battery battery && battery.connector() != plug)
            && !(part instanceof Board board
                && board.plug() != null
                && board.plug().connector() == plug));
  }
}
