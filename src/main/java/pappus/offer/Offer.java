package pappus.offer;

import java.time.LocalDate;
import java.util.List;

/**
 * Builds offered to a customer.
 *
 * @param shop who offers
 * @param date of the offer
 * @param builds one to three
 * @param isCounted whether stock was told
 */
public record Offer(Shop shop, LocalDate date, List<OfferedBuild> builds, boolean isCounted) {
  public Offer {
    builds = List.copyOf(builds);
  }

  /** Last day on which it holds. */
  public LocalDate validUntil() {
    return date.plusDays(shop.settings().validDays());
  }
}
