package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.Chemistry;
import pappus.scenario.Workday;

final class WorkloadTest {
  /** 5 × 37 min and 4 × 3 min between are 197 min: a sixth flight is needed for 200. */
  @Test
  void countsFlightsThatFillTheDay() {
    assertThat(Workload.of(new Workday(197, null), battery(), 37 * 60).flights())
        .isEqualTo(5);
    assertThat(Workload.of(new Workday(198, null), battery(), 37 * 60).flights())
        .isEqualTo(6);
    assertThat(Workload.of(new Workday(10, null), battery(), 37 * 60).flights()).isEqualTo(1);
  }

  /** A pack that lands is ready after 60 min; a flight with its swap takes 40. */
  @Test
  void countsPacksThatAreChargedInTurn() {
    var load = Workload.of(new Workday(400, null), battery(), 37 * 60);

    assertThat(load.chargeMinutes()).isEqualTo(60);
    assertThat(load.packsInTurn()).isEqualTo(3);
    assertThat(load.flights()).isEqualTo(11);
    assertThat(load.chargeHours()).isEqualTo(11);
    assertThat(load.flightsWith(2)).isEqualTo(2);
  }

  @Test
  void chargesByTheRecordOrAsIsUsual() {
    var energy = with(battery(), "chemistry", Chemistry.LI_ION_ENERGY);

    assertThat(Workload.of(new Workday(60, 5.0), energy, 600).chargeMinutes()).isEqualTo(120);
    assertThat(Workload.of(new Workday(60, 5.0), with(battery(), "chargeRate", 3.0), 600)
            .chargeMinutes())
        .isEqualTo(20);
  }
}
