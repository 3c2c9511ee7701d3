package pappus.answers.drawing;

import static pappus.answers.drawing.PlanCanvas.mm;

import java.util.ArrayList;
import java.util.Objects;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.fitting.Placing;
import pappus.fitting.StackPlan;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.quantity.Units;
import pappus.scenario.Scenario;
import pappus.sight.Sight;

/** Draws a build from above, to scale, from what the catalogue knows of its parts. */
public final class PlanDrawing {
  /** What an A4 sheet holds with its margins and what is said beside the drawing, mm. */
  private static final double SHEET_WIDE = 186;

  private static final double SHEET_TALL = 190;
  private static final double ROOM = 6;

  /** Records do not know how deep a camera is: a mark of its width. */
  private static final double CAMERA_DEEP = 4;

  private final Scenario scenario;
  private final Assessment assessment;
  private final Frame frame;
  private final PlanCanvas canvas;

  private PlanDrawing(Scenario scenario, Assessment assessment, Frame frame) {
    this.scenario = scenario;
    this.assessment = assessment;
    this.frame = frame;
    var disc = assessment.build().propeller().map(PlanDrawing::diameter).orElse(0.0);
    this.canvas = new PlanCanvas(
        frame.frontSpacingMillimetres() + disc + 2 * ROOM,
        Math.max(frame.sideSpacingMillimetres() + disc, longest()) + 2 * ROOM);
  }

  /** Of a build with a frame. */
  public static Plan of(Scenario scenario, Assessment assessment) {
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
    sight();
    payload();
    assessment.fitting().placing().ifPresent(this::balance);
    var measures = new PlanMeasures(canvas, assessment, frame);
    measures.draw();
    var smaller = (int)
        Math.max(1, Math.ceil(Math.max(canvas.width / SHEET_WIDE, canvas.height / SHEET_TALL)));
    return canvas.plan(smaller, measures.said());
  }

