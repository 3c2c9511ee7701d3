package pappus.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.assessment.flight.FrameAir;
import pappus.compatibility.SizeRule;
import pappus.compatibility.Sizes;
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
  private final Map<Role, Pairing> pairings = new EnumMap<>(Role.class);
  private final List<SizeRule> bySize;
  private final List<Room> rooms;
  private final List<Frame> shortest;
  private final Map<List<Object>, Small> fastened = new ConcurrentHashMap<>();
  private final Map<String, BitSet> bySort = new ConcurrentHashMap<>();
  private final Map<Object, Small> strapped = new ConcurrentHashMap<>();
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
    this.bySize = goods.assessor().rulesOfSizes();
    for (var role : List.of(Role.MOTOR, Role.PROPELLER, Role.BATTERY)) {
      pairings.put(
          role,
          new Pairing(
              goods.assessor(),
              role,
              goods.options(role),
              Role.FRAME,
              List.copyOf(frames),
              rule -> !bySize.contains(rule)));
    }
    this.rooms = Stream.<ToDoubleFunction<Sizes>>of(
            Sizes::propeller, Sizes::packLength, Sizes::packWidth, Sizes::packHeight)
        .map(this::room)
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

  /** What any of some frames does to the air; there is at least one. */
  FrameAir air(BitSet some) {
    return this.some.computeIfAbsent(
        some, fresh -> FrameAir.any(fresh.stream().mapToObj(airs::get)));
  }

  /** Frames that a part goes on, whatever its size. */
  BitSet under(Role role, Part part) {
    var pairing = Objects.requireNonNull(pairings.get(role));
    return pairing.isOpen()
        ? all
        : bySort.computeIfAbsent(
            role + " " + pairing.sort(part),
            fresh -> with(index -> pairing.fit(part, frames.get(index))));
  }

  /** Frames of a group that are in all sets, and have room for parts of at least some sizes each by itself. */
  BitSet going(Group group, BitSet motors, BitSet propellers, BitSet batteries, Sizes sizes) {
    var going = (BitSet) group.members().clone();
    going.and(motors);
    going.and(propellers);
    going.and(batteries);
    rooms.forEach(room -> going.and(room.taking(sizes)));
    return going;
  }

  /** The first of some frames from one on that may take parts of at least some sizes together; −1 if none may. */
  int first(BitSet going, int from, Sizes sizes) {
    var frame = going.nextSetBit(from);
    while (frame >= 0 && !mayTake(frame, sizes)) {
      frame = going.nextSetBit(frame + 1);
    }
    return frame;
  }

  private boolean mayTake(int frame, Sizes sizes) {
    for (var rule : bySize) {
      if (!rule.mayTake(frames.get(frame), sizes)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Frames by what they have room for in one direction.
   *
   * @param steps rooms, rising
   * @param beyond frames with more room than the step before each, and last those with more than any
   */
  private record Room(ToDoubleFunction<Sizes> size, double[] steps, List<BitSet> beyond) {
    /** More steps take more memory than they save time. */
    private static final int MOST_STEPS = 200;

    /** Frames with room for a size, and maybe a few that have less. */
    BitSet taking(Sizes sizes) {
      var step = Arrays.binarySearch(steps, size.applyAsDouble(sizes));
      return beyond.get(step >= 0 ? step : -step - 1);
    }
  }

  private Room room(ToDoubleFunction<Sizes> size) {
    var room = frames.stream()
        .mapToDouble(frame -> bySize.stream()
            .mapToDouble(rule -> size.applyAsDouble(rule.room(frame)))
            .min()
            .orElse(Double.POSITIVE_INFINITY))
        .toArray();
    var different = Arrays.stream(room).sorted().distinct().toArray();
    var apart = 1 + different.length / Room.MOST_STEPS;
    var steps = IntStream.range(0, different.length)
        .filter(place -> place % apart == 0 || place == different.length - 1)
        .mapToDouble(place -> different[place])
        .toArray();
    var beyond = new ArrayList<BitSet>();
    beyond.add(all);
    for (var step : steps) {
      beyond.add(with(index -> room[index] > step));
    }
    return new Room(size, steps, beyond);
  }

  private BitSet with(IntPredicate which) {
    var set = new BitSet(frames.size());
    for (var index = 0; index < frames.size(); index++) {
      set.set(index, which.test(index));
    }
    return set;
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
