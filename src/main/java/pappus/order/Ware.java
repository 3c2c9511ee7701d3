package pappus.order;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Parts that are the same in every number: their stock is one.
 *
 * @param index place among all wares
 * @param parts in the order of ids
 * @param leftover pieces that are there and cost nothing
 * @param lots what shops have of them, the cheapest first
 */
public record Ware(int index, List<Part> parts, int leftover, List<Lot> lots) {
  public Ware {
    parts = List.copyOf(parts);
    lots = List.copyOf(lots);
  }

  /** The first of the parts, which stands for all. */
  public Part part() {
    return parts.get(0);
  }

  /** Its place tells it from all others of an order. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Ware ware && index == ware.index;
  }

  @Override
  public int hashCode() {
    return index;
  }

  /** Pieces in a selling unit. */
  public int unit() {
    return part().sold().pieces();
  }

  /** Selling units that can be bought. */
  public int stock() {
    return (int) Math.min(Lot.NO_END, lots.stream().mapToLong(Lot::units).sum());
  }

  /** Pieces that can be had, leftovers among them. */
  public long pieces() {
    return leftover + (long) stock() * unit();
  }

  /** Units to buy for so many pieces, after what is there. */
  public int unitsFor(int pieces) {
    return part().sold().unitsFor(Math.max(0, pieces - leftover));
  }

  /** The least that a selling unit costs; 0 where none can be bought. */
  public long leastCents() {
    return lots.stream().mapToLong(Lot::leastCents).min().orElse(0);
  }

  /** Price of pieces in proportion to that of a unit, rounded up to a whole cent: what they are worth to a learner. */
  public long shareOfUnit(int pieces) {
    var cents = lots.isEmpty() ? 0 : lots.get(0).cents();
    return (pieces * cents + unit() - 1) / unit();
  }

  /** Pieces of it that every build has that uses it; 0 where that differs. */
  public int perBuild() {
    var fills = part().fills();
    if (fills.isEmpty() || fills.get(0).count() == Role.Count.PER_PORT) {
      return 0;
    }
    return fills.get(0).pieces();
  }

  /** Whether it is small hardware, which nobody counts among kinds of parts. */
  public boolean isSmall() {
    return part().kind().isSmall();
  }
}
