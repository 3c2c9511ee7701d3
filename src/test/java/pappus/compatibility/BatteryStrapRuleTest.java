package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;

import org.junit.jupiter.api.Test;
import pappus.part.Parts;

final class BatteryStrapRuleTest {
  private final BatteryStrapRule rule = new BatteryStrapRule();

  @Test
  void fitsWhenAStrapGoesRound() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenEveryStrapIsTooShortOrTooWide() {
    var bench = Bench.with(Parts.strap("short", 15, 151, 3), Parts.strap("wide", 25, 200, 6));

    assertThat(bench.says(rule, build()))
        .isEqualTo(
            "clashes: Pack battery on frame frame needs a strap of 152 mm length and at most 20 mm width, but none is in stock.");
  }

  @Test
  void takesAStrapOfExactlyTheLength() {
    assertThat(Bench.with(Parts.strap("exact", 20, 152, 3)).says(rule, build())).isEqualTo(FITS);
  }
}
