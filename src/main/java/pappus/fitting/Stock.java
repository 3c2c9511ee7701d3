package pappus.fitting;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
 * <p>In the order in which they are taken.
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
    screws = List.copyOf(screws);
    straps = List.copyOf(straps);
    adapters = List.copyOf(adapters);
    sundries = List.copyOf(sundries);
  }

  /** Everything of a list of parts that is small hardware. */
  public static Stock of(List<? extends Part> parts) {
    return of(parts, Set.of());
  }

  /**
   * Everything of a list of parts that is small hardware.
   *
   * @param mounted what serves already somewhere and is taken before all else
   */
  public static Stock of(List<? extends Part> parts, Set<? extends Part> mounted) {
    var sorted = parts.stream()
        .sorted(
            Comparator.comparing((Part part) -> !mounted.contains(part)).thenComparing(LIGHTEST))
        .toList();
    return new Stock(
        only(sorted, Screw.class),
        only(sorted, Strap.class),
        only(sorted, Adapter.class),
        only(sorted, Sundry.class));
  }

  /** The first screw that serves, of what is not mounted the lightest. */
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
