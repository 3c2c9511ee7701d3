package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;

final class MotorGuardRuleTest {
  private final MotorGuardRule rule = new MotorGuardRule();

  @Test
  void fitsWithoutGuards() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void fitsWhenTheBellTurnsFreely() {
    assertThat(Bench.plain().says(rule, build(with(frame(), "guardInnerMillimetres", 20.0))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesWhenTheBellIsTooWide() {
    assertThat(Bench.plain().says(rule, build(with(frame(), "guardInnerMillimetres", 19.5))))
        .isEqualTo(
            "clashes: Motor motor needs guards of 20 mm inside, but those of frame frame are 19.5 mm.");
  }
}
