package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.drilled;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.part.Motor.CirclesNeeded;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.part.Span;

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
    assertThat(Bench.plain().says(rule, build(drilled(motor(), CirclesNeeded.BOTH, 12.0, 14.5))))
        .isEqualTo(
            "clashes: Motor motor needs a bolt circle of 14.5 mm, but frame frame offers 12 mm.");
  }

  /** What frames offer, and what they say of a motor with circles of 9 and 12 mm. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', nullValues = "-", quoteCharacter = '`', textBlock = """
      9        | 12 | -
      12       | 9  | -
      9, 12    | -  | -
      9 to 12  | -  | -
      11 to 19 | 9  | -
      16       | 9  | 9 or 12
      16 to 19 | 9  | 9 or 12
      10 to 11 | 9  | 9 or 12
      """)
  void oneOfTheCirclesOfAMotorDrilledTwiceIsEnough(
      String offered, @Nullable String lackedOfBoth, @Nullable String lackedOfEither) {
    var frame = with(frame(), "motorBoltCirclesMillimetres", spans(offered));

    assertThat(Bench.plain()
            .says(rule, build(frame, drilled(motor(), CirclesNeeded.BOTH, 9.0, 12.0))))
        .isEqualTo(lacks(lackedOfBoth, offered));
    assertThat(Bench.plain()
            .says(rule, build(frame, drilled(motor(), CirclesNeeded.EITHER, 9.0, 12.0))))
        .isEqualTo(lacks(lackedOfEither, offered));
    assertThat(Bench.plain()
            .says(rule, build(frame, drilled(motor(), CirclesNeeded.EITHER, 12.0, 9.0))))
        .startsWith(lackedOfEither == null ? FITS : "clashes");
  }

  /** Searches ask once for all motors of a signature. */
  @Test
  void theTwoReadingsHaveTraitsOfTheirOwn() {
    var pair = drilled(motor(), CirclesNeeded.BOTH, 9.0, 12.0);
    var twice = drilled(motor(), CirclesNeeded.EITHER, 9.0, 12.0);

    assertThat(rule.signature(twice)).isNotEqualTo(rule.signature(pair));
    assertThat(rule.signature(twice)).isEqualTo(rule.signature(with(twice, "id", "other")));
  }

  private static List<Span> spans(String offered) {
    return Stream.of(offered.split(", ", -1))
        .map(span -> span.split(" to ", -1))
        .map(ends ->
            new Span(Double.parseDouble(ends[0]), Double.parseDouble(ends[ends.length - 1])))
        .toList();
  }

  private static String lacks(@Nullable String circles, String offered) {
    return circles == null
        ? FITS
        : "clashes: Motor motor needs a bolt circle of %s mm, but frame frame offers %s mm."
            .formatted(circles, offered);
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
