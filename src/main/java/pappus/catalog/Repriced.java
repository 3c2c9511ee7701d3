package pappus.catalog;

import java.util.Map;
import pappus.part.Part;
import pappus.part.PartCopy;
import pappus.quantity.Money;

/** A part at another price. */
final class Repriced {
  private Repriced() {}

  static Part of(Part part, Money price) {
    return PartCopy.with(part, Map.of("price", price));
  }
}
