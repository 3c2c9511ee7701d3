package pappus.answers.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.change.Rates;
import pappus.compatibility.PropellerRoom;
import pappus.part.Frame;
import pappus.part.Parts;
import pappus.ranking.Best;
import pappus.search.Changed;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;
import pappus.whatif.sweep.FrameAdvice;

class FrameWordsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Frame FRAME = (Frame) FEW.part("cottongrass-4").orElseThrow();
  private static final Assessment BUILD =
      Changed.seconds(SmallShop.assessor(FEW, "").assess(SmallShop.oneBuild()), 2700);

  private static Best best(@Nullable Assessment build, Ending ending) {
    return new Best(Optional.ofNullable(build), new Proof(ending, OptionalLong.empty(), 1));
  }

  private static FrameWords words(
      Frame frame, @Nullable Assessment build, Ending ending, boolean isForRange) {
    return new FrameWords(
        new FrameAdvice(
            frame,
            best(build, ending),
            Optional.ofNullable(build).map(found -> new Rates(17.4, 100)),
            List.of(),
            List.of()),
        isForRange);
  }

  @Test
  void namesTheFrameAndItsBestBuild() {
    assertThat(words(FRAME, BUILD, Ending.PROVEN, false).frame())
        .isEqualTo(
            "Cottongrass 4 as it is drawn, 41.0 g: with its best build, proven, plan on 36.5 min, expect 45.0.");
    assertThat(words(FRAME, BUILD, Ending.EFFORT, false).frame())
        .isEqualTo(
            "Cottongrass 4 as it is drawn, 41.0 g: with its best build, not proven, plan on 36.5 min, expect 45.0.");
    // Ranked by metres, the same number is 2.7 km.
    assertThat(words(FRAME, BUILD, Ending.PROVEN, true).frame())
        .isEqualTo(
            "Cottongrass 4 as it is drawn, 41.0 g: with its best build, proven, plan on 2.20 km, expect 2.70.");
    assertThat(words(FRAME, null, Ending.PROVEN, false).frame())
        .isEqualTo(
            "Cottongrass 4 as it is drawn: proven, no build with it keeps every rule and limit.");
    assertThat(words(FRAME, null, Ending.EFFORT, false).frame())
        .isEqualTo("Cottongrass 4 as it is drawn: no build with it was found.");
    assertThat(
            words(with(FRAME, "name", "A\u001B[2J"), null, Ending.EFFORT, false).frame())
        .isEqualTo("A\u001B[2J as it is drawn: no build with it was found.");
  }

  @Test
  void saysWhatAGramIsWorth() {
    assertThat(words(FRAME, BUILD, Ending.PROVEN, false).gram())
        .contains("Each gram off it gives 17 s.");
    assertThat(words(FRAME, BUILD, Ending.PROVEN, true).gram())
        .contains("Each gram off it gives 17 m.");
    assertThat(words(FRAME, null, Ending.PROVEN, false).gram()).isEmpty();
  }

  /** 4 inches are 101.6 mm: 2 mm more at least, 3 mm as usual. */
  @ParameterizedTest(name = "{0} by {1} mm: {2}")
  @CsvSource({
    "103.59, 200, does not fit",
    "200, 103.59, does not fit",
    "103.61, 200, 'fits, tighter than usual'",
    "150, 104.59, 'fits, tighter than usual'",
    "104.61, 104.61, fits"
  })
  void saysWhetherAPropellerFitsBetweenTheMotors(double front, double side, String said) {
    var frame =
        with(with(Parts.frame(), "frontSpacingMillimetres", front), "sideSpacingMillimetres", side);

    assertThat(FrameWords.room(PropellerRoom.of(4), frame)).isEqualTo(said);
  }

  @Test
  void saysThatTheFrameTakesNoLargerPropeller() {
    var frame = with(
        with(
            with(Parts.frame(), "frontSpacingMillimetres", 200.0), "sideSpacingMillimetres", 200.0),
        "largestPropellerInches",
        3.5);

    assertThat(FrameWords.room(PropellerRoom.of(4), frame))
        .isEqualTo("has room, but the frame says 3.5 inch at most");
    assertThat(FrameWords.room(PropellerRoom.of(3.5), frame)).isEqualTo("fits");
  }

  @Test
  void saysWhatIsNotProvenOfAnAddition() {
    var words = words(FRAME, BUILD, Ending.PROVEN, false);
    assertThat(words.addition(new FrameAdvice.Addition(
            "bolt circle of 16 mm", "motors", 3, 5, 10, best(BUILD, Ending.EFFORT), 90)))
        .endsWith("; the best build flies 1.5 min longer, not proven.");
    assertThat(words.addition(new FrameAdvice.Addition(
            "bolt circle of 16 mm", "motors", 3, 5, 10, best(null, Ending.EFFORT), 0)))
        .endsWith("; no build was found.");
  }

  @Test
  void saysWhatAnAdditionAdds() {
    var words = words(FRAME, BUILD, Ending.PROVEN, false);

    assertThat(words.addition(new FrameAdvice.Addition(
            "bolt circle of 16 mm", "motors", 30, 51, 120, best(BUILD, Ending.PROVEN), 90)))
        .isEqualTo(
            "bolt circle of 16 mm: 51 of 120 motors go on it in place of 30 (43 in place of 25 %); the best build flies 1.5 min longer.");
    assertThat(words.addition(new FrameAdvice.Addition(
            "holes 20x20 at the middle position",
            "flight boards",
            0,
            0,
            0,
            best(null, Ending.PROVEN),
            0)))
        .isEqualTo(
            "holes 20x20 at the middle position: 0 of 0 flight boards go on it in place of 0 (0 in place of 0 %); no build keeps every rule and limit.");
    assertThat(words(FRAME, BUILD, Ending.PROVEN, true)
            .addition(new FrameAdvice.Addition(
                "holes 20x20 at the \u202Efront position",
                "flight boards",
                1,
                2,
                2,
                best(BUILD, Ending.PROVEN),
                1500)))
        .isEqualTo(
            "holes 20x20 at the \u202Efront position: 2 of 2 flight boards go on it in place of 1 (100 in place of 50 %); the best build flies 1.5 km farther.");
  }
}
