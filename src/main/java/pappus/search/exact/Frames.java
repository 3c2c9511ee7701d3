package pappus.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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

/**
 * The frames of a question, the lightest first, and which parts go on which.
 *
 * <p>Why: src/site/markdown/decisions.md#frames-count-with-what-fastens-motors-to-them
 */
final class Frames {
  /** Wire shorter than this is not counted, g: see the planner of small hardware. */
  private static final double UNCOUNTED_GRAMS = 0.05;

  /** Frames of equal arms are about as long within so much of their diagonals, mm. */
  private static final double SPAN_MM = 20;

  private final Goods goods;
  private final List<Frame> frames;
  private final double[] grams;
  private final long[] cents;
  private final Adds least;
  private final List<FrameAir> airs;
  private final FrameAir air;
  private final Map<BitSet, FrameAir> some = new ConcurrentHashMap<>();
  private final Map<Role, Pairing> pairings = new EnumMap<>(Role.class);
  private final Map<Role, List<BitSet>> membersOf = new EnumMap<>(Role.class);
  private final List<SizeRule> bySize;
  private final List<Room> rooms;
  private final int[] spanOf;
  private final List<Frame> shortest;
  private final List<Integer> shortestSpans;
  private final Map<List<Object>, Fastening> fastened = new ConcurrentHashMap<>();
  private final Map<List<Object>, BitSet> bySort = new ConcurrentHashMap<>();
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
    this.airs = frames.stream().map(goods.assessor().prospects()::air).toList();
    this.air = FrameAir.any(airs.stream());
    this.bySize = goods.assessor().ruleBook().rulesOfSizes();
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
      var members = new ArrayList<BitSet>();
      for (var index = 0; index < frames.size(); index++) {
        var sort = sort(role, frames.get(index));
        while (members.size() <= sort) {
          members.add(new BitSet(frames.size()));
        }
        members.get(sort).set(index);
      }
      membersOf.put(role, members);
    }
    var bySpan = new LinkedHashMap<List<Object>, Integer>();
    this.spanOf = new int[frames.size()];
    this.shortest = new ArrayList<>();
    for (var index = 0; index < spanOf.length; index++) {
      var frame = frames.get(index);
      var span = List.<Object>of(arm(frame), Math.floor(frame.diagonal() / SPAN_MM));
      spanOf[index] = bySpan.computeIfAbsent(span, fresh -> {
        shortest.add(frame);
        return shortest.size() - 1;
      });
      if (frame.diagonal() < shortest.get(spanOf[index]).diagonal()) {
        shortest.set(spanOf[index], frame);
      }
    }
    var byArm = new LinkedHashMap<Object, Integer>();
    for (var span = 0; span < shortest.size(); span++) {
      byArm.merge(
          arm(shortest.get(span)),
          span,
          (one, other) ->
              shortest.get(one).diagonal() <= shortest.get(other).diagonal() ? one : other);
    }
    this.shortestSpans = List.copyOf(byArm.values());
    this.all = with(index -> true);
    this.rooms = Stream.<ToDoubleFunction<Sizes>>of(
            Sizes::propeller, Sizes::packLength, Sizes::packWidth, Sizes::packHeight)
        .map(this::room)
        .toList();
    this.strapping = frames.stream()
        .collect(Collectors.toMap(
            frame -> List.of(frame.bay().strapWidthMillimetres(), sort(Role.BATTERY, frame)),
            frame -> frame,
            (one, other) -> one,
            LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }

  /** All that tells whether and by which screws motors are held. */
  private Object arm(Frame frame) {
    return List.of(frame.armThicknessMillimetres(), sort(Role.MOTOR, frame));
  }

  /** The sort of a frame against parts of a role: parts go on all frames of a sort or on none, whatever their size. */
  private int sort(Role role, Frame frame) {
    return pairing(role).otherSort(frame);
  }

  /** All frames. */
  Group every() {
    return new Group(all, null);
  }

  /** One frame, in every way that it can be ordered. */
  Group ordered(Frame frame) {
    var members = with(index -> frames.get(index).listedId().equals(frame.listedId()));
    return new Group(members, members.cardinality() == 1 ? frame : null);
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
    return goods.assessor().prospects().air(frame);
  }

  /** What any of some frames does to the air; there is at least one. */
  FrameAir air(BitSet some) {
    return this.some.computeIfAbsent(
        some, fresh -> FrameAir.any(fresh.stream().mapToObj(airs::get)));
  }

  /** Frames that a part goes on, whatever its size. */
  BitSet under(Role role, Part part) {
    var pairing = pairing(role);
    return pairing.isOpen()
        ? all
        : bySort.computeIfAbsent(
            List.of(role, pairing.sort(part)), fresh -> under(role, pairing.sort(part)));
  }

  private BitSet under(Role role, int sort) {
    var under = new BitSet(frames.size());
    var members = Objects.requireNonNull(membersOf.get(role));
    for (var frameSort = 0; frameSort < members.size(); frameSort++) {
      if (pairing(role).fit(sort, frameSort)) {
        under.or(members.get(frameSort));
      }
    }
    return under;
  }

  private Pairing pairing(Role role) {
    return Objects.requireNonNull(pairings.get(role));
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

  /**
   * The lightest of some frames with fastened motors that may take parts of at least some sizes together; −1 if none
   * may.
   *
   * @param mostCents what it may cost with what fastens them
   */
  int lightest(BitSet going, Sizes sizes, Fastening fastening, double mostCents) {
    var lightest = -1;
    var least = Double.POSITIVE_INFINITY;
    // Rising masses: what fastens motors weighs no less than on the shortest frame of all.
    for (var frame = going.nextSetBit(0);
        frame >= 0 && grams[frame] + fastening.least.grams() < least;
        frame = going.nextSetBit(frame + 1)) {
      var small = fastening.on(frame);
      if (grams[frame] + small.grams() < least
          && cents[frame] + small.cents() <= mostCents
          && mayTake(frame, sizes)) {
        lightest = frame;
        least = grams[frame] + small.grams();
      }
    }
    return lightest;
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
  private record Room(ToDoubleFunction<Sizes> size, List<Double> steps, List<BitSet> beyond) {
    /** More steps take more memory than they save time. */
    private static final int MOST_STEPS = 200;

    /** Frames with room for a size, and maybe a few that have less. */
    BitSet taking(Sizes sizes) {
      var step = Collections.binarySearch(steps, size.applyAsDouble(sizes));
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
        .mapToObj(place -> different[place])
        .toList();
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

  /** What four motors of one look, or of some, ask for on each frame at least. */
  final class Fastening {
    private final @Nullable Motor motor;
    private final List<Fastening> either;
    private final @Nullable Small[] known = new Small[shortest.size()];
    private final Small least;

    private Fastening(@Nullable Motor motor, List<Fastening> either) {
      this.motor = motor;
      this.either = either;
      this.least =
          shortestSpans.stream().map(this::onSpan).reduce(Small::least).orElse(Small.NOTHING);
    }

    /** Mass, g, and price of the screws and wire; mass below zero where wire is cut off. */
    Small on(int frame) {
      return onSpan(spanOf[frame]);
    }

    private Small onSpan(int span) {
      var there = known[span];
      if (there == null) {
        there = motor == null
            ? either.get(0).onSpan(span).least(either.get(1).onSpan(span))
            : alone(span);
        known[span] = there;
      }
      return there;
    }

    private Small alone(int span) {
      var small =
          Frames.this.least(List.of(shortest.get(span)), Role.MOTOR, Objects.requireNonNull(motor));
      return new Small(small.grams() - UNCOUNTED_GRAMS, small.cents());
    }

    Fastening least(Fastening other) {
      return this == other ? this : new Fastening(null, List.of(this, other));
    }
  }

  /**
   * What four motors ask for. Screws depend on the arm alone, wire grows with the frame: of frames with equal arms that
   * are about as long, the shortest has the least.
   */
  Fastening fastening(Motor motor) {
    // Of another sort, it goes on other frames.
    var looks = Stream.<Object>of(
            pairing(Role.MOTOR).sort(motor),
            motor.screw(),
            String.valueOf(motor.threadDepthMillimetres()),
            motor.screwCount(),
            motor.leadsIncludedMillimetres(),
            motor.leadGauge())
        .toList();
    return fastened.computeIfAbsent(looks, fresh -> new Fastening(motor, List.of()));
  }

  /** What any frame that is no lighter than one with fastened motors adds at least with them. */
  Adds from(int frame, Fastening fastening) {
    return new Adds(
        grams[frame] + fastening.on(frame).grams(),
        least.variance(),
        0,
        least.cents() + fastening.least.cents(),
        0);
  }

  /** Mass, g, and price of the strap that a battery asks for on any frame at least: it depends on the frame's slots. */
  Small leastStrap(Battery battery) {
    return strapped.computeIfAbsent(
        List.of(
            pairing(Role.BATTERY).sort(battery),
            battery.widthMillimetres(),
            battery.heightMillimetres()),
        fresh -> least(strapping, Role.BATTERY, battery));
  }

  /** What a part asks for beside it and one of some frames that it goes on; nothing where it goes on none. */
  private Small least(List<Frame> some, Role role, Part part) {
    var pairing = pairing(role);
    var alone = goods.own(role, part);
    return some.stream()
        .filter(frame -> pairing.fit(part, frame))
        .map(frame -> {
          var both = goods
              .assessor()
              .prospects()
              .begun(Build.empty().with(Role.FRAME, frame).with(role, part));
          return new Small(
              both.grams() - goods.nothing().grams() - own(frame).grams() - alone.grams(),
              Math.max(
                  0, both.cents() - goods.nothing().cents() - own(frame).cents() - alone.cents()));
        })
        .reduce(Small::least)
        .orElse(Small.NOTHING);
  }

  /** What small hardware adds at least. */
  record Small(double grams, long cents) {
    static final Small NOTHING = new Small(0, 0);

    Small least(Small other) {
      return new Small(Math.min(grams, other.grams), Math.min(cents, other.cents));
    }

    /** A part with it. */
    Adds on(Adds part) {
      return new Adds(
          part.grams() + grams,
          part.variance(),
          part.watts(),
          part.cents() + cents,
          part.pieces(),
          part.ohm());
    }
  }
}
