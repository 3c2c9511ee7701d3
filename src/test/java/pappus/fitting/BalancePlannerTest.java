package pappus.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.compatibility.Bench;
import pappus.part.Build;
import pappus.part.Role;
import pappus.scenario.Payload;
import pappus.scenario.Scenarios;

final class BalancePlannerTest {
  private static Placing place(Build build) {
    return Bench.plain().fit(build).placing().orElseThrow();
  }

  /** 5 g of camera at 60 mm against 100 g of pack. */
  @Test
  void movesThePackUntilTheCentreOfMassIsBetweenTheMotors() {
    var placing = place(build());

    assertThat(placing.packXMillimetres()).isCloseTo(-3, within(1e-9));
    assertThat(placing.centreOfMassXMillimetres()).isCloseTo(0, within(1e-9));
    assertThat(placing.overhangMillimetres()).isZero();
  }

  /** 60 g of payload at 200 mm ask for -123 mm; the bay ends at -50 mm, and 15 mm may stand over. */
  @Test
  void stopsWhereTheOverhangEnds() {
    var payload = new Payload("box", 60, 0, 200, null, null);
    var placing = Bench.with(with(Scenarios.plain(), "payload", payload))
        .fit(build())
        .placing()
        .orElseThrow();

    assertThat(placing.packXMillimetres()).isCloseTo(-35, within(1e-9));
    assertThat(placing.overhangMillimetres()).isCloseTo(15, within(1e-9));
    assertThat(placing.centreOfMassXMillimetres())
        .isCloseTo((5 * 60 + 60 * 200 - 100 * 35) / 274.1, within(1e-9));
  }

  /** 5 g of pilot's camera and 20 g of payload camera at 60 mm against 100 g of pack. */
  @Test
  void countsAPayloadCameraWhereThePilotsIs() {
    assertThat(place(build(payloadCamera())).packXMillimetres()).isCloseTo(-15, within(1e-9));
  }

  @Test
  void countsTheFramesOwnCentreOfMass() {
    assertThat(place(build(with(frame(), "centreOfMassXMillimetres", -10))).packXMillimetres())
        .isCloseTo(1, within(1e-9));
  }

  /** From the rear edge of the pack: 32 mm along and 50 mm across to a motor, less the radius. */
  @Test
  void measuresTheWayToTheNearestDisc() {
    assertThat(place(build()).discClearanceMillimetres().orElseThrow())
        .isCloseTo(Math.hypot(32, 50) - 50.8, within(1e-9));
    assertThat(place(build().without(Role.PROPELLER)).discClearanceMillimetres())
        .isEmpty();
  }

  @Test
  void findsNoPlaceForAPackTooLong() {
    assertThat(
            Bench.plain().fit(build(with(battery(), "lengthMillimetres", 131))).placing())
        .isEmpty();
    assertThat(
            Bench.plain().fit(build(with(battery(), "lengthMillimetres", 130))).placing())
        .isPresent();
  }
}
