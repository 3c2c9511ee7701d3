package pappus.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose;
import pappus.catalog.Catalog;
import pappus.part.Build;
import pappus.part.Role;
import pappus.search.Changed;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
import pappus.search.LocalSearch;
import pappus.search.Proof;
import pappus.search.Question;
import pappus.search.Row;
import pappus.shop.SmallShop;

class RankerTest {
  private static final List<Role> MAIN =
      List.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY);
  private static final Catalog FEW = SmallShop.few();
  private static final Question QUESTION = SmallShop.question(FEW, "");
  private static Incumbents incumbents;
  private static Ranking ranking;

  @BeforeAll
  static void rank() {
    incumbents = Enumeration.of(QUESTION);
    ranking = new Ranker(QUESTION, incumbents).rank(10, Ending.MOVES);
  }

  @Test
  void eachCandidateDiffersFromEveryEarlierOneInTwoMainParts() {
    var rows = ranking.candidates();
    assertThat(rows).hasSizeGreaterThan(2);
    for (var i = 0; i < rows.size(); i++) {
      for (var j = 0; j < i; j++) {
        assertThat(differences(rows.get(i).assessment(), rows.get(j).assessment()))
            .isGreaterThanOrEqualTo(2);
      }
    }
  }

  @Test
  void theFirstIsTheBestOfThePoolAndTheOrderIsThatOfThePool() {
    var rows = ranking.candidates().stream().map(Candidate::assessment).toList();

    assertThat(rows.get(0)).isSameAs(incumbents.bestFirst().get(0));
    assertThat(rows).isSortedAccordingTo(Incumbents.BEST_FIRST);
    assertThat(rows.get(0).milliseconds())
        .isGreaterThan(rows.get(rows.size() - 1).milliseconds());
  }

  @Test
  void everyBuildLeftOutDiffersFromAnEarlierRowInOnePart() {
    var rows = ranking.candidates().stream().map(Candidate::assessment).toList();
    for (var left : incumbents.bestFirst()) {
      if (!rows.contains(left)) {
        assertThat(rows).anyMatch(row -> differences(row, left) <= 1);
      }
    }
  }

  @Test
  void givesNoMoreThanAskedFor() {
    var two = new Ranker(QUESTION, incumbents).rank(2, Ending.MOVES);

    assertThat(two.candidates()).hasSize(2);
    assertThat(two.candidates().get(0).assessment())
        .isSameAs(ranking.candidates().get(0).assessment());
    assertThat(two.candidates().get(1).assessment())
        .isSameAs(ranking.candidates().get(1).assessment());
  }

  @Test
  void listsAVariantUnderTheFirstRowItBelongsToAndNowhereElse() {
    var rows = ranking.candidates();
    var seen = new ArrayList<String>();
    for (var row = 0; row < rows.size(); row++) {
      for (var variant : rows.get(row).variants()) {
        assertThat(differences(rows.get(row).assessment(), variant)).isEqualTo(1);
        for (var earlier = 0; earlier < row; earlier++) {
          assertThat(differences(rows.get(earlier).assessment(), variant)).isGreaterThan(1);
        }
        seen.add(variant.build().toString());
      }
      assertThat(rows.get(row).variants())
          .isSortedAccordingTo(Incumbents.BEST_FIRST)
          .hasSizeLessThanOrEqualTo(5);
    }
    assertThat(seen).isNotEmpty().doesNotHaveDuplicates();
  }

  @Test
  void marksWhatIsNotSurelyWorseThanTheHeadOfItsGroup() {
    var rows = ranking.candidates();
    var head = 0;
    assertThat(rows.get(0).equalTo()).isEmpty();
    for (var row = 1; row < rows.size(); row++) {
      var first = rows.get(head).band();
      var band = rows.get(row).band();
      if (first.estimate() - band.estimate() < first.deviationOfDifference(band)) {
        assertThat(rows.get(row).equalTo()).isEqualTo(OptionalInt.of(head + 1));
      } else {
        assertThat(rows.get(row).equalTo()).isEmpty();
        head = row;
      }
    }
    assertThat(rows).anyMatch(row -> row.equalTo().isPresent());
  }

  @Test
  void namesTheCheapestOfEachGroupOnceAndNoneOfALoneRow() {
    var rows = ranking.candidates();
    for (var head = 0; head < rows.size(); head++) {
      if (rows.get(head).equalTo().isPresent()) {
        continue;
      }
      var group = group(rows, head);
      var cheapest = group.stream().filter(Candidate::cheapestOfGroup).toList();
      if (group.size() == 1) {
        assertThat(cheapest).isEmpty();
      } else {
        assertThat(cheapest).hasSize(1);
        assertThat(group)
            .allMatch(member -> member.assessment().cost().cents()
                >= cheapest.get(0).assessment().cost().cents());
      }
    }
    assertThat(rows).anyMatch(Candidate::cheapestOfGroup);
  }

  @Test
  void aPriceChangesTheNameOfTheCheapestAndNotTheOrder() {
    var repriced = new Incumbents();
    var equal = firstEqualThatIsNotTheCheapest(ranking.candidates());
    var head = ranking.candidates().get(equal).equalTo().orElseThrow() - 1;
    var last = ranking.candidates().get(equal).assessment();
    for (var each : incumbents.bestFirst()) {
      repriced.offer(each.equals(last) ? Changed.cents(each, 1) : each);
    }

    var rows = new Ranker(QUESTION, repriced).rank(10, Ending.MOVES).candidates();

    assertThat(rows)
        .extracting(row -> row.assessment().build())
        .isEqualTo(
            ranking.candidates().stream().map(row -> row.assessment().build()).toList());
    assertThat(rows.get(equal).equalTo()).isEqualTo(OptionalInt.of(head + 1));
    assertThat(rows.get(equal).cheapestOfGroup()).isTrue();
    assertThat(rows.get(head).cheapestOfGroup()).isFalse();
  }

  private static int firstEqualThatIsNotTheCheapest(List<Candidate> rows) {
    return IntStream.range(0, rows.size())
        .filter(row -> rows.get(row).equalTo().isPresent() && !rows.get(row).cheapestOfGroup())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void improvingGivesEveryCandidateItsBestAccessories() {
    var start = new Incumbents();
    var heavier = FEW.part("newteye-14").orElseThrow();
    for (var build : builds(ranking)) {
      start.offer(QUESTION.assessor().assess(build.with(Role.CAMERA, heavier)));
    }
    assertThat(builds(new Ranker(QUESTION, start).rank(10, Ending.MOVES)))
        .hasSizeGreaterThan(1)
        .allMatch(build -> build.part(Role.CAMERA).equals(Optional.of(heavier)));

    var ranker = new Ranker(QUESTION, start);
    new LocalSearch(QUESTION, start).improve(10, () -> false);

    var best = incumbents.bestFirst().stream().map(Assessment::build).toList();
    assertThat(builds(ranker.rank(10, Ending.MOVES)))
        .hasSizeGreaterThan(2)
        .allMatch(best::contains);
  }

  @Test
  void improvingStopsWhenAsked() {
    var start = new Incumbents();
    start.offer(incumbents.bestFirst().get(0));

    new LocalSearch(QUESTION, start).improve(10, () -> true);

    assertThat(start.assessed()).isEqualTo(1);
  }

  @Test
  void withoutAFeasibleBuildItNamesTheClosest() {
    var poor = SmallShop.question(FEW, ", \"budget\": {\"amount\": 1, \"currency\": \"EUR\"}");
    var all = Enumeration.of(poor);

    var none = new Ranker(poor, all).rank(10, Ending.MOVES);

    assertThat(none.candidates()).isEmpty();
    assertThat(none.closest()).isEqualTo(all.closest()).isPresent();
    assertThat(none.coverage().feasible()).isZero();
    assertThat(none.coverage().assessed()).isEqualTo(48);
    assertThat(none.coverage().combinations()).isEqualTo(48);
    assertThat(none.coverage().isProof()).isFalse();
  }

  @Test
  void withAFeasibleBuildItNamesNoInfeasibleOne() {
    assertThat(ranking.closest()).isEmpty();
  }

  private static List<Build> builds(Ranking ranking) {
    return ranking.candidates().stream()
        .map(candidate -> candidate.assessment().build())
        .toList();
  }

  private static List<Candidate> group(List<Candidate> rows, int head) {
    var group = new ArrayList<Candidate>();
    group.add(rows.get(head));
    for (var row : rows) {
      if (row.equalTo().equals(OptionalInt.of(head + 1))) {
        group.add(row);
      }
    }
    return group;
  }

  private static long differences(Assessment one, Assessment other) {
    return MAIN.stream()
        .filter(role -> !one.build().part(role).equals(other.build().part(role)))
        .count();
  }

  @Test
  void aRowThatTheScenarioRulesOutIsABugAndNoAnswer() {
    var row = ranking.candidates().get(0).assessment();
    var battery = row.build().battery().orElseThrow().id();
    var other = battery.endsWith("3500") ? "tidewell-2s-3400" : "tidewell-2s-3500";
    var rows = List.of(new Row(row, List.of(), false));
    var proof = Proof.of(Ending.PROVEN);
    for (var parts : List.of(
        "\"fixed\": [\"" + other + "\"]",
        "\"excluded\": [\"" + battery + "\"]",
        "\"allowed\": [{\"role\": \"battery\", \"parts\": [\"" + other + "\"]}]")) {
      var question = SmallShop.question(FEW, ", \"parts\": {" + parts + "}");

      assertThatIllegalStateException()
          .isThrownBy(() -> new Ranker(question, new Incumbents()).rank(rows, proof))
          .withMessageStartingWith("A build is ")
          .withMessageEndingWith(row.build().toString());
      assertThatIllegalStateException()
          .isThrownBy(() -> Best.of(question, incumbents, proof))
          .withMessageStartingWith("A build is ");
      assertThatIllegalStateException()
          .isThrownBy(
              () -> ParetoFront.of(List.of(row), question, Purpose.Measure.FLIGHT, 0.5, proof))
          .withMessageStartingWith("A build is ");
      var alongside =
          List.of(new Row(Enumeration.of(question).bestFirst().get(0), List.of(row), false));
      assertThatIllegalStateException()
          .isThrownBy(() -> new Ranker(question, new Incumbents()).rank(alongside, proof))
          .withMessageEndingWith(row.build().toString());
    }
    assertThat(new Ranker(QUESTION, new Incumbents()).rank(rows, proof).candidates())
        .hasSize(1);
  }
}
