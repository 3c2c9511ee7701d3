package pappus.order.timefold;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import pappus.order.Ware;

/**
 * Gives a learner a build that differs in few parts, or any; or one that is out of stock then, and whoever else has what is
 * short another build; or two learners others at once. Single changes alone leave a good order only through one that cannot
 * be bought. Public because the solver makes it by reflection.
 */
public final class OrderMoves implements MoveIteratorFactory<Draft, GiveMove> {
  /** So many builds are drawn until one does without what is short. */
  private static final int TRIES = 12;

  /** So many learners give way at most. */
  private static final int MOST_GIVING_WAY = 2;

  @Override
  public long getSize(ScoreDirector<Draft> director) {
    return Integer.MAX_VALUE;
  }

  @Override
  public Iterator<GiveMove> createOriginalMoveIterator(ScoreDirector<Draft> director) {
    return Collections.emptyIterator();
  }

  @Override
  public Iterator<GiveMove> createRandomMoveIterator(ScoreDirector<Draft> director, Random random) {
    var draft = director.getWorkingSolution();
    var open = draft.learners().stream().anyMatch(learner -> learner.options().size() > 1);
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return open;
      }

      @Override
      public GiveMove next() {
        return move(draft, random);
      }
    };
  }

  private static GiveMove move(Draft draft, Random random) {
    var learners = draft.learners();
    var one = learners.get(random.nextInt(learners.size()));
    var option = random.nextInt(3) == 0 ? any(one, random) : near(one, random);
    var gives = new ArrayList<>(List.of(new GiveMove.Give(one.id(), option)));
    switch (random.nextInt(5)) {
      case 0, 1 -> giveWay(draft, one, option, gives, random);
      case 2 -> {
        var other = learners.get(random.nextInt(learners.size()));
        if (other != one) {
          gives.add(new GiveMove.Give(other.id(), near(other, random)));
        }
      }
      default -> {}
    }
    return new GiveMove(gives);
  }

  private static Option any(Learner learner, Random random) {
    return learner.options().get(random.nextInt(learner.options().size()));
  }

  private static Option near(Learner learner, Random random) {
    var near = learner.option().near();
    return near.isEmpty() ? any(learner, random) : near.get(random.nextInt(near.size()));
  }

  /** Whoever has what is short with a new build gets one without it. */
  private static void giveWay(
      Draft draft, Learner one, Option option, List<GiveMove.Give> gives, Random random) {
    var pieces = pieces(draft, one);
    for (var use : option.uses()) {
      var ware = use.slot().ware();
      var wanted = pieces.getOrDefault(ware, 0) + use.pieces() + use.slot().spares(1);
      if (wanted <= ware.pieces() || gives.size() > MOST_GIVING_WAY) {
        continue;
      }
      other(draft, one, ware, random).ifPresent(other -> {
        if (gives.stream().noneMatch(give -> give.learner() == other.id())) {
          without(other, ware, random)
              .ifPresent(without -> gives.add(new GiveMove.Give(other.id(), without)));
        }
      });
    }
  }

  private static Map<Ware, Integer> pieces(Draft draft, Learner but) {
    var pieces = new HashMap<Ware, Integer>();
    for (var learner : draft.learners()) {
      if (learner != but) {
        for (var use : learner.option().uses()) {
          pieces.merge(use.slot().ware(), use.pieces(), Integer::sum);
        }
      }
    }
    return pieces;
  }

  /** Another learner who has a ware, each with the same chance. */
  private static Optional<Learner> other(Draft draft, Learner one, Ware ware, Random random) {
    var with = draft.learners().stream()
        .filter(learner -> learner != one && has(learner.option(), ware))
        .toList();
    return with.isEmpty() ? Optional.empty() : Optional.of(with.get(random.nextInt(with.size())));
  }

  private static Optional<Option> without(Learner learner, Ware ware, Random random) {
    for (var tried = 0; tried < TRIES; tried++) {
      var option = random.nextBoolean() ? near(learner, random) : any(learner, random);
      if (!has(option, ware)) {
        return Optional.of(option);
      }
    }
    return Optional.empty();
  }

  private static boolean has(Option option, Ware ware) {
    for (var use : option.uses()) {
      if (use.slot().ware().equals(ware)) {
        return true;
      }
    }
    return false;
  }
}
