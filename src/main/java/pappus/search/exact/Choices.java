package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.assessment.flight.FrameAir;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.Sizes;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Question;

/** What each choice leads to. Safe for several threads. */
final class Choices {
  private final Question question;
  private final Goods goods;
  private final Trees trees;
  private final Frames frames;
  private final KitFloors kits;
  private final Bounds bounds;
  private final Halving halving;
  private final List<CompatibilityRule> onMains;
  private final boolean isForFront;

  /** For what a ranking looks for. */
  Choices(Goods goods) {
    this(goods, null);
  }

  /**
   * @param front where builds are looked for that no other surpasses in flight, mass and price at once
   */
  Choices(Goods goods, @Nullable Front front) {
    this.question = goods.question();
    this.goods = goods;
    this.trees = new Trees(goods);
    this.frames = new Frames(goods);
    this.kits = new KitFloors(goods);
    this.bounds = new Bounds(question.assessor(), front);
    this.isForFront = front != null;
    this.halving = new Halving(goods, frames, kits, bounds);
    this.onMains = question.assessor().rules().stream()
        .filter(rule -> Role.MAIN.containsAll(rule.reads()) && rule.reads().size() > 2)
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
    return halving.all();
  }

  /** Builds that differ from one in at most one main part. */
  List<Open> near(Build build) {
    return halving.near(build);
  }

  /**
   * Looks into a choice.
   *
   * @param until what waits reaches this; what reaches less can wait too
   * @param started triples that were met before
   */
  Found lookInto(Open open, long until, Set<Open.Triple.Start> started) {
    if (open instanceof Open.Wide wide) {
      return halving.halve(wide, until, started, this::triple);
    }
    return open instanceof Open.Triple triple
        ? Found.of(nextFrame(triple))
        : accessories((Open.Four) open, until);
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
    var floors = kits.of(goods.with(build.battery().orElseThrow(), group));
    var going = going(build, group);
    var first = frame(build, going, 0, mostFrameCents(build, floors));
    return first < 0
        ? Optional.empty()
        : aim(build, frames.air(going), floors)
            .flatMap(aim -> triple(
                parts,
                build,
                Target.of(aim, mains(build, first), floors),
                first,
                group,
                Long.MAX_VALUE));
  }

  /** What a frame may cost beside three parts and the cheapest accessories. */
  private double mostFrameCents(Build three, List<KitFloor> floors) {
    var motor = three.motor().orElseThrow();
    var battery = three.battery().orElseThrow();
    return bounds.budgetCents()
        - goods.nothing().cents()
        - frames.leastFastening(motor).on(goods.own(Role.MOTOR, motor)).cents()
        - goods.own(Role.PROPELLER, three.propeller().orElseThrow()).cents()
        - frames.leastStrap(battery).on(goods.own(Role.BATTERY, battery)).cents()
        - floors.stream().mapToLong(KitFloor::cents).min().orElse(0);
  }

  private BitSet going(Build three, Frames.Group group) {
    return frames.going(
        group,
        frames.under(Role.MOTOR, three.motor().orElseThrow()),
        frames.under(Role.PROPELLER, three.propeller().orElseThrow()),
        frames.under(Role.BATTERY, three.battery().orElseThrow()),
        Sizes.of(three));
  }

  private int frame(Build three, BitSet going, int from, double mostCents) {
    var sizes = Sizes.of(three);
    var frame = frames.first(going, from, sizes);
    while (frame >= 0 && frames.cents(frame) > mostCents) {
      frame = frames.first(going, frame + 1, sizes);
    }
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
    var battery = build.battery().orElseThrow();
    var nothing = goods.nothing();
    return frames
        .leastFastening(motor)
        .on(goods.own(Role.MOTOR, motor))
        .plus(goods.own(Role.PROPELLER, build.propeller().orElseThrow()))
        .plus(frames.leastStrap(battery).on(goods.own(Role.BATTERY, battery)))
        .plus(new Adds(
            nothing.grams() + frames.grams(frame),
            nothing.variance() + frames.least().variance(),
            0,
            nothing.cents() + frames.least().cents(),
            0));
  }

  private Optional<Aim> aim(Build build, FrameAir air, List<KitFloor> all) {
    var watts = all.stream().mapToDouble(floor -> floor.leastWatts(0)).min().orElse(0);
    var ohm = all.stream().mapToDouble(KitFloor::ohm).min().orElse(0);
    return bounds.aim(build, air, new Adds(0, 0, watts, 0, ohm), losses(all));
  }

  /** Three parts with the lightest frame of a group from one on; empty if there is none or nothing can come of it. */
  private Optional<Open> triple(
      Open.Triple.Three parts,
      Build build,
      Target target,
      int from,
      Frames.Group group,
      long atMost) {
    var floors = kits.of(goods.with(build.battery().orElseThrow(), group));
    var frame = frame(build, going(build, group), from, mostFrameCents(build, floors));
    if (frame < 0) {
      return Optional.empty();
    }
    var most = Math.min(atMost, target.most(mains(build, frame), floors));
    return most < 0
        ? Optional.empty()
        : Optional.of(new Open.Triple(parts, build, target, frame, group, most, 0));
  }

  /** The next frame of three parts, and the rest of the frames. */
  private List<Open> nextFrame(Open.Triple triple) {
    var left = new ArrayList<Open>();
    var four = triple.build().with(Role.FRAME, frames.get(triple.frames()));
    four(four, triple.target().aim(), triple.most()).ifPresent(left::add);
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

  /** @param known the aim for three of the parts with any frame */
  private Optional<Open> four(Build build, Aim known, long atMost) {
    if (!mayFit(build)) {
      return Optional.empty();
    }
    var air = frames.air(build.frame().orElseThrow());
    var aim = known.isFor(air) ? known : aim(build, air, kits.of(build)).orElse(null);
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
    return mains.parts().size() < Role.MAIN.size()
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
      var air = frames.air(four.build().frame().orElseThrow());
      search = new KitSearch(
          goods,
          trees,
          four.target(),
          (begun, least, loss) -> bounds.aim(begun, air, least, List.of(loss)).orElse(Aim.NOTHING),
          four.build(),
          mains.variance(),
          mains.cents());
    }
    var before = search.steps();
    if (isForFront) {
      return every(four, search, until, before);
    }
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

  /** Every complete build of four main parts that may be of use, as long as one may reach more than what waits. */
  private Found every(Open.Four four, KitSearch search, long until, long before) {
    var left = new ArrayList<Open>();
    var assessed = new ArrayList<Assessment>();
    while (search.most() >= Math.max(until, 0)) {
      search.step(build -> {
        var assessment = question.assessor().assess(build);
        assessed.add(assessment);
        if (assessment.isFeasible()) {
          left.add(new Open.Done(assessment, assessment.objective(), 0));
        }
      });
    }
    var most = Math.min(four.most(), search.most());
    if (most >= 0) {
      left.add(new Open.Four(four.build(), four.target(), search, null, most, 0));
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
          && (best == null || Incumbents.BEST_FIRST.compare(assessment, best) < 0)) {
        best = assessment;
      }
    }
  }
}
