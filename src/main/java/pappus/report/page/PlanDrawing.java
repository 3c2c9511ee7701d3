package pappus.report.page;

import java.util.ArrayList;
import java.util.List;
import pappus.assessment.Assessment;
import pappus.catalog.Battery;
import pappus.catalog.Frame;
import pappus.catalog.Motor;
import pappus.catalog.Propeller;
import pappus.catalog.Role;
import pappus.compatibility.Placing;
import pappus.compatibility.StackPlan;
import pappus.explanation.Spoken;
import pappus.quantity.Units;
import pappus.scenario.Scenario;

/** Draws a build from above, to scale, from what the catalogue knows of its parts. */
final class PlanDrawing {
  private static final double BAR_MM = 50;

  /** What an A4 sheet holds with its margins, mm. */
  private static final double SHEET_WIDE = 186;

  private static final double SHEET_TALL = 240;
  private static final double ROOM = 6;

  /** Records do not know how deep a camera is: a mark of its width. */
  private static final double CAMERA_DEEP = 4;

  private final Scenario scenario;
  private final Assessment assessment;
  private final Frame frame;
  private final double width;
  private final double height;
  private final List<Plan.Circle> circles = new ArrayList<>();
  private final List<Plan.Box> boxes = new ArrayList<>();
  private final List<Plan.Line> lines = new ArrayList<>();
  private final List<Plan.Word> words = new ArrayList<>();
  private final List<String> key = new ArrayList<>();

  private PlanDrawing(Scenario scenario, Assessment assessment, Frame frame) {
    this.scenario = scenario;
    this.assessment = assessment;
    this.frame = frame;
    var disc = assessment.build().propeller().map(PlanDrawing::diameter).orElse(0.0);
    this.width = frame.frontSpacingMillimetres() + disc + 2 * ROOM;
    this.height = Math.max(frame.sideSpacingMillimetres() + disc, longest()) + 2 * ROOM;
  }

  /** Of a build with a frame. */
  static Plan of(Scenario scenario, Assessment assessment) {
    return new PlanDrawing(scenario, assessment, assessment.build().frame().orElseThrow()).draw();
  }

  private Plan draw() {
    arms();
    assessment.build().propeller().ifPresent(this::discs);
    assessment.build().motor().ifPresent(this::motors);
    bay();
    assessment.fitting().stackPlan().ifPresent(this::stack);
    assessment
        .build()
        .battery()
        .ifPresent(
            pack -> assessment.fitting().placing().ifPresent(placing -> pack(pack, placing)));
    camera();
    payload();
    assessment.fitting().placing().ifPresent(this::balance);
    assessment.build().propeller().ifPresent(propeller -> {
      gap(propeller);
      assessment
          .build()
          .battery()
          .ifPresent(pack ->
              assessment.fitting().placing().ifPresent(placing -> gap(pack, placing, propeller)));
    });
    spacings();
    bar();
    var description =
        "Plan view from above, forward up. " + String.join(" ", key) + " " + distances();
    var halves = frame.frontSpacingMillimetres() > SHEET_WIDE - 2 * ROOM
            || frame.sideSpacingMillimetres() > SHEET_TALL - 2 * ROOM
        ? 2
        : 1;
    return new Plan(width, height, halves, circles, boxes, lines, words, key, description);
  }

  private static double diameter(Propeller propeller) {
    return Units.inchesToMillimetres(propeller.diameterInches());
  }

  /** How far the bay, the pack or a payload reaches to both ends of the drawing. */
  private double longest() {
    var bay = frame.bay();
    var far = Math.max(Math.abs(bay.frontXMillimetres()), Math.abs(bay.rearXMillimetres()));
    far = Math.max(far, Math.abs(frame.cameraXMillimetres()) + CAMERA_DEEP);
    var pack = assessment.build().battery().map(Battery::lengthMillimetres).orElse(0.0) / 2;
    far = Math.max(
        far,
        pack
            + assessment
                .fitting()
                .placing()
                .map(placing -> Math.abs(placing.packXMillimetres()))
                .orElse(0.0));
    return 2 * far;
  }

  /** From the left, of what is so far right of the middle line. */
  private double across(double right) {
    return width / 2 + right;
  }

  /** From the top, of what is so far forward of the motor centre. */
  private double down(double forward) {
    return height / 2 - forward;
  }

  private interface AtMotor {
    void draw(double x, double y);
  }

