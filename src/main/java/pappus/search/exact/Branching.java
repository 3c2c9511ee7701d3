package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntFunction;
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

/** What each node is branched into. Safe for several threads. */
final class Branching {
  /** So many steps among accessories are made at once at most, so that a search ends with its effort. */
  private static final int MOST_STEPS = 2_000;

  /** Which complete builds of four main parts are told. */
  enum Wanted {
    /** The best. */
    BEST,
    /** All that may be of use. */
    EVERY,
    /** One after another, since the next may be of no use any more. */
    NEXT
  }

  private final Question question;
  private final Goods goods;
  private final Trees trees;
  private final Frames frames;
  private final KitRelaxations kits;
  private final Bounds bounds;
  private final Halving halving;
  private final List<CompatibilityRule> onMains;
  private final Wanted wanted;
  private final Closings closings = new Closings();

  /**
   * @param question of the parts that were prepared
   * @param wanted which complete builds of four main parts are told
   */
  Branching(Question question, Prepared prepared, Bounds bounds, Wanted wanted) {
    this.question = question;
    this.goods = prepared.goods();
    this.trees = prepared.relaxed().trees();
    this.frames = prepared.relaxed().frames();
    this.kits = prepared.relaxed().kits();
    this.bounds = bounds;
    this.wanted = wanted;
    this.halving = new Halving(goods, prepared.relaxed(), bounds, closings);
    this.onMains = question.assessor().ruleBook().all().stream()
        .filter(rule -> Role.MAIN.containsAll(rule.reads()) && rule.reads().size() > 2)
        .toList();
  }

  /**
   * What a node leads to.
   *
   * @param assessed complete builds on the way
   * @param looks how many nodes were branched
   */
  record Branched(List<Node> open, List<Assessment> assessed, long looks) {
    static Branched of(List<Node> open) {
      return new Branched(open, List.of(), 1);
    }
  }

  /** Where nodes end. */
  Closings closings() {
    return closings;
  }

  /** Every build there is. */
  List<Node> all() {
    return halving.all();
  }

  /** Builds that differ from one in so many main parts at most, 0 or 1, whatever its frame is ordered with. */
  List<Node> near(Build build, int most) {
    return halving.near(build, most);
  }

  /**
   * Branches a node.
   *
   * @param until what waits reaches this; what reaches less can wait too
   * @param started triples that were met before
   */
  Branched branch(Node node, long until, Set<Node.Triple.Start> started) {
    if (node instanceof Node.Wide wide) {
      return halving.halve(wide, until, started, this::triple);
    }
    return node instanceof Node.Triple triple
        ? Branched.of(nextFrame(triple))
        : sharpenedFirst((Node.Four) node, until);
  }

  private Part part(Role role, int index) {
    return goods.options(role).get(index);
  }

  private Optional<Node> triple(Node.Triple.Three parts, Frames.Group group) {
    var build = Build.empty()
        .with(Role.MOTOR, part(Role.MOTOR, parts.motor()))
        .with(Role.PROPELLER, part(Role.PROPELLER, parts.propeller()))
        .with(Role.BATTERY, part(Role.BATTERY, parts.battery()));
    if (!mayFit(build)) {
      return closings.close(Closings.Reason.RULE);
    }
    var floors = kits.of(goods.with(build.battery().orElseThrow(), group));
    var going = going(build, group);
    if (going.isEmpty()) {
      return closings.close(Closings.Reason.RULE);
    }
    var aim = aim(build, frames.air(going), floors);
    return aim.isEmpty()
        ? closings.close(Closings.Reason.LIMIT)
        : triple(
            parts,
            build,
            lightest -> Target.of(aim.get(), mains(build, lightest), floors),
            going,
            group,
            Long.MAX_VALUE);
  }

  /** What a frame with fastened motors may cost beside three parts and the cheapest accessories. */
  private double mostFrameCents(Build three, List<KitRelaxation> floors) {
    var motor = three.motor().orElseThrow();
    var battery = three.battery().orElseThrow();
    return bounds.budgetCents()
        - goods.nothing().cents()
        - goods.own(Role.MOTOR, motor).cents()
        - goods.own(Role.PROPELLER, three.propeller().orElseThrow()).cents()
        - frames.leastStrap(battery).on(goods.own(Role.BATTERY, battery)).cents()
        - floors.stream().mapToLong(KitRelaxation::cents).min().orElse(0);
  }

  private BitSet going(Build three, Frames.Group group) {
    return frames.going(
        group,
        frames.under(Role.MOTOR, three.motor().orElseThrow()),
        frames.under(Role.PROPELLER, three.propeller().orElseThrow()),
        frames.under(Role.BATTERY, three.battery().orElseThrow()),
        Sizes.of(three));
  }

  /** By the law, and the least and largest of their own: what holds at both ends holds in between. */
  private static List<OptionalDouble> losses(List<KitRelaxation> kits) {
    var own =
        kits.stream().map(KitRelaxation::loss).filter(OptionalDouble::isPresent).toList();
    var ends = own.size() < 3 ? own : List.of(own.get(0), own.get(own.size() - 1));
    return Stream.concat(
            kits.stream()
                .map(KitRelaxation::loss)
                .filter(OptionalDouble::isEmpty)
                .limit(1),
            ends.stream())
        .toList();
  }

  /** What three parts add at least with any frame that is no lighter with motors than one. */
  private Adds mains(Build build, int frame) {
    var motor = build.motor().orElseThrow();
    var battery = build.battery().orElseThrow();
    var nothing = goods.nothing();
    return goods
        .own(Role.MOTOR, motor)
        .plus(goods.own(Role.PROPELLER, build.propeller().orElseThrow()))
        .plus(frames.leastStrap(battery).on(goods.own(Role.BATTERY, battery)))
        .plus(frames.from(frame, frames.fastening(motor)))
        .plus(new Adds(nothing.grams(), nothing.variance(), 0, nothing.cents(), 0));
  }

