package pappus.search.timefold;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
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
 * a good build only through bad ones. Parts are drawn until one fits what stays, half of them near in mass to the one
 * that goes: of a thousand hardly any fits by chance. Public because the solver makes it by reflection.
 *
 * <p>Why: src/site/markdown/decisions.md#several-starts-and-a-sweep
 */
public final class CoherentMoves implements MoveIteratorFactory<BuildChoice, CoherentMove> {
  /** One of so many moves does not ask what stays. */
  private static final int FREE = 8;

  /** So many parts are drawn until one fits. */
  private static final int TRIES = 60;

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
    if (build.pairs().areFew()) {
      return amongFew(build, open, random);
    }
    // Of many parts most moves are to go where the flight is decided.
    var flying = open.stream().filter(Role.FLYING::contains).toList();
    var from = flying.isEmpty() || random.nextInt(3) == 0 ? open : flying;
    var first = from.get(random.nextInt(from.size()));
    var changing = EnumSet.of(first);
    for (var follower : first.matched()) {
      if (open.contains(follower) && random.nextInt(4) != 0) {
        changing.add(follower);
      }
    }
    // Now and then what stays is not asked: it may be what is in the way.
    var kept = new EnumMap<Role, Part>(Role.class);
    if (random.nextInt(FREE) != 0) {
      for (var choice : build.choices()) {
        if (choice.part() != null && !changing.contains(choice.role())) {
          kept.put(choice.role(), choice.part());
        }
      }
    }
    var changes = new EnumMap<Role, Part>(Role.class);
    changes.put(first, changed(build, kept, changes, first, random));
    for (var follower : first.matched()) {
      if (changing.contains(follower)) {
        changes.put(follower, matching(build, kept, changes, follower, random));
      }
    }
    return new CoherentMove(changes);
  }

  /** Any part, and of what hangs on it what goes with it: of few parts each is soon tried. */
  private static CoherentMove amongFew(BuildChoice build, List<Role> open, Random random) {
    var first = open.get(random.nextInt(open.size()));
    var changes = new EnumMap<Role, Part>(Role.class);
    changes.put(first, pick(build.of(first).options(), random));
    for (var follower : first.matched()) {
      if (open.contains(follower) && random.nextInt(4) != 0) {
        var choice = build.of(follower);
        var options = build.pairs().going(changes, follower);
        if (!options.isEmpty()) {
          var present = choice.part();
          changes.put(
              follower,
              present != null && options.contains(present) && random.nextBoolean()
                  ? present
                  : pick(options, random));
        }
      }
    }
    return new CoherentMove(changes);
  }

  private static Part pick(List<Part> options, Random random) {
    return options.get(random.nextInt(options.size()));
  }

  /** A part of the role that goes with those just changed; the present one if it does already. */
  private static Part matching(
      BuildChoice build, Map<Role, Part> kept, Map<Role, Part> changes, Role role, Random random) {
    var present = build.of(role).part();
    return present != null && random.nextBoolean() && build.pairs().fitsAll(role, present, changes)
        ? present
        : changed(build, kept, changes, role, random);
  }

  /** Any other part of the role, or one nearly as heavy as the present one: the first drawn that fits. */
  private static Part changed(
      BuildChoice build, Map<Role, Part> kept, Map<Role, Part> changes, Role role, Random random) {
    var pairs = build.pairs();
    var parts = pairs.byMass(role);
    var present = build.of(role).part();
    var place = present == null || random.nextBoolean() ? -1 : pairs.place(role, present);
    @Nullable Part fitting = null;
    for (var tried = 0; tried < TRIES; tried++) {
      var part =
          parts.get(place < 0 ? random.nextInt(parts.size()) : near(place, parts.size(), random));
      if ((present == null || !part.id().equals(present.id()))
          && pairs.fitsAll(role, part, changes)) {
        if (pairs.fitsAll(role, part, kept)) {
          return part;
        }
        fitting = fitting == null ? part : fitting;
      }
    }
    return fitting == null ? parts.get(random.nextInt(parts.size())) : fitting;
  }

  /** A place about another: every distance that is twice as far is as likely. */
  private static int near(int place, int size, Random random) {
    var away = (int) StrictMath.exp(random.nextDouble() * StrictMath.log(Math.max(2, size / 2.0)));
    return Math.min(Math.max(random.nextBoolean() ? place + away : place - away, 0), size - 1);
  }
}
