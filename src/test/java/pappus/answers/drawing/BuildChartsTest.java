package pappus.answers.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.build;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessor;
import pappus.compatibility.Rules;
import pappus.document.Chart;
import pappus.document.Shell;
import pappus.doubt.Doubts;
import pappus.fitting.Stock;
import pappus.part.Parts;
import pappus.scenario.Scenarios;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What charts draw is what the assessment says, and what their tables say. */
final class BuildChartsTest {
  private static final Assessor ASSESSOR =
      new Assessor(Scenarios.plain(), Stock.of(Parts.hardware()), Rules.ALL);

  private static BuildCharts charts() {
    var assessment = ASSESSOR.assess(build());
    return new BuildCharts(
        Scenarios.plain(),
        assessment,
        ASSESSOR.curves(assessment).orElseThrow(),
        new Doubts(ASSESSOR).band(assessment),
        "c1-");
  }

  private static Chart chart(String id) {
    return Stream.concat(charts().bars().stream(), charts().inTheAir().stream())
        .filter(chart -> chart.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static JsonNode drawn(String id) {
    return JsonMapper.shared().readTree(Shell.embedded(chart(id).content()));
  }

  private static double sum(JsonNode bars) {
    var sum = 0.0;
    for (var bar : bars) {
      sum += bar.path("value").asDouble();
    }
    return sum;
  }

  @Test
  void sharesOfMassAndPowerAreTheWhole() {
    var assessment = ASSESSOR.assess(build());

    assertThat(sum(drawn("c1-mass").path("bars")))
        .isCloseTo(assessment.mass().grams(), within(0.01));
    assertThat(drawn("c1-mass").path("doubt").asDouble())
        .isCloseTo(assessment.mass().doubtGrams(), within(0.001));
    assertThat(sum(drawn("c1-power").path("bars")))
        .isCloseTo(assessment.flight().orElseThrow().split().totalW(), within(0.01));
  }

  @Test
  void marksTheMomentsOnWhichThePilotActs() {
    var marks = drawn("c1-volts").path("marks");
    var endurance = ASSESSOR.assess(build()).flight().orElseThrow().endurance();

    assertThat(marks.path(0).path("label").asString()).startsWith("turn back, ");
    assertThat(marks.path(1).path("label").asString()).startsWith("land, ");
    assertThat(marks.path(0).path("at").asDouble())
        .isLessThan(marks.path(1).path("at").asDouble());
    assertThat(marks.path(1).path("at").asDouble())
        .isCloseTo(
            new Doubts(ASSESSOR).band(ASSESSOR.assess(build())).planWith()
                * endurance.seconds()
                / 60,
            within(0.01));
  }

  /** Thrust at the throttle of the hover carries the weight; a settled pack against one that sags for a second. */
  @Test
  void hoverLiesOnTheCurveOfThrust() {
    var assessment = ASSESSOR.assess(build());
    var hover = 100 * assessment.flight().orElseThrow().duty();
    var points = drawn("c1-throttle").path("series").path(0).path("points");
    var thrust = 0.0;
    for (var i = 1; i < points.size(); i++) {
      var low = points.path(i - 1);
      var high = points.path(i);
      if (low.path(0).asDouble() <= hover && high.path(0).asDouble() >= hover) {
        var way = (hover - low.path(0).asDouble())
            / (high.path(0).asDouble() - low.path(0).asDouble());
        thrust = low.path(1).asDouble()
            + way * (high.path(1).asDouble() - low.path(1).asDouble());
      }
    }
    assertThat(thrust / assessment.mass().grams()).isCloseTo(1, within(0.05));
  }

  @Test
  void everyChartHasATableOfAsManyPoints() {
    for (var id : List.of("c1-volts", "c1-airspeed")) {
      assertThat(chart(id).table().rows())
          .hasSize(drawn(id).path("series").path(0).path("points").size());
    }
    assertThat(chart("c1-mass").table().rows())
        .hasSize(ASSESSOR.assess(build()).mass().lines().size() + 1);
  }
}
