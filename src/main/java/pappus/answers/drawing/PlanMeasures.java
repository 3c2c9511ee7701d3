package pappus.answers.drawing;

import static pappus.answers.drawing.PlanCanvas.mm;

import java.util.ArrayList;
import pappus.assessment.Assessment;
import pappus.fitting.Placing;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Propeller;

/**
 * What is measured in a plan: the nearest ways past the propellers, the motor axes, and a bar to check the print by.
 */
final class PlanMeasures {
  /** By which a print is checked. */
  static final double BAR_MM = 50;

  private final PlanCanvas canvas;
  private final Assessment assessment;
  private final Frame frame;

  PlanMeasures(PlanCanvas canvas, Assessment assessment, Frame frame) {
    this.canvas = canvas;
    this.assessment = assessment;
    this.frame = frame;
  }

  /** Draws them. */
  void draw() {
    var build = assessment.build();
    build.propeller().ifPresent(propeller -> {
      tips(propeller);
      build
          .battery()
          .ifPresent(pack ->
              assessment.fitting().placing().ifPresent(placing -> pack(pack, placing, propeller)));
    });
    spacings();
    var y = 5 - canvas.height / 2;
    canvas.line(-BAR_MM / 2, y, BAR_MM / 2, y, "bar");
    canvas.word(0, y + 2, mm(BAR_MM) + " mm", "middle", "size");
  }

  /** The nearest way between the tips of neighbours. */
  private void tips(Propeller propeller) {
    var radius = PlanDrawing.diameter(propeller) / 2;
    var halfAcross = frame.frontSpacingMillimetres() / 2;
    var halfAlong = frame.sideSpacingMillimetres() / 2;
    if (halfAcross <= halfAlong) {
      var gap = halfAcross - radius;
      canvas.line(-gap, -halfAlong, gap, -halfAlong, "gap");
      canvas.word(0, 1.5 - halfAlong, mm(2 * gap) + " mm", "middle", "gap-size");
    } else {
      var gap = halfAlong - radius;
      canvas.line(-halfAcross, gap, -halfAcross, -gap, "gap");
      // Towards the middle: the other side may be off the sheet.
      canvas.word(2 - halfAcross, -1.4, mm(2 * gap) + " mm", "start", "gap-size");
    }
  }

  /** The nearest way from the pack to a disc, front left or rear left, whichever is nearer. */
  private void pack(Battery pack, Placing placing, Propeller propeller) {
    var clearance = placing.discClearanceMillimetres();
    if (clearance.isEmpty() || clearance.get() <= 0) {
      return;
    }
    var x = placing.packXMillimetres();
    var motorX = Math.copySign(frame.sideSpacingMillimetres() / 2, x == 0 ? 1 : x);
    var half = pack.lengthMillimetres() / 2;
    var fromX = Math.max(x - half, Math.min(x + half, motorX));
    var fromY = -pack.widthMillimetres() / 2;
    var motorY = -frame.frontSpacingMillimetres() / 2;
    var way = StrictMath.hypot(motorX - fromX, motorY - fromY);
    var share = (way - PlanDrawing.diameter(propeller) / 2) / way;
    var toX = fromX + share * (motorX - fromX);
    var toY = fromY + share * (motorY - fromY);
    canvas.line(fromY, fromX, toY, toX, "gap");
    // Beyond the disc's end, where neither pack nor bay is drawn.
    canvas.word(
        toY - 1.5, toX + (motorX < 0 ? -4 : 2), mm(clearance.get()) + " mm", "end", "gap-size");
  }

  private void spacings() {
    var front = frame.sideSpacingMillimetres() / 2;
    var right = frame.frontSpacingMillimetres() / 2;
    canvas.line(-right, front, right, front, "dimension");
    canvas.word(0, front + 2, mm(frame.frontSpacingMillimetres()) + " mm", "middle", "size");
    canvas.line(right, front, right, -front, "dimension");
    canvas.word(right - 2, -1.4, mm(frame.sideSpacingMillimetres()) + " mm", "end", "size");
    canvas.word(0, canvas.height / 2 - 5, "▲ forward", "middle", "size");
  }

  /** What was measured, in sentences. */
  String said() {
    var parts = new ArrayList<String>();
    parts.add("Motor axes %s mm apart across and %s mm along."
        .formatted(mm(frame.frontSpacingMillimetres()), mm(frame.sideSpacingMillimetres())));
    assessment
        .build()
        .propeller()
        .ifPresent(propeller -> parts.add("Propeller discs %s mm across, their tips %s mm apart."
            .formatted(
                mm(PlanDrawing.diameter(propeller)),
                mm(Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres())
                    - PlanDrawing.diameter(propeller)))));
    assessment
        .fitting()
        .placing()
        .flatMap(Placing::discClearanceMillimetres)
        .ifPresent(clearance ->
            parts.add("The pack is %s mm from the nearest disc.".formatted(mm(clearance))));
    return String.join(" ", parts);
  }
}