  private Optional<Aim> aim(Build build, FrameAir air, List<KitRelaxation> all) {
    var watts = all.stream().mapToDouble(floor -> floor.leastWatts()).min().orElse(0);
    var ohm = all.stream().mapToDouble(KitRelaxation::ohm).min().orElse(0);
    return bounds.aim(build, air, new Adds(0, 0, watts, 0, ohm), losses(all));
  }

  /**
   * Three parts with some frames; empty if there is none or nothing can come of it.
   *
   * @param target by the lightest frame
   */
  private Optional<Node> triple(
      Node.Triple.Three parts,
      Build build,
      IntFunction<Target> target,
      BitSet some,
      Frames.Group group,
      long atMost) {
    var floors = kits.of(goods.with(build.battery().orElseThrow(), group));
    var lightest = frames.lightest(
        some,
        Sizes.of(build),
        frames.fastening(build.motor().orElseThrow()),
        mostFrameCents(build, floors));
    if (lightest < 0) {
      return closings.close(Closings.Reason.RULE);
    }
    var aimed = target.apply(lightest);
    var most = Math.min(atMost, aimed.most(mains(build, lightest), floors));
    return closings.unlessHopeless(
        new Node.Triple(parts, build, aimed, lightest, some, group, most, 0));
  }

  /** The next frame of three parts, and the rest of the frames. */
  private List<Node> nextFrame(Node.Triple triple) {
    var left = new ArrayList<Node>();
    rough(triple.build().with(Role.FRAME, frames.get(triple.frame())), triple).ifPresent(left::add);
    var others = (BitSet) triple.frames().clone();
    others.clear(triple.frame());
    triple(
            triple.three(),
            triple.build(),
            lightest -> triple.target(),
            others,
            triple.group(),
            triple.bound())
        .ifPresent(left::add);
    return left;
  }

  /** Four parts with what is known of three of them: most of those that wait are never looked into. */
  private Optional<Node> rough(Build build, Node.Triple triple) {
    if (!mayFit(build)) {
      return closings.close(Closings.Reason.RULE);
    }
    var most = Math.min(triple.bound(), triple.target().most(adds(build), kits.of(build)));
    return closings.unlessHopeless(
        new Node.Four(build, triple.target(), true, null, null, most, 0));
  }

  private Adds adds(Build build) {
    var begun = question.assessor().prospects().begun(build);
    return new Adds(begun.grams(), begun.variance(), 0, begun.cents(), begun.pieces(), 0);
  }

  private Branched sharpenedFirst(Node.Four four, long until) {
    if (!four.isRough()) {
      return accessories(four, until);
    }
    var own = sharpened(four);
    return own.isPresent() && own.get().bound() >= Math.max(until, 0)
        ? accessories(own.get(), until)
        : Branched.of(own.stream().map(Node.class::cast).toList());
  }

  /** The same with what the frame does to the air; empty if nothing can come of it. */
  private Optional<Node.Four> sharpened(Node.Four rough) {
    var build = rough.build();
    var known = rough.target().aim();
    var air = frames.air(build.frame().orElseThrow());
    var aim = known.isFor(air) ? known : aim(build, air, kits.of(build)).orElse(null);
    if (aim == null) {
      return closings.close(Closings.Reason.LIMIT);
    }
    var mains = adds(build);
    var target = Target.of(aim, mains, kits.of(build));
    var most = Math.min(rough.bound(), target.most(mains, kits.of(build)));
    return closings.unlessHopeless(new Node.Four(build, target, false, null, null, most, 0));
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
        || (onMains.stream().noneMatch(rule -> assessor.ruleBook().isBroken(rule, mains))
            && assessor.ruleBook().mayStillFit(mains));
  }

  /** Accessories of four main parts, as long as they may reach more than what waits. */
  private Branched accessories(Node.Four four, long until) {
    var assessed = new ArrayList<Assessment>();
    var attempt = new Attempt(four.best(), assessed);
    var search = four.kits();
    if (search == null) {
      var mains = question.assessor().prospects().begun(four.build());
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
    if (wanted != Wanted.BEST) {
      return every(four, search, until, before);
    }
    while (search.most() >= Math.max(until, 0) && attempt.mayGain(search)) {
      search.step(attempt::complete);
    }
    var best = attempt.best;
    var most = Math.min(four.bound(), Math.max(search.most(), attempt.objective()));
    var left = new ArrayList<Node>();
    if (best != null && !search.mayBeat(best)) {
      left.add(new Node.Done(best, best.objective(), 0));
    } else {
      closings
          .unlessHopeless(new Node.Four(four.build(), four.target(), false, search, best, most, 0))
          .ifPresent(left::add);
    }
    return new Branched(left, assessed, search.steps() - before);
  }

  /** Every complete build of four main parts that may be of use, as long as one may reach more than what waits. */
  private Branched every(Node.Four four, KitSearch search, long until, long before) {
    var left = new ArrayList<Node>();
    while (search.most() >= Math.max(until, 0)
        && search.steps() - before < MOST_STEPS
        && (wanted == Wanted.EVERY || left.isEmpty())) {
      search.step(build -> {
        var assessment = question.assessor().assess(build);
        if (assessment.isFeasible() && bounds.isFlightEnough(assessment)) {
          left.add(new Node.Done(assessment, assessment.objective(), 0));
        }
      });
    }
    var most = Math.min(four.bound(), search.most());
    closings
        .unlessHopeless(new Node.Four(four.build(), four.target(), false, search, null, most, 0))
        .ifPresent(left::add);
    return new Branched(left, List.of(), search.steps() - before);
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
