package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.fitting.Discs;

final class PropellerClearanceRuleTest {
  private final PropellerClearanceRule rule = new PropellerClearanceRule();

  /** A 4-inch frame with motors 142.5 by 108 mm apart (common practice, no published source). */
  @Test
  void measuresAnOblongFrame() {
    var oblong = with(
        with(with(frame(), "frontSpacingMillimetres", 142.5), "sideSpacingMillimetres", 108.0),
        "largestPropellerInches",
        4.0);

    assertThat(oblong.diagonal()).isCloseTo(178.8, within(0.05));
    assertThat(Discs.betweenTips(oblong, propeller())).isCloseTo(6.4, within(1e-9));
    assertThat(Bench.plain().says(rule, build(oblong))).isEqualTo(FITS);
  }

  @Test
  void fitsWithRoomToSpare() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesAboveWhatTheFrameAllows() {
    assertThat(Bench.plain().says(rule, build(with(propeller(), "diameterInches", 4.2))))
        .isEqualTo("clashes: Propeller propeller is 4.2 inch, but frame frame takes 4 inch.");
  }

  @Test
  void takesATenthOfAnInchMore() {
    assertThat(Bench.plain().says(rule, build(with(propeller(), "diameterInches", 4.1))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesWhenTipsMeet() {
    assertThat(Bench.plain().says(rule, build(with(frame(), "sideSpacingMillimetres", 103))))
        .isEqualTo(
            "clashes: Propeller propeller leaves 1.4 mm to its neighbour on frame frame, but needs 2 mm.");
  }

  @Test
  void notesACloseNeighbour() {
    assertThat(Bench.plain().says(rule, build(with(frame(), "frontSpacingMillimetres", 104))))
        .isEqualTo(
            "fits, but: Propeller propeller passes its neighbour at 2.4 mm; 3 mm are usual.");
  }
}
