package pappus.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Frame;
import pappus.part.Frame.Bay;
import pappus.part.Frame.PlateHeight;
import pappus.part.Frame.Position;
import pappus.part.FrameDrawing;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.MountingHoles;
import pappus.part.Sale;
import pappus.part.Span;
import pappus.part.StackPattern;
import pappus.quantity.Units;

/** Frames: wide ones with the pack between the discs, square ones with the pack amid all four. */
final class Frames {
  /**
   * Maker, name, propeller, g per (L/100 mm)², layout, bay width, arm, bolt circles, places (M2 or M3
   * pattern, t turned; rear after a comma), heights (none: open), camera widths, strap, guard, level.
   */
  private static final String FRAMES = """
      Ostrellen  | Samphire 2.5       | 2.5 | 10.4 | wide   | 30 | 2   | 6.6 9     | 25.5m2            |          | 14       | 12 |      | 1
      Ostrellen  | Samphire 2.5 Roof  | 2.5 | 13   | wide   | 30 | 2   | 6.6 9     | 25.5m2            | 18 20 22 | 14       | 12 |      | 1
      Ostrellen  | Samphire 3         | 3   | 10.2 | wide   | 32 | 2   | 9         | 25.5m2            |          | 14       | 12 |      | 1
      Ostrellen  | Samphire 3 Roof    | 3   | 13.2 | wide   | 32 | 2   | 9         | 25.5m2 20m2       | 20 22 25 | 14       | 12 |      | 1
      Ostrellen  | Samphire 3.5       | 3.5 | 11.6 | wide   | 34 | 2.5 | 9 12      | 25.5m2 20m2       | 20 22 25 | 14       | 12 |      | 1
      Ostrellen  | Samphire 4         | 4   | 11.2 | wide   | 36 | 2.5 | 9-12      | 25.5m2 20m2       | 20 22 25 | 14 19    | 16 |      | 1
      Ostrellen  | Samphire 5         | 5   | 10.3 | wide   | 36 | 2.5 | 9-12      | 25.5m2 20m2       | 20 22 25 | 14 19    | 16 |      | 1.05
      Marrowick  | Sedge 2.5          | 2.5 | 15.5 | wide   | 31 | 2.5 | 9         | 25.5m2            | 20 22    | 14       | 12 |      | 0.85
      Marrowick  | Sedge 3            | 3   | 15   | wide   | 33 | 2.5 | 9         | 25.5m2 20m2       | 20 22 25 | 14       | 12 |      | 0.85
      Marrowick  | Sedge 3.5          | 3.5 | 15.2 | wide   | 35 | 3   | 9 12      | 25.5m2 20m2       | 20 22 25 | 14 19    | 16 |      | 0.85
      Marrowick  | Sedge 4            | 4   | 14   | wide   | 38 | 3   | 9-12      | 25.5m2 20m2,20m2  | 20 22 25 28 | 14 19 | 16 |      | 0.85
      Marrowick  | Sedge 5            | 5   | 12.4 | wide   | 38 | 3   | 12 16     | 25.5m2 20m2,20m2  | 22 25 28 | 19       | 16 |      | 0.85
      Marrowick  | Sedge 5 Stout      | 5   | 23   | wide   | 40 | 5   | 16-19     | 30.5m3 20m2,20m2  | 25 28 30 | 19       | 20 |      | 0.9
      Quillmarsh | Glasswort 2.5      | 2.5 | 11   | square | 28 | 2   | 6.6 9     | 25.5m2t           | 18 20    | 14       | 10 |      | 1.1
      Quillmarsh | Glasswort 3        | 3   | 12.5 | square | 31 | 2   | 9         | 25.5m2t 20m2      | 20 22    | 14       | 12 |      | 1.1
      Quillmarsh | Glasswort 3 Bare   | 3   | 10.8 | square | 31 | 2   | 9         | 25.5m2            |          | 14       | 12 |      | 1.05
      Quillmarsh | Glasswort 3.5      | 3.5 | 13   | square | 33 | 2.5 | 9-12      | 25.5m2t 20m2      | 20 22 25 | 14 19    | 16 |      | 1.1
      Quillmarsh | Glasswort 4        | 4   | 12.6 | square | 34 | 2.5 | 9-12      | 25.5m2t 20m2      | 20 22 25 | 14 19    | 16 |      | 1.1
      Quillmarsh | Glasswort 4 Long   | 4   | 11.8 | square | 38 | 2   | 9         | 25.5m2            | 20 22    | 14       | 16 |      | 1.15
      Quillmarsh | Glasswort 5        | 5   | 10.6 | square | 34 | 2.5 | 9-12      | 25.5m2t 20m2      | 20 22 25 | 14 19    | 16 |      | 1.15
      Quillmarsh | Glasswort 5 Long   | 5   | 9.9  | square | 44 | 2.5 | 12        | 25.5m2            | 20 22    | 14       | 16 |      | 1.25
      Gorsewain  | Arrowgrass 3       | 3   | 14   | square | 34 | 2.5 | 9 12      | 25.5m2 20m2       | 20 22 25 | 14 19    | 12 |      | 0.95
      Gorsewain  | Arrowgrass 4       | 4   | 14.6 | square | 36 | 3   | 9 12      | 25.5m2 20m2,20m2  | 20 22 25 28 | 14 19 | 16 |      | 0.95
      Gorsewain  | Arrowgrass 5       | 5   | 12   | square | 38 | 3   | 12 16     | 30.5m3 20m2,20m2  | 22 25 28 | 19       | 16 |      | 0.95
      Gorsewain  | Arrowgrass 5 Ridge | 5   | 24.5 | square | 38 | 5   | 16-19     | 30.5m3 20m3,20m2  | 25 28 30 | 19       | 20 |      | 1
      Gorsewain  | Arrowgrass 5 Moor  | 5   | 26.5 | wide   | 40 | 6   | 16-19     | 30.5m3,30.5m3 20m2 | 28 30   | 19 21    | 20 |      | 1
      Tidderlow  | Cottongrass 2.5    | 2.5 | 12.2 | wide   | 32 | 2   | 6.6 9     | 25.5m2 16m2       | 18 20 22 | 14       | 12 |      | 0.9
      Tidderlow  | Cottongrass 3      | 3   | 12   | wide   | 34 | 2   | 9         | 25.5m2 20m2       | 18 20 22 | 14       | 12 |      | 0.9
      Tidderlow  | Cottongrass 3.5    | 3.5 | 12.4 | wide   | 38 | 2.5 | 9-12      | 25.5m2 20m2       | 20 22    | 14       | 12 |      | 0.9
      Tidderlow  | Cottongrass 4      | 4   | 12.2 | wide   | 40 | 2.5 | 9-12      | 25.5m2 20m2       | 20 22 25 | 14 19    | 16 |      | 0.9
      Tidderlow  | Cottongrass 4.5    | 4.5 | 11.2 | wide   | 40 | 2.5 | 9-12      | 25.5m2 20m2       | 20 22 25 | 14 19    | 16 |      | 0.9
      Tidderlow  | Cottongrass 5      | 5   | 10.4 | wide   | 40 | 2.5 | 12        | 25.5m2 20m2       | 20 22 25 | 14 19    | 16 |      | 0.95
      Tidderlow  | Thistledown 4      | 4   | 9.4  | wide   | 36 | 2   | 9         | 25.5m2            | 20 22    | 14       | 12 |      | 1.3
      Tidderlow  | Thistledown 5      | 5   | 9.3  | wide   | 38 | 2   | 9-12      | 25.5m2            | 20 22    | 14       | 12 |      | 1.35
      Wendelrush | Bulrush 2.5 Ring   | 2.5 | 18   | wide   | 32 | 2.5 | 9         | 25.5m2            | 20 22 25 | 14       | 12 | 18   | 1.1
      Wendelrush | Bulrush 3 Ring     | 3   | 17.5 | wide   | 34 | 2.5 | 9         | 25.5m2 20m2       | 20 22 25 | 14       | 12 | 20   | 1.1
      Wendelrush | Bulrush 3.5 Ring   | 3.5 | 17   | wide   | 36 | 3   | 9-12      | 25.5m2 20m2       | 22 25 28 | 14 19    | 16 | 22   | 1.1
      Wendelrush | Bulrush 4 Ring     | 4   | 16.8 | square | 36 | 3   | 9-12      | 25.5m2 20m2,20m2  | 22 25 28 | 14 19    | 16 | 27   | 1.1
      Wendelrush | Bulrush 5 Long     | 5   | 17   | square | 44 | 3.5 | 12 16     | 30.5m3 20m2,25m2 20m2 | 22 25 28 30 | 19 21 | 20 |   | 1
      Wendelrush | Bulrush 4.5 Long   | 4.5 | 14.5 | square | 44 | 3   | 9-12      | 25.5m2 20m2,20m2  | 22 25 28 | 14 19    | 16 |      | 1
      """;

