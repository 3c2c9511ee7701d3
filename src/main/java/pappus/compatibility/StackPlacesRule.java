package pappus.compatibility;

import java.util.Set;
import pappus.catalog.Role;

/** Board and transmitter must find places on the frame, one above the other or apart. */
public final class StackPlacesRule implements CompatibilityRule {
  @Override
  public String id() {
    return "stack-places";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.BOARD, Role.TRANSMITTER, Role.CAMERA);
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.board().isEmpty()) {
      return Verdict.FITS;
    }
    var obstacle = fitting.stackObstacle();
    if (obstacle.isPresent()) {
      return new Verdict.Clashes(obstacle.get());
    }
    return Verdict.fitsWith(fitting.stackPlan().orElseThrow().notes());
  }
}
