package pappus.fitting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import pappus.part.Adapter;
import pappus.part.Part;
import pappus.part.Screw;
import pappus.part.Strap;
import pappus.part.Sundry;

/**
 * Small hardware at hand. It is not searched: of what fits, the lightest is taken, then the
 * cheapest, then the first by id.
 *
 * @param screws screws by the piece
 * @param straps straps
 * @param adapters adapters
 * @param sundries everything else
 */
public record Stock(
    List<Screw> screws, List<Strap> straps, List<Adapter> adapters, List<Sundry> sundries) {
  private static final Comparator<Part> LIGHTEST = Comparator.<Part>comparingDouble(
          part -> part.mass().grams())
      .thenComparingLong(part -> part.price().cents())
      .thenComparing(Part::id);

  public Stock {
    screws = screws.stream().sorted(LIGHTEST).toList();
    straps = straps.stream().sorted(LIGHTEST).toList();
    adapters = adapters.stream().sorted(LIGHTEST).toList();
    sundries = sundries.stream().sorted(LIGHTEST).toList();
  }

  /** Everything of a list of parts that is small hardware. */
  public static Stock of(List<? extends Part> parts) {
    return new Stock(
        only(parts, Screw.class),
        only(parts, Strap.class),
        only(parts, Adapter.class),
        only(parts, Sundry.class));
  }

  /** The lightest screw that serves. */
  public Optional<Screw> screw(Predicate<Screw> serves) {
    return screws.stream().filter(serves).findFirst();
  }

  /** The lightest strap that serves. */
  public Optional<Strap> strap(Predicate<Strap> serves) {
    return straps.stream().filter(serves).findFirst();
  }

  /** The lightest adapter for a purpose that serves. */
  public Optional<Adapter> adapter(Adapter.Purpose purpose, Predicate<Adapter> serves) {
    return adapters.stream()
        .filter(adapter -> adapter.purpose() == purpose && serves.test(adapter))
        .findFirst();
  }

  /** The lightest sundry for a purpose. */
  public Optional<Sundry> sundry(Sundry.Purpose purpose) {
    return sundries.stream().filter(sundry -> sundry.purpose() == purpose).findFirst();
  }

  private static <P extends Part> List<P> only(List<? extends Part> parts, Class<P> kind) {
    return parts.stream()
        .filter(kind::isInstance)
        .<P>mapMulti((part, into) -> into.accept(kind.cast(part)))
        .toList();
  }
}
