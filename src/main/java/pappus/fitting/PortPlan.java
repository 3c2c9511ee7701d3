package pappus.fitting;

import java.util.List;
import pappus.part.Role;

/**
 * Which part is wired to which serial port.
 *
 * @param assigned one a part, ports counted from 1
 * @param free full ports left
 */
public record PortPlan(List<Assigned> assigned, int free) {
  public PortPlan {
    assigned = List.copyOf(assigned);
  }

  /**
   * A part on a port.
   *
   * @param role its role
   * @param port from 1
   * @param half whether it uses one direction only
   */
  public record Assigned(Role role, int port, boolean half) {}
}
