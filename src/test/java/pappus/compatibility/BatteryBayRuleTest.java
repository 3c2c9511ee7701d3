package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;

final class BatteryBayRuleTest {
  private final BatteryBayRule rule = new BatteryBayRule();

  @Test
  void fitsInsideTheBay() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhenThePackIsTooWide() {
    assertThat(Bench.plain().says(rule, build(with(battery(), "widthMillimetres", 41))))
        .isEqualTo("clashes: Pack battery is 41 mm wide, but the bay of frame frame is 40 mm.");
  }

  @Test
  void clashesWhenThePackIsTooHigh() {
    var bay = with(frame().bay(), "tallestMillimetres", 25.0);

    assertThat(Bench.plain().says(rule, build(with(frame(), "bay", bay))))
        .isEqualTo("clashes: Pack battery is 28 mm high, but frame frame has room for 25 mm.");
  }

  @Test
  void clashesWhenThePackIsTooLong() {
    assertThat(Bench.plain().says(rule, build(with(battery(), "lengthMillimetres", 131))))
        .isEqualTo(
            "clashes: Pack battery is 131 mm long, but the bay of frame frame holds 130 mm with its overhang.");
  }

  /** Its rear edge is 55 mm behind the middle: 10 mm before the rear motors and 50 mm beside them. */
  @Test
  void clashesWhenTheDiscsComeClose() {
    assertThat(Bench.plain().says(rule, build(with(battery(), "lengthMillimetres", 104))))
        .isEqualTo(
            "clashes: Pack battery comes within 0.19 mm of the propellers on frame frame, but must stay 3 mm clear.");
  }

  /** The camera, 5 g at 60 mm, is balanced by the pack, 100 g, at -3 mm. */
  @Test
  void notesAnOverhang() {
    var bay = with(with(frame().bay(), "rearXMillimetres", -20), "frontXMillimetres", 20);

    assertThat(Bench.plain().says(rule, build(with(frame(), "bay", bay))))
        .isEqualTo("fits, but: Pack battery overhangs its bay by 13 mm.");
  }
}