  /** A propeller may be a tenth of an inch larger than its label. */
  private static final double OVER_LABEL_MILLIMETRES = 2.5;

  private static final double TIP_CLEARANCE = 3;

  private Frames() {}

  static List<Frame> all() {
    return Shelf.rows(FRAMES).map(Frames::one).toList();
  }

  private static Frame one(String[] row) {
    var name = row[1];
    var draw = Draw.of(name);
    var propeller = Double.parseDouble(row[2]);
    var wide = row[4].equals("wide");
    var below = !wide && !name.startsWith("Arrowgrass");
    var bayWidth = Double.parseDouble(row[5]);
    var disc = Units.inchesToMillimetres(propeller) + OVER_LABEL_MILLIMETRES;
    var side = wide
        ? Math.ceil(disc + TIP_CLEARANCE)
        : squareSide(disc, bayWidth, packLength(name, propeller));
    var front = wide ? Math.ceil(disc + 2 * TIP_CLEARANCE + bayWidth) : side;
    var diagonal = Math.hypot(front, side);
    var grams = Double.parseDouble(row[3]) * diagonal * diagonal / 10_000 * draw.scatter(0.02);
    var heights = heights(row[9], grams);
    var known = Sources.usual(draw);
    var half = Draw.round(Math.min(42, 20 + 4.4 * propeller), 1);
    var soft = name.startsWith("Thistledown");
    return new Frame(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price((7 + 4.2 * propeller + 0.16 * grams)
            * Double.parseDouble(row[13])
            * draw.scatter(0.05)),
        Sale.EACH,
        frameMass(grams, known),
        front,
        side,
        draw.chance(0.6) ? Draw.round(diagonal, 1) : null,
        Double.parseDouble(row[6]),
        arm(name, propeller, Double.parseDouble(row[3])),
        propeller,
        circles(row[7]),
        row[12].isEmpty() ? null : Double.valueOf(row[12]),
        positions(row[8], heights.isEmpty(), propeller),
        heights,
        Stream.of(row[10].split(" ", -1)).map(Double::valueOf).toList(),
        Draw.round(side / 2 - 4 + draw.between(-3, 3), 1),
        row[0].equals("Gorsewain") ? Double.valueOf(12) : null,
        null,
        bay(below, bayWidth, half, row, draw),
        Draw.round(draw.between(-2, 4), 0.5),
        dragArea(propeller, Double.parseDouble(row[3]), draw),
        row[0].equals("Gorsewain") ? drawing(name, front, side, grams, row) : null,
        null,
        Sources.withNote(
            Sources.of(known, "distances from the maker's drawing", draw),
            soft
                ? "Saves some grams by thin arms; the maker warns against hard landings."
                : below ? "The pack hangs below, between high legs." : ""),
        List.of(),
        null);
  }

