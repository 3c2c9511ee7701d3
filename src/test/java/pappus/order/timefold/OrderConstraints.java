package pappus.order.timefold;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.count;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.countDistinct;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.min;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sum;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sumLong;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.toMap;

import ai.timefold.solver.core.api.score.buildin.bendablelong.BendableLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;
import ai.timefold.solver.core.api.score.stream.bi.BiConstraintStream;
import java.util.Map;
import pappus.order.Ware;
import pappus.order.choice.Ledger;

/** What an order must keep and what makes it good, for the aim at the worst share, said once more and in another way. */
public final class OrderConstraints implements ConstraintProvider {
  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {
      stock(factory),
      budget(factory),
      sameness(factory),
      floor(factory),
      worstShare(factory),
      sumOfShares(factory),
      money(factory),
      kindsOfParts(factory)
    };
  }

  private static BendableLongScore hard(int level, long weight) {
    return BendableLongScore.ofHard(OrderScore.HARD, OrderScore.SOFT, level, weight);
  }

  private static BendableLongScore soft(int level) {
    return BendableLongScore.ofSoft(OrderScore.HARD, OrderScore.SOFT, level, 1);
  }

  /** Pieces of each ware, spares with them. */
  private static BiConstraintStream<Ware, Integer> pieces(ConstraintFactory factory) {
    return factory
        .forEach(Learner.class)
        .flattenLast(learner -> learner.option().uses())
        .groupBy(Slot.Use::slot, sum(Slot.Use::pieces), count())
        .groupBy(
            (slot, pieces, builds) -> slot.ware(),
            sum((slot, pieces, builds) -> pieces + slot.spares(builds)));
  }

  private static BiConstraintStream<Map<Ware, Integer>, Asked> bill(ConstraintFactory factory) {
    return pieces(factory)
        .groupBy(toMap((ware, pieces) -> ware, (ware, pieces) -> pieces, Integer::sum))
        .join(Asked.class);
  }

  Constraint stock(ConstraintFactory factory) {
    return pieces(factory)
        .filter((ware, pieces) -> pieces > ware.pieces())
        .penalizeLong(hard(0, Ledger.PIECE), (ware, pieces) -> pieces - ware.pieces())
        .asConstraint("pieces in stock or on the shelf");
  }

  Constraint budget(ConstraintFactory factory) {
    return bill(factory)
        .penalizeLong(hard(0, 1), (pieces, asked) -> asked.beyond(pieces))
        .asConstraint("money within the budget");
  }

  Constraint sameness(ConstraintFactory factory) {
    return factory
        .forEach(Learner.class)
        .join(Asked.Rule.class)
        .filter((learner, rule) -> !learner.option().key(rule.number()).isEmpty())
        .groupBy(
            (learner, rule) -> rule,
            (learner, rule) -> rule.among(learner),
            countDistinct((learner, rule) -> learner.option().key(rule.number())))
        .filter((rule, among, kinds) -> kinds > rule.most())
        .penalizeLong(hard(0, Ledger.PIECE), (rule, among, kinds) -> kinds - rule.most())
        .asConstraint("what is to be the same");
  }

  Constraint floor(ConstraintFactory factory) {
    return factory
        .forEach(Learner.class)
        .groupBy(min(Learner::thousandths), sumLong(Learner::share))
        .join(Asked.class)
        .penalizeLong(hard(1, 1), (worst, sum, asked) -> asked.goal().tooLittle(worst, sum))
        .asConstraint("what may not be given up");
  }

  Constraint worstShare(ConstraintFactory factory) {
    return factory
        .forEach(Learner.class)
        .groupBy(min(Learner::thousandths))
        .rewardLong(soft(0), worst -> worst)
        .asConstraint("worst share");
  }

  Constraint sumOfShares(ConstraintFactory factory) {
    return factory
        .forEach(Learner.class)
        .rewardLong(soft(1), Learner::share)
        .asConstraint("sum of shares");
  }

  Constraint money(ConstraintFactory factory) {
    return bill(factory)
        .penalizeLong(soft(2), (pieces, asked) -> asked.cents(pieces))
        .asConstraint("money");
  }

  Constraint kindsOfParts(ConstraintFactory factory) {
    return pieces(factory)
        .filter((ware, pieces) -> !ware.isSmall())
        .penalizeLong(soft(3), (ware, pieces) -> 1)
        .asConstraint("kinds of parts");
  }
}
