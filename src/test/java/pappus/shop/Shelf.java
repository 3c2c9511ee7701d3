package pappus.shop;

import java.util.Locale;
import java.util.stream.Stream;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Sale;
import pappus.part.Sale.Unit;
import pappus.quantity.Money;

/** How parts are named, priced, weighed and sold in this shop. */
final class Shelf {
  static final Sale SET_OF_FOUR = new Sale(Unit.SET, 4);
  static final Sale KIT = new Sale(Unit.KIT, 1);

  private Shelf() {}

  /** The key of a name: small letters, digits, hyphens and dots. */
  static String id(String name) {
    return name.replace('×', 'x')
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9.]+", "-")
        .replaceAll("(^-)|(-$)", "");
  }

  /** The nearest price a shop would print. */
  static Money price(double euros) {
    return Money.ofCents(cents(euros), "EUR");
  }

  private static long cents(double euros) {
    if (euros < 5) {
      return Math.max(1, Math.round(euros * 2)) * 50 - 1;
    }
    if (euros < 30) {
      return Math.round(euros * 2) * 50 - 10;
    }
    return euros < 100 ? Math.round(euros) * 100 - 10 : Math.round(euros) * 100;
  }

  static Sale bag(int pieces) {
    return new Sale(Unit.BAG, pieces);
  }

  /** A mass as a data sheet prints it: 0.01 g for small parts, 0.1 g for others. */
  static Mass mass(double grams, Known known) {
    return Mass.of(Math.max(0.01, Draw.round(grams, grams < 2 ? 0.01 : 0.1)), known);
  }

  /** Rows of a table with columns between bars. */
  static Stream<String[]> rows(String table) {
    return table.lines().filter(line -> !line.isBlank()).map(line -> {
      var cells = line.split("\\|", -1);
      for (var i = 0; i < cells.length; i++) {
        cells[i] = cells[i].strip();
      }
      return cells;
    });
  }
}
