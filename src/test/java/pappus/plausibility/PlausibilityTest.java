package pappus.plausibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.catalog.Battery;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.Known;
import pappus.catalog.Mass;
import pappus.catalog.Motor;
import pappus.catalog.Part;
import pappus.catalog.Parts;
import pappus.catalog.Propeller;
import pappus.catalog.Transmitter;

/** Shipped parts are ordinary but for a few, and a slip in a figure is told with its bounds. */
final class PlausibilityTest {
  private static final List<Part> SHIPPED =
      List.copyOf(CatalogReader.read(List.of(CatalogFolder.shipped())).catalog().parts());

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
        .filter(battery -> battery.labelRating() != null && battery.resistance() != null)
        .filter(battery -> !battery.chemistry().isLithiumIon())
        .filter(battery -> Plausibility.remarks(battery).isEmpty())
        .findFirst()
        .orElseThrow();

    assertThat(Plausibility.remarks(Parts.with(pack, "labelRating", 300.0)))
        .anyMatch(remark -> remark.startsWith("label rating over the honest one is "));
  }
}
