package pappus.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * One role in which two builds differ.
 *
 * @param before absent where it was empty
 * @param after absent where it is left empty
 */
public record Changed(Role role, Optional<Part> before, Optional<Part> after) {

  /** Every role in which one build differs from another, in the order of roles. */
  public static List<Changed> between(Build before, Build after) {
    var changed = new ArrayList<Changed>();
    for (var role : Role.values()) {
      var old = before.part(role);
      var now = after.part(role);
      if (!old.map(Part::id).equals(now.map(Part::id))) {
        changed.add(new Changed(role, old, now));
      }
    }
    return changed;
  }
}
