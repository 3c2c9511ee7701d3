package pappus.answers.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;
import pappus.whatif.relax.ClashCount;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Demanded;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.SmallestRelaxation;

class RelaxWordsTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Assessment BUILD = SmallShop.assessor(FEW, "").assess(SmallShop.oneBuild());

  private static final Demand GPS = Demanded.of("wants-gps", "a GPS", "do without a GPS");
  private static final Demand CAP = Demanded.of("mass-cap", "below 190 g", "");

  private static Relaxation relaxation(boolean isProof, int searches) {
    var none = new Best(Optional.empty(), new Proof(Ending.PROVEN, OptionalLong.empty(), 1));
    return new Relaxation(
        none, List.of(), List.of(), List.of(), List.of(), isProof, false, searches);
  }

  @Test
  void saysWhichDemandsAreInConflict() {
    assertThat(RelaxWords.conflict(List.of(), true))
        .isEqualTo(
            "No build goes together, even with nothing asked for: the parts themselves do not fit.");
    assertThat(RelaxWords.conflict(List.of(), false))
        .isEqualTo("No build was found, even with nothing asked for; that is not proven.");
    assertThat(RelaxWords.conflict(List.of(CAP), true))
        .isEqualTo(
            "One demand alone rules out every build, even with nothing else asked for: below 190 g.");
    assertThat(RelaxWords.conflict(List.of(GPS, CAP), true))
        .isEqualTo(
            "These demands together rule out every build, even with nothing else asked for; any one of them fewer would leave a build: a GPS; below 190 g.");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      mass-cap         | 190 g    | 190.6 g  | true  | Mass cap 190 g → 190.6 g
      mass-cap         | 190 g    | 190.6 g  | false | Mass cap 190 g → 190.6 g (maybe less)
      thrust-to-weight | 3        | 2.55     | true  | Thrust to weight 3 → 2.55
      budget           | 170 EUR  | 179 EUR  | true  | Budget 170 EUR → 179 EUR
      confidence       | 0.95     | 0.8      | false | Confidence 0.95 → 0.8 (maybe less)
      transmitter-power | 500 mW  | 200 mW   | true  | Transmitter power 500 mW → 200 mW
      """)
  void saysHowFarADemandHasToMove(
      String id, String from, String to, boolean isLeast, String sentence) {
    assertThat(RelaxWords.relief(
            new SmallestRelaxation(Demanded.of(id, "", ""), from, to, BUILD, true, isLeast)))
        .isEqualTo(sentence);
  }

  @Test
  void saysWhatIsGivenUpWhole() {
    assertThat(RelaxWords.relief(new SmallestRelaxation(GPS, "", "", BUILD, true, true)))
        .isEqualTo("Do without a GPS");
  }

  @Test
  void saysThatAConflictIsNotProven() {
    assertThat(RelaxWords.conflict(List.of(CAP), false))
        .isEqualTo(
            "In what was searched: one demand alone rules out every build, even with nothing else asked for: below 190 g.");
    assertThat(RelaxWords.conflict(List.of(CAP, GPS), false))
        .startsWith("In what was searched: these demands together rule out every build");
  }

  @Test
  void saysWhatIsGivenUpTogether() {
    assertThat(RelaxWords.together(new Relaxation.Together(List.of(CAP, GPS), BUILD, true)))
        .isEqualTo("Without both of these: below 190 g; a GPS");
    assertThat(RelaxWords.together(new Relaxation.Together(List.of(CAP, GPS, CAP), BUILD, true)))
        .isEqualTo(
            "No two were found to; without all of these, none of which can stay: below 190 g; a GPS; below 190 g");
  }

  @Test
  void countsPairsThatAreSetApart() {
    assertThat(RelaxWords.clashes(
            new ClashCount("propeller-clearance", Role.FRAME, Role.PROPELLER, 2, 6)))
        .isEqualTo("propeller-clearance: 2 of 6 pairs of frame and propeller (33 %).");
    assertThat(RelaxWords.clashes(
            new ClashCount("video-family", Role.BOARD, Role.VIDEO_ANTENNA, 12_345, 1_234_500)))
        .isEqualTo(
            "video-family: 12,345 of 1,234,500 pairs of flight board and video antenna (1 %).");
  }

  @Test
  void saysHowFarItCanBeTrusted() {
    assertThat(RelaxWords.standing(relaxation(true, 12)))
        .isEqualTo("Proven: what is called impossible was searched to the end, in 12 searches.");
    assertThat(RelaxWords.standing(relaxation(false, 1)))
        .isEqualTo("Not proven: where nothing was found, something may exist, in 1 search.");
  }

  @Test
  void controlCharactersOfAScenarioComeOutVisible() {
    var hostile =
        Demanded.of("pilot-video", "video for a\u001B[2J goggles", "fly\u202E with others");

    assertThat(RelaxWords.conflict(List.of(hostile), true))
        .isEqualTo(
            "One demand alone rules out every build, even with nothing else asked for: video for a\u001B[2J goggles.");
    assertThat(RelaxWords.conflict(List.of(GPS, hostile), true))
        .endsWith(
            "any one of them fewer would leave a build: a GPS; video for a\u001B[2J goggles.");
    assertThat(RelaxWords.relief(new SmallestRelaxation(hostile, "", "", BUILD, true, true)))
        .isEqualTo("Fly\u202E with others");
    assertThat(RelaxWords.together(new Relaxation.Together(List.of(GPS, hostile), BUILD, true)))
        .isEqualTo("Without both of these: a GPS; video for a\u001B[2J goggles");
  }
}
