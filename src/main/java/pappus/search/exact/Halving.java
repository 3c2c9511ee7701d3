package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pappus.compatibility.Sizes;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** Boxes of motors, propellers and batteries, halved until each has one part. Safe for several threads. */
final class Halving {
  private static final int MOST_HALVED = 64;

  private final Goods goods;
  private final Frames frames;
  private final KitRelaxations kits;
  private final Boxes boxes;
  private final BoxBound boxBound;
  private final Closings closings;

  /** What three parts lead to. */
  interface ToTriple {
    Optional<Node> triple(Node.Triple.Three parts, Frames.Group group);
  }

  Halving(Goods goods, Prepared.Relaxed relaxed, Bounds bounds, Closings closings) {
    this.goods = goods;
    this.frames = relaxed.frames();
    this.kits = relaxed.kits();
    this.closings = closings;
    this.boxes = relaxed.boxes();
    this.boxBound = new BoxBound(goods, bounds, boxes.spans(), boxes.share());
  }

  /** Every build there is. */
  List<Node> all() {
    return all(boxes.motors(), boxes.propellers(), boxes.batteries(), frames.every());
  }

  /** Every build of some boxes with some frames. */
  private List<Node> all(
      Box<MotorRelaxation> motors,
      Box<PropellerRelaxation> propellers,
      List<Box<BatteryRelaxation>> batteries,
      Frames.Group group) {
    var all = new ArrayList<Node>();
    for (var battery : batteries) {
      var three = new BoxBound.Three(motors, propellers, battery);
      var sample = (Battery) part(Role.BATTERY, battery.part());
      var sizes = sizes(three);
      if (frames.lightest(
              going(three, group, sizes),
              sizes,
              motors.relaxation().fastening(),
              Double.POSITIVE_INFINITY)
          >= 0) {
        for (var floor : kits.coarse(goods.with(sample, group))) {
          wide(three, group, floor).ifPresent(all::add);
        }
      }
    }
    return all;
  }

  private Optional<Node> wide(BoxBound.Three three, Frames.Group group, KitRelaxation floor) {
    var motor = three.motors().relaxation();
    if (!motor.byPropeller().intersects(three.propellers().relaxation().motors())
        || !motor.byBattery().intersects(three.batteries().relaxation().motors())) {
      return closings.close(Closings.Reason.RULE);
    }
    var sizes = sizes(three);
    var going = going(three, group, sizes);
    var frame = frames.lightest(going, sizes, motor.fastening(), Double.POSITIVE_INFINITY);
    if (frame < 0) {
      return closings.close(Closings.Reason.RULE);
    }
    var adds = frames.from(frame, motor.fastening());
    var most = boxBound.most(three, adds, frames.air(going), floor);
    return closings.unlessHopeless(new Node.Wide(three, group, floor, most, 0));
  }

  private static Sizes sizes(BoxBound.Three three) {
    return three
        .propellers()
        .relaxation()
        .sizes()
        .and(three.batteries().relaxation().sizes());
  }

  private BitSet going(BoxBound.Three three, Frames.Group group, Sizes sizes) {
    return frames.going(
        group,
        three.motors().relaxation().frames(),
        three.propellers().relaxation().frames(),
        three.batteries().relaxation().frames(),
        sizes);
  }

  /**
   * Halves boxes as long as they may reach more than what waits: each takes less time than to hand it over.
   *
   * @param until what waits reaches this
   * @param started triples that were met before
   * @param toTriple what boxes of one part each lead to
   */
  Branching.Branched halve(
      Node.Wide first, long until, Set<Node.Triple.Start> started, ToTriple toTriple) {
    var left = new ArrayList<Node>();
    var startedHere = new HashSet<Node.Triple.Start>();
    var wides = new PriorityQueue<>(Node.MOST_FIRST);
    wides.add(first);
    var looks = 0;
    while (!wides.isEmpty()
        && looks < MOST_HALVED
        && (looks == 0 || wides.peek().bound() >= until)) {
      looks++;
      var wide = (Node.Wide) wides.poll();
      var start = start(wide);
      if (start != null) {
        if (!started.contains(start) && startedHere.add(start)) {
          toTriple.triple(start.three(), start.group()).ifPresent(left::add);
        } else {
          closings.close(Closings.Reason.MET, 1);
        }
        continue;
      }
      for (var half : halves(wide)) {
        wides.add(half.numbered(looks));
      }
    }
    left.addAll(wides);
    return new Branching.Branched(left, List.of(), looks);
  }

  /** The three parts of boxes of one part each; null of larger ones. */
  private static Node.Triple.@Nullable Start start(Node.Wide wide) {
    var three = wide.three();
    return three.motors().isOne()
            && three.propellers().isOne()
            && three.batteries().isOne()
        ? new Node.Triple.Start(
            new Node.Triple.Three(
                three.motors().part(),
                three.propellers().part(),
                three.batteries().part()),
            wide.group())
        : null;
  }

  private List<Node> halves(Node.Wide wide) {
    var three = wide.three();
    var halves = new ArrayList<Node>();
    var motorSlack = slack(three.motors());
    var propellerSlack = slack(three.propellers());
    var batterySlack = slack(three.batteries());
    var most = Math.max(motorSlack, Math.max(propellerSlack, batterySlack));
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

  private void halve(BoxBound.Three three, Node.Wide wide, List<Node> halves) {
    wide(three, wide.group(), wide.kits()).ifPresent(halves::add);
  }

  /** What may be gained by halving a box; single parts last, many parts before few. */
  private static double slack(Box<?> box) {
    return box.isOne() ? -1 : box.slack() + 1e-6 * box.size();
  }

  /**
   * Builds that differ from one in so many main parts at most, whatever its frame is ordered with: one box a role, the
   * others as they are.
   *
   * @param most 0 or 1
   */
  List<Node> near(Build build, int most) {
    var near = new ArrayList<Node>();
    var motor = boxes.motor(build.motor().orElseThrow());
    var propeller = boxes.propeller(build.propeller().orElseThrow());
    var battery = List.of(boxes.battery(build.battery().orElseThrow()));
    var frame = frames.ordered(build.frame().orElseThrow());
    if (most == 0) {
      return frame.only() == null ? all(motor, propeller, battery, frame) : near;
    }
    near.addAll(all(boxes.motors(), propeller, battery, frame));
    near.addAll(all(motor, boxes.propellers(), battery, frame));
    near.addAll(all(motor, propeller, boxes.batteries(), frame));
    near.addAll(all(motor, propeller, battery, frames.every()));
    return near;
  }

  private Part part(Role role, int index) {
    return goods.options(role).get(index);
  }
}
