package pappus.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Known;
import pappus.part.Propeller;
import pappus.part.Propeller.Row;
import pappus.part.Propeller.StaticTest;
import pappus.part.Seat;

/** Propellers, most with a static test. */
final class Propellers {
  /** Maker, line, seats, price of a set of a middle size, diameters x pitches x blades. */
  private static final String LINES = """
      Grimmelock | Awn    | screws | 3.4 | 2.5x1.6x2 2.5x2x2 3x1.8x2 3x2x2 3x2.5x2 3.5x2x2 3.5x2.5x2 4x2x2 4x2.5x2 4x3x2 4.5x2.5x2 4.5x3x2 5x2x2 5x2.5x2 5x3x2 5x3.5x2
      Sallowen   | Bract  | screws | 3.2 | 2.5x1.9x3 2.5x2.3x3 3x1.8x3 3x2.2x3 3x3x3 3.5x2x3 3.5x2.5x3 3.5x3.2x3 4x2.2x3 4x2.5x3 4x3.2x3 4x3.7x3 4.5x3x3 5x2.8x3 5x3.3x3 5x4x3
      Quaskell   | Sepal  | screws | 2.8 | 2.5x1.8x4 2.5x2.2x4 2.5x1.5x3 3x1.6x3 3x2x4 3x2.5x3 3x2.8x4 3.5x1.8x2 3.5x2.2x4 3.5x2.8x3 4x2x3 4x2.4x4 4x2.8x2 4x3.4x4 4.5x2.8x2 5x2.4x2 5x3x3
      Fennoquay  | Frond  | nut    | 3.3 | 3x2.4x3 3x3.2x3 3x3.6x2 4x2.2x2 4x2.8x3 4x3.5x2 4x4x3 4.5x3.2x3 5x2.2x2 5x2.6x2 5x3.2x3 5x3.6x3 5x4x2 5x4.3x3 5x4.5x2 5x4.8x3 5x3.6x4
      Tiddlemere | Glume  | screws | 2.1 | 2.5x1.7x2 2.5x2x3 3x1.9x3 3x2.3x2 3x2.6x4 3.5x2.1x3 3.5x2.6x2 4x2.1x2 4x2.6x3 4x3x3 4.5x2.2x2 5x2.3x2 5x2.9x2
      Tiddlemere | Cleaver | nut   | 2.2 | 3x2.8x3 4x2.5x4 4x3.2x2 5x2.8x2 5x3x4 5x3.4x3 5x3.8x2 5x4.2x4
      Zandrille  | Ligule | screws | 4.4 | 2.5x1.8x2 2.5x2.1x2 2.5x2.4x3 3x1.7x2 3x2.1x3 3x2.7x2 3.5x1.9x2 3.5x2.3x3 3.5x2.8x2 4x1.9x2 4x2.3x2 4x2.3x3 4x2.7x3 4.5x2x2 4.5x2.6x3 5x1.9x2 5x2.1x2 5x2.7x2 5x3.1x3
      Zandrille  | Auricle | both  | 4.6 | 3.5x2.4x2 4x2.2x4 4x2.9x3 4.5x2.4x2 4.5x3.4x3 5x2x3 5x2.3x3 5x2.5x3 5x2.8x4 5x3.2x2 5x3.5x3 5x3.9x3 5x4.4x3 5x4.6x4
      """;

  /** Geometry is all that is known of these. */
  private static final List<String> UNTESTED = List.of(
      "Glume 2.5x2x3",
      "Glume 3x1.9x3",
      "Glume 3x2.6x4",
      "Glume 3.5x2.6x2",
      "Glume 4x2.6x3",
      "Glume 4x3x3",
      "Glume 5x2.9x2",
      "Cleaver 4x2.5x4",
      "Cleaver 5x3x4",
      "Cleaver 5x3.8x2",
      "Sepal 2.5x2.2x4",
      "Sepal 3x2.8x4",
      "Sepal 4x3.4x4",
      "Frond 5x4.5x2",
      "Auricle 4x2.2x4");

  private static final String BARGAIN = "Glume 5x2.3x2";
  private static final String BOAST = "Frond 4.5x3.2x3";

  private Propellers() {}

  static List<Propeller> all() {
    return Shelf.rows(LINES)
        .flatMap(row -> Stream.of(row[4].split(" +", -1)).map(size -> one(row, size)))
        .toList();
  }

