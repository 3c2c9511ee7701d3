package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Desk;
import pappus.part.Lump;
import pappus.part.Polarisation;
import pappus.part.Role;
import pappus.scenario.Flight;
import pappus.scenario.Leg;
import pappus.scenario.Pilot;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

class LinkWordsTest {
  private static final Scenario CRUISE =
      with(Scenarios.plain(), "flight", with(Flight.HOVERING, "style", Flight.Style.CRUISE));

  private static Assessment assess(Scenario scenario) {
    return Desk.assess(build(), scenario);
  }

  @Test
  void distancesHaveTwoDigitsAndWhatIsReliedOnIsRoundedDown() {
    assertThat(LinkWords.about(163.4)).isEqualTo("160 m");
    assertThat(LinkWords.about(996)).isEqualTo("1.0 km");
    assertThat(LinkWords.about(81.8)).isEqualTo("82 m");
    assertThat(LinkWords.atMost(81.8)).isEqualTo("81 m");
    assertThat(LinkWords.atMost(1_994)).isEqualTo("1.9 km");
    assertThat(LinkWords.atMost(12_900)).isEqualTo("12 km");
    assertThat(LinkWords.about(0.4)).isEqualTo("0 m");
  }

  @Test
  void neverTellsOneNumberAlone() {
    assertThat(LinkWords.of(assess(CRUISE)))
        .containsExactly(
            "Video reaches 81 m to 330 m, likeliest 160 m, at 25 mW, and behind the body or in a null 52 m; control reaches 2.1 km to 6.3 km, likeliest 4.4 km, at 100 mW, and behind the body or in a null 1.4 km.",
            "In line of sight; assumed: -85 dBm at the goggles, 1.5 dBi on the ground, 1.5 m over the ground, a flight 30 m up, 100 mW from the radio, 2 dBi at the radio. Permitted power, band and range are local law.");
  }

  @Test
  void whatIsSaidIsNotAssumed() {
    var said = new Pilot(null, null, Polarisation.RIGHT, 8.0, 2.0, -85.0, 100.0, 2.0);
    var high = with(CRUISE.flight(), "heightMetres", 80.0);

    assertThat(LinkWords.of(assess(with(with(CRUISE, "pilot", said), "flight", high)))
            .get(1))
        .isEqualTo("In line of sight, 80 m up. Permitted power, band and range are local law.");
  }

  @Test
  void toTurnRoundIsTheLesserOfPackAndLink() {
    var near = TurnRound.of(assess(CRUISE), 0.5).orElseThrow();
    var far = new Pilot(null, null, null, 20.0, 50.0, -120.0, 5000.0, 20.0);
    var pack = TurnRound.of(assess(with(CRUISE, "pilot", far)), 0.5).orElseThrow();

    assertThat(near.by()).isEqualTo("video");
    assertThat(near.metres())
        .isEqualTo(assess(CRUISE).fitting().reach().video().orElseThrow().lowMetres());
    assertThat(pack.by()).isEqualTo("pack");
    assertThat(pack.metres()).isEqualTo(near.packMetres());
    assertThat(pack.inWords())
        .endsWith(" km, half of those to plan with, which is before a link ends");
    assertThat(TurnRound.of(assess(Scenarios.plain()), 0.5)).isEqualTo(Optional.empty());
  }

  @Test
  void saysWhereTheWayOutOfAStayIsFartherThanALinkIsSureToReach() {
    var staying = Scenarios.legs(
        new Leg(900.0, null, null, null, null, null, null),
        new Leg(null, null, null, null, null, true, true));

    assertThat(LinkWords.of(assess(with(Scenarios.plain(), "flight", staying))))
        .contains("The legs lead 900 m away at most, farther than video is sure to reach.");
  }

  @Test
  void aLumpThatSendsOrHearsIsToldAsNotKnown() {
    var video = lumped(CRUISE, Role.TRANSMITTER, Role.VIDEO_ANTENNA);
    var control = lumped(CRUISE, Role.RECEIVER, Role.RADIO_ANTENNA);
    var both =
        lumped(CRUISE, Role.TRANSMITTER, Role.VIDEO_ANTENNA, Role.RECEIVER, Role.RADIO_ANTENNA);

    assertThat(LinkWords.briefly(video))
        .startsWith("Control reaches ")
        .endsWith(". How far video reaches is not known: a lump sends it.");
    assertThat(LinkWords.briefly(control))
        .startsWith("Video reaches ")
        .endsWith(". How far control reaches is not known: a lump hears it.");
    assertThat(LinkWords.of(both))
        .containsExactly(
            "How far video reaches is not known: a lump sends it, and how far control reaches is not known: a lump hears it.");
    assertThat(TurnRound.of(both, 0.5).orElseThrow().inWords())
        .endsWith(
            " km, half of those to plan with, if the link of which nothing is known reaches as far");
    assertThat(LinkWords.video(video)).isEmpty();
    assertThat(LinkWords.video(control)).contains("81 m to 330 m, likeliest 160 m");
  }

  private static Assessment lumped(Scenario scenario, Role... roles) {
    var build = build();
    for (var role : roles) {
      build = build.without(role);
    }
    var lump = new Lump("wired", 9, 1, null, List.of(roles));
    return Desk.assess(build, with(scenario, "lump", lump));
  }
}