  /** Wider on heavy frames, narrower toward the motor; drawn apart, so that nothing else moves. */
  private static Frame.ArmWidth arm(String name, double propeller, double perSquare) {
    var draw = Draw.of(name + " arms");
    var middle = (1.8 + 1.15 * propeller) * Math.sqrt(perSquare / 17) * draw.scatter(0.06);
    return new Frame.ArmWidth(Draw.round(1.15 * middle, 0.1), Draw.round(0.85 * middle, 0.1));
  }

  /** Arms from plate to motor, and plates that take what arms, standoffs and screws leave of its mass. */
  private static FrameDrawing drawing(
      String name, double front, double side, double grams, String[] row) {
    var draw = Draw.of(name + " drawing");
    var propeller = Double.parseDouble(row[2]);
    var thickness = Double.parseDouble(row[6]);
    var along = 2 * Math.min(42, 20 + 4.4 * propeller);
    var bare = 1 - Math.min(Double.parseDouble(row[5]) / front, along / side);
    var length = Draw.round(bare * Math.hypot(front, side) / 2, 0.5);
    var width = arm(name, propeller, Double.parseDouble(row[3]));
    var arms = Stream.of(FrameDrawing.Pair.values())
        .map(pair -> new FrameDrawing.Arm(pair, length, null, null, null, null, null, null))
        .toList();
    var standoffs = new FrameDrawing.Standoffs(6, grams > 60 ? 0.037 : 0.019);
    var screws = new FrameDrawing.Screws(16, grams > 60 ? 0.6 : 0.25);
    var height = Double.parseDouble(row[9].split(" ", -1)[0]);
    var ends = Math.pow(
        circles(row[7]).stream().mapToDouble(Span::toMillimetres).max().orElseThrow() + 4, 2);
    var plates = (grams
            - 4 * 1.55e-3 * thickness * (length * width.mean() + 0.5 * ends)
            - 6 * standoffs.gramsPerMillimetre() * height
            - 16 * screws.grams())
        * draw.scatter(0.03);
    return new FrameDrawing(
        List.of(
            plate("bottom", 0.6 * plates, Math.max(1.5, thickness - 1), draw),
            plate("top", 0.4 * plates, 1.5, draw)),
        arms,
        standoffs,
        screws);
  }

