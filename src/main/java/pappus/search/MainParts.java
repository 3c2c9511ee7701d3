package pappus.search;

import java.util.List;
import pappus.part.Build;
import pappus.part.Role;

/** What makes a build another aircraft rather than the same with other small things. */
public final class MainParts {
  public static final List<Role> ROLES =
      List.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY);

  private MainParts() {}

  /** In how many main parts two builds differ, 0 to 4; one that lacks a part differs in none by it. */
  public static int differences(Build one, Build other) {
    var count = 0;
    for (var role : ROLES) {
      var mine = one.part(role);
      var theirs = other.part(role);
      if (theirs.isPresent()
          && mine.isPresent()
          && !mine.get().id().equals(theirs.get().id())) {
        count++;
      }
    }
    return count;
  }
}
