package pappus.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.PartCopy;
import pappus.part.Span;
import pappus.physics.structure.Laminate;
import pappus.physics.structure.Outline;

/**
 * Mass of a frame from its drawing, with the standoffs that it is listed with.
 *
 * <p>Why: src/site/markdown/decisions.md#a-frame-weighs-what-its-drawing-says
 *
 * @param items what it is made of, in the order of the drawing
 */
public record DrawnMass(List<Item> items) {
  /** One standard deviation of a frame's mass so found, share of it: the density of plates and what is not drawn. */
  public static final double DOUBT = 0.06;

  /** A round end under a motor is so much wider than its bolt circle, mm (common practice, no published source). */
  private static final double AROUND_BOLTS_MM = 4;

  /**
   * Some of it.
   *
   * @param label in words
   * @param pieces how many alike
   * @param grams of all of them
   * @param x their middle, mm forward of the motor centre
   */
  public record Item(String label, int pieces, double grams, double x) {}

  public DrawnMass {
    items = List.copyOf(items);
  }

  /** Of a frame as far as it is drawn; nothing where it is not. */
  public static DrawnMass of(Frame frame) {
    var items = new ArrayList<Item>();
    var drawing = frame.drawing();
    if (drawing == null) {
      return new DrawnMass(items);
    }
    for (var plate : drawing.plates()) {
      items.add(plate(plate));
    }
    for (var arm : drawing.arms()) {
      items.add(arms(frame, arm));
    }
    var amid = x(items);
    var standoffs = drawing.standoffs();
    if (standoffs != null && standoffs.pieces() > 0) {
      var perMillimetre = standoffs.pieces() * standoffs.gramsPerMillimetre();
      items.add(new Item(
          "standoffs",
          standoffs.pieces(),
          perMillimetre * listedHeight(frame, perMillimetre),
          amid));
    }
    var screws = drawing.screws();
    if (screws != null && screws.pieces() > 0) {
      items.add(new Item("screws", screws.pieces(), screws.pieces() * screws.grams(), amid));
    }
    return new DrawnMass(items);
  }

  private static Item plate(FrameDrawing.Plate plate) {
    var density = plate.gramsPerCubicCentimetre() == null
        ? Laminate.GRAMS_PER_CM3
        : plate.gramsPerCubicCentimetre();
    var shape = plate.shape();
    return new Item(
        plate.name() + (plate.name().endsWith("plate") ? "" : " plate"),
        plate.count(),
        plate.count() * density / 1000 * shape.area() * plate.thicknessMillimetres(),
        shape.x());
  }

  /** They run towards the middle between the motors. */
  private static Item arms(Frame frame, FrameDrawing.Arm arm) {
    var beam = ArmBending.whole(frame, arm);
    var motorX =
        (arm.pair() == FrameDrawing.Pair.FRONT ? 0.5 : -0.5) * frame.sideSpacingMillimetres();
    var inward = 1 - (arm.lengthMillimetres() - beam.centreMm()) / (frame.diagonal() / 2);
    var end = endGrams(frame, arm);
    var each = beam.grams() + end;
    return new Item(
        arm.pair().word() + " arms", 2, 2 * each, motorX * (beam.grams() * inward + end) / each);
  }

  /** What the round end under a motor adds to an arm, g. */
  static double endGrams(Frame frame, FrameDrawing.Arm arm) {
    var across = arm.endMillimetres() == null
        ? frame.motorBoltCirclesMillimetres().stream()
            .map(Span::toMillimetres)
            .max(Comparator.naturalOrder())
            .map(circle -> circle + AROUND_BOLTS_MM)
            .orElse(0.0)
        : arm.endMillimetres();
    var beam = ArmBending.whole(frame, arm);
    // The arm itself reaches to the middle of it.
    var area = Outline.circle(0, across).area() - beam.tipMm() * across / 2;
    return Math.max(0, area) * beam.thicknessMm() * beam.gramsPerCm3() / 1000;
  }

