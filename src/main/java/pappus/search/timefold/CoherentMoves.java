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
import pappus.search.Pairs;
import pappus.search.Question;

/**
 * Changes one part and, most of the time, what hangs on it: a motor with a propeller that fits it, a
 * frame with what bolts to it, a transmitter with its camera and antenna. Single changes alone leave
 * a good build only through bad ones. Public because the solver makes it by reflection.
 *
 * <p>Why: src/site/markdown/decisions.md#several-starts-and-a-sweep
 */
public final class CoherentMoves implements MoveIteratorFactory<BuildChoice, CoherentMove> {
  /** For each part that is changed first, the roles that are then matched to it, in order. */
  private static final Map<Role, List<Role>> FOLLOWERS = new EnumMap<>(Map.of(
      Role.FRAME, List.of(Role.MOTOR, Role.PROPELLER, Role.BATTERY, Role.BOARD),
      Role.MOTOR, List.of(Role.PROPELLER, Role.BATTERY),
      Role.PROPELLER, List.of(Role.MOTOR),
      Role.BATTERY, List.of(Role.LEAD, Role.CAPACITOR, Role.BOARD),
      Role.BOARD, List.of(Role.LEAD, Role.RADIO_ANTENNA, Role.VIDEO_ANTENNA),
      Role.TRANSMITTER, List.of(Role.CAMERA, Role.VIDEO_ANTENNA),
      Role.CAMERA, List.of(Role.TRANSMITTER, Role.VIDEO_ANTENNA),
      Role.RECEIVER, List.of(Role.RADIO_ANTENNA)));

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
    var choice = director.getWorkingSolution();
    var open = List.of(Role.values()).stream()
        .filter(role -> choice.question().options(role).size() > 1)
        .toList();
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return !open.isEmpty();
      }

      @Override
      public CoherentMove next() {
        return move(choice, open, random);
      }
    };
  }

  private static CoherentMove move(BuildChoice choice, List<Role> open, Random random) {
    var first = open.get(random.nextInt(open.size()));
    var part = pick(choice.question().options(first), random);
    var changes = new EnumMap<Role, Part>(Role.class);
    changes.put(first, part);
    for (var follower : FOLLOWERS.getOrDefault(first, List.of())) {
      if (open.contains(follower) && random.nextInt(4) != 0) {
        var matching = matching(choice, changes, follower, random);
        if (matching != null) {
          changes.put(follower, matching);
        }
      }
    }
    return new CoherentMove(choice.plan(), changes);
  }

  /** A part of the role that goes with the one just changed; the present one if it does already. */
  private static @Nullable Part matching(
      BuildChoice choice, Map<Role, Part> changes, Role role, Random random) {
    Pairs pairs = choice.pairs();
    Question question = choice.question();
    var options = question.options(role);
    for (var changed : changes.entrySet()) {
      var fitting = pairs.with(changed.getKey(), changed.getValue(), role);
      if (options.size() == question.options(role).size()) {
        options = fitting;
      } else {
        var both = options.stream().filter(fitting::contains).toList();
        options = both.isEmpty() ? options : both;
      }
    }
    if (options.isEmpty()) {
      return null;
    }
    var present = choice.plan().get(role);
    return present != null && options.contains(present) && random.nextBoolean()
        ? present
        : pick(options, random);
  }

  private static Part pick(List<Part> options, Random random) {
    return options.get(random.nextInt(options.size()));
  }
}
