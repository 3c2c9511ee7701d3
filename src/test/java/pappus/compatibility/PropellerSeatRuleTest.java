package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.Parts;
import pappus.part.Seat;

final class PropellerSeatRuleTest {
  private final PropellerSeatRule rule = new PropellerSeatRule();

  @Test
  void fitsOnTheSameSeat() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesOnAnotherSeat() {
    var propeller = with(propeller(), "seats", List.of(Seat.PRESS_1_5, Seat.PRESS_2));

    assertThat(Bench.plain().says(rule, build(propeller)))
        .isEqualTo(
            "clashes: Motor motor has two M2 screws round a 1.5 mm shaft, but propeller propeller takes press fit on a 1.5 mm shaft or press fit on a 2 mm shaft.");
  }

  @Test
  void takesAFiveMillimetreBoreWithRings() {
    var propeller = with(propeller(), "seats", List.of(Seat.NUT_M5));

    assertThat(Bench.with(Parts.reducingRings()).says(rule, build(propeller)))
        .isEqualTo("fits, but: Propeller propeller goes on motor motor with reducing rings.");
    assertThat(Bench.plain().says(rule, build(propeller)))
        .isEqualTo(
            "clashes: Motor motor has two M2 screws round a 1.5 mm shaft, but propeller propeller takes 5 mm shaft with an M5 nut.");
  }

  @Test
  void putsNoRingsOnAPressFitShaft() {
    var motor = with(motor(), "propellerSeat", Seat.PRESS_1_5);
    var propeller = with(propeller(), "seats", List.of(Seat.NUT_M5));

    assertThat(Bench.with(Parts.reducingRings()).says(rule, build(motor, propeller)))
        .isEqualTo(
            "clashes: Motor motor has press fit on a 1.5 mm shaft, but propeller propeller takes 5 mm shaft with an M5 nut.");
  }

  @Test
  void notesFrictionAloneOnManyCells() {
    var motor = with(motor(), "propellerSeat", Seat.PRESS_1_5);
    var propeller = with(with(propeller(), "seats", List.of(Seat.PRESS_1_5)), "diameterInches", 3);

    assertThat(Bench.plain().says(rule, build(motor, propeller)))
        .isEqualTo(
            "fits, but: Propeller propeller (3 inch, 4 cells) is held by friction alone, which lets go above 3 inch or 3 cells.");
    assertThat(
            Bench.plain().says(rule, build(motor, propeller, with(battery(), "cellsInSeries", 3))))
        .isEqualTo(FITS);
  }
}