  private static FrameDrawing.Plate plate(String name, double grams, double thickness, Draw draw) {
    return new FrameDrawing.Plate(
        name,
        thickness,
        null,
        Draw.round(grams / (1.55e-3 * thickness), 10),
        Draw.round(draw.between(-6, 6), 0.5),
        null,
        null,
        null,
        null);
  }

  /** Longest pack a square frame is meant for, mm. */
  private static double packLength(String name, double propeller) {
    return name.endsWith("Long")
        ? (propeller < 4.5 ? 71 : 76)
        : Math.min(62, 13 + 12.4 * propeller);
  }

  /** Least spacing that keeps all four discs clear of the corners of a pack moved by 3 mm. */
  private static double squareSide(double disc, double packWidth, double packLength) {
    var side = Math.ceil(disc + TIP_CLEARANCE);
    while (Math.hypot(side / 2 - packLength / 2 - 3, side / 2 - packWidth / 2)
        < disc / 2 + TIP_CLEARANCE) {
      side++;
    }
    return side;
  }

  private static Mass frameMass(double grams, Known known) {
    var shown = Draw.round(grams, 0.1);
    return known == Known.ESTIMATED
        ? new Mass(shown, known, Draw.round(0.06 * grams, 0.1))
        : Mass.of(shown, known);
  }

  private static Bay bay(boolean below, double width, double half, String[] row, Draw draw) {
    var forward = draw.between(-4, 4);
    return new Bay(
        below ? Bay.Side.BOTTOM : Bay.Side.TOP,
        width,
        Draw.round(-half + forward, 1),
        Draw.round(half + forward, 1),
        below ? Draw.round(draw.between(34, 48), 1) : null,
        Double.parseDouble(row[11]));
  }

  private static @Nullable Double dragArea(double propeller, double perSquare, Draw draw) {
    if (draw.chance(0.4)) {
      return null;
    }
    var area = perSquare > 22 ? 0.010 : 0.0009 * propeller + 0.0004;
    return Draw.round(area * draw.scatter(0.12), 0.0001);
  }

  private static List<Span> circles(String text) {
    return Stream.of(text.split(" ", -1))
        .map(circle -> {
          var ends = circle.split("-", -1);
          return new Span(Double.parseDouble(ends[0]), Double.parseDouble(ends[ends.length - 1]));
        })
        .toList();
  }

  private static List<PlateHeight> heights(String text, double grams) {
    var heights = new ArrayList<PlateHeight>();
    if (text.isEmpty()) {
      return heights;
    }
    var first = Double.parseDouble(text.split(" ", -1)[0]);
    // Six standoffs: aluminium M3 on heavy frames, M2 on light ones.
    var perMillimetre = 6 * (grams > 60 ? 0.037 : 0.019);
    for (var height : text.split(" ", -1)) {
      var millimetres = Double.parseDouble(height);
      heights.add(
          new PlateHeight(millimetres, Draw.round((millimetres - first) * perMillimetre, 0.1)));
    }
    return heights;
  }

  private static List<Position> positions(String text, boolean open, double propeller) {
    var positions = new ArrayList<Position>();
    var places = text.split(",", -1);
    for (var i = 0; i < places.length; i++) {
      positions.add(new Position(
          i == 0 ? "middle" : "rear",
          i == 0 ? 0 : Draw.round(-22 - 3.2 * propeller, 1),
          Stream.of(places[i].strip().split(" ", -1)).map(Frames::holes).toList(),
          open));
    }
    return positions;
  }

  private static MountingHoles holes(String text) {
    var at = text.indexOf('m');
    return new MountingHoles(
        pattern(text.substring(0, at)), text.charAt(at + 1) == '2' ? 2.2 : 3.2, text.endsWith("t"));
  }

  static StackPattern pattern(String side) {
    return Stream.of(StackPattern.values())
        .filter(pattern -> pattern.label().startsWith(side + "x"))
        .findFirst()
        .orElseThrow();
  }
}
