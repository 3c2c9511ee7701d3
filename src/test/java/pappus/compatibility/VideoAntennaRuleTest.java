package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.videoAntenna;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.AntennaConnector;
import pappus.part.Band;
import pappus.part.Polarisation;
import pappus.part.Role;
import pappus.scenario.Scenarios;

final class VideoAntennaRuleTest {
  private final VideoAntennaRule rule = new VideoAntennaRule();

  @Test
  void fitsTheSamePlugAndBand() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void doesNotKnowAPortWhosePlugIsNotStated() {
    var port = with(transmitter().antenna(), "connector", null);
    var sender = with(transmitter(), "antenna", port);

    assertThat(Bench.plain().says(rule, build().with(Role.TRANSMITTER, sender)))
        .isEqualTo("unknown: the plug of the port for antenna video-antenna");
  }

  @Test
  void clashesOnAnotherPlug() {
    var antenna = with(videoAntenna(), "connector", AntennaConnector.SMA);

    assertThat(Bench.plain().says(rule, build().with(Role.VIDEO_ANTENNA, antenna)))
        .isEqualTo("clashes: Antenna video-antenna has a SMA plug, but the port is u.FL.");
  }

  @Test
  void warnsOfPlugsThatLookAlike() {
    var antenna = with(videoAntenna(), "connector", AntennaConnector.SMALL_U_FL);

    assertThat(Bench.plain().says(rule, build().with(Role.VIDEO_ANTENNA, antenna)))
        .isEqualTo(
            "clashes: Antenna video-antenna has a small u.FL plug, but the port is u.FL: they look alike and do not mate.");
  }

  @Test
  void clashesOnAnotherBand() {
    var antenna = with(videoAntenna(), "band", Band.GHZ_2_4);

    assertThat(Bench.plain().says(rule, build().with(Role.VIDEO_ANTENNA, antenna)))
        .isEqualTo(
            "clashes: Antenna video-antenna is tuned to 2.4 GHz, but the port works at 5.8 GHz.");
  }

  @Test
  void notesOppositeHands() {
    var antenna = with(videoAntenna(), "polarisation", Polarisation.LEFT);

    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot()))
            .says(rule, build().with(Role.VIDEO_ANTENNA, antenna)))
        .isEqualTo(
            "fits, but: Antenna video-antenna is left-hand circular and the ground right-hand circular: the video link loses about 20 dB.");
  }

  @Test
  void notesALinearAntennaAgainstACircularGroundWithItsDecibels() {
    var antenna = with(videoAntenna(), "polarisation", Polarisation.LINEAR);

    assertThat(Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot()))
            .says(rule, build().with(Role.VIDEO_ANTENNA, antenna)))
        .isEqualTo(
            "fits, but: Antenna video-antenna is linear and the ground right-hand circular: the video link loses 3 dB, three tenths of its reach in free space.");
    assertThat(Bench.plain().says(rule, build().with(Role.VIDEO_ANTENNA, antenna)))
        .isEqualTo(FITS);
  }

  @Test
  void notesTheAntennaInTheBoxWhereItIsStated() {
    var port = with(transmitter().antenna(), "polarisation", Polarisation.LEFT);
    var box = with(transmitter(), "antennaIncluded", true);
    var open = build().without(Role.VIDEO_ANTENNA);
    var bench = Bench.with(with(Scenarios.plain(), "pilot", Scenarios.pilot()));

    assertThat(bench.says(rule, open.with(Role.TRANSMITTER, box))).isEqualTo(FITS);
    assertThat(bench.says(rule, open.with(Role.TRANSMITTER, with(box, "antenna", port))))
        .isEqualTo(
            "fits, but: Antenna of transmitter is left-hand circular and the ground right-hand circular: the video link loses about 20 dB.");
  }
}
