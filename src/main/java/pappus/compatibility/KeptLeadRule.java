package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** A lead changes with the pack or the board that it is between, and not by itself. */
public final class KeptLeadRule implements CompatibilityRule {
  private final Build aboard;

  /** @param aboard the quad that is there */
  public KeptLeadRule(Build aboard) {
    this.aboard = aboard;
  }

  @Override
  public String id() {
    return "kept-lead";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.BOARD, Role.BATTERY, Role.LEAD);
  }

  @Override
  public boolean mayBeWaived() {
    return false;
  }

  @Override
  public Object signature(Part part) {
    return part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    return build.lead().isPresent()
            && isSame(build, Role.BATTERY)
            && isSame(build, Role.BOARD)
            && !isSame(build, Role.LEAD)
        ? Verdict.clashes(
            "Pack and board are those aboard, so their lead stays, but here it is %s.",
            build.lead().get().id())
        : Verdict.FITS;
  }

  private boolean isSame(Build build, Role role) {
    return build.part(role).map(Part::id).equals(aboard.part(role).map(Part::id));
  }
}
