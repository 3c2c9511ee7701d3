package pappus.answers.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Desk;
import pappus.scenario.Flight;
import pappus.scenario.Scenarios;

class RingsTest {
  private static Assessment flown(Flight.Style style) {
    var flight = with(Flight.HOVERING, "style", style);
    return Desk.assess(build(), with(Scenarios.plain(), "flight", flight));
  }

  @Test
  void ringsAreToScaleAndThePackIsDashed() {
    var cruise = flown(Flight.Style.CRUISE);
    var rings = Rings.of(cruise, 0.8).orElseThrow();
    var video = cruise.fitting().reach().video().orElseThrow();
    var control = cruise.fitting().reach().control().orElseThrow();

    assertThat(rings.bands()).extracting(Rings.Band::look).containsExactly("video", "control");
    assertThat(rings.lines())
        .extracting(Rings.Line::look)
        .containsExactly("video", "control", "pack");
    assertThat(rings.lines().get(0).radius() / rings.lines().get(1).radius())
        .isCloseTo(video.metres() / control.metres(), within(1e-9));
    assertThat(rings.bands().get(0).width() / rings.lines().get(0).radius())
        .isCloseTo((video.highMetres() - video.lowMetres()) / video.metres(), within(1e-9));
    assertThat(rings.lines()).allSatisfy(line -> assertThat(line.radius()).isBetween(0.0, 100.0));
    assertThat(rings.ticks()).hasSizeBetween(3, 8);
    assertThat(rings.ticks().get(0).text()).endsWith("km");
    assertThat(rings.table().rows()).hasSize(3);
    assertThat(rings.reading()).contains("Turn round after ").endsWith(" are local law.");
    assertThat(rings.bands().get(1).path()).startsWith("M").contains(" 100 A");
  }

  @Test
  void aHoverHasLinksAndNothingToTurnRoundFor() {
    var rings = Rings.of(flown(Flight.Style.HOVER), 0.8).orElseThrow();

    assertThat(rings.lines()).extracting(Rings.Line::look).containsExactly("video", "control");
    assertThat(rings.table().rows()).hasSize(2);
  }
}