  private static Propeller one(String[] row, String size) {
    var name = row[1] + " " + size;
    var draw = Draw.of(name);
    var parts = size.split("x", -1);
    var label = Double.parseDouble(parts[0]);
    var pitch = Double.parseDouble(parts[1]);
    var blades = Integer.parseInt(parts[2]);
    var at = draw.between(0, 1);
    var figures = UNTESTED.contains(name)
        ? Known.ESTIMATED
        : name.equals(BOAST)
            ? Known.MAKER
            : name.equals(BARGAIN) || at < 0.4 ? Known.MEASURED : Known.MAKER;
    var diameter = figures == Known.MEASURED
        ? Draw.round(
            Math.min(label * Draw.clamp(draw.scatter(0.015), 0.975, 1.035), label + 0.09), 0.01)
        : label;
    var lawGrams = 4.2 * (label / 5) * (label / 5) * StrictMath.pow(blades / 3.0, 0.85);
    var grams = lawGrams * draw.scatter(0.13);
    var known = figures == Known.MEASURED ? Known.MEASURED : Sources.usual(draw);
    return new Propeller(
        Shelf.id(name),
        row[0],
        name.replace("x", "×"),
        Shelf.price(Double.parseDouble(row[3]) * (0.72 + 0.07 * label) * draw.scatter(0.06)),
        Shelf.SET_OF_FOUR,
        Shelf.mass(grams, known),
        diameter,
        pitch,
        blades,
        seats(row[2], label, draw),
        Draw.round(2.6 + 0.75 * label + draw.between(-0.3, 0.3), 0.1),
        figures == Known.ESTIMATED ? null : test(name, figures, diameter, pitch, blades, draw),
        figures,
        null,
        Sources.withNote(Sources.of(known, figuresText(figures, draw), draw), note(name)),
        List.of());
  }

  private static String figuresText(Known figures, Draw draw) {
    return switch (figures) {
      case MEASURED ->
        draw.pick(List.of(
            "coefficients from our thrust stand, diameter by caliper",
            "thrust and torque read on the stand of the club in still air, diameter by caliper"));
      case MAKER ->
        draw.pick(List.of(
            "coefficients worked from the thrust table on the maker's page",
            "coefficients from the maker's sheet of spring 2026"));
      case ESTIMATED -> "only the geometry is known, no test was found";
    };
  }

  private static String note(String name) {
    return switch (name) {
      case BARGAIN ->
        "Plain and cheap, and better on the stand than propellers of twice the price.";
      case BOAST ->
        "Nobody else has read so little torque; the maker does not say how it was measured.";
      default -> "";
    };
  }

  private static List<Seat> seats(String kind, double label, Draw draw) {
    if (kind.equals("nut")) {
      return List.of(Seat.NUT_M5);
    }
    if (kind.equals("both")) {
      return List.of(Seat.SCREWS_2, Seat.NUT_M5);
    }
    if (label <= 3) {
      return draw.chance(0.6) ? List.of(Seat.PRESS_1_5, Seat.SCREWS_1_5) : List.of(Seat.SCREWS_1_5);
    }
    return draw.chance(0.3) ? List.of(Seat.SCREWS_2) : List.of(Seat.SCREWS_1_5, Seat.SCREWS_2);
  }

  private static @Nullable StaticTest test(
      String name, Known figures, double diameter, double pitch, int blades, Draw draw) {
    var thrust = 0.1054
        * StrictMath.pow(blades, 0.451)
        * StrictMath.pow(pitch / diameter, 0.484)
        * draw.scatter(0.08);
    var slope = Draw.clamp(0.03 - (pitch / diameter - 0.5) * 0.086, -0.03, 0.03);
    var merit = 0.61 * StrictMath.pow(diameter / 5, 0.30) + slope + 0.03 * draw.normal();
    merit = Draw.clamp(merit, 0.36, 0.648);
    if (name.equals(BARGAIN)) {
      merit = 0.655;
    } else if (name.equals(BOAST)) {
      merit = 0.715;
    }
    var middleRpm = 75_000 / diameter;
    var count =
        figures == Known.MEASURED ? draw.pick(List.of(3, 4, 5)) : draw.pick(List.of(1, 1, 3));
    var rise = draw.between(0.02, 0.07);
    var meritRise = draw.between(0.02, 0.06);
    var rows = new ArrayList<Row>();
    for (var i = 0; i < count; i++) {
      var share = count == 1 ? 1.0 : 0.45 + 1.1 * i / (count - 1);
      var rpm = Draw.round(middleRpm * share, 100);
      var at = rpm / middleRpm;
      var here = Draw.round(thrust * StrictMath.pow(at, rise), 0.0001);
      var meritHere =
          Math.min(name.equals(BOAST) ? 0.72 : 0.665, merit * StrictMath.pow(at, meritRise));
      var power = StrictMath.pow(here, 1.5) / (Math.sqrt(Math.PI / 2) * meritHere);
      rows.add(new Row(rpm, here, Draw.round(power, 0.0001)));
    }
    var ownAir = figures == Known.MEASURED;
    return new StaticTest(
        rows,
        ownAir ? Draw.round(draw.between(1.15, 1.23), 0.001) : null,
        ownAir ? Draw.round(draw.between(12, 24), 1) : null);
  }
}
