package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import pappus.catalog.Role;

/**
 * Who is fed from where.
 *
 * @param feeds one a consumer
 */
public record PowerPlan(List<Feed> feeds) {
  public PowerPlan {
    feeds = List.copyOf(feeds);
  }

  /**
   * One consumer and its source.
   *
   * @param consumer role of the part that draws
   * @param watts what it draws at its input, W
   * @param railVolts volts of the rail; empty: straight from the pack
   */
  public record Feed(Role consumer, double watts, Optional<Double> railVolts) {}

  /** Whether a role's part hangs straight on the pack. */
  public boolean fromPack(Role consumer) {
    return feeds.stream()
        .anyMatch(feed -> feed.consumer() == consumer && feed.railVolts().isEmpty());
  }
}
