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
      sum += bar.path(1).asDouble();
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

    assertThat(marks.path(0).path(1).asString()).startsWith("turn back, ");
    assertThat(marks.path(1).path(1).asString()).startsWith("land, ");
    assertThat(marks.path(0).path(0).asDouble())
        .isLessThan(marks.path(1).path(0).asDouble());
    assertThat(marks.path(1).path(0).asDouble())
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
    var points = points("c1-throttle");
    var thrust = 0.0;
    for (var i = 1; i < points.size(); i++) {
      var low = points.get(i - 1);
      var high = points.get(i);
      if (low[0] <= hover && high[0] >= hover) {
        thrust = low[1] + (hover - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);
      }
    }
    assertThat(thrust / assessment.mass().grams()).isCloseTo(1, within(0.05));
  }

  /** Points of a curve: columns of the chart's table, as they are told. */
  private static List<double[]> points(String id) {
    var columns = drawn(id).path("curves").path(0).path("columns");
    var table = chart(id).table();
    return table.rows().stream()
        .map(table::shown)
        .map(row -> new double[] {
          Double.parseDouble(row.get(columns.path(0).asInt())),
          Double.parseDouble(row.get(columns.path(1).asInt()))
        })
        .toList();
  }

  /** What is told to so many digits is as smooth as a screen shows. */
  @Test
  void curvesRiseOrFallStepByStep() {
    var volts = points("c1-volts");
    var thrust = points("c1-throttle");

    assertThat(volts).hasSizeGreaterThan(15);
    assertThat(volts.stream().map(point -> point[0]).toList()).isSorted().doesNotHaveDuplicates();
    assertThat(volts.stream().map(point -> -point[1]).toList()).isSorted();
    assertThat(thrust).hasSizeGreaterThan(20);
    assertThat(thrust.stream().map(point -> point[0]).toList()).isSorted().doesNotHaveDuplicates();
    assertThat(thrust.stream().map(point -> point[1]).toList()).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void theTableOfMassesHasEveryLine() {
    assertThat(chart("c1-mass").table().rows())
        .hasSize(ASSESSOR.assess(build()).mass().lines().size() + 1);
  }
}
