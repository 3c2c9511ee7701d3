package pappus.search;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.search.Changed.cents;
import static pappus.search.Changed.seconds;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Limit;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.part.Role;
import pappus.shop.SmallShop;

class IncumbentsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessor ASSESSOR = SmallShop.assessor(FEW, "");
  private static final Assessment FIRST = assess(String.join(",", SmallShop.ONE_BUILD));
  private static final Assessment OTHER_CAMERA =
      assess(FIRST.build().toString().replace("newteye-14-feather", "newteye-14"));
  private static final Assessment OTHER_BATTERY =
      assess(FIRST.build().toString().replace("tidewell-2s-3500", "tidewell-2s-3400"));

  private final Incumbents incumbents = new Incumbents();

  @Test
  void keepsTheLongerOfTwoWithTheSameMainParts() {
    offer(seconds(FIRST, 600), seconds(OTHER_CAMERA, 601), seconds(FIRST, 599));

    assertThat(incumbents.bestFirst()).containsExactly(seconds(OTHER_CAMERA, 601));
    assertThat(incumbents.assessed()).isEqualTo(3);
    assertThat(incumbents.feasible()).isEqualTo(3);
  }

  @Test
  void keepsTheCheaperOfTwoThatFlyEquallyLong() {
    var dear = cents(seconds(FIRST, 600), 20_000);
    var cheap = cents(seconds(OTHER_CAMERA, 600), 19_999);

    offer(dear, cheap);
    assertThat(incumbents.bestFirst()).containsExactly(cheap);
    offer(dear);
    assertThat(incumbents.bestFirst()).containsExactly(cheap);
  }

  @Test
  void ordersByEnduranceThenPriceThenIds() {
    var longest = seconds(FIRST, 600.002);
    var shorter = seconds(OTHER_BATTERY, 600);
    offer(shorter, longest);
    assertThat(incumbents.bestFirst()).containsExactly(longest, shorter);

    var cheap = cents(seconds(OTHER_BATTERY, 700), 1);
    var dear = cents(seconds(FIRST, 700), 2);
    offer(dear, cheap);
    assertThat(incumbents.bestFirst()).containsExactly(cheap, dear);

    var byIds = List.of(cents(seconds(OTHER_BATTERY, 800), 5), cents(seconds(FIRST, 800), 5));
    offer(byIds.get(1), byIds.get(0));
    assertThat(incumbents.bestFirst()).containsExactlyElementsOf(byIds);
  }

  @Test
  void aFractionOfAMicrosecondDoesNotCount() {
    var cheap = cents(seconds(OTHER_BATTERY, 600.0000001), 1);
    var dear = cents(seconds(FIRST, 600.0000009), 2);
    offer(dear, cheap);

    assertThat(incumbents.bestFirst()).containsExactly(cheap, dear);
  }

  /** Thrust-to-weight is what a heavier pack misses first; each pack keeps its nearest. */
  @Test
  void keepsWhatOnlyJustMissesTheLongestFlyingFirst() {
    var missed = new Limit("thrust-to-weight", "thrust-to-weight", "", 1.9, 2, false, false);
    var nearer = new Limit("thrust-to-weight", "thrust-to-weight", "", 1.99, 2, false, false);
    var far = Changed.limits(seconds(FIRST, 900), List.of(missed));
    var near = Changed.limits(seconds(FIRST, 800), List.of(nearer));
    var otherPack = Changed.limits(seconds(OTHER_BATTERY, 850), List.of(missed));

    offer(far, otherPack, near);

    assertThat(incumbents.bestFirst()).isEmpty();
    assertThat(incumbents.nearlyFeasible()).containsExactly(otherPack, near);
  }

  @Test
  void keepsTheInfeasibleOneThatIsClosest() {
    var begun = assess("cottongrass-4,spikerush-1303-3400");
    var noCamera = ASSESSOR.assess(FIRST.build().without(Role.CAMERA));
    assertThat(noCamera.shortfall()).isPositive().isLessThan(begun.shortfall());
    assertThat(incumbents.closest()).isEmpty();

    offer(begun, noCamera, begun);

    assertThat(incumbents.closest()).contains(noCamera);
    assertThat(incumbents.bestFirst()).isEmpty();
    assertThat(incumbents.feasible()).isZero();
    assertThat(incumbents.assessed()).isEqualTo(3);
  }

  @Test
  void theKeyIsFrameMotorPropellerAndBattery() {
    assertThat(Incumbents.key(FIRST.build()))
        .isEqualTo("cottongrass-4 spikerush-1303-3400 ligule-4x1.9x2 tidewell-2s-3500")
        .isEqualTo(Incumbents.key(OTHER_CAMERA.build()));
    assertThat(Incumbents.key(FIRST.build().without(Role.MOTOR)))
        .isEqualTo("cottongrass-4 - ligule-4x1.9x2 tidewell-2s-3500");
  }

  private void offer(Assessment... assessments) {
    for (var assessment : assessments) {
      incumbents.offer(assessment);
    }
  }

  private static Assessment assess(String build) {
    return ASSESSOR.assess(BuildText.parse(build, FEW));
  }
}
