package pappus.evidence.prior;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Board;
import pappus.part.Board.Layout;

/** Boards: mass against current, and what they draw. */
final class BoardPriors {
  private static final double LARGEST_RECEIVER_WATTS = 0.45;

  /** A board is wider than its holes are apart, mm (engineering estimate). */
  private static final double RIM_MM = 7;

  private BoardPriors() {}

  static List<String> remarks(Board board) {
    var remarks = new ArrayList<String>();
    var law = massLaw(board);
    Bounds.hard(0.5 * law, 2 * law)
        .remark("mass", board.mass().grams(), " g")
        .ifPresent(remarks::add);
    // .5 to 1.2 W (common practice, no published source).
    Bounds.hard(0.5, 1.2 + (board.receiver() == null ? 0 : LARGEST_RECEIVER_WATTS))
        .remark("power drawn", board.watts(), " W")
        .ifPresent(remarks::add);
    var sender = board.transmitter();
    if (sender != null) {
      remarks.addAll(VideoPriors.powers(sender, 0));
    }
    return List.copyOf(remarks);
  }

  /**
   * 3.0 g + .154 g/A after 22 boards all in one; a pair .58 g/cm² and 1.0 g + .20 g/A (common
   * practice, no published source).
   */
  private static double massLaw(Board board) {
    var amps = board.continuousAmpsPerMotor();
    if (board.layout() == Layout.ALL_IN_ONE) {
      return 3.0 + 0.154 * amps;
    }
    var side = (board.mount().pattern().sideMillimetres() + RIM_MM) / 10;
    return 0.58 * side * side + 1.0 + 0.20 * amps;
  }
}
