package pappus.whatif.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.with;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.LimitKind;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.change.Changed;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Role;
import pappus.quantity.Money;
import pappus.ranking.Finder;
import pappus.scenario.Air;
import pappus.scenario.Payload;
import pappus.scenario.Scenario;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;
import pappus.whatif.relax.Demand;

/** Each step against trying every build for it. */
class SweeperTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Scenario PLAIN = SmallShop.scenario("");

  private static Sweep sweep(Scenario scenario, Catalog catalog, Finder finder, String... over) {
    var asked = new Asked(scenario, new Supply(catalog, Shelf.EMPTY));
    var axes = Stream.of(over).map(typed -> Axes.of(typed, asked)).toList();
    return new Sweeper(asked, axes, finder, done -> {}).sweep();
  }

  private static Finder finder() {
    return new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {});
  }

  private static Sweep sweep(String... over) {
    return sweep(PLAIN, FEW, finder(), over);
  }

  /** The best of all builds, by trying each. */
  private static Optional<Assessment> best(Catalog catalog, Scenario scenario) {
    var question = Question.of(catalog, new Supply(catalog, Shelf.EMPTY).assessor(scenario));
    return Enumeration.best(question);
  }

  private static String told(Optional<Assessment> build) {
    return build
        .map(one -> one.objective() + " " + one.cost().cents() + " " + one.build())
        .orElse("nothing");
  }

  /** Holds each step to trying every build; gives what was found at each. */
  private static List<String> assertEach(
      Sweep sweep, Function<List<String>, Optional<Assessment>> oracle) {
    var all = new ArrayList<String>();
    for (var step : sweep.steps()) {
      var expected = told(oracle.apply(step.values()));
      assertThat(told(step.best().build())).as(step.values().toString()).isEqualTo(expected);
      assertThat(step.best().isProof()).isTrue();
      all.add(expected);
    }
    assertThat(sweep.isProof()).isTrue();
    assertThat(sweep.searches()).isEqualTo((int)
        sweep.steps().stream().filter(step -> !step.isCarriedOver()).count());
    return all;
  }

  private static Scenario cap(Scenario scenario, String grams) {
    return with(scenario, "massCap", with(scenario.massCap(), "grams", Double.parseDouble(grams)));
  }

  private static Scenario budget(Scenario scenario, String amount) {
    return with(scenario, "budget", Money.ofCents(100 * Long.parseLong(amount), "EUR"));
  }

  private static Scenario thrust(Scenario scenario, String least) {
    return with(scenario, "leastThrustToWeight", Double.parseDouble(least));
  }

  private static Scenario altitude(Scenario scenario, String metres) {
    return with(scenario, "air", new Air(Double.parseDouble(metres), null, null, null, null));
  }

  /** Nothing is searched twice that has the same answer. */
  private static void assertOneSearchAWinner(Sweep sweep, List<String> found, int winners) {
    assertThat(new TreeSet<>(found)).hasSize(winners).contains("nothing");
    assertThat(sweep.searches()).isEqualTo(winners);
  }

  @Test
  void aMassCapIsSearchedOnceForEachWinner() {
    var sweep = sweep("mass-cap=185:210:1");

    var found = assertEach(sweep, values -> best(FEW, cap(PLAIN, values.get(0))));
    assertThat(sweep.steps()).hasSize(26);
    assertOneSearchAWinner(sweep, found, 5);
  }

  @Test
  void aBudgetIsSearchedOnceForEachWinner() {
    var sweep = sweep("budget=170:230:5");

    var found = assertEach(sweep, values -> best(FEW, budget(PLAIN, values.get(0))));
    assertOneSearchAWinner(sweep, found, 7);
  }

  @Test
  void thrustIsSearchedOnceForEachWinner() {
    var sweep = sweep("thrust-to-weight=2:3:0.1");

    var found = assertEach(sweep, values -> best(FEW, thrust(PLAIN, values.get(0))));
    assertOneSearchAWinner(sweep, found, 4);
  }

  @Test
  void theOrderOfValuesChangesNoAnswer() {
    var up = sweep("mass-cap=185:210:5");
    var down = sweep("mass-cap=210:185:5");
    var mixed = sweep("mass-cap=195,210,185,205,200,190");

    for (var other : List.of(down, mixed)) {
      assertThat(other.searches()).isEqualTo(up.searches());
      for (var step : other.steps()) {
        var same = up.steps().stream()
            .filter(one -> one.values().equals(step.values()))
            .findFirst()
            .orElseThrow();
        assertThat(told(step.best().build())).isEqualTo(told(same.best().build()));
        assertThat(step.isCarriedOver()).isEqualTo(same.isCarriedOver());
      }
    }
    assertThat(mixed.steps())
        .extracting(step -> step.values().get(0))
        .containsExactly("195", "210", "185", "205", "200", "190");
  }

  /** What a carried winner says of its limits is what they are there. */
  @Test
  void whatIsCarriedOverIsAssessedAtItsOwnStep() {
    for (var step : sweep("mass-cap=198:250:4").steps()) {
      var limit = step.best().build().orElseThrow().limits().stream()
          .filter(one -> one.id().equals("mass-cap"))
          .findFirst()
          .orElseThrow();

      // The cap is strict: a milligram below it.
      assertThat(limit.bound())
          .isEqualTo((1000 * Double.parseDouble(step.values().get(0)) - 1) / 1000);
    }
  }

  @Test
  void whatABuildReachesDependsOnIsSearchedAtEachStep() {
    var payload = sweep("payload=0:60:10");
    var altitude = sweep("altitude=0:4000:1000");

    assertEach(
        payload,
        values -> best(
            FEW,
            with(
                PLAIN,
                "payload",
                values.get(0).equals("0")
                    ? null
                    : new Payload(
                        "payload", Double.parseDouble(values.get(0)), 0, 0, null, null))));
    assertThat(payload.searches()).isEqualTo(7);
    assertEach(altitude, values -> best(FEW, altitude(PLAIN, values.get(0))));
    assertThat(altitude.searches()).isEqualTo(5);
  }

  @Test
  void cellsAreSearchedWithPacksOfThatMany() {
    var catalog = SmallShop.catalog(Stream.of(
            SmallShop.ONE_BUILD,
            SmallShop.MORE,
            List.of("tidewell-3s-3400", "culvert-12-whole", "cistern-220-25"))
        .flatMap(List::stream)
        .toList());

    var sweep = sweep(PLAIN, catalog, finder(), "cells=2,3,5");

    assertEach(
        sweep,
        values -> best(
            Catalog.of(catalog.parts().stream()
                .filter(part -> !(part instanceof Battery pack)
                    || pack.cellsInSeries() == Integer.parseInt(values.get(0)))
                .toList()),
            PLAIN));
    assertThat(sweep.steps())
        .extracting(step -> step.best()
            .build()
            .flatMap(build -> build.build().battery())
            .map(Battery::cellsInSeries))
        .containsExactly(Optional.of(2), Optional.of(3), Optional.empty());
  }

  @Test
  void twoLimitsTightenTogether() {
    var sweep = sweep("mass-cap=190:202:4", "budget=180:220:10");

    var found =
        assertEach(sweep, values -> best(FEW, budget(cap(PLAIN, values.get(0)), values.get(1))));
    assertThat(sweep.steps()).hasSize(20);
    assertThat(sweep.steps().get(6).values()).containsExactly("194", "190");
    assertThat(new TreeSet<>(found)).hasSizeGreaterThan(4);
    assertThat(sweep.searches()).isLessThan(12);
  }

  @Test
  void ofTwoOnlyTheOneThatTightensIsCarriedOver() {
    var sweep = sweep("altitude=0,3000", "thrust-to-weight=1.5:2.7:0.3");

    assertEach(sweep, values -> best(FEW, thrust(altitude(PLAIN, values.get(0)), values.get(1))));
    for (var step : sweep.steps()) {
      if (step.values().get(1).equals("1.5")) {
        assertThat(step.isCarriedOver()).as(step.values().toString()).isFalse();
      }
    }
    assertThat(sweep.searches()).isLessThan(10);
  }

  @Test
  void saysWhatChangesFromStepToStepAlongTheLast() {
    var sweep = sweep("budget=190,220", "mass-cap=190:202:4");
    var steps = sweep.steps();
    assertThat(steps)
        .filteredOn(step -> step.best().build().isEmpty())
        .extracting(Step::values)
        .containsExactly(List.of("190", "190"), List.of("220", "190"));

    // The first of a row, and the first after a step without a build, have nothing before them.
    for (var i : List.of(0, 1, 4, 5)) {
      assertThat(steps.get(i).changed()).as(steps.get(i).values().toString()).isEmpty();
    }
    for (var i : List.of(2, 3, 6, 7)) {
      assertThat(steps.get(i).changed())
          .as(steps.get(i).values().toString())
          .isEqualTo(differences(build(steps.get(i - 1)), build(steps.get(i))));
    }
    assertThat(steps.get(2).changed())
        .extracting(Changed::role)
        .containsExactly(Role.BATTERY, Role.CAMERA);
  }

  private static Build build(Step step) {
    return step.best().build().orElseThrow().build();
  }

  private static List<Changed> differences(Build before, Build after) {
    return Stream.of(Role.values())
        .filter(role -> !before.part(role).equals(after.part(role)))
        .map(role -> new Changed(role, before.part(role), after.part(role)))
        .toList();
  }

  @Test
  void aGoalOfRangeIsRankedByMetres() {
    var far = SmallShop.flying("{\"style\": \"cruise\"}", ", \"goal\": \"range\"");

    var sweep = sweep(far, FEW, finder(), "mass-cap=188:212:8");

    assertEach(sweep, values -> best(FEW, cap(far, values.get(0))));
    var last = sweep.steps().get(3).best().build().orElseThrow();
    assertThat(Assessment.figure(last.objective()))
        .isEqualTo(last.flight().orElseThrow().course().orElseThrow().rangeMetres(), within(0.001));
  }

  @Test
  void withoutAProofEachStepIsLookedForItself() {
    var heuristic = new Finder(Finder.Way.HEURISTIC, 1, 64, done -> {});

    var sweep = sweep(PLAIN, FEW, heuristic, "mass-cap=210,230,250");

    assertThat(sweep.searches()).isEqualTo(3);
    assertThat(sweep.isProof()).isFalse();
    assertThat(sweep.steps()).noneMatch(Step::isCarriedOver);
    assertThat(sweep.steps()).allMatch(step -> step.best().proof().ending() == Ending.MOVES);
  }

  @Test
  void tellsHowFarItIs() {
    var told = new ArrayList<String>();
    var asked = new Asked(PLAIN, new Supply(FEW, Shelf.EMPTY));
    var axes = List.of(Axes.of("mass-cap=210,250", asked));

    new Sweeper(asked, axes, finder(), told::add).sweep();

    assertThat(told).containsExactly("1 of 2 steps", "2 of 2 steps");
  }

  /** Else every step left would still be prepared, for longer than a stop may take. */
  @Test
  void onceStoppedItSearchesNoMore() {
    var finder = finder();
    finder.stop();

    var sweep = sweep(PLAIN, FEW, finder, "mass-cap=210,250");

    assertThat(sweep.searches()).isZero();
    assertThat(sweep.isProof()).isFalse();
    assertThat(sweep.steps()).allMatch(step -> step.best().build().isEmpty());
  }

  @Test
  void aValueThatIsRefusedIsRefusedBeforeAnythingIsSearched() {
    var told = new ArrayList<String>();
    var asked = new Asked(PLAIN, new Supply(FEW, Shelf.EMPTY));
    var axes = List.of(Axes.of("cells=2,9", asked));

    assertThatThrownBy(() -> new Sweeper(asked, axes, finder(), told::add).sweep())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("cells must be from 1 to 8, but is \"9\".");
    assertThat(told).isEmpty();
  }

  @Test
  void twoAxesHaveNoMoreStepsInAllThanOne() {
    assertThatThrownBy(() -> sweep("mass-cap=181:201:1", "budget=181:200:1"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("must have at most 400 steps in all, but has 420.");
  }

  /** Of a step that has no build: the demands that it names leave none together, and any fewer of them leave one. */
  @Test
  void whatIsInTheWayLeavesNothingAndLessOfItDoes() {
    var scenario = SmallShop.scenario(", \"budget\": {\"amount\": 300, \"currency\": \"EUR\"}");
    var asked = new Asked(scenario, new Supply(FEW, Shelf.EMPTY));
    var infeasible = 0;
    for (var step :
        sweep(scenario, FEW, finder(), "mass-cap=150:200:10", "budget=170,190").steps()) {
      assertThat(step.inTheWay().isPresent()).isEqualTo(step.best().build().isEmpty());
      var here = asked
          .with(LimitKind.MASS_CAP, new BigDecimal(step.values().get(0)))
          .with(LimitKind.BUDGET, new BigDecimal(step.values().get(1)));
      for (var demands : step.inTheWay().stream().toList()) {
        infeasible++;
        var ids = demands.stream().map(Demand::id).toList();
        assertThat(ids).isNotEmpty();
        assertThat(Enumeration.best(only(here, ids).question())).isEmpty();
        if (!step.isCarriedOver()) {
          for (var id : ids) {
            var fewer = ids.stream().filter(other -> !other.equals(id)).toList();
            assertThat(Enumeration.best(only(here, fewer).question())).as(id).isPresent();
          }
        }
      }
    }
    assertThat(infeasible).isGreaterThan(6);
  }

  /** With only some of its demands left. */
  private static Asked only(Asked asked, List<String> ids) {
    var left = asked;
    for (var limit : LimitKind.stated().toList()) {
      if (!ids.contains(limit.id()) && limit.bound(left.scenario()).isPresent()) {
        left = left.with(limit.field().givenUp());
      }
    }
    return left;
  }

  /** What is carried over from a looser step is told by what the tighter one asks for. */
  @Test
  void whatIsInTheWayIsToldAsItStandsAtEachStep() {
    var steps = sweep("mass-cap=100,120").steps();

    assertThat(steps).allSatisfy(step -> assertThat(step.best().build()).isEmpty());
    assertThat(steps.get(0).isCarriedOver()).isTrue();
    assertThat(steps.stream().map(step -> step.inTheWay().orElseThrow().get(0).text()))
        .containsExactly("below 100 g", "below 120 g");
  }
}