  private void atMotors(AtMotor what) {
    for (var forward : new int[] {1, -1}) {
      for (var right : new int[] {-1, 1}) {
        what.draw(
            across(right * frame.frontSpacingMillimetres() / 2),
            down(forward * frame.sideSpacingMillimetres() / 2));
      }
    }
  }

  private void arms() {
    atMotors((x, y) -> lines.add(new Plan.Line(across(0), down(0), x, y, "arm")));
  }

  private void discs(Propeller propeller) {
    atMotors((x, y) -> circles.add(new Plan.Circle(x, y, diameter(propeller) / 2, "disc")));
  }

  private void motors(Motor motor) {
    atMotors((x, y) -> {
      circles.add(new Plan.Circle(x, y, motor.bellDiameterMillimetres() / 2, "bell"));
      circles.add(new Plan.Circle(x, y, 1, "axis"));
    });
  }

  private void bay() {
    var bay = frame.bay();
    box(bay.frontXMillimetres(), bay.rearXMillimetres(), bay.widthMillimetres(), "bay");
    tag(
        "battery bay, %s the frame, %s mm wide, from %s to %s mm"
            .formatted(
                bay.place() == Frame.Bay.Side.TOP ? "above" : "under",
                mm(bay.widthMillimetres()),
                signed(bay.rearXMillimetres()),
                signed(bay.frontXMillimetres())),
        bay.widthMillimetres() / 2,
        bay.rearXMillimetres() + 3);
  }

  private void box(double front, double rear, double wide, String look) {
    boxes.add(new Plan.Box(across(-wide / 2), down(front), wide, front - rear, 0, look));
  }

  private void stack(StackPlan plan) {
    for (var column : plan.columns()) {
      var position = column.position();
      var names = new ArrayList<String>();
      for (var layer : column.layers()) {
        var part = assessment.build().part(layer.what()).orElseThrow();
        names.add(layer.what().label() + " " + part.name());
        mounting(layer.what())
            .ifPresent(side -> boxes.add(new Plan.Box(
                across(-side / 2),
                down(position.xMillimetres() + side / 2),
                side,
                side,
                layer.turned() ? 45 : 0,
                "holes")));
      }
      tag(
          "%s, %s mm: %s"
              .formatted(
                  position.name(), signed(position.xMillimetres()), String.join(" under ", names)),
          -18,
          position.xMillimetres());
    }
  }

  /** Side of the square of holes of what stands in a column. */
  private java.util.Optional<Double> mounting(Role role) {
    return role == Role.BOARD
        ? assessment.build().board().map(board -> board.mount().pattern().sideMillimetres())
        : assessment
            .build()
            .transmitter()
            .filter(unit -> unit.mount() != null)
            .map(
                unit -> java.util.Objects.requireNonNull(unit.mount()).pattern().sideMillimetres());
  }

  private void pack(Battery pack, Placing placing) {
    var x = placing.packXMillimetres();
    box(
        x + pack.lengthMillimetres() / 2,
        x - pack.lengthMillimetres() / 2,
        pack.widthMillimetres(),
        "pack");
    tag(
        "battery %s, %s × %s mm, its middle %s mm"
            .formatted(
                pack.name(), mm(pack.lengthMillimetres()), mm(pack.widthMillimetres()), signed(x)),
        -pack.widthMillimetres() / 2,
        x - pack.lengthMillimetres() / 2 + 3);
  }

  private void camera() {
    assessment.build().cameraUnit().ifPresent(camera -> {
      box(
          frame.cameraXMillimetres() + CAMERA_DEEP / 2,
          frame.cameraXMillimetres() - CAMERA_DEEP / 2,
          camera.widthMillimetres(),
          "camera");
      tag(
          "camera, %s mm wide, %s mm"
              .formatted(mm(camera.widthMillimetres()), signed(frame.cameraXMillimetres())),
          camera.widthMillimetres() / 2,
          frame.cameraXMillimetres());
    });
  }

  private void payload() {
    var payload = scenario.payload();
    if (payload == null
        || payload.lengthMillimetres() == null
        || payload.widthMillimetres() == null) {
      return;
    }
    var half = payload.lengthMillimetres() / 2;
    box(
        payload.xMillimetres() + half,
        payload.xMillimetres() - half,
        payload.widthMillimetres(),
        "payload");
    tag(
        "payload %s, its middle %s mm".formatted(payload.name(), signed(payload.xMillimetres())),
        -payload.widthMillimetres() / 2,
        payload.xMillimetres());
  }

