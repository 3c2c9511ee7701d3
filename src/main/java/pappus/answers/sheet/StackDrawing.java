package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.answers.drawing.Plan;
import pappus.assessment.Assessment;
import pappus.fitting.StackPlan;
import pappus.fitting.StackPlan.Column;
import pappus.fitting.StackPlan.Filling;
import pappus.fitting.StackPlan.Slice;
import pappus.part.Role;

/** The stack from the side, to scale: what takes how much of the height between the plates. */
final class StackDrawing {
  /** Twice its size: slices are a few millimetres high. */
  private static final double SCALE = 2;

  /** Least distance of two numbers, mm of the drawing. */
  private static final double APART = 2.4;

  private static final double MARGIN = 4;
  private static final double BETWEEN = 14;
  private static final double POST = 1.2;
  private static final double BAR = 20;

  private final Assessment assessment;
  private final StackPlan plan;
  private final List<Plan.Circle> circles = new ArrayList<>();
  private final List<Plan.Box> boxes = new ArrayList<>();
  private final List<Plan.Line> lines = new ArrayList<>();
  private final List<Plan.Word> words = new ArrayList<>();
  private final double ground;

  private StackDrawing(Assessment assessment, StackPlan plan) {
    this.assessment = assessment;
    this.plan = plan;
    var highest = plan.columns().stream()
        .mapToDouble(column -> Math.max(
            column.slices().stream().mapToDouble(Slice::millimetres).sum(),
            APART * column.slices().size()))
        .max()
        .orElse(0);
    this.ground = 2 + Math.max(highest, between());
  }

  /** Absent where no board stands on a frame. */
  static Optional<Plan> of(Assessment assessment) {
    return assessment
        .fitting()
        .stackPlan()
        .filter(plan -> !plan.columns().isEmpty())
        .map(plan -> new StackDrawing(assessment, plan).draw());
  }

  /** Height between the plates, mm; 0 where no plate is above. */
  private double between() {
    return plan.height().map(height -> height.millimetres()).orElse(0.0);
  }

  private Plan draw() {
    var x = MARGIN;
    for (var column : plan.columns()) {
      var wide = wide(column);
      column(column, x, wide);
      x += wide + BETWEEN;
    }
    var right = x - BETWEEN + MARGIN + 4;
    lines.add(new Plan.Line(2, ground, right - 2, ground, "plate"));
    if (between() > 0) {
      lines.add(new Plan.Line(2, ground - between(), right - 2, ground - between(), "plate"));
    }
    var bar = ground + 5;
    lines.add(new Plan.Line(2, bar, 2 + BAR, bar, "bar"));
    words.add(new Plan.Word(2 + BAR + 1.5, bar + 0.6, "20 mm", "start", "side"));
    return new Plan(
        Math.max(right, 2 + BAR + 14),
        bar + 1.5,
        SCALE,
        "The stack from the side",
        "Printed at 100 % it is twice its size: the bar of 20 mm measures 40 mm. Numbers are those of the table. Boards are as wide as the squares of their holes: records know no more.",
        circles,
        boxes,
        lines,
        words,
        List.of(),
        said());
  }

  private double wide(Column column) {
    return column.layers().stream().mapToDouble(this::side).max().orElse(20);
  }

  /** Across the holes, or across the corners of a board that stands on one. */
  private double side(StackPlan.Layer layer) {
    var build = assessment.build();
    var side = layer.what() == Role.BOARD
        ? build.board().map(board -> board.mount().pattern().sideMillimetres())
        : build
            .transmitter()
            .flatMap(unit -> Optional.ofNullable(unit.mount()))
            .map(mount -> mount.pattern().sideMillimetres());
    return side.orElse(20.0) * (layer.turned() ? Math.sqrt(2) : 1);
  }

  private void column(Column column, double left, double wide) {
    var bottom = ground;
    var number = 0;
    var lowest = ground;
    for (var slice : column.slices()) {
      number++;
      var top = bottom - slice.millimetres();
      var here = width(slice, column, wide);
      var from = left + (wide - here) / 2;
      if (isSpacer(slice.filling())) {
        for (var at : new double[] {from, from + here - POST}) {
          boxes.add(new Plan.Box(at, top, POST, slice.millimetres(), 0, "post"));
        }
      } else {
        boxes.add(new Plan.Box(from, top, here, slice.millimetres(), 0, look(slice.filling())));
      }
      // Each number at its slice, or as little above as leaves it apart from the one below.
      var middle = (top + bottom) / 2;
      var at = Math.min(middle, number == 1 ? middle : lowest - APART);
      lowest = at;
      lines.add(new Plan.Line(left + wide, middle, left + wide + 3, at, "leader"));
      words.add(
          new Plan.Word(left + wide + 3.6, at + 0.6, String.valueOf(number), "start", "side"));
      bottom = top;
    }
    words.add(
        new Plan.Word(left + wide / 2, ground + 2.6, column.position().name(), "middle", "side"));
  }

  private double width(Slice slice, Column column, double widest) {
    return column.layers().stream()
        .filter(layer -> slice.filling() == Filling.BOARD && layer.partId().equals(slice.partId()))
        .mapToDouble(this::side)
        .findFirst()
        .orElse(widest);
  }

  private static boolean isSpacer(Filling filling) {
    return filling == Filling.SPACER_TO_CARBON || filling == Filling.SPACER_BETWEEN_BOARDS;
  }

  private static String look(Filling filling) {
    return switch (filling) {
      case BOARD -> "board";
      case ADAPTER -> "adapter";
      case PLUG_ROOM -> "plugs";
      case SPARE -> "spare";
      case SPACER_TO_CARBON, SPACER_BETWEEN_BOARDS -> "post";
    };
  }

  private String said() {
    var said = new ArrayList<String>();
    plan.columns()
        .forEach(column ->
            said.add(BenchWords.height(column, plan.height()).replaceFirst("\\.?$", ".")));
    return String.join(" ", said);
  }
}
