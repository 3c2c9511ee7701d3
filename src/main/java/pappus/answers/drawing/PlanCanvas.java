package pappus.answers.drawing;

import java.util.ArrayList;
import java.util.List;
import pappus.document.Spoken;

/** What a plan is drawn on: lengths in mm from the motor centre, forward and right, become those of the drawing. */
final class PlanCanvas {
  final double width;
  final double height;
  private final List<Plan.Circle> circles = new ArrayList<>();
  private final List<Plan.Box> boxes = new ArrayList<>();
  private final List<Plan.Line> lines = new ArrayList<>();
  private final List<Plan.Word> words = new ArrayList<>();
  private final List<String> key = new ArrayList<>();

  /**
   * @param width of the drawing, mm
   * @param height of it, mm
   */
  PlanCanvas(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** From the left, of what is so far right of the middle line. */
  double across(double right) {
    return width / 2 + right;
  }

  /** From the top, of what is so far forward of the motor centre. */
  double down(double forward) {
    return height / 2 - forward;
  }

  void circle(double right, double forward, double radius, String look) {
    circles.add(new Plan.Circle(across(right), down(forward), radius, look));
  }

  /** A box about the middle line. */
  void box(double front, double rear, double wide, String look) {
    box(front, rear, wide, 0, look);
  }

  /** A box about the middle line, turned by so many degrees. */
  void box(double front, double rear, double wide, double degrees, String look) {
    boxes.add(new Plan.Box(across(-wide / 2), down(front), wide, front - rear, degrees, look));
  }

  /** From one place to another, each so far right and forward. */
  void line(double right1, double forward1, double right2, double forward2, String look) {
    lines.add(new Plan.Line(across(right1), down(forward1), across(right2), down(forward2), look));
  }

  void word(double right, double forward, String text, String anchor, String look) {
    words.add(new Plan.Word(across(right), down(forward), text, anchor, look));
  }

  /** A number beside a thing, and what it stands for in the key. */
  void tag(String what, double right, double forward) {
    key.add(what + ".");
    var beside = right + (right < 0 ? -4.5 : 4.5);
    circle(beside, forward, 3, "tag");
    word(beside, forward - 1.4, String.valueOf(key.size()), "middle", "tag-number");
  }

  /**
   * What was drawn.
   *
   * @param smaller how many times smaller it is printed
   * @param distances what the drawing measures, in sentences
   */
  Plan plan(int smaller, String distances) {
    return new Plan(
        width,
        height,
        1.0 / smaller,
        "From above, forward up",
        (smaller == 1
                ? "Printed at 100 % it is true to scale: check the bar."
                : "Printed at 100 %% it is to the scale 1:%s: the bar of 50 mm measures %s mm."
                    .formatted(smaller, mm(PlanMeasures.BAR_MM / smaller)))
            + " Arms are drawn as lines, boards as the squares of their holes, the camera by its width: records know no more.",
        circles,
        boxes,
        lines,
        words,
        key,
        distances);
  }

  /** As lengths are told. */
  static String mm(double value) {
    return Spoken.number(value, value == Math.rint(value) ? 0 : 1);
  }
}
