package pappus.links;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.build;
import static pappus.part.Parts.radioAntenna;
import static pappus.part.Parts.receiver;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.videoAntenna;
import static pappus.part.Parts.with;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.links.Link.Way;
import pappus.part.Antenna;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.Build;
import pappus.part.Lump;
import pappus.part.OutputPower;
import pappus.part.Polarisation;
import pappus.part.Role;
import pappus.part.Sensitivity;
import pappus.part.Transmitter;
import pappus.physics.link.Mismatch;
import pappus.scenario.Flight;
import pappus.scenario.Pilot;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** Figures are those of the budgets, which are held to what was worked out by hand. */
class LinksTest {
  private static final Pilot RIGHT =
      new Pilot(null, null, Polarisation.RIGHT, 1.5, 1.5, -85.0, 100.0, 2.0);
  private static final Antenna LINEAR = with(videoAntenna(), "polarisation", Polarisation.LINEAR);

  private static Scenario asking(@Nullable Double metres, @Nullable Double milliwatts) {
    var asking = with(with(Scenarios.plain(), "pilot", RIGHT), "reachMetres", metres);
    return with(asking, "transmitterMilliwatts", milliwatts);
  }

  private static Link video(Scenario scenario, Build build) {
    return new Links(scenario).of(build).video().orElseThrow();
  }

  @Test
  void aPictureOfTheLowestPowerReachesAsWorkedByHand() {
    var video = video(asking(null, null), build());

    assertThat(video.way()).isEqualTo(Way.VIDEO);
    assertThat(video.milliwatts()).isEqualTo(25);
    assertThat(video.metres()).isCloseTo(163, within(0.5));
    assertThat(video.lowMetres()).isCloseTo(82, within(0.5));
    assertThat(video.highMetres()).isCloseTo(326, within(0.5));
    assertThat(video.shadowedMetres()).isCloseTo(51.6, within(0.5));
    assertThat(video.assumed()).containsExactly("a flight 30 m up");
  }

  @Test
  void aLinearAntennaAgainstACircularOneOnTheGroundLosesThree() {
    var linear = build().with(Role.VIDEO_ANTENNA, LINEAR);
    var left =
        build().with(Role.VIDEO_ANTENNA, with(videoAntenna(), "polarisation", Polarisation.LEFT));

    assertThat(video(asking(null, null), linear).metres()).isCloseTo(115.6, within(0.5));
    assertThat(video(asking(null, null), left).metres()).isCloseTo(16.3, within(0.1));
    assertThat(Links.mismatch(Polarisation.LINEAR, null)).isEqualTo(Mismatch.NONE);
    assertThat(Links.mismatch(Polarisation.LINEAR, Polarisation.LINEAR)).isEqualTo(Mismatch.NONE);
    assertThat(Links.mismatch(Polarisation.LEFT, Polarisation.RIGHT))
        .isEqualTo(Mismatch.OPPOSITE_HANDS);
    assertThat(Links.mismatch(Polarisation.RIGHT, Polarisation.LINEAR))
        .isEqualTo(Mismatch.LINEAR_TO_CIRCULAR);
  }

  @Test
  void controlReachesAsWorkedByHandTwentyMetresUp() {
    var scenario = with(asking(null, null), "flight", with(Flight.HOVERING, "heightMetres", 20.0));
    var reach = new Links(scenario).of(build());

    var control = reach.control().orElseThrow();
    assertThat(control.metres()).isCloseTo(3660, within(1.0));
    assertThat(control.assumed()).isEmpty();
    assertThat(reach.shorter()).isEqualTo(reach.video());
    assertThat(reach.lesser()).isEqualTo(reach.video());
  }

  /** A receiver that hears badly is the lesser link. */
  @Test
  void theLesserLinkMayBeControl() {
    var deaf = with(receiver(), "sensitivity", new Sensitivity(-70, 500));
    var reach = new Links(asking(null, null)).of(build().with(Role.RECEIVER, deaf));

    assertThat(reach.shorter()).isEqualTo(reach.control());
    assertThat(reach.lesser()).isEqualTo(reach.control());
  }

  @Test
  void whereAReachIsAskedForTheLowestSettingThatReachesIsTaken() {
    // Four times the power is twice the reach: 163 m with 25 mW, 653 m with 400 mW.
    assertThat(video(asking(160.0, null), build()).milliwatts()).isEqualTo(25);
    assertThat(video(asking(164.0, null), build()).milliwatts()).isEqualTo(400);
    assertThat(video(asking(164.0, null), build()).metres()).isCloseTo(653, within(1.0));
    assertThat(video(asking(9000.0, null), build()).milliwatts()).isEqualTo(400);
    assertThat(video(asking(164.0, 25.0), build()).milliwatts()).isEqualTo(25);
    assertThat(video(asking(null, null), build()).milliwatts()).isEqualTo(25);
  }

