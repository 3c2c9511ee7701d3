package pappus.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import pappus.part.Board;
import pappus.part.Role;

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

  /**
   * A rail that somebody hangs on; two rails of the same volts share their load and count as one.
   *
   * @param volts of it
   * @param consumers who hangs on it
   * @param amps what they draw together, A
   * @param ampsWithMargin the same with a fifth more, A
   * @param deliversAmps what it delivers, A
   */
  public record Rail(
      double volts, List<Role> consumers, double amps, double ampsWithMargin, double deliversAmps) {
    public Rail {
      consumers = List.copyOf(consumers);
    }
  }

  /** The rails of a board by rising volts, with who hangs on them; those nobody hangs on are left out. */
  public List<Rail> rails(Board board) {
    var byVolts = new TreeMap<Double, List<Feed>>();
    for (var feed : feeds) {
      feed.railVolts()
          .ifPresent(volts ->
              byVolts.computeIfAbsent(volts, fresh -> new ArrayList<>()).add(feed));
    }
    var rails = new ArrayList<Rail>();
    byVolts.forEach((volts, hanging) -> {
      var amps = 0.0;
      var withMargin = 0.0;
      for (var feed : hanging) {
        amps += feed.watts() / volts;
        withMargin += PowerPlanner.MARGIN * feed.watts() / volts;
      }
      rails.add(new Rail(
          volts,
          hanging.stream().map(Feed::consumer).toList(),
          amps,
          withMargin,
          board.regulators().stream()
              .filter(rail -> rail.volts() == volts)
              .mapToDouble(Board.Regulator::continuousAmps)
              .sum()));
    });
    return rails;
  }

  /** Whether a role's part hangs straight on the pack. */
  public boolean fromPack(Role consumer) {
    return feeds.stream()
        .anyMatch(feed -> feed.consumer() == consumer && feed.railVolts().isEmpty());
  }
}
