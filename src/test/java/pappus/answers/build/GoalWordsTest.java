package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.search.Changed;
import pappus.shop.SmallShop;

/** Builds are told by what they are ranked by. */
class GoalWordsTest {
  private static final Assessment ONE = Changed.told(
      SmallShop.assessor(SmallShop.few(), "").assess(SmallShop.oneBuild()), 1800, 18_040);
  private static final Assessment OTHER = Changed.told(ONE, 1710, 20_490);

  private static GoalWords words(String goal) {
    return new GoalWords(
        SmallShop.scenario(", \"goal\": \"%s\", \"leastMinutes\": 20".formatted(goal)));
  }

  @Test
  void aFlightIsToldInMinutes() {
    var words = new GoalWords(SmallShop.scenario(""));

    assertThat(words.isOfFlight()).isTrue();
    assertThat(words.has(ONE)).isEqualTo("reaches 30.0 min");
    assertThat(words.better(ONE, OTHER)).isEqualTo("1.5 min more");
  }

  @Test
  void aPriceIsToldInMoneyAsAPersonSubtracts() {
    var words = words("price");

    assertThat(words.isOfFlight()).isFalse();
    assertThat(words.has(ONE)).isEqualTo("costs EUR 180");
    assertThat(words.better(ONE, OTHER)).isEqualTo("EUR 25 less");
    assertThat(words.better(ONE, Changed.cents(ONE, 18_045))).isEqualTo("less than one EUR less");
    assertThat(words.margin(ONE, Changed.cents(ONE, 18_045))).isEqualTo("EUR 0.05");
  }

  @Test
  void massAndThrustAreToldSo() {
    assertThat(words("mass").has(ONE)).isEqualTo("weighs 190.9 g");
    assertThat(words("mass").better(ONE, ONE)).isEqualTo("0.0 g less");
    assertThat(words("thrust").has(ONE)).isEqualTo("has thrust-to-weight 2.25");
    assertThat(words("thrust").better(ONE, ONE)).isEqualTo("0.00 more");
  }
}
