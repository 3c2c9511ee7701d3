package pappus.shop;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Battery;
import pappus.part.Battery.Resistance;
import pappus.part.Battery.Resistance.Reading;
import pappus.part.Chemistry;
import pappus.part.Connector;
import pappus.part.Known;
import pappus.part.Sale;
import pappus.part.Wire;

/** Pouch packs. */
final class Batteries {
  /** Maker, line, chemistry, label rating over the honest one, price level, packs as cells-capacity. */
  private static final String LINES = """
      Ymberoe    | Neap       | LIPO | 2.6 | 1    | 2-300 2-350 2-450 2-550 2-650 2-850 3-450 3-550 3-650 3-850 4-450 4-550 4-650 4-850 4-1050 4-1300 4-1500 6-550 6-1050 6-1300
      Uvermeer   | Floodmark  | LIPO | 4.2 | 0.88 | 2-300 2-450 2-650 3-450 3-650 3-850 4-450 4-650 4-850 4-1300 4-1500 5-650 5-1050 6-850 6-1050 6-1300 6-1500
      Brackelund | Slackwater | LIPO | 2.1 | 1.15 | 2-350 2-550 2-1000 3-450 3-550 3-750 3-1000 4-450 4-550 4-750 4-850 4-1000 5-1300 6-650 6-1300
      Thrumbel   | Skerry     | LIPO | 3.2 | 0.8  | 2-450 3-450 3-850 4-650 4-850 4-1500
      Lissomel   | Ebb        | LIHV | 2.8 | 1.12 | 2-300 2-380 2-450 2-550 2-660 2-720 3-380 3-450 3-560 3-660 3-720 3-1000 4-450 4-560 4-660 4-720 4-850 4-1100
      Ymberoe    | Neap HV    | LIHV | 2.7 | 1.05 | 2-450 2-650 3-450 3-650 4-450 4-650 4-850 5-720 6-850 6-1100
      Orremund   | Driblet    | LIPO | 2.6 | 1    | 1-300 1-450 1-550 1-650 1-850 2-1300 3-1300 5-850
      Orremund   | Driblet HV | LIHV | 2.7 | 1.1  | 1-300 1-380 1-450 1-520 1-650 1-850 2-850 3-850 4-1500 5-850 6-550 6-1300
      Lissomel   | Stillwater | LIHV | 0   | 1.25 | 2-1200 2-1600 2-2000 3-1100 3-1500 4-850 4-1000 4-1300
      """;

  private static final String TALL_LABEL = "Floodmark 4S 850";
  private static final String BARGAIN = "Skerry 4S 650";
  private static final String SMALL_PLUG = "Driblet 1S 850";

  private static final double LEAST_HEIGHT = 6;

  private Batteries() {}

  static List<Battery> all() {
    return Stream.concat(
            Shelf.rows(LINES)
                .flatMap(row -> Stream.of(row[5].split(" +", -1)).map(size -> one(row, size))),
            CylinderPacks.all().stream())
        .toList();
  }

  private static Battery one(String[] row, String size) {
    var cells = Integer.parseInt(size.substring(0, 1));
    var milliampHours = Integer.parseInt(size.substring(2));
    var ampHours = milliampHours / 1000.0;
    var name = row[1] + " " + cells + "S " + milliampHours;
    var draw = Draw.of(name);
    var chemistry = Chemistry.valueOf(row[2]);
    var slow = row[1].equals("Stillwater");
    var wattHours = ampHours * cells * chemistry.nominalVolts();
    var grams =
        slow ? wattHours / 0.2 * draw.scatter(0.06) : grams(cells, ampHours, chemistry, draw);
    grams =
        Draw.clamp(grams, wattHours / (slow ? 0.218 : 0.172), wattHours / (slow ? 0.172 : 0.092));
    var connector =
        name.equals(SMALL_PLUG) ? Connector.PH2 : connector(row[1], cells, milliampHours);
    var gauge = gauge(connector, milliampHours);
    var leadMillimetres = connector == Connector.XT60 ? 90 : milliampHours < 500 ? 55 : 70;
    var leadGrams = leadGrams(connector, gauge, leadMillimetres);
    var includes = draw.chance(0.6);
    var product = (ampHours < 0.5 ? 18 : 14) * draw.scatter(0.3) * (slow ? 1.35 : 1);
    if (name.equals(TALL_LABEL)) {
      product = 14 * StrictMath.exp(0.3 * 2.1);
    } else if (name.equals(BARGAIN)) {
      product = 14 * StrictMath.exp(-0.3 * 2.1);
    }
    product = Draw.clamp(product, 6.5, 38);
    var at = draw.between(0, 1);
    var figures = at < 0.3 ? Known.MEASURED : at < 0.9 ? Known.MAKER : Known.ESTIMATED;
    var special = name.equals(TALL_LABEL) || name.equals(BARGAIN);
    if (special) {
      figures = Known.MEASURED;
    }
    var charger = figures == Known.MAKER || draw.chance(0.3);
    var bodyMillilitres = (grams - leadGrams) / (2.2 * draw.scatter(0.05));
    var sides = sides(ampHours, bodyMillilitres);
    var known = Sources.usual(draw);
    var price = (3.6 + 3.5 * cells * ampHours) * Double.parseDouble(row[4]) * draw.scatter(0.06);
    return new Battery(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price(price),
        Sale.EACH,
        Shelf.mass(includes ? grams : grams - leadGrams, known),
        chemistry,
        cells,
        1,
        milliampHours,
        delivered(name, milliampHours, figures),
        figures == Known.ESTIMATED ? null : resistance(product / ampHours, charger),
        label(name, product, Double.parseDouble(row[3]), draw),
        null,
        null,
        connector,
        gauge,
        leadMillimetres,
        includes,
        sides[0],
        sides[1],
        sides[2],
        figures,
        null,
        Sources.withNote(
            Sources.of(known, figuresText(figures, charger, draw), draw),
            name.equals(TALL_LABEL)
                ? "The label promises several times what its resistance allows."
                : name.equals(BARGAIN)
                    ? "The cheap line of the shelf, and yet the lowest resistance of its size we have read."
                    : name.equals(SMALL_PLUG)
                        ? "A label for tens of amperes, behind a plug that stands three: the plug decides."
                        : ""),
        List.of());
  }

