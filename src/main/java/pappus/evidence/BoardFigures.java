package pappus.evidence;

import java.util.Optional;
import pappus.part.Board;
import pappus.part.Known;
import pappus.physics.motor.PartLoadLaw;

/**
 * What counts of a board.
 *
 * @param controllerLoss part-load loss k of its controllers, held against that of a motor of 0.2 Ω, for a board
 *     does not know its motor; empty if only the law of all controllers is known
 */
public record BoardFigures(Optional<Figure> controllerLoss) {
  /** Records do not say how a loss was found: taken as worked out from rows (engineering estimate). */
  private static final double OWN_DOUBT = 0.10;

  public static BoardFigures of(Board board) {
    var own = board.controllerLoss();
    return new BoardFigures(
        own == null
            ? Optional.empty()
            : Optional.of(Figure.weighed(
                "part-load loss",
                "",
                own,
                PartLoadLaw.BENCH.loss(),
                PartLoadLaw.DOUBT_LN_LOSS,
                OWN_DOUBT,
                Known.MAKER)));
  }
}
