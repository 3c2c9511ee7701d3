package pappus.search.exact;

import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.assessment.flight.FrameAir;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;

/** The frames of a question, the lightest first, and which parts go on which. */
final class Frames {
  /** Wire shorter than this is not counted, g: see the planner of small hardware. */
  private static final double UNCOUNTED_GRAMS = 0.05;

  private final Goods goods;
  private final List<Frame> frames;
  private final double[] grams;
  private final long[] cents;
  private final Adds least;
  private final List<FrameAir> airs;
  private final FrameAir air;
  private final Map<BitSet, FrameAir> some = new ConcurrentHashMap<>();
  private final List<Frame> shortest;
  private final Map<List<Object>, Small> fastened = new ConcurrentHashMap<>();
  private final Map<String, BitSet> bySort = new ConcurrentHashMap<>();
  private final Map<Object, Small> strapped = new ConcurrentHashMap<>();
  private final Map<Object, AtomicIntegerArray> threes = new ConcurrentHashMap<>();
  private final Map<String, Object> sorts = new ConcurrentHashMap<>();
  private final List<CompatibilityRule> onThrees;
  private final List<Frame> strapping;
  private final BitSet all;

  /**
   * Frames that are looked at.
   *
   * @param members in the order of the frames
   * @param only absent where they are many
   */
  record Group(BitSet members, @Nullable Frame only) {}

  Frames(Goods goods) {
    this.goods = goods;
    this.frames = goods.options(Role.FRAME).stream()
        .map(Frame.class::cast)
        .sorted(Comparator.comparingDouble((Frame frame) -> own(frame).grams())
            .thenComparing(Frame::id))
        .toList();
    this.grams = frames.stream().mapToDouble(frame -> own(frame).grams()).toArray();
    this.cents = frames.stream().mapToLong(frame -> own(frame).cents()).toArray();
    this.least = frames.stream().map(this::own).reduce(Adds::least).orElse(Adds.NOTHING);
    this.airs = frames.stream().map(goods.assessor()::air).toList();
    this.air = FrameAir.any(airs.stream());
    var byArm = new HashMap<Double, Frame>();
    for (var frame : frames) {
      byArm.merge(
          frame.armThicknessMillimetres(),
          frame,
          (one, other) -> one.diagonal() <= other.diagonal() ? one : other);
    }
    this.all = with(index -> true);
    this.onThrees = goods.assessor().rules().stream()
        .filter(rule -> rule.reads().containsAll(Set.of(Role.FRAME, Role.BATTERY))
            && rule.foresees(Set.of(Role.FRAME, Role.PROPELLER, Role.BATTERY)))
        .toList();
    this.strapping = frames.stream()
        .collect(Collectors.toMap(
            frame -> frame.bay().strapWidthMillimetres(),
            frame -> frame,
            (one, other) -> one,
            TreeMap::new))
        .values()
        .stream()
        .toList();
    this.shortest =
        byArm.values().stream().sorted(Comparator.comparing(Frame::id)).toList();
  }

  /** All frames. */
  Group every() {
    return new Group(all, null);
  }

