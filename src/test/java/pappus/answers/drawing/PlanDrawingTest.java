package pappus.answers.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.battery;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Build;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.Scenarios;

/** The drawing has the lengths of the parts, in millimetres. */
final class PlanDrawingTest {
  private static Assessment assess(Build build) {
    return new Assessor(Scenarios.plain(), Stock.of(Parts.hardware()), Rules.ALL).assess(build);
  }

  private static Plan plan(Build build) {
    return PlanDrawing.of(Scenarios.plain(), assess(build));
  }

  private static List<Plan.Circle> circles(Plan plan, String look) {
    return plan.circles().stream().filter(circle -> circle.look().equals(look)).toList();
  }

  private static Plan.Box box(Plan plan, String look) {
    return plan.boxes().stream()
        .filter(box -> box.look().equals(look))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void discsStandAtTheMotorAxes() {
    var plan = plan(build());
    var discs = circles(plan, "disc");

    assertThat(discs).hasSize(4);
    var radius = build().propeller().orElseThrow().diameterInches() * 25.4 / 2;
    assertThat(discs).allMatch(disc -> Math.abs(disc.radius() - radius) < 1e-9);
    assertThat(discs.get(1).x() - discs.get(0).x())
        .isCloseTo(frame().frontSpacingMillimetres(), within(1e-9));
    assertThat(discs.get(2).y() - discs.get(0).y())
        .isCloseTo(frame().sideSpacingMillimetres(), within(1e-9));
    assertThat(discs).allMatch(disc -> disc.x() - radius >= 0 && disc.x() + radius <= plan.width());
    assertThat(circles(plan, "bell"))
        .hasSize(4)
        .allMatch(bell -> bell.radius() == motor().bellDiameterMillimetres() / 2);
  }

  @Test
  void packLiesWhereItBalances() {
    var assessment = assess(build());
    var plan = PlanDrawing.of(Scenarios.plain(), assessment);
    var pack = box(plan, "pack");
    var placing = assessment.fitting().placing().orElseThrow();

    assertThat(pack.height()).isEqualTo(battery().lengthMillimetres());
    assertThat(pack.width()).isEqualTo(battery().widthMillimetres());
    assertThat(plan.height() / 2 - (pack.y() + pack.height() / 2))
        .isCloseTo(placing.packXMillimetres(), within(1e-9));
    assertThat(plan.height() / 2 - circles(plan, "balance").get(0).y())
        .isCloseTo(placing.centreOfMassXMillimetres(), within(1e-9));
  }

  /** As long as the rules judge them. */
  @Test
  void gapsAreThoseOfTheRules() {
    var assessment = assess(build());
    var gaps = PlanDrawing.of(Scenarios.plain(), assessment).lines().stream()
        .filter(line -> line.look().equals("gap"))
        .map(line -> Math.hypot(line.x2() - line.x1(), line.y2() - line.y1()))
        .toList();

    var spacing = Math.min(frame().frontSpacingMillimetres(), frame().sideSpacingMillimetres());
    assertThat(gaps.get(0))
        .isCloseTo(
            spacing - build().propeller().orElseThrow().diameterInches() * 25.4, within(1e-9));
    assertThat(gaps.get(1))
        .isCloseTo(
            assessment
                .fitting()
                .placing()
                .orElseThrow()
                .discClearanceMillimetres()
                .orElseThrow(),
            within(1e-9));
  }

  private static Plan wide() {
    return plan(build().with(Role.FRAME, with(frame(), "frontSpacingMillimetres", 300.0)));
  }

  @Test
  void hasABarOfFiftyMillimetres() {
    for (var plan : List.of(plan(build()), wide())) {
      var bar = plan.lines().stream()
          .filter(line -> line.look().equals("bar"))
          .findFirst()
          .orElseThrow();

      assertThat(bar.x2() - bar.x1()).isCloseTo(50, within(1e-9));
      assertThat(plan.caption())
          .contains("1:%s".formatted(Math.round(1 / plan.scale())), "the bar of 50 mm measures");
    }
  }

  /** On a sheet of A4 with margins of 12 mm there is room beside it for its key. */
  @Test
  void isPrintedWholeAtTheLargestWholeScaleThatASheetHolds() {
    for (var plan : List.of(plan(build()), wide())) {
      var smaller = 1 / plan.scale();

      assertThat(smaller).isEqualTo(Math.rint(smaller));
      assertThat(plan.width() * plan.scale()).isLessThanOrEqualTo(186);
      assertThat(plan.height() * plan.scale()).isLessThanOrEqualTo(190);
      assertThat(Math.max(plan.width() / 186, plan.height() / 190)).isGreaterThan(smaller - 1);
      assertThat(plan.printedWidth()).isEqualTo(Plan.plain(plan.width() * plan.scale()) + "mm");
    }
    assertThat(wide().scale()).isLessThan(plan(build()).scale());
  }

  private static String path(Plan plan, String look) {
    return plan.shapes().stream()
        .filter(shape -> shape.look().equals(look))
        .map(Plan.Shape::path)
        .findFirst()
        .orElseThrow();
  }

  /** Lengths survive in the paths that are drawn. */
  @Test
  void drawsDiscsAndThePackAsPathsOfTheirSize() {
    var plan = plan(build());
    var disc = circles(plan, "disc").get(0);
    var pack = box(plan, "pack");

    assertThat(path(plan, "disc"))
        .startsWith("M%s %sa%s %s 0 1 0 %s 0"
            .formatted(
                Plan.plain(disc.x() - disc.radius()),
                Plan.plain(disc.y()),
                Plan.plain(disc.radius()),
                Plan.plain(disc.radius()),
                Plan.plain(2 * disc.radius())));
    assertThat(path(plan, "disc")).containsPattern("^([^M]*M){4}[^M]*$");
    assertThat(path(plan, "pack"))
        .isEqualTo("M%s %sL%s %sL%s %sL%s %sZ"
            .formatted(
                Plan.plain(pack.x()),
                Plan.plain(pack.y()),
                Plan.plain(pack.x() + pack.width()),
                Plan.plain(pack.y()),
                Plan.plain(pack.x() + pack.width()),
                Plan.plain(pack.y() + pack.height()),
                Plan.plain(pack.x()),
                Plan.plain(pack.y() + pack.height())));
    assertThat(plan.shapes().get(0).look()).isEqualTo("arm");
  }

  @Test
  void saysInWordsWhatItShows() {
    assertThat(plan(build()).description())
        .contains("Motor axes", "Propeller discs", "battery", "centre of mass", "camera");
    assertThat(plan(build()).key()).hasSizeGreaterThanOrEqualTo(5);
  }
}
