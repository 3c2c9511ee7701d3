package pappus.search.timefold;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Changes one part and, most of the time, what hangs on it: a motor with a propeller that fits it, a
 * frame with what bolts to it, a transmitter with its camera and antenna. Single changes alone leave
 * a good build only through bad ones. Public because the solver makes it by reflection.
 *
 * <p>Why: src/site/markdown/decisions.md#several-starts-and-a-sweep
 */
public final class CoherentMoves implements MoveIteratorFactory<BuildChoice, CoherentMove> {
  @Override
  public long getSize(ScoreDirector<BuildChoice> director) {
    return Integer.MAX_VALUE;
  }

  @Override
  public Iterator<CoherentMove> createOriginalMoveIterator(ScoreDirector<BuildChoice> director) {
    return Collections.emptyIterator();
  }

  @Override
  public Iterator<CoherentMove> createRandomMoveIterator(
      ScoreDirector<BuildChoice> director, Random random) {
    var build = director.getWorkingSolution();
    var open = build.choices().stream()
        .filter(choice -> choice.options().size() > 1)
        .map(RoleChoice::role)
        .toList();
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return !open.isEmpty();
      }

      @Override
      public CoherentMove next() {
        return move(build, open, random);
      }
    };
  }

  private static CoherentMove move(BuildChoice build, List<Role> open, Random random) {
    var first = open.get(random.nextInt(open.size()));
    var part = pick(build.of(first).options(), random);
    var changes = new EnumMap<Role, Part>(Role.class);
    changes.put(first, part);
    for (var follower : first.matched()) {
      if (open.contains(follower) && random.nextInt(4) != 0) {
        var matching = matching(build, changes, follower, random);
        if (matching != null) {
          changes.put(follower, matching);
        }
      }
    }
    return new CoherentMove(changes);
  }

  /** A part of the role that goes with the one just changed; the present one if it does already. */
  private static @Nullable Part matching(
      BuildChoice build, Map<Role, Part> changes, Role role, Random random) {
    var choice = build.of(role);
    var options = choice.options();
    for (var changed : changes.entrySet()) {
      var fitting = build.pairs().with(changed.getKey(), changed.getValue(), role);
      if (options.size() == choice.options().size()) {
        options = fitting;
      } else {
        var both = options.stream().filter(fitting::contains).toList();
        options = both.isEmpty() ? options : both;
      }
    }
    if (options.isEmpty()) {
      return null;
    }
    var present = choice.part();
    return present != null && options.contains(present) && random.nextBoolean()
        ? present
        : pick(options, random);
  }

  private static Part pick(List<Part> options, Random random) {
    return options.get(random.nextInt(options.size()));
  }
}
