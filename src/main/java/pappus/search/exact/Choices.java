package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.catalog.Battery;
import pappus.catalog.Build;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.compatibility.CompatibilityRule;
import pappus.search.Pool;
import pappus.search.Question;

/** What each choice leads to. Safe for several threads. */
final class Choices {
  private static final int MOST_HALVED = 64;

  private final Question question;
  private final Goods goods;
  private final Frames frames;
  private final KitFloors kits;
  private final Bounds bounds;
  private final Boxes boxes;
  private final BoxBound boxBound;
  private final List<CompatibilityRule> onMains;

  Choices(Goods goods) {
    this.question = goods.question();
    this.goods = goods;
    this.frames = new Frames(goods);
    this.kits = new KitFloors(goods);
    this.bounds = new Bounds(question.assessor());
    this.boxes = new Boxes(goods, frames, kits, bounds);
    this.boxBound = new BoxBound(
        goods, bounds, boxes.spans(), boxes.share(), frames.dragArea().least());
    this.onMains = question.assessor().rules().stream()
        .filter(rule -> Goods.MAIN.containsAll(rule.reads()) && rule.reads().size() > 2)
        .toList();
  }

  /**
   * What a choice leads to.
   *
   * @param assessed complete builds on the way
   * @param looks how many choices were looked into
   */
  record Found(List<Open> open, List<Assessment> assessed, long looks) {
    static Found of(List<Open> open) {
      return new Found(open, List.of(), 1);
    }
  }

  /** Every build there is. */
  List<Open> all() {
    return all(boxes.motors(), boxes.propellers(), boxes.batteries(), frames.every());
  }

