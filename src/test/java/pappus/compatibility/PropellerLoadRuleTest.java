package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.part.Build;
import pappus.part.Role;

final class PropellerLoadRuleTest {
  private final PropellerLoadRule rule = new PropellerLoadRule();

  private static Build sized(double statorMillimetres, double heightMillimetres, double inches) {
    return build(
        with(
            with(motor(), "statorDiameterMillimetres", statorMillimetres),
            "statorHeightMillimetres",
            heightMillimetres),
        with(propeller(), "diameterInches", inches));
  }

  @Test
  void fitsTheUsualSize() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void notesHalfASizeMore() {
    assertThat(Bench.plain().says(rule, sized(14, 4, 4.5)))
        .isEqualTo(
            "fits, but: Propeller propeller is 4.5 inch; a 14 mm stator usually swings 4 inch at most: feel the motors after the first minute.");
  }

  @Test
  void clashesAboveThat() {
    assertThat(Bench.plain().says(rule, sized(14, 4, 5)))
        .isEqualTo(
            "clashes: Propeller propeller is 5 inch, but a 14 mm stator swings 4 inch at most.");
  }

  /** Size classes are common practice, no published source. */
  @ParameterizedTest
  @CsvSource({
    "11, 4.5, 2.5",
    "11, 5, 3",
    "12, 4, 3",
    "13, 4, 4",
    "15.9, 4, 4",
    "16, 4, 5",
    "22, 7, 5",
    "23, 6, 6"
  })
  void knowsTheLargestUsualSizeOfAStator(double diameter, double height, double inches) {
    assertThat(Bench.plain().says(rule, sized(diameter, height, inches))).isEqualTo(FITS);
    assertThat(Bench.plain().says(rule, sized(diameter, height, inches + 0.1)))
        .startsWith("fits, but: ");
    assertThat(Bench.plain().says(rule, sized(diameter, height, inches + 0.6)))
        .startsWith("clashes: ");
  }

  @Test
  void fitsWithoutAMotor() {
    assertThat(Bench.plain().says(rule, build().without(Role.MOTOR))).isEqualTo(FITS);
  }
}
