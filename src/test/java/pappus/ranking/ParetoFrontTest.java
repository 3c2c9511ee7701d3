package pappus.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose.Measure;
import pappus.catalog.Catalog;
import pappus.part.Frame;
import pappus.part.Role;
import pappus.search.Changed;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.search.Question;
import pappus.shop.SmallShop;

class ParetoFrontTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Question QUESTION = SmallShop.question(FEW, "");
  private static final Proof PROVEN = new Proof(Ending.PROVEN, OptionalLong.empty(), 1);

  /** Flies so many seconds, with a frame of so many grams, for so many cents. */
  private static Assessment build(double seconds, double grams, long cents) {
    var parsed = SmallShop.oneBuild();
    var frame = (Frame) parsed.part(Role.FRAME).orElseThrow();
    var build = parsed.with(Role.FRAME, with(frame, "mass", with(frame.mass(), "grams", grams)));
    return Changed.cents(Changed.seconds(QUESTION.assessor().assess(build), seconds), cents);
  }

  private static final Assessment LONGEST = build(2700, 45, 20_000);
  private static final Assessment CHEAPER = build(2600, 50, 18_000);
  private static final Assessment LIGHTER = build(2500, 40, 19_000);
  private static final Assessment BOTH = build(2000, 38, 17_000);

  private static ParetoFront of(double share, Assessment... met) {
    return ParetoFront.of(List.of(met), QUESTION, Measure.FLIGHT, share, PROVEN);
  }

  @Test
  void leavesOutWhatAnotherSurpasses() {
    var dearerAndHeavier = build(2650, 46, 20_100);
    var alike = build(2550, 50, 18_000);

    assertThat(of(0, LONGEST, dearerAndHeavier, CHEAPER, alike, LIGHTER, BOTH).builds())
        .containsExactly(LONGEST, CHEAPER, LIGHTER, BOTH);
  }

  @Test
  void keepsWhatIsBetterInOneThingOnly() {
    var centLess = build(2650, 45, 19_999);
    var lighter = build(2650, 44.9, 20_000);

    assertThat(of(0, LONGEST, centLess).builds()).containsExactly(LONGEST, centLess);
    assertThat(of(0, LONGEST, lighter).builds()).containsExactly(LONGEST, lighter);
  }

  /** By hand: 2160 s are 80 % of 2700. */
  @Test
  void endsAtTheShareAskedFor() {
    var least = build(2160, 37, 16_000);
    var less = build(2159.9, 36, 15_000);

    assertThat(of(0.8, LONGEST, CHEAPER, least, less).builds())
        .containsExactly(LONGEST, CHEAPER, least);
    assertThat(of(0, LONGEST, CHEAPER, least, less).builds()).contains(less);
    assertThat(of(0.8).builds()).isEmpty();
  }

  @Test
  void againstPriceTheMassDoesNotCount() {
    var front = new ParetoFront(List.of(LONGEST, CHEAPER, LIGHTER, BOTH), 0, PROVEN);

    assertThat(front.againstPrice()).containsExactly(LONGEST, CHEAPER, BOTH);
  }

  @Test
  void againstMassThePriceDoesNotCount() {
    var front = new ParetoFront(List.of(LONGEST, CHEAPER, LIGHTER, BOTH), 0, PROVEN);

    assertThat(front.againstMass(1.645)).containsExactly(LONGEST, LIGHTER, BOTH);
  }

  /** A lighter frame that is less well known may need more at the confidence asked for. */
  @Test
  void massIsThatNeededAtTheConfidence() {
    var parsed = LONGEST.build();
    var frame = (Frame) parsed.part(Role.FRAME).orElseThrow();
    var doubtful = Changed.cents(
        Changed.seconds(
            QUESTION
                .assessor()
                .assess(parsed.with(
                    Role.FRAME,
                    with(
                        frame,
                        "mass",
                        with(with(frame.mass(), "grams", 44.0), "doubtGrams", 10.0)))),
            2600),
        20_000);
    assertThat(doubtful.mass().grams()).isLessThan(LONGEST.mass().grams());
    var front = new ParetoFront(List.of(LONGEST, doubtful), 0, PROVEN);

    assertThat(front.againstMass(0)).containsExactly(LONGEST, doubtful);
    assertThat(front.againstMass(3)).containsExactly(LONGEST);
    assertThat(of(0, LONGEST, doubtful).builds()).containsExactly(LONGEST);
  }

  @Test
  void isAProofOnlyIfNothingWasLeft() {
    assertThat(of(0, LONGEST).isProof()).isTrue();
    for (var ending : List.of(Ending.EFFORT, Ending.INTERRUPTED, Ending.MOVES, Ending.CLOCK)) {
      var proof = new Proof(ending, OptionalLong.empty(), 1);
      assertThat(new ParetoFront(List.of(), 0, proof).isProof())
          .as(ending.name())
          .isFalse();
      assertThat(new Best(Optional.empty(), proof).isProof()).as(ending.name()).isFalse();
    }
  }
}