  /** A setting that draws less and reaches farther, as some sheets have it, is taken before a lower one. */
  @Test
  void ofSettingsThatReachTheThriftiestIsTaken() {
    var odd = with(
        transmitter(),
        "powers",
        List.of(new OutputPower(25, 3, null), new OutputPower(100, 2, null)));

    assertThat(video(asking(50.0, null), build().with(Role.TRANSMITTER, odd)).milliwatts())
        .isEqualTo(100);
  }

  @Test
  void powerMeasuredAtTheAntennaCountsForWhatTheSettingIsCalled() {
    var weak = with(
        transmitter(),
        "powers",
        List.of(new OutputPower(25, 1.5, 6.25), new OutputPower(400, 4, null)));

    assertThat(video(asking(null, null), build().with(Role.TRANSMITTER, weak)).metres())
        .isCloseTo(81.7, within(0.5));
  }

  /** Whichever antenna is added, it draws no less than was told before. */
  @Test
  void beforeTheAntennaIsThereTheBestOfThoseThereAreCounts() {
    var begun = build().without(Role.VIDEO_ANTENNA);
    var poor = new Links(asking(140.0, null), List.of(LINEAR, radioAntenna()));
    var good = new Links(asking(140.0, null), List.of(LINEAR, videoAntenna(), radioAntenna()));

    assertThat(poor.setting(transmitter(), begun).milliwatts()).isEqualTo(400);
    assertThat(good.setting(transmitter(), begun).milliwatts()).isEqualTo(25);
    assertThat(
            good.setting(transmitter(), begun.with(Role.VIDEO_ANTENNA, LINEAR)).milliwatts())
        .isEqualTo(400);
    assertThat(good.mostWatts(transmitter())).isEqualTo(4);
    assertThat(good.of(begun).video()).isEmpty();
  }

  @Test
  void aBuildOnlyBegunIsGivenUpWhereNoAntennaHelps() {
    var begun = Build.empty().with(Role.TRANSMITTER, transmitter());
    var all = List.of(LINEAR, videoAntenna(), radioAntenna());

    assertThat(new Links(asking(650.0, null), all).mayReach(begun)).isTrue();
    assertThat(new Links(asking(660.0, null), all).mayReach(begun)).isFalse();
    assertThat(new Links(asking(650.0, 25.0), all).mayReach(begun)).isFalse();
    assertThat(new Links(asking(null, 25.0), all).mayReach(begun)).isTrue();
    assertThat(new Links(asking(5000.0, null), all)
            .mayReach(Build.empty().with(Role.RECEIVER, receiver())))
        .isFalse();
    assertThat(new Links(asking(660.0, null)).mayReach(begun)).isTrue();
  }

  @Test
  void anAntennaInTheBoxIsAsItsRecordSaysOrAsUsual() {
    var box = with(transmitter(), "antennaIncluded", true);
    var stated = boxed(box, 1.5, Polarisation.RIGHT);
    var open = build().without(Role.VIDEO_ANTENNA);

    assertThat(video(asking(null, null), open.with(Role.TRANSMITTER, stated)).metres())
        .isCloseTo(163, within(0.5));
    var usual = video(asking(null, null), open.with(Role.TRANSMITTER, box));
    assertThat(usual.metres()).isCloseTo(109, within(0.5));
    assertThat(usual.assumed())
        .containsExactly("a linear antenna aboard", "1 dBi aboard", "a flight 30 m up");
  }

  private static Transmitter boxed(Transmitter sender, double gain, Polarisation polarisation) {
    return with(
        sender,
        "antenna",
        new AntennaPort(AntennaConnector.U_FL, Band.GHZ_5_8, 1, gain, polarisation));
  }

  @Test
  void whatTheScenarioDoesNotSayIsAssumedAndTold() {
    var reach = new Links(Scenarios.plain()).of(build());

    assertThat(reach.video().orElseThrow().assumed())
        .containsExactly(
            "-85 dBm at the goggles",
            "1.5 dBi on the ground",
            "1.5 m over the ground",
            "a flight 30 m up");
    assertThat(reach.control().orElseThrow().assumed())
        .containsExactly(
            "100 mW from the radio",
            "2 dBi at the radio",
            "1.5 m over the ground",
            "a flight 30 m up");
  }

  @Test
  void ofALumpThatSendsNothingIsKnown() {
    var lump = new Lump("wired", 9, 1, null, List.of(Role.TRANSMITTER, Role.VIDEO_ANTENNA));
    var lumped = build().without(Role.TRANSMITTER).without(Role.VIDEO_ANTENNA);
    var reach = new Links(with(asking(500.0, null), "lump", lump)).of(lumped);

    assertThat(reach.video()).isEmpty();
    assertThat(reach.control()).isPresent();
  }
}
