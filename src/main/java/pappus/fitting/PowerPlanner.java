package pappus.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.links.Links;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Role;
import pappus.part.VoltWindow;
import pappus.quantity.Sentence;
import pappus.scenario.Scenario;

/**
 * Finds a source for every consumer: a rail of the board that stands at the pack's lowest volts and
 * is not overloaded, else the pack itself.
 *
 * <p>A rail's consumers together, plus a fifth, stay within what it delivers (common practice, no
 * published source). Higher rails are tried first: they carry less current for the same watts.
 *
 * <p>Why: src/site/markdown/decisions.md#power-straight-from-the-pack-passes-no-regulator
 */
public final class PowerPlanner {
  /** Roles that a plan depends on. */
  public static final Set<Role> READS = Stream.concat(
          Stream.of(Role.BATTERY, Role.BOARD), Role.at(Role.Turn.FED))
      .collect(Collectors.toUnmodifiableSet());

  static final double MARGIN = 1.2;

  private final Scenario scenario;
  private final Links links;

  PowerPlanner(Links links) {
    this.scenario = links.scenario();
    this.links = links;
  }

  /** Either a plan, or what no source suits: outside every window, or only overloaded rails. */
  public record Outcome(
      @Nullable PowerPlan plan,
      @Nullable Sentence window,
      @Nullable Sentence overload) {}

  /** Something that draws power. */
  record Consumer(Role role, String partId, double watts, VoltWindow input) {}

  Outcome plan(Build build, Board board, Battery battery) {
    var consumers = consumers(build);
    var lowest = lowestVolts(battery, scenario);
    var highest = highestVolts(battery);
    var rails = board.regulators().stream()
        .filter(rail -> rail.needsVolts() <= lowest)
        .sorted(Comparator.comparingDouble(Board.Regulator::volts).reversed())
        .toList();
    var left = new double[rails.size()];
    for (var i = 0; i < left.length; i++) {
      left[i] = rails.get(i).continuousAmps();
    }
    var feeds = new ArrayList<PowerPlan.Feed>();
    if (assign(consumers, 0, rails, left, lowest, highest, feeds)) {
      return new Outcome(new PowerPlan(feeds), null, null);
    }
    return obstacle(consumers, rails, lowest, highest);
  }

  /** Volts of the pack at its floor under full throttle, V. */
  public static double lowestVolts(Battery battery, Scenario scenario) {
    var asked = scenario.flight().floorVoltsPerCell();
    return battery.cellsInSeries() * (asked == null ? battery.chemistry().floorVolts() : asked);
  }

  /**
   * Volts of the full pack, V: what its chemistry takes, even where the scenario charges it to less, since one
   * wrong setting of the charger must not burn what hangs on it.
   */
  public static double highestVolts(Battery battery) {
    return battery.cellsInSeries() * battery.chemistry().fullVolts();
  }

  /**
   * Whether something with that window may hang straight on the pack, from its floor at full throttle to full.
   *
   * <p>Why: src/site/markdown/decisions.md#the-volts-a-pack-is-charged-to-move-its-charge-not-the-fit-rules
   */
  public static boolean takesPack(VoltWindow input, Battery battery, Scenario scenario) {
    return input.holds(lowestVolts(battery, scenario)) && input.holds(highestVolts(battery));
  }

  List<Consumer> consumers(Build build) {
    var consumers = new ArrayList<Consumer>();
    build
        .transmitter()
        .ifPresent(part -> consumers.add(new Consumer(
            Role.TRANSMITTER, part.id(), links.setting(part, build).watts(), part.input())));
    build.camera().ifPresent(part -> {
      if (part.input() != null) {
        consumers.add(new Consumer(Role.CAMERA, part.id(), part.watts(), part.input()));
      }
    });
    build
        .receiver()
        .ifPresent(part ->
            consumers.add(new Consumer(Role.RECEIVER, part.id(), part.watts(), part.input())));
    build
        .gps()
        .ifPresent(
            part -> consumers.add(new Consumer(Role.GPS, part.id(), part.watts(), part.input())));
    build.payloadCamera().ifPresent(part -> {
      if (part.input() != null) {
        consumers.add(new Consumer(Role.PAYLOAD_CAMERA, part.id(), part.watts(), part.input()));
      }
    });
    consumers.sort(Comparator.comparingDouble(Consumer::watts).reversed());
    return consumers;
  }

  /** Depth-first, so that a plan is found wherever there is one; five consumers at most. */
  private static boolean assign(
      List<Consumer> consumers,
      int next,
      List<Board.Regulator> rails,
      double[] left,
      double lowest,
      double highest,
      List<PowerPlan.Feed> feeds) {
    if (next == consumers.size()) {
      return true;
    }
    var consumer = consumers.get(next);
    for (var i = 0; i < left.length; i++) {
      var volts = rails.get(i).volts();
      var amps = MARGIN * consumer.watts() / volts;
      if (consumer.input().holds(volts) && amps <= left[i]) {
        left[i] -= amps;
        feeds.add(new PowerPlan.Feed(consumer.role(), consumer.watts(), Optional.of(volts)));
        if (assign(consumers, next + 1, rails, left, lowest, highest, feeds)) {
          return true;
        }
        feeds.remove(feeds.size() - 1);
        left[i] += amps;
      }
    }
    if (consumer.input().holds(lowest) && consumer.input().holds(highest)) {
      feeds.add(new PowerPlan.Feed(consumer.role(), consumer.watts(), Optional.empty()));
      if (assign(consumers, next + 1, rails, left, lowest, highest, feeds)) {
        return true;
      }
      feeds.remove(feeds.size() - 1);
    }
    return false;
  }

  private static Outcome obstacle(
      List<Consumer> consumers, List<Board.Regulator> rails, double lowest, double highest) {
    for (var consumer : consumers) {
      var window = consumer.input();
      var suits = rails.stream().anyMatch(rail -> window.holds(rail.volts()))
          || (window.holds(lowest) && window.holds(highest));
      if (!suits) {
        return new Outcome(
            null,
            Sentence.of(
                "%s takes %s to %s V, but the pack gives %s to %s V and the board's rails that stand then give %s.",
                consumer.partId(),
                window.lowVolts(),
                window.highVolts(),
                lowest,
                highest,
                rails.isEmpty()
                    ? "nothing"
                    : String.join(
                        ", ",
                        rails.stream()
                            .map(rail -> Sentence.of("%s V", rail.volts()).text())
                            .toList())),
            null);
      }
    }
    var needed = consumers.stream().mapToDouble(Consumer::watts).sum();
    var offered =
        rails.stream().mapToDouble(rail -> rail.volts() * rail.continuousAmps()).sum();
    return new Outcome(
        null,
        null,
        Sentence.of(
            "The board's rails would have to carry %s W and a fifth more, but carry %s W at most, each within its own amps.",
            needed, offered));
  }
}
