package pappus.assessment;

import java.util.Set;
import pappus.compatibility.SizeRule;
import pappus.compatibility.Sizes;
import pappus.compatibility.Verdict;
import pappus.fitting.Fitting;
import pappus.part.Frame;
import pappus.part.Role;
import pappus.sight.Sight;

/**
 * How large propellers may be that leave the view clear which a scenario asks for: what the limit of that name will find
 * of every build, told to searches as rules of sizes are. It breaks nothing itself.
 *
 * @param degrees that have to be clear
 */
record ClearViewRoom(double degrees) implements SizeRule {
  /** A hair more than there is: angles are rounded. */
  private static final double HAIR_MM = 1e-6;

  @Override
  public String id() {
    return LimitKind.CLEAR_VIEW.id();
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.PROPELLER);
  }

  @Override
  public Sizes room(Frame frame) {
    return new Sizes(
        Sight.largestDisc(frame, degrees) + HAIR_MM,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY);
  }

  @Override
  public Verdict check(Fitting fitting) {
    return Verdict.FITS;
  }
}