  private void balance(Placing placing) {
    var x = placing.centreOfMassXMillimetres();
    circles.add(new Plan.Circle(across(0), down(x), 2.5, "balance"));
    tag("centre of mass, %s mm".formatted(signed(x)), 0, x);
  }

  /** A number beside a thing, and what it stands for in the key. */
  private void tag(String what, double right, double forward) {
    key.add(Spoken.safe(what) + ".");
    var outward = right < 0 ? -4.5 : 4.5;
    var x = across(right + outward);
    var y = down(forward);
    circles.add(new Plan.Circle(x, y, 3, "tag"));
    words.add(new Plan.Word(x, y + 1.4, String.valueOf(key.size()), "middle", "tag-number"));
  }

  /** The nearest way between the tips of neighbours. */
  private void gap(Propeller propeller) {
    var radius = diameter(propeller) / 2;
    var halfAcross = frame.frontSpacingMillimetres() / 2;
    var halfAlong = frame.sideSpacingMillimetres() / 2;
    if (halfAcross <= halfAlong) {
      gap(
          across(radius - halfAcross),
          down(-halfAlong),
          across(halfAcross - radius),
          down(-halfAlong),
          2 * (halfAcross - radius));
    } else {
      gap(
          across(-halfAcross),
          down(halfAlong - radius),
          across(-halfAcross),
          down(radius - halfAlong),
          2 * (halfAlong - radius));
    }
  }

  /** The nearest way from the pack to a disc, front left or rear left, whichever is nearer. */
  private void gap(Battery pack, Placing placing, Propeller propeller) {
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
    var share = (way - diameter(propeller) / 2) / way;
    gap(
        across(fromY),
        down(fromX),
        across(fromY + share * (motorY - fromY)),
        down(fromX + share * (motorX - fromX)),
        clearance.get());
  }

  private void gap(double x1, double y1, double x2, double y2, double millimetres) {
    lines.add(new Plan.Line(x1, y1, x2, y2, "gap"));
    words.add(new Plan.Word(
        (x1 + x2) / 2, (y1 + y2) / 2 - 1.5, mm(millimetres) + " mm", "middle", "gap-size"));
  }

  private void spacings() {
    var front = down(frame.sideSpacingMillimetres() / 2);
    var left = across(-frame.frontSpacingMillimetres() / 2);
    var right = across(frame.frontSpacingMillimetres() / 2);
    lines.add(new Plan.Line(left, front, right, front, "dimension"));
    words.add(new Plan.Word(
        across(0), front - 2, mm(frame.frontSpacingMillimetres()) + " mm", "middle", "size"));
    lines.add(
        new Plan.Line(right, front, right, down(-frame.sideSpacingMillimetres() / 2), "dimension"));
    words.add(new Plan.Word(
        right + 2, down(0), mm(frame.sideSpacingMillimetres()) + " mm", "start", "size"));
    words.add(new Plan.Word(across(0), down(height / 2) + 5, "▲ forward", "middle", "size"));
  }

  /** Within what a sheet shows of a drawing that is larger. */
  private void bar() {
    var y = height / 2 + Math.min(height, SHEET_TALL) / 2 - 5;
    lines.add(new Plan.Line(across(-BAR_MM / 2), y, across(BAR_MM / 2), y, "bar"));
    words.add(new Plan.Word(across(0), y - 2, mm(BAR_MM) + " mm", "middle", "size"));
  }

  private String distances() {
    var parts = new ArrayList<String>();
    parts.add("Motor axes %s mm apart across and %s mm along."
        .formatted(mm(frame.frontSpacingMillimetres()), mm(frame.sideSpacingMillimetres())));
    assessment
        .build()
        .propeller()
        .ifPresent(propeller -> parts.add("Propeller discs %s mm across, their tips %s mm apart."
            .formatted(
                mm(diameter(propeller)),
                mm(Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres())
                    - diameter(propeller)))));
    assessment
        .fitting()
        .placing()
        .flatMap(Placing::discClearanceMillimetres)
        .ifPresent(clearance ->
            parts.add("The pack is %s mm from the nearest disc.".formatted(mm(clearance))));
    return String.join(" ", parts);
  }

  private static String mm(double value) {
    return Spoken.number(value, value == Math.rint(value) ? 0 : 1);
  }

  /** Of the motor centre, with its sign. */
  private static String signed(double forward) {
    return (forward > 0 ? "+" : "") + mm(forward).replace('-', '\u2212');
  }
}