  /**
   * The height between the plates that its mass is listed with, mm; 0 where it has no upper plate. One that adds some
   * grams is so much taller as these make standoffs.
   */
  private static double listedHeight(Frame frame, double gramsPerMillimetre) {
    return frame.heights().stream()
        .min(Comparator.comparingDouble((Frame.PlateHeight height) -> Math.abs(height.addedGrams()))
            .thenComparingDouble(Frame.PlateHeight::millimetres))
        .map(height -> Math.max(0, height.millimetres() - height.addedGrams() / gramsPerMillimetre))
        .orElse(0.0);
  }

  /** All of it, g. */
  public double grams() {
    return items.stream().mapToDouble(Item::grams).sum();
  }

  /** Its centre of mass, mm forward of the motor centre. */
  public double x() {
    return x(items);
  }

  private static double x(List<Item> items) {
    var grams = items.stream().mapToDouble(Item::grams).sum();
    return grams == 0
        ? 0
        : items.stream().mapToDouble(item -> item.grams() * item.x()).sum() / grams;
  }

  /** As a record holds it: to the hundredth of a gram, with its doubt. */
  private Mass mass() {
    var grams = Math.max(Mass.LEAST_GRAMS, hundredths(grams()));
    return new Mass(grams, Known.ESTIMATED, hundredths(DOUBT * grams));
  }

  /**
   * The frame with its mass and centre of mass as drawn, where its record leaves them to the drawing.
   *
   * @param hasMass whether its record states its mass
   * @param hasCentre whether it states its centre of mass
   */
  public static Frame settled(Frame frame, boolean hasMass, boolean hasCentre) {
    var drawing = frame.drawing();
    if (drawing == null || !drawing.tellsAll() || (hasMass && hasCentre)) {
      return frame;
    }
    var drawn = of(frame);
    var values = new HashMap<String, Object>();
    if (!hasMass) {
      values.put("mass", drawn.mass());
    }
    if (!hasCentre) {
      values.put("centreOfMassXMillimetres", hundredths(drawn.x()));
    }
    values.put("assumed", frame.assumed());
    return PartCopy.with(frame, values);
  }

  /**
   * A frame's mass once its drawing is changed: what is stated of the one before scales what is drawn, where all of it
   * is; of one of which the arms alone are drawn, the rest stays. What is drawn anew adds its own doubt. The same mass
   * where nothing is drawn.
   *
   * @param after the same frame with another drawing
   */
  public static Mass massAfter(Frame before, Frame after) {
    var mass = before.mass();
    var was = of(before).grams();
    var more = of(after).grams() - was;
    var drawing = before.drawing();
    if (more == 0 || drawing == null) {
      return mass;
    }
    var scaled = drawing.tellsAll() ? more * mass.grams() / was : more;
    var grams = Math.max(Mass.LEAST_GRAMS, hundredths(mass.grams() + scaled));
    var doubt = StrictMath.hypot(mass.standardDeviationGrams(), DOUBT * scaled);
    return new Mass(grams, mass.known(), Math.min(grams, hundredths(doubt)));
  }

  /** Its centre of mass then, mm forward of the motor centre: as much further as that of what is drawn. */
  public static double centreAfter(Frame before, Frame after) {
    var drawing = before.drawing();
    return drawing == null || !drawing.tellsAll()
        ? before.centreOfMassXMillimetres()
        : hundredths(
            before.centreOfMassXMillimetres() + of(after).x() - of(before).x());
  }

  /** What so much more height between the plates adds, g; empty where no standoffs are drawn. */
  public static Optional<Double> gramsPerMillimetre(Frame frame) {
    return Optional.ofNullable(frame.drawing())
        .map(FrameDrawing::standoffs)
        .map(standoffs -> standoffs.pieces() * standoffs.gramsPerMillimetre());
  }

  private static double hundredths(double value) {
    // Zero is added so that nothing is not told as less than nothing.
    return Math.rint(value * 100) / 100 + 0.0;
  }
}
