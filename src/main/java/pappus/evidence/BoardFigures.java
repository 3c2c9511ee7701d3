package pappus.evidence;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.part.Board;
import pappus.part.Known;
import pappus.physics.motor.PartLoadLaw;

/**
 * What counts of a board.
 *
 * @param controllerLoss part-load loss k of its controllers, held against the usual one; empty if it states none
 * @param isMeasured whether that was worked out from rows of a thrust stand
 * @param byDesign ripple over that of the law by how often it switches and how it drives, if that is known
 */
public record BoardFigures(
    Optional<Figure> controllerLoss, boolean isMeasured, OptionalDouble byDesign) {
  /** Of a loss worked out from rows (engineering estimate). */
  private static final double MEASURED_DOUBT = 0.10;

  /** Of one that only its maker states, or that was worked out from similar boards (engineering estimate). */
  private static final double STATED_DOUBT = 0.25;

  /** Benches that the law comes from did not say how often their controllers switch; this is usual. */
  public static final double USUAL_KILOHERTZ = 24;

  /** Ripple goes with the square of the time between two pulses; no bench shows less than this (engineering estimate). */
  private static final double LEAST_BY_DESIGN = 0.3;

  private static final double MOST_BY_DESIGN = 3;

  /** A drive by sine waves, .03 to .05 in place of .10 (engineering estimate). */
  private static final double FIELD_ORIENTED = 0.4;

  /** What nobody has measured is never thought better than this (engineering estimate). */
  private static final double LEAST_UNMEASURED = 0.5;

  /** Of a board of which nothing is known. */
  public static final BoardFigures UNKNOWN =
      new BoardFigures(Optional.empty(), false, OptionalDouble.empty());

  static BoardFigures of(Board board, Evidence evidence) {
    return new BoardFigures(
        readings(board).stream().findFirst().map(reading -> evidence.weigh(board, reading)),
        isMeasured(board),
        byDesign(board));
  }

  private static boolean isMeasured(Board board) {
    return board.controllerLossKnown() == Known.MEASURED;
  }

  /** The loss that it states, if it does. */
  static List<Reading> readings(Board board) {
    var own = board.controllerLoss();
    return own == null
        ? List.of()
        : List.of(new Reading(
            Trait.LOSS,
            board.maker(),
            board.controllerLossKnown() == null ? Known.MAKER : board.controllerLossKnown(),
            own,
            PartLoadLaw.USUAL_STATED_LOSS,
            isMeasured(board) ? MEASURED_DOUBT : STATED_DOUBT,
            false));
  }

  private static OptionalDouble byDesign(Board board) {
    if (board.drive() == Board.Drive.FIELD_ORIENTED) {
      return OptionalDouble.of(FIELD_ORIENTED);
    }
    var kilohertz = board.pwmKilohertz();
    return kilohertz == null ? OptionalDouble.empty() : OptionalDouble.of(rippleShareAt(kilohertz));
  }

  /** Ripple of controllers that switch so often over that of the law. */
  public static double rippleShareAt(double kilohertz) {
    var longer = USUAL_KILOHERTZ / kilohertz;
    return Math.max(LEAST_BY_DESIGN, Math.min(MOST_BY_DESIGN, longer * longer));
  }

  /** Ripple of its controllers over that of the law; empty if nothing is known of them. */
  public OptionalDouble rippleShare(Weighing weighing) {
    if (controllerLoss.isEmpty()) {
      return byDesign;
    }
    var share = controllerLoss.get().by(weighing, 1) / PartLoadLaw.USUAL_STATED_LOSS;
    return OptionalDouble.of(isMeasured ? share : Math.max(LEAST_UNMEASURED, share));
  }
}
