package pappus.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Battery;
import pappus.part.Chemistry;
import pappus.part.Connector;
import pappus.part.Known;
import pappus.part.Sale;

/** Packs welded of cylindrical Li-ion cells. */
final class CylinderPacks {
  /** A cell: power or energy, diameter, length, capacity, grams, continuous amperes, price. */
  private record Cell(
      Chemistry chemistry,
      double diameter,
      double length,
      int milliampHours,
      double grams,
      double amps,
      double euros) {}

  private static final Chemistry POWER = Chemistry.LI_ION_POWER;
  private static final Chemistry ENERGY = Chemistry.LI_ION_ENERGY;

  private static final Map<String, Cell> CELLS = Map.ofEntries(
      Map.entry("P18S", new Cell(POWER, 18.3, 35.2, 1400, 25.4, 10, 4.2)),
      Map.entry("P26", new Cell(POWER, 18.4, 65.1, 2600, 46.0, 25, 4.6)),
      Map.entry("P28", new Cell(POWER, 18.4, 65.1, 2800, 47.6, 25, 5.2)),
      Map.entry("P30", new Cell(POWER, 18.4, 65.1, 3000, 48.2, 20, 5.6)),
      Map.entry("P40", new Cell(POWER, 21.3, 70.2, 4000, 68.4, 40, 6.6)),
      Map.entry("P42", new Cell(POWER, 21.3, 70.2, 4200, 69.4, 45, 7.2)),
      Map.entry("E34", new Cell(ENERGY, 18.4, 65.1, 3400, 48.4, 8, 4.8)),
      Map.entry("E35", new Cell(ENERGY, 18.4, 65.1, 3500, 48.6, 10, 5.4)),
      Map.entry("E48", new Cell(ENERGY, 21.3, 70.2, 4800, 68.8, 10, 6.2)),
      Map.entry("E50", new Cell(ENERGY, 21.3, 70.2, 5000, 69.2, 15, 6.9)));

  /** Maker, line, packs as cells in series, in parallel, cell. */
  private static final String LINES = """
      Sennegrus  | Saltpan  | 2-1-P26 2-1-P28 2-1-P30 2-1-P40 2-1-P42 3-1-P18S 3-1-P26 3-1-P28 3-1-P40 4-1-P28 4-1-P42 3-1-P30 4-1-P26
      Orremund   | Groyne   | 1-1-P18S 2-1-P18S 1-1-P30 1-1-P42 6-1-P18S
      Orremund   | Bollard  | 1-1-E35 1-1-E50
      Corriquell | Tidewell | 2-1-E34 2-1-E35 2-1-E48 2-1-E50 3-1-E34 3-1-E35 3-1-E50 4-1-E34 4-1-E35 4-1-E50 3-1-E48 4-1-E48 2-2-E35
      """;

  private static final String TALL_LABEL = "Tidewell 4S 3500";

  private CylinderPacks() {}

  static List<Battery> all() {
    return Shelf.rows(LINES)
        .flatMap(row ->
            Stream.of(row[2].split(" +", -1)).map(pack -> one(row, pack.split("-", -1))))
        .toList();
  }

  private static Battery one(String[] row, String[] pack) {
    var series = Integer.parseInt(pack[0]);
    var parallel = Integer.parseInt(pack[1]);
    var cell = Objects.requireNonNull(CELLS.get(pack[2]));
    var capacity = cell.milliampHours() * parallel;
    var name = String.format(Locale.ROOT, "%s %dS %d", row[1], series, capacity);
    var draw = Draw.of(name);
    var count = series * parallel;
    var connector = count > 3 && cell.diameter() > 20
        ? Connector.XT60
        : series == 1 && cell.amps() < 12 ? Connector.ONE_CELL : Connector.XT30;
    var gauge = cell.amps() < 12 ? 20 : connector == Connector.XT60 ? 16 : 18;
    var leadMillimetres = 80;
    var leadGrams = Batteries.leadGrams(connector, gauge, leadMillimetres);
    var includes = draw.chance(0.65);
    var body = count * cell.grams() * draw.between(1.05, 1.10);
    var law = cell.chemistry() == POWER ? 60 : 140;
    var product = Draw.clamp(law * draw.scatter(0.25), 34, 240);
    var at = draw.between(0, 1);
    var figures = at < 0.3 ? Known.MEASURED : at < 0.85 ? Known.MAKER : Known.ESTIMATED;
    var known = Sources.usual(draw);
    var sides = sides(count, cell);
    return new Battery(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price((count * cell.euros() + 3.5) * draw.scatter(0.05)),
        Sale.EACH,
        Shelf.mass(includes ? body + leadGrams : body, known),
        cell.chemistry(),
        series,
        parallel,
        capacity,
        Batteries.delivered(name, capacity, figures),
        figures == Known.ESTIMATED
            ? null
            : Batteries.resistance(product / (capacity / 1000.0), figures == Known.MAKER),
        label(name, cell, draw),
        name.equals(TALL_LABEL) ? 10.0 : cell.amps() * parallel,
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
            Sources.of(known, figuresText(figures), draw),
            name.equals(TALL_LABEL)
                ? "The shrink-wrap boasts of twice what the cell maker allows."
                : ""),
        List.of());
  }

  private static @Nullable Double label(String name, Cell cell, Draw draw) {
    if (name.equals(TALL_LABEL)) {
      return 6.0;
    }
    var honest = cell.amps() * 1000 / cell.milliampHours();
    return draw.chance(0.5) ? Draw.round(honest * draw.between(1.0, 1.2), 0.5) : null;
  }

  private static String figuresText(Known figures) {
    return switch (figures) {
      case MEASURED ->
        "capacity and resistance from a slow discharge with ten-second steps on our bench";
      case MAKER -> "capacity and current from the sheet of the cell, resistance its 1 kHz figure";
      case ESTIMATED -> "capacity and current from the sheet of the cell, resistance not stated";
    };
  }

  /** One cell, two side by side, three nested, four and six in two layers, mm, longest first. */
  private static double[] sides(int count, Cell cell) {
    var across = Draw.round(cell.diameter() + 0.4, 0.1);
    var length = Draw.round(cell.length() + 5, 1);
    return switch (count) {
      case 1 -> sorted(length, across, across);
      case 2 -> sorted(length, 2 * across, across);
      case 3 -> sorted(length, 2 * across, 1.87 * across);
      case 6 -> sorted(length, 3 * across, 2 * across);
      default -> sorted(length, 2 * across, 2 * across);
    };
  }

  private static double[] sorted(double... sides) {
    Arrays.sort(sides);
    return new double[] {Draw.round(sides[2], 1), Draw.round(sides[1], 1), Draw.round(sides[0], 1)};
  }
}
