package pappus.compatibility;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Role;

/** Every role a build needs is filled, and none twice. */
public final class RolesRule implements CompatibilityRule {
  private static final Set<Role> NEEDED = needed();

  private static Set<Role> needed() {
    var needed = EnumSet.complementOf(EnumSet.copyOf(Role.EXTRAS));
    // Without it where the plugs match; the rule on the plugs speaks of it.
    needed.remove(Role.LEAD);
    return needed;
  }

  @Override
  public String id() {
    return "roles";
  }

  @Override
  public Set<Role> reads() {
    return EnumSet.allOf(Role.class);
  }

  @Override
  public boolean mayBeWaived() {
    return false;
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    var filled = EnumSet.noneOf(Role.class);
    var lump = fitting.scenario().lump();
    if (lump != null) {
      filled.addAll(lump.roles());
    }
    for (var part : build.parts().entrySet()) {
      var roles = part.getValue().fills();
      for (var role : roles.isEmpty() ? Set.of(part.getKey()) : roles) {
        if (!filled.add(role)) {
          return Verdict.clashes(
              "%s fills the role of %s, which %s fills already.",
              part.getValue().id(),
              role.label(),
              lump != null && lump.roles().contains(role) ? lump.name() : "another part");
        }
      }
    }
    var missing = new ArrayList<String>();
    for (var role : Role.values()) {
      var needed = NEEDED.contains(role) || fitting.scenario().wants(role);
      if (needed && !filled.contains(role)) {
        missing.add(role.label());
      }
    }
    return missing.isEmpty()
        ? Verdict.FITS
        : Verdict.clashes("There is no %s.", String.join(", ", missing));
  }
}
