package pappus.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.part.Build;
import pappus.part.Role;
import pappus.part.SerialNeed;

/** Hands out serial ports: full ones first, then halves, in the order of roles. */
public final class PortPlanner {
  private PortPlanner() {}

  /** What of a build asks for a full port. */
  public static List<Role> full(Build build) {
    var roles = new ArrayList<Role>();
    build
        .receiver()
        .filter(part -> part.serial() != SerialNeed.NONE)
        .ifPresent(part -> roles.add(Role.RECEIVER));
    build
        .transmitter()
        .filter(part -> part.serial() == SerialNeed.FULL)
        .ifPresent(part -> roles.add(Role.TRANSMITTER));
    build.gps().ifPresent(part -> roles.add(Role.GPS));
    return roles;
  }

  /** What works without a port and better with half of one. */
  public static List<Role> half(Build build) {
    var roles = new ArrayList<Role>();
    build
        .transmitter()
        .filter(part -> part.serial() == SerialNeed.HALF)
        .ifPresent(part -> roles.add(Role.TRANSMITTER));
    return roles;
  }

  static Optional<PortPlan> plan(Build build) {
    if (build.board().isEmpty()) {
      return Optional.empty();
    }
    var ports = build.board().get().serialPorts();
    var assigned = new ArrayList<PortPlan.Assigned>();
    for (var role : full(build)) {
      if (assigned.size() < ports) {
        assigned.add(new PortPlan.Assigned(role, assigned.size() + 1, false));
      }
    }
    var used = assigned.size();
    for (var role : half(build)) {
      if (used < ports) {
        used++;
        assigned.add(new PortPlan.Assigned(role, used, true));
      }
    }
    return Optional.of(new PortPlan(assigned, ports - used));
  }
}
