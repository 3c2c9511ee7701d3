package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.part.Screw;
import pappus.part.ScrewThread;

final class MotorScrewRuleTest {
  private final MotorScrewRule rule = new MotorScrewRule();

  @Test
  void fitsWhenAScrewHoldsWithoutTouchingTheWinding() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenEveryScrewIsTooLongOrTooShort() {
    var bench = Bench.with(
        Parts.screw(ScrewThread.M2, 3, Screw.Material.STEEL, 0.12),
        Parts.screw(ScrewThread.M2, 6, Screw.Material.STEEL, 0.2));

    assertThat(bench.says(rule, build()))
        .isEqualTo(
            "clashes: Motor motor on a 2.5 mm arm needs M2 screws of 4 to 5 mm, but none is in stock.");
  }

  @Test
  void notesThatTheDepthOfTheThreadIsNotKnown() {
    assertThat(Bench.plain().says(rule, build(with(motor(), "threadDepthMillimetres", null))))
        .isEqualTo(
            "fits, but: Motor motor: thread depth not known; turn the screws in by hand, none deeper than 2.5 mm.");
  }

  @Test
  void fitsWithoutAFrame() {
    assertThat(Bench.plain().says(rule, build().without(Role.FRAME))).isEqualTo(FITS);
  }
}
