package pappus.shop;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Screw;
import pappus.part.Screw.Material;
import pappus.part.ScrewThread;

/** Screws in bags, weighed by the hundred. */
final class Screws {
  /** Maker, line, material, thread, lengths, pieces of a bag, price of the shortest. */
  private static final String LINES = """
      Thrumbel  | Thorn       | STEEL     | M1_4 | 3 4 5              | 20 | 1.5 |
      Thrumbel  | Thorn       | STEEL     | M1_6 | 3 4 5              | 20 | 1.5 |
      Thrumbel  | Thorn       | STEEL     | M2   | 3 4 5 6 7 8 10 12 16 20 | 20 | 1.5 |
      Thrumbel  | Thorn       | STEEL     | M2_5 | 5 6 8              | 20 | 1.5 |
      Thrumbel  | Thorn       | STEEL     | M3   | 6 7 8 9 10 12 16 20 25 30 | 20 | 2 |
      Zandrille | Hawthorn    | TITANIUM  | M2   | 4 5 6 8            | 16 | 5   |
      Zandrille | Hawthorn    | TITANIUM  | M3   | 6 7 8 10           | 16 | 6   |
      Krummhag  | Sallow      | ALUMINIUM | M2   | 5 8 12             | 10 | 3   |
      Krummhag  | Sallow      | ALUMINIUM | M3   | 8 12 25            | 10 | 3.5 |
      Gannelweed | Pith       | NYLON     | M2   | 5 8 12             | 20 | 1.5 |
      Gannelweed | Pith       | NYLON     | M3   | 6 10 20            | 20 | 1.5 |
      """;

  private Screws() {}

  static List<Screw> all() {
    return Shelf.rows(LINES)
        .flatMap(row ->
            Stream.of(row[4].split(" +", -1)).map(length -> one(row, Integer.parseInt(length))))
        .toList();
  }

  private static Screw one(String[] row, int millimetres) {
    var material = Material.valueOf(row[2]);
    var thread = ScrewThread.valueOf(row[3]);
    var name = String.format(Locale.ROOT, "%s %s×%d", row[1], thread.label(), millimetres);
    var draw = Draw.of(name);
    var known = draw.chance(0.5) ? Known.MEASURED : Known.MAKER;
    var grams =
        Draw.round(steelGrams(thread, millimetres) * density(material) * draw.scatter(0.03), 0.01);
    var mass = known == Known.MEASURED ? new Mass(grams, known, 0.01) : Mass.of(grams, known);
    return new Screw(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price(Double.parseDouble(row[6]) + 0.04 * millimetres),
        Shelf.bag(Integer.parseInt(row[5])),
        mass,
        thread,
        millimetres,
        material,
        known == Known.MEASURED
            ? "Twenty weighed together on a 0.1 g scale and divided."
            : "Mass of a hundred from the maker's list of 2025, divided.",
        List.of());
  }

  /** Head and shank of a steel screw, g. */
  private static double steelGrams(ScrewThread thread, double millimetres) {
    return switch (thread) {
      case M1_4 -> 0.026 + 0.011 * millimetres;
      case M1_6 -> 0.036 + 0.0145 * millimetres;
      case M2 -> 0.062 + 0.0222 * millimetres;
      case M2_5 -> 0.13 + 0.035 * millimetres;
      case M3 -> 0.25 + 0.05 * millimetres;
    };
  }

  private static double density(Material material) {
    return switch (material) {
      case STEEL -> 1;
      case TITANIUM -> 0.57;
      case ALUMINIUM -> 0.35;
      case NYLON -> 0.17;
    };
  }
}
