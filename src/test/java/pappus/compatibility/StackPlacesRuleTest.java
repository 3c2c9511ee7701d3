package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.part.StackPattern;

final class StackPlacesRuleTest {
  private final StackPlacesRule rule = new StackPlacesRule();

  @Test
  void fitsInOneColumn() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesOnAnotherPattern() {
    var frame = with(
        frame(),
        "positions",
        List.of(Parts.position("middle", 0, Parts.holes(StackPattern.P30_5))));

    assertThat(Bench.plain().says(rule, build(frame)))
        .isEqualTo("clashes: Board board has 20x20 holes, but frame frame takes 30.5x30.5.");
  }

  @Test
  void clashesWhenOnlyTheTransmitterFindsNoHoles() {
    var transmitter = with(transmitter(), "mount", Parts.holes(StackPattern.P25));

    assertThat(Bench.plain().says(rule, build(transmitter)))
        .isEqualTo(
            "clashes: Transmitter transmitter has 25x25 holes, but frame frame takes 20x20.");
  }

  @Test
  void notesTheAdapter() {
    var transmitter = with(transmitter(), "mount", Parts.holes(StackPattern.P25));
    var plate = Parts.stackPlate("plate", StackPattern.P20, StackPattern.P25, 1.5);

    assertThat(Bench.with(plate).says(rule, build(transmitter)))
        .isEqualTo("fits, but: plate goes between plate and board at the middle position (1.5 g).");
  }

  @Test
  void fitsWithoutABoard() {
    assertThat(Bench.plain().says(rule, build().without(Role.BOARD))).isEqualTo(FITS);
  }
}
