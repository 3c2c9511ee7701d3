package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.board;
import static pappus.part.Parts.build;
import static pappus.part.Parts.camera;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.Role;
import pappus.scenario.Scenarios;

final class VideoFamilyRuleTest {
  private final VideoFamilyRule rule = new VideoFamilyRule();

  @Test
  void fitsWithinOneFamily() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot())).says(rule, build()))
        .isEqualTo(FITS);
  }

  @Test
  void clashesWhenCameraAndTransmitterDiffer() {
    assertThat(Bench.plain().says(rule, build(with(camera(), "family", "digital-a"))))
        .isEqualTo("clashes: The camera is digital-a, but the transmitter is analogue.");
  }

  @Test
  void clashesWhenTheGogglesDiffer() {
    var build =
        build(with(camera(), "family", "digital-a"), with(transmitter(), "family", "digital-a"));

    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot())).says(rule, build))
        .isEqualTo("clashes: The goggles are analogue, but the transmitter is digital-a.");
    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot()))
            .says(rule, build.without(Role.TRANSMITTER)))
        .isEqualTo("clashes: The goggles are analogue, but the camera is digital-a.");
  }

  @Test
  void notesABoardThatWritesNothing() {
    assertThat(Bench.plain().says(rule, build(with(board(), "overlay", false))))
        .isEqualTo(
            "fits, but: Board board has no OSD for analogue video: no voltage in the goggles.");
  }
}