  /** One frame. */
  Group alone(Frame frame) {
    var members = new BitSet();
    members.set(frames.indexOf(frame));
    return new Group(members, frame);
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

  /** Mass that a frame adds to any build at least, g: rising. */
  double grams(int index) {
    return grams[index];
  }

  /** What a frame adds to the price of any build at least. */
  long cents(int index) {
    return cents[index];
  }

  /** The least of any. */
  Adds least() {
    return least;
  }

  /** What any does to the air. */
  FrameAir air() {
    return air;
  }

  /** What one does to the air. */
  FrameAir air(Frame frame) {
    return goods.assessor().air(frame);
  }

  /** What any frame that is in all sets does to the air; at least one is. */
  FrameAir air(BitSet first, BitSet... sets) {
    var both = (BitSet) first.clone();
    for (var set : sets) {
      both.and(set);
    }
    return some.computeIfAbsent(both, fresh -> FrameAir.any(fresh.stream().mapToObj(airs::get)));
  }

  /** Frames that a part goes on; all where there are so many sorts that each is asked when it is met. */
  BitSet under(Role role, Part part) {
    var pairing = goods.pairings().of(role, Role.FRAME);
    if (!pairing.isAsked() || pairing.isOpen()) {
      return all;
    }
    return bySort.computeIfAbsent(
        role + " " + pairing.sort(part),
        fresh -> with(index -> pairing.fit(part, frames.get(index))));
  }

  /** Whether a frame goes with a battery, and a propeller where there is one, by what rules can tell of them. */
  boolean goesWith(int index, @Nullable Part propeller, Part battery) {
    var key = List.of(propeller == null ? "any" : sort(propeller), sort(battery));
    var known = threes.computeIfAbsent(key, fresh -> new AtomicIntegerArray(frames.size()));
    if (known.get(index) == 0) {
      var pair = Build.empty().with(Role.FRAME, frames.get(index)).with(Role.BATTERY, battery);
      var all = propeller == null ? pair : pair.with(Role.PROPELLER, propeller);
      known.set(index, goods.assessor().mayStillFit(all, onThrees) ? 1 : -1);
    }
    return known.get(index) > 0;
  }

  /** All that rules on frame, propeller and battery can tell of a part. */
  private Object sort(Part part) {
    return sorts.computeIfAbsent(
        part.id(),
        fresh -> onThrees.stream()
            .map(rule -> goods.assessor().signature(rule, part))
            .toList());
  }

  private BitSet with(IntPredicate which) {
    var set = new BitSet(frames.size());
    for (var index = 0; index < frames.size(); index++) {
      set.set(index, which.test(index));
    }
    return set;
  }

  /** The first frame from one on that is in all sets; −1 if none is. */
  static int first(int from, BitSet... sets) {
    var frame = from;
    var agreed = 0;
    for (var set = 0; agreed < sets.length; set = (set + 1) % sets.length) {
      var next = sets[set].nextSetBit(frame);
      if (next < 0) {
        return -1;
      }
      agreed = next == frame ? agreed + 1 : 1;
      frame = next;
    }
    return frame;
  }

  /**
   * Mass, g, and price of the screws and wire that four motors ask for on any frame at least; mass below zero where
   * wire is cut off. Screws depend on the arm alone, wire grows with the frame: the shortest frame of each arm has the
   * least.
   */
  Small leastFastening(Motor motor) {
    var looks = Stream.<Object>of(
            motor.screw(),
            String.valueOf(motor.threadDepthMillimetres()),
            motor.screwCount(),
            motor.leadsIncludedMillimetres(),
            motor.leadGauge())
        .toList();
    return fastened.computeIfAbsent(looks, fresh -> {
      var least = least(shortest, Role.MOTOR, motor);
      return new Small(least.grams() - UNCOUNTED_GRAMS, least.cents());
    });
  }

  /** Mass, g, and price of the strap that a battery asks for on any frame at least: it depends on the frame's slots. */
  Small leastStrap(Battery battery) {
    return strapped.computeIfAbsent(
        List.of(battery.widthMillimetres(), battery.heightMillimetres()),
        fresh -> least(strapping, Role.BATTERY, battery));
  }

  /** What a part on any of some frames asks for beside the two of them. */
  private Small least(List<Frame> some, Role role, Part part) {
    var grams = Double.POSITIVE_INFINITY;
    var cents = Long.MAX_VALUE;
    for (var frame : some) {
      var both = goods.assessor().begun(Build.empty().with(Role.FRAME, frame).with(role, part));
      var alone = goods.own(role, part);
      grams = Math.min(
          grams, both.grams() - goods.nothing().grams() - own(frame).grams() - alone.grams());
      cents = Math.min(
          cents, both.cents() - goods.nothing().cents() - own(frame).cents() - alone.cents());
    }
    return some.isEmpty() ? Small.NOTHING : new Small(grams, Math.max(0, cents));
  }

  /** What small hardware adds at least. */
  record Small(double grams, long cents) {
    static final Small NOTHING = new Small(0, 0);

    /** A part with it. */
    Adds on(Adds part) {
      return new Adds(
          part.grams() + grams, part.variance(), part.watts(), part.cents() + cents, part.ohm());
    }
  }
}
