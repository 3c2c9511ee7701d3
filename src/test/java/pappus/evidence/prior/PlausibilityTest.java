package pappus.evidence.prior;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.catalog.Shipped;
import pappus.part.Battery;
import pappus.part.Kind;
import pappus.part.Known;
import pappus.part.Lead;
import pappus.part.Mass;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Propeller;
import pappus.part.Transmitter;

/** Shipped parts are ordinary but for a few, and a slip in a figure is told with its bounds. */
final class PlausibilityTest {
  private static final List<Part> SHIPPED = List.copyOf(Shipped.CATALOG.parts());

  private static <P extends Part> P shipped(String id, Class<P> kind) {
    return SHIPPED.stream()
        .filter(part -> part.id().equals(id))
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void nineteenOfTwentyShippedPartsAreOrdinary() {
    var remarked =
        SHIPPED.stream().filter(part -> !Plausibility.remarks(part).isEmpty()).count();

    assertThat((double) remarked / SHIPPED.size()).isLessThan(0.05);
  }

  @Test
  void aPropellerThatIsTooGoodIsPointedOut() {
    // Above 0.70 no static test of such propellers goes: bench of P. Cao and J. Strawson, 2018.
    assertThat(Plausibility.remarks(shipped("frond-4.5x3.2x3", Propeller.class)))
        .anyMatch(remark -> remark.startsWith("figure of merit at "));
  }

  @Test
  void aTransmitterThatDrawsTooLittleIsPointedOut() {
    assertThat(Plausibility.remarks(shipped("rushlight-600", Transmitter.class)))
        .anyMatch(remark -> remark.contains("less than 3.3 times what it radiates"));
  }

  @Test
  void aMotorTwiceAsHeavyAsItsStatorIsPointedOut() {
    var motor = shipped("achene-1103-10000", Motor.class);

    assertThat(Plausibility.remarks(motor)).isEmpty();
    assertThat(Plausibility.remarks(Parts.with(motor, "mass", Mass.of(8, Known.MEASURED))))
        .anyMatch(remark -> remark.startsWith("mass over the stator's volume is ")
            && remark.contains("outside 7.5 to 14"));
  }

  @Test
  void aResistanceOfAQuarterIsPointedOut() {
    var motor = shipped("achene-1103-10000", Motor.class);

    assertThat(Plausibility.remarks(
            Parts.with(motor, "resistanceMilliohms", motor.resistanceMilliohms() / 4)))
        .anyMatch(remark -> remark.startsWith("motor constant over the stator's measure is "));
  }

  @Test
  void aLabelFarAboveTheHonestRatingIsPointedOut() {
    var pack = SHIPPED.stream()
        .filter(Battery.class::isInstance)
        .map(Battery.class::cast)
        .filter(battery ->
            battery.labelRating() != null && battery.assumed("resistance").isEmpty())
        .filter(battery -> !battery.chemistry().isLithiumIon())
        .filter(battery -> Plausibility.remarks(battery).isEmpty())
        .findFirst()
        .orElseThrow();

    assertThat(Plausibility.remarks(Parts.with(pack, "labelRating", 300.0)))
        .anyMatch(remark -> remark.startsWith("label rating over the honest one is "));
  }

  /** Every remark on the shipped catalogue is on a part that was made a trap or a rare bargain on purpose. */
  @Test
  void onlyDeliberateTrapsAreRemarkedOn() {
    assertThat(SHIPPED.stream().filter(part -> !Plausibility.remarks(part).isEmpty()))
        .extracting(Part::id)
        .containsExactlyInAnyOrder(
            "bittern-fed",
            "floodmark-4s-850",
            "frond-4.5x3.2x3",
            "lull-1404-4500",
            "marram-2004-1750",
            "marram-2004-2300",
            "marram-2004-2900",
            "rushlight-600",
            "tidewell-4s-3500");
  }

  /** A slip of the point in the mass, or grams for pieces of ten, is told of every kind of part. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void aMassOfTenTimesIsPointedOut(Kind kind) {
    var ordinary = SHIPPED.stream()
        .filter(part -> part.kind() == kind && Plausibility.remarks(part).isEmpty())
        .toList();

    assertThat(ordinary).isNotEmpty().allSatisfy(part -> {
      var heavy = Mass.of(part.mass().grams() * 10, Known.MEASURED);
      // A record refuses packs that hold next to nothing for their mass.
      if (kind != Kind.BATTERY) {
        assertThat(Plausibility.remarks((Part) Parts.with((Record) part, "mass", heavy)))
            .as(part.id())
            .anyMatch(remark -> remark.contains("mass") || remark.contains("density"));
      }
    });
  }

  @Test
  void aLeadThatResistsLikeAThinnerOneIsPointedOut() {
    var lead = shipped("isthmus-30-to-ph", Lead.class);

    // 80 mm of 22 AWG, 53 mΩ/m by ASTM B258, and two plugs.
    assertThat(Plausibility.remarks(Parts.with(lead, "milliohms", 10.0))).isEmpty();
    assertThat(Plausibility.remarks(Parts.with(lead, "milliohms", 60.0)))
        .singleElement()
        .asString()
        .startsWith("resistance both ways is 60 mΩ, but no such part is known outside ");
  }

  @Test
  void thrustThatFallsWithSpeedIsPointedOut() {
    var propeller = shipped("bract-5x4x3", Propeller.class);
    var test = Objects.requireNonNull(propeller.test());
    var rows = new ArrayList<>(test.rows());
    var first = rows.get(0);
    var second = rows.get(1);
    var ratio = propeller.rpm(first) / propeller.rpm(second);
    rows.set(
        1,
        new Propeller.Row(
            second.rpm(),
            first.thrustCoefficient() * ratio * ratio * 0.99,
            second.powerCoefficient()));
    var fallen = Parts.with(
        propeller,
        "test",
        new Propeller.StaticTest(
            rows, test.airDensityKgPerCubicMetre(), test.airTemperatureCelsius()));

    assertThat(Plausibility.remarks(propeller)).isEmpty();
    assertThat(Plausibility.remarks(fallen))
        .anyMatch(remark -> remark.startsWith("thrust falls from ")
            && remark.endsWith(" rpm, though it turns faster: maybe a slip."));
  }

  /** Rounded alike, a figure and its bound would read as if nothing were wrong. */
  @Test
  void aFigureJustOutsideIsShownAsOutside() {
    assertThat(new Bounds(1, 2, 0, 10).remark("figure", 2.0001, "").orElseThrow())
        .isEqualTo("figure is 2.0001, but 1 to 2 is usual.");
    assertThat(new Bounds(1, 2, 0, 10).remark("figure", 2.51234, "").orElseThrow())
        .isEqualTo("figure is 2.51, but 1 to 2 is usual.");
  }
}
