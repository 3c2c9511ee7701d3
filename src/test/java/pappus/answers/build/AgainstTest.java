package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.catalog.Catalog;
import pappus.document.Spoken;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.scenario.Scenario;
import pappus.search.Changed;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;

class AgainstTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Scenario HOVER = SmallShop.scenario("");
  private static final Scenario RANGE =
      SmallShop.flying("{\"style\": \"cruise\"}", ", \"goal\": \"range\"");
  private static final Against AGAINST = new Against(HOVER);
  private static final Proof PROVEN = Proof.of(Ending.PROVEN);
  private static final Proof MOVES = Proof.of(Ending.MOVES);

  private static Assessment flies(double seconds) {
    return Changed.seconds(SmallShop.assessor(FEW, HOVER).assess(SmallShop.oneBuild()), seconds);
  }

  private static Best best(double seconds, Proof proof) {
    return new Best(Optional.of(flies(seconds)), proof);
  }

  @Test
  void tellsHowFarABuildIsBehind() {
    assertThat(AGAINST.of(flies(1790), best(1800, PROVEN)))
        .isEqualTo("The best build here, proven, reaches 30.0 min, less than half a minute more.");
    assertThat(AGAINST.of(flies(1700), best(1800, MOVES)))
        .isEqualTo("The best build found, not proven, reaches 30.0 min, 1.5 min more.");
  }

  @Test
  void tellsThatNothingIsBetter() {
    assertThat(AGAINST.of(flies(1800), best(1800, PROVEN)))
        .isEqualTo("Proven: no other build from this catalogue does better.");
    assertThat(AGAINST.of(flies(1801), best(1800, MOVES)))
        .isEqualTo("Nothing better was found, without proof.");
  }

  @Test
  void tellsThatABuildIsNoCandidate() {
    var heavy = new Limit("mass-cap", "all-up mass", "g", 260, 250, true, false);

    assertThat(AGAINST.of(Changed.limits(flies(1900), List.of(heavy)), best(1800, PROVEN)))
        .isEqualTo("The best build here, proven, reaches 30.0 min; this one is no candidate.");
  }

  @Test
  void tellsThatThereIsNone() {
    assertThat(AGAINST.of(flies(1800), new Best(Optional.empty(), PROVEN)))
        .isEqualTo("Proven: no build from this catalogue keeps every rule and limit.");
    assertThat(AGAINST.nothing(new Best(Optional.empty(), MOVES)))
        .isEqualTo("Nothing was found that keeps every rule and limit, without proof.");
  }

  @Test
  void tellsWhatIsLeftOpen() {
    var effort = new Proof(Ending.EFFORT, OptionalLong.of(1_830_000_000L), 100);
    var stopped = new Proof(Ending.INTERRUPTED, OptionalLong.empty(), 100);

    assertThat(AGAINST.more(PROVEN)).isEmpty();
    assertThat(AGAINST.more(MOVES)).isEmpty();
    assertThat(AGAINST.of(flies(1800), best(1800, effort)))
        .isEqualTo(
            "Nothing better was found, without proof. No unseen build reaches more than 30.5 min.");
    assertThat(AGAINST.more(stopped)).isEqualTo(" You stopped the search.");
    assertThat(new Against(RANGE).more(effort))
        .isEqualTo(" No unseen build reaches more than 1.8 km.");
  }

  @Test
  void tellsKilometresWhereTheGoalIsRange() {
    var assessor = SmallShop.assessor(FEW, RANGE);
    var farther = assessor.assess(SmallShop.oneBuild()
        .with(Role.FRAME, FEW.part("thistledown-5").orElseThrow())
        .with(Role.PROPELLER, FEW.part("frond-4.5x3.2x3").orElseThrow()));
    var nearer = assessor.assess(SmallShop.oneBuild("tidewell-2s-3400"));
    var metres = farther.flight().orElseThrow().rangeMetres();
    var near = nearer.flight().orElseThrow().rangeMetres();
    var behind = told(metres) - told(near);

    assertThat(metres).isGreaterThan(10_000);
    assertThat(behind).isGreaterThan(1);
    assertThat(new Against(RANGE).of(nearer, new Best(Optional.of(farther), PROVEN)))
        .isEqualTo("The best build here, proven, reaches " + Spoken.number(metres / 1000, 1)
            + " km, " + Spoken.number(behind, 1) + " km more.");
  }

  /** As a person subtracts. */
  private static double told(double metres) {
    return Double.parseDouble(Journey.kilometres(metres));
  }
}