  /** Of its disc, mm. */
  static double diameter(Propeller propeller) {
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

  private interface AtMotor {
    void draw(double right, double forward);
  }

  private void atMotors(AtMotor what) {
    for (var forward : new int[] {1, -1}) {
      for (var right : new int[] {-1, 1}) {
        what.draw(
            right * frame.frontSpacingMillimetres() / 2,
            forward * frame.sideSpacingMillimetres() / 2);
      }
    }
  }

  private void arms() {
    atMotors((right, forward) -> canvas.line(0, 0, right, forward, "arm"));
  }

  private void discs(Propeller propeller) {
    atMotors((right, forward) -> canvas.circle(right, forward, diameter(propeller) / 2, "disc"));
  }

  private void motors(Motor motor) {
    atMotors((right, forward) -> {
      canvas.circle(right, forward, motor.bellDiameterMillimetres() / 2, "bell");
      canvas.circle(right, forward, 1, "axis");
    });
  }

  private void bay() {
    var bay = frame.bay();
    canvas.box(bay.frontXMillimetres(), bay.rearXMillimetres(), bay.widthMillimetres(), "bay");
    canvas.tag(
        "battery bay, %s the frame, %s mm wide, from %s to %s mm"
            .formatted(
                bay.place() == Frame.Bay.Side.TOP ? "above" : "under",
                mm(bay.widthMillimetres()),
                signed(bay.rearXMillimetres()),
                signed(bay.frontXMillimetres())),
        bay.widthMillimetres() / 2,
        bay.rearXMillimetres() + 3);
  }

  private void stack(StackPlan plan) {
    for (var column : plan.columns()) {
      var position = column.position();
      var names = new ArrayList<String>();
      for (var layer : column.layers()) {
        var part = assessment.build().part(layer.what()).orElseThrow();
        names.add(layer.what().label() + " " + part.name());
        mounting(layer.what())
            .ifPresent(side -> canvas.box(
                position.xMillimetres() + side / 2,
                position.xMillimetres() - side / 2,
                side,
                layer.turned() ? 45 : 0,
                "holes"));
      }
      canvas.tag(
          "%s, %s mm: %s"
              .formatted(
                  position.name(), signed(position.xMillimetres()), String.join(" under ", names)),
          -18,
          position.xMillimetres());
    }
  }

  /** Side of the square of holes of what stands in a column. */
  private Optional<Double> mounting(Role role) {
    return role == Role.BOARD
        ? assessment.build().board().map(board -> board.mount().pattern().sideMillimetres())
        : assessment
            .build()
            .transmitter()
            .filter(unit -> unit.mount() != null)
            .map(unit -> Objects.requireNonNull(unit.mount()).pattern().sideMillimetres());
  }

  private void pack(Battery pack, Placing placing) {
    var x = placing.packXMillimetres();
    canvas.box(
        x + pack.lengthMillimetres() / 2,
        x - pack.lengthMillimetres() / 2,
        pack.widthMillimetres(),
        "pack");
    canvas.tag(
        "battery %s, %s × %s mm, its middle %s mm"
            .formatted(
                pack.name(), mm(pack.lengthMillimetres()), mm(pack.widthMillimetres()), signed(x)),
        -pack.widthMillimetres() / 2,
        // At the end from which nothing is measured.
        x - Math.copySign(pack.lengthMillimetres() / 2 - 3, x == 0 ? 1 : x));
  }

  private void camera() {
    assessment.build().cameraUnit().ifPresent(camera -> {
      canvas.box(
          frame.cameraXMillimetres() + CAMERA_DEEP / 2,
          frame.cameraXMillimetres() - CAMERA_DEEP / 2,
          camera.widthMillimetres(),
          "camera");
      canvas.tag(
          "camera, %s mm wide, %s mm"
              .formatted(mm(camera.widthMillimetres()), signed(frame.cameraXMillimetres())),
          camera.widthMillimetres() / 2,
          frame.cameraXMillimetres());
    });
  }

  /** From the camera past both front discs to the edge of the drawing. */
  private void sight() {
    Sight.of(assessment.build()).ifPresent(sight -> {
      var angle = StrictMath.toRadians(sight.freeHalfAngle());
      var from = frame.cameraXMillimetres();
      var reach = reach(angle, from);
      for (var side : new int[] {-1, 1}) {
        canvas.line(
            0,
            from,
            side * reach * StrictMath.sin(angle),
            from + reach * StrictMath.cos(angle),
            "sight");
      }
      canvas.tag(
          "clear ahead of the camera, %s° to either side"
              .formatted(PlanCanvas.mm(sight.freeHalfAngle())),
          0.5 * reach * StrictMath.sin(angle),
          from + 0.5 * reach * StrictMath.cos(angle));
    });
  }

  /** To the front or a side edge, whichever comes first. */
  private double reach(double angle, double from) {
    var ahead = StrictMath.cos(angle);
    var toFront = ahead > 0 ? (canvas.height / 2 - from - 1) / ahead : Double.POSITIVE_INFINITY;
    var toRear = ahead < 0 ? (canvas.height / 2 + from - 1) / -ahead : Double.POSITIVE_INFINITY;
    var aside = StrictMath.sin(angle);
    var toSide = aside > 0 ? (canvas.width / 2 - 1) / aside : Double.POSITIVE_INFINITY;
    return Math.min(toSide, Math.min(toFront, toRear));
  }

  private void payload() {
    var payload = scenario.payload();
    if (payload == null
        || payload.lengthMillimetres() == null
        || payload.widthMillimetres() == null) {
      return;
    }
    var half = payload.lengthMillimetres() / 2;
    canvas.box(
        payload.xMillimetres() + half,
        payload.xMillimetres() - half,
        payload.widthMillimetres(),
        "payload");
    canvas.tag(
        "payload %s, its middle %s mm".formatted(payload.name(), signed(payload.xMillimetres())),
        -payload.widthMillimetres() / 2,
        payload.xMillimetres());
  }

  private void balance(Placing placing) {
    var x = placing.centreOfMassXMillimetres();
    canvas.circle(0, x, 2.5, "balance");
    canvas.tag("centre of mass, %s mm".formatted(signed(x)), 0, x);
  }

  /** Of the motor centre, with its sign. */
  private static String signed(double forward) {
    return (forward > 0 ? "+" : "") + mm(forward).replace('-', '\u2212');
  }
}
