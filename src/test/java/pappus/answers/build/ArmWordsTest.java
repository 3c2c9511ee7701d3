package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Desk;
import pappus.part.FrameDrawing;
import pappus.part.FrameDrawing.Arm;
import pappus.part.FrameDrawing.Pair;
import pappus.part.Parts;

class ArmWordsTest {
  private static Assessment assess(double front, double rear) {
    var drawing = new FrameDrawing(
        List.of(), List.of(arm(Pair.FRONT, front), arm(Pair.REAR, rear)), null, null);
    return Desk.assess(build(with(Parts.frame(), "drawing", drawing)));
  }

  private static Arm arm(Pair pair, double length) {
    return new Arm(pair, length, null, null, null, null, null, 5.0);
  }

  /** The length at which arms turn in hover's own time. */
  private static double meeting() {
    for (var length = 20.0; length < 200; length += 0.5) {
      var assessment = assess(length, length);
      if (ArmWords.hertz(assessment).orElseThrow()
          < assessment.flight().orElseThrow().hoverRpm() / 60) {
        return length;
      }
    }
    throw new AssertionError();
  }

  @Test
  void whereAFrequencyMeetsTheRotorsARemarkSaysSo() {
    var length = meeting();

    assertThat(ArmWords.remarks(assess(length, length)))
        .singleElement()
        .asString()
        .startsWith("The arms first bend at ")
        .contains("within 15 %")
        .endsWith("A remark by an engineering estimate, no rule.");
    assertThat(ArmWords.remarks(assess(length, 0.7 * length)))
        .singleElement()
        .asString()
        .startsWith("The front arms first bend at ");
    assertThat(ArmWords.remarks(assess(0.7 * length, 0.7 * length))).isEmpty();
    assertThat(Hints.of(assess(length, length)))
        .containsAll(ArmWords.remarks(assess(length, length)));
  }

  @Test
  void softArmsAreTold() {
    assertThat(ArmWords.remarks(assess(200, 60)))
        .anyMatch(remark -> remark.startsWith("The front arms") && remark.contains("below the 60"));
  }

  /** Half as long, a root bears half; the masses are the same. */
  @Test
  void aRootIsToldBesideAnother() {
    assertThat(ArmWords.beside(assess(40, 40), assess(80, 60), "the other"))
        .contains("stands 2.0 times what the other stands");
    assertThat(ArmWords.beside(assess(80, 60), assess(40, 40), "the other"))
        .contains("stands 0.5 times what the other stands");
    assertThat(ArmWords.beside(assess(60, 60), assess(60, 30), "the other"))
        .contains("stands as much as the other");
    assertThat(ArmWords.beside(assess(60, 60), Desk.assess(build()), "the other"))
        .isEmpty();
  }

  @Test
  void whatIsNotDrawnIsNotTold() {
    assertThat(ArmWords.sentence(Desk.assess(build()))).isEmpty();
    assertThat(ArmWords.remarks(Desk.assess(build()))).isEmpty();
    assertThat(ArmWords.sentence(assess(60, 60)).orElseThrow())
        .startsWith("Arms bend first at ")
        .contains(" Hz and by ");
    assertThat(ArmWords.sentence(assess(60, 50)).orElseThrow()).contains("front ", ", rear ");
  }
}
