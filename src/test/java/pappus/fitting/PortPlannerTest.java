package pappus.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.gps;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.compatibility.Bench;
import pappus.part.Build;
import pappus.part.Role;
import pappus.part.SerialNeed;

final class PortPlannerTest {
  private static PortPlan plan(Build build) {
    return Bench.plain().fit(build).portPlan().orElseThrow();
  }

  @Test
  void givesFullPortsFirstAndThenHalves() {
    var plan = plan(build(gps()));

    assertThat(plan.assigned())
        .containsExactly(
            new PortPlan.Assigned(Role.RECEIVER, 1, false),
            new PortPlan.Assigned(Role.GPS, 2, false),
            new PortPlan.Assigned(Role.TRANSMITTER, 3, true));
    assertThat(plan.free()).isZero();
  }

  @Test
  void givesADigitalTransmitterAFullPort() {
    assertThat(plan(build(with(transmitter(), "serial", SerialNeed.FULL))).assigned())
        .contains(new PortPlan.Assigned(Role.TRANSMITTER, 2, false));
  }

  @Test
  void leavesTheControlWithoutAPortBeforeTheReceiver() {
    var plan = plan(build(with(board(), "serialPorts", 1)));

    assertThat(plan.assigned()).containsExactly(new PortPlan.Assigned(Role.RECEIVER, 1, false));
  }

  @Test
  void countsTheFreePorts() {
    assertThat(plan(build()).free()).isEqualTo(1);
  }

  @Test
  void knowsNoPlanWithoutABoard() {
    assertThat(Bench.plain().fit(build().without(Role.BOARD)).portPlan()).isEmpty();
  }
}
