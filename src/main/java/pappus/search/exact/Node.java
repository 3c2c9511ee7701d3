package pappus.search.exact;

import java.util.BitSet;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.search.Incumbents;

/** A node of the search: some builds that were not told apart yet, or one that is done. */
sealed interface Node {
  /** Upper bound: no build of it reaches more. */
  long bound();

  /** In the order in which they were met. */
  long number();

  /** A copy with another place in the order in which they were met. */
  Node numbered(long number);

  /**
   * Boxes of motors, propellers and batteries.
   *
   * @param group of frames
   * @param kits accessories with boards of some sorts
   */
  record Wide(BoxBound.Three three, Frames.Group group, KitRelaxation kits, long bound, long number)
      implements Node {
    @Override
    public Node numbered(long next) {
      return new Wide(three, group, kits, bound, next);
    }
  }

  /**
   * A motor, a propeller and a battery with frames that were not looked into yet, the lightest first.
   *
   * @param build of the three
   * @param target for them
   * @param frame the lightest
   * @param frames it and the others
   * @param group of frames they are of
   */
  record Triple(
      Three three,
      Build build,
      Target target,
      int frame,
      BitSet frames,
      Frames.Group group,
      long bound,
      long number)
      implements Node {
    /** Indices among the options of each role. */
    record Three(int motor, int propeller, int battery) {}

    /** Three parts with a group of frames: boards of different sorts lead to them again. */
    record Start(Three three, Frames.Group group) {}

    Start start() {
      return new Start(three, group);
    }

    @Override
    public Node numbered(long next) {
      return new Triple(three, build, target, frame, frames, group, bound, next);
    }
  }

  /**
   * Frame, motor, propeller and battery.
   *
   * @param target for them; for the three with any frame as long as it is rough
   * @param isRough whether no more than the mass of the frame is known yet
   * @param kits where the search for their accessories stands; absent before it starts
   * @param best of the builds found so far
   */
  record Four(
      Build build,
      Target target,
      boolean isRough,
      @Nullable KitSearch kits,
      @Nullable Assessment best,
      long bound,
      long number)
      implements Node {
    @Override
    public Node numbered(long next) {
      return new Four(build, target, isRough, kits, best, bound, next);
    }
  }

  /** The best build of four main parts. */
  record Done(Assessment assessment, long bound, long number) implements Node {
    @Override
    public Node numbered(long next) {
      return this;
    }
  }

  /** What may reach most first; of equals, builds that are done after all others and in their own order. */
  Comparator<Node> MOST_FIRST = Comparator.comparingLong(Node::bound)
      .reversed()
      .thenComparing(open -> open instanceof Done)
      .thenComparing((one, other) -> one instanceof Done mine && other instanceof Done theirs
          ? Incumbents.BEST_FIRST.compare(mine.assessment, theirs.assessment)
          : 0)
      .thenComparingLong(Node::number);
}
