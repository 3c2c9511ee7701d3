package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.catalog.Parts.build;
import static pappus.catalog.Parts.frame;
import static pappus.catalog.Parts.motor;
import static pappus.catalog.Parts.with;
import static pappus.compatibility.Bench.FITS;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.catalog.Parts;
import pappus.catalog.Role;
import pappus.catalog.Span;

final class MotorMountRuleTest {
  private final MotorMountRule rule = new MotorMountRule();

  @Test
  void fitsWhenTheArmsAreDrilledForTheCircle() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void fitsWithinTheToleranceOfDrilling() {
    assertThat(
            Bench.plain().says(rule, build(with(motor(), "boltCirclesMillimetres", List.of(12.2)))))
        .isEqualTo(FITS);
  }

  @Test
  void fitsInsideASlot() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(with(frame(), "motorBoltCirclesMillimetres", List.of(new Span(11, 14))))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesWhenNoCircleMatches() {
    var frame =
        with(frame(), "motorBoltCirclesMillimetres", List.of(Parts.circle(9), new Span(15, 19)));

    assertThat(Bench.plain().says(rule, build(frame)))
        .isEqualTo(
            "clashes: Motor motor needs a bolt circle of 12 mm, but frame frame offers 9, 15 to 19 mm.");
  }

  @Test
  void needsBothCirclesOfUnequalPairs() {
    assertThat(Bench.plain()
            .says(rule, build(with(motor(), "boltCirclesMillimetres", List.of(12.0, 14.5)))))
        .isEqualTo(
            "clashes: Motor motor needs a bolt circle of 14.5 mm, but frame frame offers 12 mm.");
  }

  @Test
  void isUnknownWhenTheFrameDoesNotSay() {
    assertThat(Bench.plain()
            .says(rule, build(with(frame(), "motorBoltCirclesMillimetres", List.of()))))
        .isEqualTo("unknown: bolt circles of frame frame");
  }

  @Test
  void isUnknownWhenTheMotorDoesNotSay() {
    assertThat(Bench.plain().says(rule, build(with(motor(), "boltCirclesMillimetres", List.of()))))
        .isEqualTo("unknown: bolt circle of motor motor");
  }

  @Test
  void fitsWithoutAMotor() {
    assertThat(Bench.plain().says(rule, build().without(Role.MOTOR))).isEqualTo(FITS);
  }
}
