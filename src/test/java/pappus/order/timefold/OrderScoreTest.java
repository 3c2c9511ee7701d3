package pappus.order.timefold;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.test.api.score.stream.ConstraintVerifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.order.Order;
import pappus.order.SmallOrders;
import pappus.order.choice.Choice;
import pappus.order.choice.Goal;
import pappus.order.choice.Ledger;
import pappus.order.column.Asker;
import pappus.order.column.Column;
import pappus.order.plan.Planner;
import pappus.search.Enumeration;
import pappus.search.Question;

/** The books against constraint streams that say the same once more. */
class OrderScoreTest {
  private static final String ORDER = """
      {"name": "fens", "budget": 330,
       "groups": [{"name": "one", "scenario": "marsh.json", "pieces": 2},
                  {"name": "two", "scenario": "fen.json", "pieces": 1}],
       "leftovers": [{"part": "ligule-4x1.9x2", "pieces": 6}],
       "spares": [{"role": "motor", "pieces": 1}, {"role": "propeller", "units": 1, "perBuilds": 2}],
       "same": [{"what": "battery", "among": "group"}, {"what": "propeller"}]}""";

  private final ConstraintVerifier<OrderConstraints, Draft> verifier =
      ConstraintVerifier.build(new OrderConstraints(), Draft.class, Learner.class);

  @TempDir
  private Path folder;

  private Choice choice;

  @BeforeEach
  void readOrder() {
    var inputs = SmallOrders.read(folder, ORDER);
    var columns = new ArrayList<List<Column>>();
    for (var asker : new Planner(inputs, 100, said -> {}).askers()) {
      meetAll(asker);
      columns.add(asker.allowed());
    }
    choice = Choice.of(inputs, columns);
  }

  private static void meetAll(Asker asker) {
    var asked = asker.asked();
    Enumeration.feasible(Question.of(asked.catalog(), asked.assessor()))
        .forEach(build -> asker.meet(build.build()));
  }

  private Draft draft(Random random, Goal goal) {
    var columns = new ArrayList<Column>();
    for (var learner = 0; learner < choice.learners().size(); learner++) {
      var options = choice.of(learner);
      columns.add(options.get(random.nextInt(options.size())));
    }
    return OrderChooser.draft(choice, goal, columns);
  }

  private static OrderScore books(Draft draft) {
    var books = new OrderScore();
    books.resetWorkingSolution(draft);
    return books;
  }

  private static Object[] facts(Draft draft) {
    var facts = new ArrayList<Object>(draft.learners());
    facts.add(draft.asked());
    facts.addAll(draft.rules());
    return facts.toArray();
  }

  @Test
  void isThatOfTheStreams() {
    var random = new Random(3);
    var broken = 0;
    for (var drawn = 0; drawn < 60; drawn++) {
      var goal = new Goal(Goal.of(Order.Aim.WORST).levels(), random.nextInt(1000), 2_500_000);
      var draft = draft(random, goal);
      var score = books(draft).calculateScore();
      broken += score.isFeasible() ? 0 : 1;

      verifier.verifyThat().given(facts(draft)).scores(score);
    }
    assertThat(broken).isBetween(10, 60);
  }

  @Test
  void staysSoFromChangeToChange() {
    var random = new Random(5);
    var draft = draft(random, Goal.of(Order.Aim.WORST));
    var books = books(draft);
    for (var change = 0; change < 200; change++) {
      var learner = draft.learners().get(random.nextInt(draft.learners().size()));
      books.beforeVariableChanged(learner, Learner.OPTION);
      learner.take(learner.options().get(random.nextInt(learner.options().size())));
      books.afterVariableChanged(learner, Learner.OPTION);

      assertThat(books.calculateScore()).isEqualTo(books(draft).calculateScore());
    }
  }

  @Test
  void eachConstraintIsAFigureOfTheBooks() {
    var random = new Random(11);
    for (var drawn = 0; drawn < 20; drawn++) {
      var draft = draft(random, Goal.of(Order.Aim.WORST));
      var facts = facts(draft);
      var ledger = Ledger.of(
          choice,
          draft.learners().stream().map(learner -> learner.option().column()).toList());
      var standing = ledger.standing();
      var shortPieces = choice.inputs().wares().all().stream()
          .mapToLong(ware -> Math.max(0, ledger.pieces(ware) + ledger.spares(ware) - ware.pieces()))
          .sum();
      var excess = Choice.excess(choice.same().get(0), ledger.kinds(0))
          + Choice.excess(choice.same().get(1), ledger.kinds(1));

      verifier.verifyThat(OrderConstraints::stock).given(facts).penalizesBy(shortPieces);
      verifier
          .verifyThat(OrderConstraints::budget)
          .given(facts)
          .penalizesBy(Math.max(0, standing.cents() - choice.inputs().budgetCents()));
      verifier.verifyThat(OrderConstraints::sameness).given(facts).penalizesBy(excess);
      verifier.verifyThat(OrderConstraints::floor).given(facts).penalizesBy(0);
      verifier.verifyThat(OrderConstraints::worstShare).given(facts).rewardsWith(standing.worst());
      verifier.verifyThat(OrderConstraints::sumOfShares).given(facts).rewardsWith(standing.sum());
      verifier.verifyThat(OrderConstraints::money).given(facts).penalizesBy(standing.cents());
      verifier
          .verifyThat(OrderConstraints::kindsOfParts)
          .given(facts)
          .penalizesBy(standing.kinds());
    }
  }

  /** The same seed and number of changes give the same order; what it gives is no worse than where it began. */
  @Test
  void chooserRepeatsItself() {
    var goal = Goal.of(Order.Aim.WORST);
    var start = draft(new Random(1), goal).learners().stream()
        .map(learner -> learner.option().column())
        .toList();

    var one = new OrderChooser(choice, goal, 500, 1).choose(start);
    var other = new OrderChooser(choice, goal, 500, 1).choose(start);

    assertThat(one).isEqualTo(other);
    var score = OrderScore.score(Ledger.of(choice, one).standing(), goal);
    var before = OrderScore.score(Ledger.of(choice, start).standing(), goal);
    assertThat(score).isGreaterThanOrEqualTo(before);
  }
}
