package pappus.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import pappus.part.Battery;
import pappus.part.Battery.Resistance.Reading;
import pappus.part.Chemistry;
import pappus.part.Kind;
import pappus.part.Wire;

/** Invented packs against weighed and measured ones. */
final class BatteryLawsTest {
  private static final List<Battery> PACKS = Bands.records(Kind.BATTERY, Battery.class);
  private static final List<Battery> SLOW =
      PACKS.stream().filter(pack -> pack.name().startsWith("Stillwater")).toList();
  private static final List<Battery> CYLINDERS =
      PACKS.stream().filter(pack -> pack.chemistry().isLithiumIon()).toList();
  private static final List<Battery> POUCHES = PACKS.stream()
      .filter(pack -> !SLOW.contains(pack) && !CYLINDERS.contains(pack))
      .toList();

  /** A 1 kHz reading is about 1/1.8 of the direct-current one. */
  private static final double DIRECT_OVER_CHARGER = 1.8;

  private static double leadGrams(Battery pack) {
    return 2 * pack.leadMillimetres() / 1000 * Wire.ofGauge(pack.leadGauge()).gramsPerMetre()
        + pack.connector().halfGrams();
  }

  private static double gramsWithLeads(Battery pack) {
    return pack.mass().grams() + (pack.massIncludesLeads() ? 0 : leadGrams(pack));
  }

  private static double ampHours(Battery pack) {
    return pack.capacityMilliampHours() / 1000;
  }

  private static double wattHoursPerKilogram(Battery pack) {
    return 1000
        * ampHours(pack)
        * pack.cellsInSeries()
        * pack.chemistry().nominalVolts()
        / gramsWithLeads(pack);
  }

  private static List<Battery> known(List<Battery> packs) {
    return packs.stream().filter(pack -> pack.resistance() != null).toList();
  }

  /** Direct-current resistance times capacity of a cell, mΩ·Ah. */
  private static double product(Battery pack) {
    var resistance = Objects.requireNonNull(pack.resistance());
    return resistance.milliohmsPerCell()
        * (resistance.reading() == Reading.CHARGER ? DIRECT_OVER_CHARGER : 1)
        * ampHours(pack);
  }

  @Test
  void pouchPacksWeighWhatTheirChargeAsks() {
    // 28.3 N·Ah + .63 N − .9 g, a twelfth more below .5 Ah, ±12 %, 90 to 175 Wh/kg, median 129:
    // thirteen weighed packs, common practice, no published source.
    var ratios = POUCHES.stream()
        .map(pack -> gramsWithLeads(pack)
            / ((28.3 * pack.cellsInSeries() * ampHours(pack) + 0.63 * pack.cellsInSeries() - 0.9)
                * (ampHours(pack) < 0.5 ? 1.08 : 1)))
        .toList();
    var energies = POUCHES.stream().map(BatteryLawsTest::wattHoursPerKilogram).toList();

    assertThat(Bands.withinTwo(ratios, 0.12)).isGreaterThanOrEqualTo(0.9);
    assertThat(energies).allSatisfy(energy -> assertThat(energy).isBetween(90.0, 175.0));
    assertThat(Bands.median(energies)).isCloseTo(129, within(8.0));
  }

  @Test
  void slowHighVoltagePacksHoldMore() {
    // 200 Wh/kg, ±6 %, hard 170 to 220: common practice, no published source.
    assertThat(SLOW)
        .hasSizeGreaterThan(5)
        .allSatisfy(pack -> assertThat(wattHoursPerKilogram(pack)).isBetween(170.0, 220.0));
  }

  @Test
  void cylindricalPacksHoldWhatTheirCellsDo() {
    // Hard 165 to 270 Wh/kg; energy cells 240 to 265 bare, power cells 195 to 215: data sheets,
    // common practice, no published source.
    assertThat(CYLINDERS)
        .hasSizeGreaterThan(20)
        .allSatisfy(pack -> assertThat(wattHoursPerKilogram(pack)).isBetween(165.0, 270.0));
    assertThat(Bands.median(CYLINDERS.stream()
            .filter(pack -> pack.chemistry() == Chemistry.LI_ION_ENERGY)
            .map(BatteryLawsTest::wattHoursPerKilogram)
            .toList()))
        .isBetween(215.0, 250.0);
  }

  @Test
  void resistanceTimesCapacityIsThatOfMeasuredCells() {
    // LiPo 14 mΩ·Ah (18 below .5 Ah), hard 6 to 40: 10 to 14 in multicopter packs, Bauersfeld and
    // Scaramuzza, IEEE RA-L 7(2) 2022; 22.5 in one hobby cell, Kollmeyer and Skells 2020.
    var ratios = known(POUCHES).stream()
        .map(pack -> product(pack) / (ampHours(pack) < 0.5 ? 18 : 14))
        .toList();

    assertThat(known(POUCHES)).allSatisfy(pack -> assertThat(product(pack)).isBetween(6.0, 40.0));
    assertThat(Bands.withinTwo(ratios, 0.30)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.median(ratios)).isBetween(0.85, 1.15);
  }