  /** Every build of some boxes with some frames. */
  private List<Open> all(
      Box<MotorFloor> motors,
      Box<PropellerFloor> propellers,
      List<Box<BatteryFloor>> batteries,
      Frames.Group group) {
    var all = new ArrayList<Open>();
    for (var battery : batteries) {
      var three = new BoxBound.Three(motors, propellers, battery);
      var sample = (Battery) part(Role.BATTERY, battery.part());
      if (frame(three, group) >= 0) {
        for (var floor : kits.coarse(with(sample, group))) {
          wide(three, group, floor, 0, floor.steps()).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private With with(Battery battery, Frames.Group group) {
    return group.only() == null ? goods.with(battery) : goods.with(battery, group.only());
  }

  private Optional<Open> wide(
      BoxBound.Three three, Frames.Group group, KitFloor floor, int from, int to) {
    var motor = three.motors().floor();
    if (!motor.byPropeller().intersects(three.propellers().floor().motors())
        || !motor.byBattery().intersects(three.batteries().floor().motors())) {
      return Optional.empty();
    }
    var frame = frame(three, group);
    if (frame < 0) {
      return Optional.empty();
    }
    var adds = frames.least().weighing(frames.grams(frame));
    var most = boxBound.most(three, adds, floor, from, to);
    return most < 0
        ? Optional.empty()
        : Optional.of(new Open.Wide(three, group, floor, from, to, most, 0));
  }

  private int frame(BoxBound.Three three, Frames.Group group) {
    var battery =
        three.batteries().isOne() ? part(Role.BATTERY, three.batteries().part()) : null;
    var propeller =
        three.propellers().isOne() ? part(Role.PROPELLER, three.propellers().part()) : null;
    var frame = -1;
    do {
      frame = first(
          frame + 1,
          group.members(),
          three.motors().floor().frames(),
          three.propellers().floor().frames(),
          three.batteries().floor().frames());
    } while (frame >= 0 && battery != null && !frames.goesWith(frame, propeller, battery));
    return frame;
  }

  /** The first frame from one on that is in all sets; −1 if none is. */
  private static int first(int from, BitSet... sets) {
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
   * Looks into a choice.
   *
   * @param until what waits reaches this; what reaches less can wait too
   * @param started triples that were met before
   */
  Found lookInto(Open open, long until, Set<Open.Triple.Start> started) {
    if (open instanceof Open.Wide wide) {
      return halved(wide, until, started);
    }
    return open instanceof Open.Triple triple
        ? Found.of(nextFrame(triple))
        : accessories((Open.Four) open, until);
  }

  /** Halves boxes as long as they may reach more than what waits: each takes less time than to hand it over. */
  private Found halved(Open.Wide first, long until, Set<Open.Triple.Start> started) {
    var left = new ArrayList<Open>();
    var wides = new PriorityQueue<>(Open.MOST_FIRST);
    wides.add(first);
    var looks = 0;
    while (!wides.isEmpty()
        && looks < MOST_HALVED
        && (looks == 0 || wides.peek().most() >= until)) {
      looks++;
      for (var half : halves((Open.Wide) wides.poll(), started)) {
        if (half instanceof Open.Wide) {
          wides.add(half.numbered(looks));
        } else {
          left.add(half);
        }
      }
    }
    left.addAll(wides);
    return new Found(left, List.of(), looks);
  }

  private List<Open> halves(Open.Wide wide, Set<Open.Triple.Start> started) {
    var three = wide.three();
    if (three.motors().isOne()
        && three.propellers().isOne()
        && three.batteries().isOne()) {
      var parts = new Open.Triple.Three(
          three.motors().part(), three.propellers().part(), three.batteries().part());
      return started.contains(new Open.Triple.Start(parts, wide.group()))
          ? List.of()
          : triple(parts, wide.group()).map(List::of).orElse(List.of());
    }
    var halves = new ArrayList<Open>();
    var motorSlack = slack(three.motors());
    var propellerSlack = slack(three.propellers());
    var batterySlack = slack(three.batteries());
    var most = Math.max(motorSlack, Math.max(propellerSlack, batterySlack));
    if (wide.to() - wide.from() > 1 && slack(wide) >= most) {
      var middle = (wide.from() + wide.to()) / 2;
      wide(three, wide.group(), wide.kits(), wide.from(), middle).ifPresent(halves::add);
      wide(three, wide.group(), wide.kits(), middle, wide.to()).ifPresent(halves::add);
      return halves;
    }
    if (batterySlack == most) {
      three
          .batteries()
          .halves()
          .forEach(half ->
              halve(new BoxBound.Three(three.motors(), three.propellers(), half), wide, halves));
    } else if (propellerSlack == most) {
      three
          .propellers()
          .halves()
          .forEach(half ->
              halve(new BoxBound.Three(three.motors(), half, three.batteries()), wide, halves));
    } else {
      three
          .motors()
          .halves()
          .forEach(half ->
              halve(new BoxBound.Three(half, three.propellers(), three.batteries()), wide, halves));
    }
    return halves;
  }

  private void halve(BoxBound.Three three, Open.Wide wide, List<Open> halves) {
    wide(three, wide.group(), wide.kits(), wide.from(), wide.to()).ifPresent(halves::add);
  }

  /** What may be gained by halving a box; single parts last, many parts before few. */
  private static double slack(Box<?> box) {
    return box.isOne() ? -1 : box.slack() + 1e-6 * box.size();
  }

  private static double slack(Open.Wide wide) {
    var floor = wide.kits();
    var best = Double.POSITIVE_INFINITY;
    for (var step = wide.from(); step < wide.to(); step++) {
      best = Math.min(best, dear(floor.grams().at(step), floor.watts().at(step)));
    }
    return best - dear(floor.leastGrams(wide.to()), floor.leastWatts(wide.from()));
  }

  private static double dear(double grams, double watts) {
    return grams / 8 + watts;
  }

  private Part part(Role role, int index) {
    return goods.options(role).get(index);
  }

  private Optional<Open> triple(Open.Triple.Three parts, Frames.Group group) {
    var build = Build.empty()
        .with(Role.MOTOR, part(Role.MOTOR, parts.motor()))
        .with(Role.PROPELLER, part(Role.PROPELLER, parts.propeller()))
        .with(Role.BATTERY, part(Role.BATTERY, parts.battery()));
    if (!mayFit(build)) {
      return Optional.empty();
    }
    var floors = kits.of(with(build.battery().orElseThrow(), group));
    var first = frame(build, group, 0);
    var area = group.only() == null ? frames.dragArea() : frames.dragArea(group.only());
    return first < 0
        ? Optional.empty()
        : aim(build, area, floors)
            .flatMap(aim -> triple(
                parts,
                build,
                Target.of(aim, mains(build, first), floors),
                first,
                group,
                Long.MAX_VALUE));
  }

  private int frame(Build three, Frames.Group group, int from) {
    var propeller = three.propeller().orElseThrow();
    var battery = three.battery().orElseThrow();
    var frame = from - 1;
    do {
      frame = first(
          frame + 1,
          group.members(),
          frames.under(Role.MOTOR, three.motor().orElseThrow()),
          frames.under(Role.PROPELLER, propeller),
          frames.under(Role.BATTERY, battery));
    } while (frame >= 0 && !frames.goesWith(frame, propeller, battery));
    return frame;
  }

  /** By the law, and the least and largest of their own: what holds at both ends holds in between. */
  private static List<OptionalDouble> losses(List<KitFloor> kits) {
    var own =
        kits.stream().map(KitFloor::loss).filter(OptionalDouble::isPresent).toList();
    var ends = own.size() < 3 ? own : List.of(own.get(0), own.get(own.size() - 1));
    return Stream.concat(
            kits.stream().map(KitFloor::loss).filter(OptionalDouble::isEmpty).limit(1),
            ends.stream())
        .toList();
  }

  /** What three parts add at least with the lightest frame from one on. */
  private Adds mains(Build build, int frame) {
    var motor = build.motor().orElseThrow();
    var nothing = goods.nothing();
    return goods
        .own(Role.MOTOR, motor)
        .plus(goods.own(Role.PROPELLER, build.propeller().orElseThrow()))
        .plus(goods.own(Role.BATTERY, build.battery().orElseThrow()))
        .plus(new Adds(
            nothing.grams()
                + frames.grams(frame)
                + frames.leastFasteningGrams(motor)
                + frames.leastStrapGrams(build.battery().orElseThrow()),
            nothing.variance() + frames.least().variance(),
            0,
            nothing.cents() + frames.least().cents(),
            0));
  }

  private Optional<Aim> aim(Build build, Bounds.Span dragArea, List<KitFloor> all) {
    var watts = all.stream().mapToDouble(floor -> floor.leastWatts(0)).min().orElse(0);
    var ohm = all.stream().mapToDouble(KitFloor::ohm).min().orElse(0);
    return bounds.aim(build, dragArea, new Adds(0, 0, watts, 0, ohm), losses(all));
  }

  /** Three parts with the lightest frame of a group from one on; empty if there is none or nothing can come of it. */
  private Optional<Open> triple(
      Open.Triple.Three parts,
      Build build,
      Target target,
      int from,
      Frames.Group group,
      long atMost) {
    var frame = frame(build, group, from);
    if (frame < 0) {
      return Optional.empty();
    }
    var floors = kits.of(with(build.battery().orElseThrow(), group));
    var most = Math.min(atMost, target.most(mains(build, frame), floors));
    return most < 0
        ? Optional.empty()
        : Optional.of(new Open.Triple(parts, build, target, frame, group, most, 0));
  }

  /** The next frame of three parts, and the rest of the frames. */
  private List<Open> nextFrame(Open.Triple triple) {
    var left = new ArrayList<Open>();
    var four = triple.build().with(Role.FRAME, frames.get(triple.frames()));
    four(four, courses() ? null : triple.target().aim(), triple.most()).ifPresent(left::add);
    triple(
            triple.three(),
            triple.build(),
            triple.target(),
            triple.frames() + 1,
            triple.group(),
            triple.most())
        .ifPresent(left::add);
    return left;
  }

  /** Whether a frame's drag matters. */
  private boolean courses() {
    return question.assessor().scenario().flight().style() != pappus.scenario.Flight.Style.HOVER;
  }

  /** @param known the aim for the parts, if it was worked out before */
  private Optional<Open> four(Build build, @Nullable Aim known, long atMost) {
    if (!mayFit(build)) {
      return Optional.empty();
    }
    var aim = known != null
        ? known
        : aim(build, frames.dragArea(build.frame().orElseThrow()), kits.of(build))
            .orElse(null);
    if (aim == null) {
      return Optional.empty();
    }
    var begun = question.assessor().begun(build);
    var mains = new Adds(begun.grams(), begun.variance(), 0, begun.cents(), 0);
    var target = Target.of(aim, mains, kits.of(build));
    var most = Math.min(atMost, target.most(mains, kits.of(build)));
    return most < 0
        ? Optional.empty()
        : Optional.of(new Open.Four(build, target, null, null, most, 0));
  }

  /** Whether nothing sets main parts apart that reads no other role. */
  private boolean mayFit(Build mains) {
    var parts = List.copyOf(mains.parts().entrySet());
    for (var one = 0; one < parts.size(); one++) {
      for (var other = one + 1; other < parts.size(); other++) {
        var pairing =
            goods.pairings().of(parts.get(one).getKey(), parts.get(other).getKey());
        if (!pairing.isOpen()
            && !pairing.fit(parts.get(one).getValue(), parts.get(other).getValue())) {
          return false;
        }
      }
    }
    var assessor = question.assessor();
    return mains.parts().size() < Goods.MAIN.size()
        || (onMains.stream().noneMatch(rule -> assessor.isBroken(rule, mains))
            && assessor.mayStillFit(mains));
  }

  /** Accessories of four main parts, as long as they may reach more than what waits. */
  private Found accessories(Open.Four four, long until) {
    var assessed = new ArrayList<Assessment>();
    var attempt = new Attempt(four.best(), assessed);
    var search = four.kits();
    if (search == null) {
      var mains = question.assessor().begun(four.build());
      var area = frames.dragArea(four.build().frame().orElseThrow());
      search = new KitSearch(
          goods,
          four.target(),
          (begun, least, loss) -> bounds.aim(begun, area, least, List.of(loss)).orElse(Aim.NOTHING),
          four.build(),
          mains.variance(),
          mains.cents());
    }
    var before = search.steps();
    while (search.most() >= Math.max(until, 0) && attempt.mayGain(search)) {
      search.step(attempt::complete);
    }
    var best = attempt.best;
    var most = Math.min(four.most(), Math.max(search.most(), attempt.objective()));
    var left = new ArrayList<Open>();
    if (best != null && !search.mayBeat(best)) {
      left.add(new Open.Done(best, best.objective(), 0));
    } else if (most >= 0) {
      left.add(new Open.Four(four.build(), four.target(), search, best, most, 0));
    }
    return new Found(left, assessed, search.steps() - before);
  }

  /** Complete builds of four main parts. */
  private final class Attempt {
    private final List<Assessment> assessed;
    private @Nullable Assessment best;

    Attempt(@Nullable Assessment best, List<Assessment> assessed) {
      this.best = best;
      this.assessed = assessed;
    }

    long objective() {
      return best == null ? Aim.HOPELESS : best.objective();
    }

    boolean mayGain(KitSearch search) {
      return best == null || search.mayBeat(best);
    }

    void complete(Build build) {
      var assessment = question.assessor().assess(build);
      assessed.add(assessment);
      if (assessment.isFeasible()
          && (best == null || Pool.BEST_FIRST.compare(assessment, best) < 0)) {
        best = assessment;
      }
    }
  }

  /** Builds that differ from one in at most one main part: one box a role, the others as they are. */
  List<Open> near(Build build) {
    var near = new ArrayList<Open>();
    var motor = boxes.motor(build.motor().orElseThrow());
    var propeller = boxes.propeller(build.propeller().orElseThrow());
    var battery = List.of(boxes.battery(build.battery().orElseThrow()));
    var frame = frames.alone(build.frame().orElseThrow());
    near.addAll(all(boxes.motors(), propeller, battery, frame));
    near.addAll(all(motor, boxes.propellers(), battery, frame));
    near.addAll(all(motor, propeller, boxes.batteries(), frame));
    near.addAll(all(motor, propeller, battery, frames.every()));
    return near;
  }
}
