package pappus.order;

import java.util.List;
import pappus.part.Part;

/**
 * What one shop has of a part.
 *
 * @param shop place among the order's shops; −1 where the part is bought as the catalogue says, in no shop of the order
 * @param part which
 * @param cents price of one selling unit
 * @param units in stock; {@link #NO_END} where there is no end of them
 * @param steps lower prices for more of it, by rising units
 */
public record Lot(int shop, Part part, long cents, int units, List<Step> steps) {
  /** More than any order asks for. */
  public static final int NO_END = Integer.MAX_VALUE / 4;

  /** A price of one unit from so many units on. */
  public record Step(int fromUnits, long cents) {}

  public Lot {
    steps = List.copyOf(steps);
  }

  /** The least that a unit costs, however many are bought. */
  public long leastCents() {
    var least = cents;
    for (var step : steps) {
      if (step.fromUnits <= units) {
        least = Math.min(least, step.cents);
      }
    }
    return least;
  }

  /**
   * So many units, or more where more cost less.
   *
   * @param wanted at most what is in stock
   */
  Buy buy(int wanted) {
    if (wanted == 0) {
      return new Buy(this, 0, 0);
    }
    var best = new Buy(this, wanted, wanted * price(wanted));
    for (var step : steps) {
      if (step.fromUnits > wanted && step.fromUnits <= units) {
        var more = step.fromUnits * step.cents;
        if (more < best.cents()) {
          best = new Buy(this, step.fromUnits, more);
        }
      }
    }
    return best;
  }

  private long price(int number) {
    var price = cents;
    for (var step : steps) {
      if (step.fromUnits <= number) {
        price = Math.min(price, step.cents);
      }
    }
    return price;
  }

  /**
   * What is bought of a lot.
   *
   * @param units selling units
   * @param cents for all of them
   */
  public record Buy(Lot lot, int units, long cents) {}
}
