package pappus.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.search.exact.RandomQuestions;
import pappus.shop.SmallShop;

/** The oracle of the searches is held to assessing everything. */
class EnumerationTest {
  @Tag("slow")
  @Test
  void whatIsNotFlownIsNotFeasible() {
    var questions = new ArrayList<Question>();
    questions.add(SmallShop.question(SmallShop.few(), ""));
    for (var seed = 0; seed < 3; seed++) {
      questions.add(RandomQuestions.of(seed));
    }
    var feasible = 0;
    for (var question : questions) {
      var all = new ArrayList<Assessment>();
      Enumeration.each(question, all::add);

      var flown = Enumeration.feasible(question);

      assertThat(flown.stream().map(Assessment::build))
          .containsExactlyElementsOf(
              all.stream().filter(Assessment::isFeasible).map(Assessment::build).toList());
      feasible += flown.size();
    }
    assertThat(feasible).isPositive();
  }
}
