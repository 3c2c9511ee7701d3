package pappus.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.camera;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.payloadCameraWithCell;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.compatibility.Bench;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Role;
import pappus.scenario.Scenarios;

final class PowerPlannerTest {
  private static PowerPlan plan(Build build) {
    return Bench.plain().fit(build).powerPlan().orElseThrow();
  }

  private static Board rails(Board.Regulator... rails) {
    return with(board(), "regulators", List.of(rails));
  }

  @Test
  void feedsEachConsumerFromTheHighestRailItTakes() {
    assertThat(plan(build()).feeds())
        .containsExactly(
            new PowerPlan.Feed(Role.TRANSMITTER, 1.5, Optional.of(9.0)),
            new PowerPlan.Feed(Role.CAMERA, 0.8, Optional.of(9.0)),
            new PowerPlan.Feed(Role.RECEIVER, 0.5, Optional.of(5.0)));
  }

  @Test
  void feedsFromThePackWhatNoRailSuits() {
    var plan = plan(build(rails(new Board.Regulator(5, 2, null))));

    assertThat(plan.fromPack(Role.TRANSMITTER)).isTrue();
    assertThat(plan.fromPack(Role.CAMERA)).isFalse();
  }

  /** The 9 V rail would carry the transmitter or the camera, not both; the pack takes one. */
  @Test
  void movesAConsumerToThePackWhereARailIsFull() {
    var plan =
        plan(build(rails(new Board.Regulator(5, 0.13, null), new Board.Regulator(9, 0.2, null))));

    assertThat(plan.fromPack(Role.TRANSMITTER)).isFalse();
    assertThat(plan.fromPack(Role.CAMERA)).isTrue();
  }

  @Test
  void leavesOutARailThatDropsOutAtTheFloor() {
    var few = with(with(battery(), "cellsInSeries", 3), "capacityMilliampHours", 1100);

    assertThat(
            plan(build(few, rails(new Board.Regulator(5, 2, null), new Board.Regulator(9, 2, 9.5))))
                .fromPack(Role.TRANSMITTER))
        .isTrue();
  }

  @Test
  void drawsAsMuchAsThePowerAskedFor() {
    var asking = Bench.with(with(Scenarios.plain(), "transmitterMilliwatts", 100.0));

    assertThat(asking.fit(build()).powerPlan().orElseThrow().feeds())
        .contains(new PowerPlan.Feed(Role.TRANSMITTER, 4, Optional.of(9.0)));
  }

  @Test
  void leavesOutACameraItsTransmitterFeeds() {
    assertThat(plan(build(with(camera(), "input", null))).feeds())
        .extracting(PowerPlan.Feed::consumer)
        .containsExactly(Role.TRANSMITTER, Role.RECEIVER);
  }

  @Test
  void feedsAPayloadCameraThatHasNoCellOfItsOwn() {
    assertThat(plan(build(payloadCamera())).feeds())
        .contains(new PowerPlan.Feed(Role.PAYLOAD_CAMERA, 2, Optional.of(5.0)));
    assertThat(plan(build(payloadCameraWithCell())).feeds())
        .extracting(PowerPlan.Feed::consumer)
        .doesNotContain(Role.PAYLOAD_CAMERA);
  }

  @Test
  void knowsNoPlanWithoutABattery() {
    assertThat(Bench.plain().fit(build().without(Role.BATTERY)).powerPlan()).isEmpty();
  }
}
