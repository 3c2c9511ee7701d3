package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.capacitor;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.part.Chemistry;

final class CapacitorRuleTest {
  private final CapacitorRule rule = new CapacitorRule();

  @Test
  void fitsTheUsualOne() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void takesTwentyFiveVoltsUpToFourHighVoltageCells() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(
                    with(battery(), "chemistry", Chemistry.LIHV),
                    with(capacitor(), "ratedVolts", 25))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesOnTooFewVolts() {
    assertThat(Bench.plain().says(rule, build(with(capacitor(), "ratedVolts", 16))))
        .isEqualTo(
            "clashes: Capacitor capacitor is rated 16 V, but pack battery asks for 23.52 V.");
  }

  @Test
  void asksForMoreVoltsOnSixCells() {
    assertThat(Bench.plain()
            .says(
                rule,
                build(with(battery(), "cellsInSeries", 6), with(capacitor(), "ratedVolts", 25))))
        .isEqualTo(
            "clashes: Capacitor capacitor is rated 25 V, but pack battery asks for 35.28 V.");
    assertThat(Bench.plain().says(rule, build(with(battery(), "cellsInSeries", 6))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesOnTooLittleCapacity() {
    assertThat(Bench.plain().says(rule, build(with(capacitor(), "microfarads", 100))))
        .isEqualTo("clashes: Capacitor capacitor has 100 µF, but 4 cells ask for 220 µF.");
    assertThat(Bench.plain()
            .says(
                rule,
                build(with(battery(), "cellsInSeries", 5), with(capacitor(), "microfarads", 220))))
        .isEqualTo("clashes: Capacitor capacitor has 220 µF, but 5 cells ask for 470 µF.");
  }

  /** 25 V up to four cells, 35 V up to six, whatever a fifth more than full would be. */
  @ParameterizedTest
  @CsvSource({
    "4, 25, true",
    "4, 24, false",
    "5, 35, true",
    "5, 25, false",
    "6, 35, true",
    "6, 34, false",
    "7, 35, false"
  })
  void takesWhatEverybodyUses(int cells, double ratedVolts, boolean fits) {
    var says = Bench.plain()
        .says(
            rule,
            build(
                with(with(battery(), "chemistry", Chemistry.LIHV), "cellsInSeries", cells),
                with(with(capacitor(), "ratedVolts", ratedVolts), "microfarads", 470)));

    assertThat(says.equals(FITS)).as(says).isEqualTo(fits);
  }
}