  @Test
  void cylindricalCellsHaveTheirOwnResistance() {
    // Power 60 mΩ·Ah, energy 140, hard 30 to 260, ±30 %: data sheets, common practice, no published
    // source.
    var ratios = known(CYLINDERS).stream()
        .map(pack -> product(pack) / (pack.chemistry() == Chemistry.LI_ION_POWER ? 60 : 140))
        .toList();

    assertThat(known(CYLINDERS))
        .allSatisfy(pack -> assertThat(product(pack)).isBetween(30.0, 260.0));
    assertThat(Bands.withinTwo(ratios, 0.30)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.median(ratios)).isBetween(0.8, 1.2);
  }

  @Test
  void labelsPromiseMoreThanResistanceAllows() {
    // Honest rate .30 V / (R·C); labels 2 to 5 times that, ±35 %, hard .5 to 8 times: common
    // practice,
    // no published source.
    var ratios = known(POUCHES).stream()
        .map(pack -> Objects.requireNonNull(pack.labelRating()) * product(pack) / 300)
        .toList();

    assertThat(ratios).allSatisfy(ratio -> assertThat(ratio).isBetween(0.5, 8.0));
    assertThat(Bands.inside(ratios, 1.4, 7)).isGreaterThanOrEqualTo(0.9);
    assertThat(Bands.median(ratios)).isBetween(2.0, 5.0);
  }

  @Test
  void cylindricalPacksStateTheCurrentOfTheirCells() {
    // 8 to 45 A a cell: data sheets, common practice, no published source.
    assertThat(CYLINDERS)
        .allSatisfy(pack -> assertThat(
                Objects.requireNonNull(pack.continuousAmps()) / pack.cellsInParallel())
            .isBetween(8.0, 45.0));
  }

  @Test
  void pouchesAreAsDenseAsPouches() {
    // 2.2 g/cm³, ±7 %, hard 1.7 to 2.7: common practice, no published source.
    var densities = POUCHES.stream()
        .map(pack -> 1000
            * (gramsWithLeads(pack) - leadGrams(pack))
            / (pack.lengthMillimetres() * pack.widthMillimetres() * pack.heightMillimetres()))
        .toList();

    assertThat(densities).allSatisfy(density -> assertThat(density).isBetween(1.7, 2.7));
    assertThat(Bands.withinTwo(densities.stream().map(density -> density / 2.2).toList(), 0.07))
        .isGreaterThanOrEqualTo(0.9);
  }

  @Test
  void sidesAreListedLongestFirst() {
    assertThat(PACKS).allSatisfy(pack -> {
      assertThat(pack.lengthMillimetres()).isGreaterThanOrEqualTo(pack.widthMillimetres());
      assertThat(pack.widthMillimetres()).isGreaterThanOrEqualTo(pack.heightMillimetres());
    });
  }

  @Test
  void everyChemistryIsOnTheShelfAtEverySizeThatIsFlown() {
    // Pouches of one to six cells from .45 to 1.3 Ah; cylindrical packs of one to four cells, of
    // those of 35 mm (power cells only), 65 mm and 70 mm: common practice, no published source.
    for (var cells = 1; cells <= 6; cells++) {
      for (var chemistry : List.of(Chemistry.LIPO, Chemistry.LIHV)) {
        var small = cells == 1 ? 0.3 : 0.45;
        assertThat(sizes(chemistry, cells))
            .as(chemistry + " " + cells)
            .anyMatch(ampHours -> ampHours >= small && ampHours <= 0.72)
            .anyMatch(ampHours -> ampHours >= 0.85);
      }
    }
    for (var cells = 1; cells <= 4; cells++) {
      assertThat(sizes(Chemistry.LI_ION_POWER, cells))
          .anyMatch(ampHours -> ampHours >= 2.5 && ampHours <= 3)
          .anyMatch(ampHours -> ampHours >= 4);
      assertThat(sizes(Chemistry.LI_ION_ENERGY, cells))
          .anyMatch(ampHours -> ampHours >= 3.4 && ampHours <= 3.6)
          .anyMatch(ampHours -> ampHours >= 4.8);
    }
    for (var cells = 1; cells <= 3; cells++) {
      assertThat(sizes(Chemistry.LI_ION_POWER, cells)).anyMatch(ampHours -> ampHours <= 1.4);
    }
    assertThat(PACKS).extracting(Battery::cellsInSeries).allMatch(cells -> cells <= 6);
  }

  private static List<Double> sizes(Chemistry chemistry, int cells) {
    return PACKS.stream()
        .filter(pack -> pack.chemistry() == chemistry && pack.cellsInSeries() == cells)
        .map(BatteryLawsTest::ampHours)
        .toList();
  }

  @Test
  void aboutHalfOfTheMassesAreWithoutLeads() {
    // Common practice, no published source.
    var without = PACKS.stream().filter(pack -> !pack.massIncludesLeads()).count();
    assertThat((double) without / PACKS.size()).isBetween(0.25, 0.6);
  }
}