  /** A measured pack's own charge: 95 % of the label, ±3 %; a draw of its own leaves the others as they are. */
  static @Nullable Double delivered(String name, double milliampHours, Known figures) {
    return figures == Known.MEASURED
        ? Draw.round(milliampHours * 0.95 * Draw.of(name + " delivered").scatter(0.03), 5)
        : null;
  }

  private static double grams(int cells, double ampHours, Chemistry chemistry, Draw draw) {
    var law = 28.3 * cells * ampHours + 0.63 * cells - 0.9;
    return law
        * (ampHours < 0.5 ? 1.08 : 1)
        * (chemistry == Chemistry.LIHV ? 0.957 : 1)
        * draw.scatter(0.08);
  }

  private static Connector connector(String line, int cells, int milliampHours) {
    if (cells == 1) {
      return milliampHours < 400 ? Connector.PH2 : Connector.ONE_CELL;
    }
    if (cells == 2 && milliampHours <= 450) {
      return switch (line) {
        case "Neap" -> milliampHours < 400 ? Connector.PH2 : Connector.XT30;
        case "Floodmark", "Skerry" -> Connector.RCY;
        default -> Connector.XT30;
      };
    }
    return cells * milliampHours >= 5000 && milliampHours >= 1050 ? Connector.XT60 : Connector.XT30;
  }

  static int gauge(Connector connector, int milliampHours) {
    return switch (connector) {
      case PH2, ONE_CELL -> 26;
      case RCY -> 22;
      case XT30 -> milliampHours < 500 ? 20 : 18;
      case XT60 -> 14;
    };
  }

  /** Two wires and half a plug, g. */
  static double leadGrams(Connector connector, int gauge, double millimetres) {
    return 2 * millimetres / 1000 * Wire.ofGauge(gauge).gramsPerMetre() + connector.halfGrams();
  }

  static Resistance resistance(double directMilliohms, boolean charger) {
    return charger
        ? new Resistance(Draw.round(directMilliohms / 1.8, 0.1), Reading.CHARGER)
        : new Resistance(Draw.round(directMilliohms, 0.1), Reading.DIRECT_CURRENT);
  }

  private static @Nullable Double label(String name, double product, double ratio, Draw draw) {
    var honest = 300 / product;
    if (ratio == 0) {
      return Draw.round(Math.max(5, honest * 0.6), 1);
    }
    if (name.equals(TALL_LABEL)) {
      return 90.0;
    }
    return Draw.clamp(
        Draw.round(honest * Draw.clamp(ratio * draw.scatter(0.2), 1.5, 5.5), 5), 20, 150);
  }

  private static String figuresText(Known figures, boolean charger, Draw draw) {
    return switch (figures) {
      case MEASURED ->
        charger
            ? "capacity by a full discharge, resistance read off the charger, mean of the cells"
            : "capacity and resistance from a ten-second step on our bench at 25 °C";
      case MAKER ->
        draw.pick(List.of(
            "capacity from the label, resistance from the sheet in the box, read with a 1 kHz meter",
            "capacity from the label, resistance as the maker reads it on a charger"));
      case ESTIMATED -> "capacity from the label, nothing said about resistance";
    };
  }

  /** Length, width and height of a stack of pouches, mm, longest first. */
  private static double[] sides(double ampHours, double millilitres) {
    var length = 60 * StrictMath.pow(ampHours / 0.85, 0.38);
    var width = 30 * StrictMath.pow(ampHours / 0.85, 0.28);
    var height = millilitres * 1000 / length / width;
    // A pouch by itself is sold slimmer than it would be in a stack.
    var single = height < LEAST_HEIGHT;
    if (single) {
      width = millilitres * 1000 / length / LEAST_HEIGHT;
      height = LEAST_HEIGHT;
    }
    var step = single ? 0.5 : 1;
    if (height > width) {
      width = Math.sqrt(width * height);
      height = width;
    }
    return new double[] {Draw.round(length, step), Draw.round(width, step), Draw.round(height, step)
    };
  }
}
