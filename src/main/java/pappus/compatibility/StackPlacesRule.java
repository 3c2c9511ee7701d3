package pappus.compatibility;

import java.util.List;
import java.util.Set;
import pappus.fitting.Fitting;
import pappus.part.Board;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;

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

  /** What is added takes room too. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.FRAME) && decided.contains(Role.BOARD);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return List.of(frame.positions(), frame.heights());
    }
    return part instanceof Board board
        ? List.of(board.mount(), board.heightMillimetres())
        : part.id();
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
