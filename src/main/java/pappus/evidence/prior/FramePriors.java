package pappus.evidence.prior;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.part.Frame;
import pappus.quantity.Units;

/** Frames: mass against size, and room for the propellers they are sold for. */
final class FramePriors {
  /** From light to rugged, g at 100 mm of diagonal (engineering estimate, no published source). */
  private static final Bounds GRAMS_AT_100_MM = new Bounds(9, 30, 5, 40);

  /** Between neighbouring tips, mm (common practice, no published source). */
  private static final double CLEARANCE_MM = 3;

  private FramePriors() {}

  static List<String> remarks(Frame frame) {
    var hundreds = frame.diagonal() / 100;
    return Stream.of(
            GRAMS_AT_100_MM.remark(
                "mass over the square of the diagonal",
                frame.mass().grams() / (hundreds * hundreds),
                " g at 100 mm"),
            room(frame))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<String> room(Frame frame) {
    var spacing = Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
    var left = spacing - Units.inchesToMillimetres(frame.largestPropellerInches());
    return left >= CLEARANCE_MM
        ? Optional.empty()
        : Optional.of("the largest propeller leaves %s mm to its neighbour, but 3 mm is usual."
            .formatted(Bounds.shown(left)));
  }
}
