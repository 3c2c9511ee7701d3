package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import pappus.catalog.Build;
import pappus.catalog.Frame;
import pappus.catalog.Motor;
import pappus.catalog.Part;
import pappus.catalog.Role;

/** The frames of a question, the lightest first, and which parts go on which. */
final class Frames {
  /** Wire shorter than this is not counted, g: see the planner of small hardware. */
  private static final double UNCOUNTED_GRAMS = 0.05;

  private final Goods goods;
  private final List<Frame> frames;
  private final double[] grams;
  private final Adds least;
  private final Bounds.Span dragArea;
  private final List<Frame> shortest;
  private final Map<List<Object>, Double> fastened = new HashMap<>();
  private final Map<String, BitSet> bySort = new HashMap<>();

  Frames(Goods goods) {
    this.goods = goods;
    this.frames = goods.question().options(Role.FRAME).stream()
        .map(Frame.class::cast)
        .sorted(Comparator.comparingDouble((Frame frame) -> own(frame).grams())
            .thenComparing(Frame::id))
        .toList();
    this.grams = frames.stream().mapToDouble(frame -> own(frame).grams()).toArray();
    this.least = frames.stream().map(this::own).reduce(Adds::least).orElse(Adds.NOTHING);
    var areas = frames.stream().mapToDouble(goods.assessor()::dragArea).summaryStatistics();
    this.dragArea = new Bounds.Span(areas.getMin(), areas.getMax());
    var byArm = new HashMap<Double, Frame>();
    for (var frame : frames) {
      byArm.merge(
          frame.armThicknessMillimetres(),
          frame,
          (one, other) -> one.diagonal() <= other.diagonal() ? one : other);
    }
    this.shortest =
        byArm.values().stream().sorted(Comparator.comparing(Frame::id)).toList();
  }

  private Adds own(Frame frame) {
    return goods.own(Role.FRAME, frame);
  }

  int size() {
    return frames.size();
  }

  Frame get(int index) {
    return frames.get(index);
  }

  int indexOf(Part frame) {
    return frames.indexOf(frame);
  }

  /** Mass that a frame adds to any build at least, g: rising. */
  double grams(int index) {
    return grams[index];
  }

  /** The least of any. */
  Adds least() {
    return least;
  }

  /** Drag area of any, m². */
  Bounds.Span dragArea() {
    return dragArea;
  }

  /** Drag area of one, m². */
  Bounds.Span dragArea(Frame frame) {
    var area = goods.assessor().dragArea(frame);
    return new Bounds.Span(area, area);
  }

  /** Frames that a part goes on; all where that has to be asked later. */
  BitSet under(Role role, Part part) {
    var pairing = goods.pairings().of(role, Role.FRAME);
    if (!pairing.isAsked()) {
      return with(index -> true);
    }
    return bySort.computeIfAbsent(
        role + " " + pairing.sort(part),
        fresh -> with(index -> pairing.fit(part, frames.get(index))));
  }

  private BitSet with(IntPredicate which) {
    var set = new BitSet(frames.size());
    for (var index = 0; index < frames.size(); index++) {
      set.set(index, which.test(index));
    }
    return set;
  }

  /**
   * Mass of the screws and wire that four motors ask for on any frame at least, g; below zero where wire is cut off.
   * Screws depend on the arm alone, wire grows with the frame: the shortest frame of each arm has the least.
   */
  double leastFasteningGrams(Motor motor) {
    var looks = Stream.<Object>of(
            motor.screw(),
            String.valueOf(motor.threadDepthMillimetres()),
            motor.screwCount(),
            motor.leadsIncludedMillimetres(),
            motor.leadGauge())
        .toList();
    return fastened.computeIfAbsent(looks, fresh -> {
      var grams = new ArrayList<Double>();
      for (var frame : shortest) {
        var both = Build.empty().with(Role.FRAME, frame).with(Role.MOTOR, motor);
        grams.add(goods.assessor().begun(both).grams()
            - goods.nothing().grams()
            - own(frame).grams()
            - goods.own(Role.MOTOR, motor).grams());
      }
      return grams.stream().mapToDouble(Double::doubleValue).min().orElse(0) - UNCOUNTED_GRAMS;
    });
  }
}
