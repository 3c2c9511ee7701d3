package pappus.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessor;
import pappus.catalog.Antenna;
import pappus.catalog.AntennaPort;
import pappus.catalog.Band;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Catalog;
import pappus.catalog.Part;
import pappus.catalog.Receiver;
import pappus.catalog.Role;
import pappus.catalog.Transmitter;
import pappus.scenario.Choice;

/**
 * What a search is to find: the parts it may use in each role, and who judges them.
 *
 * <p>Fixed, allowed and excluded parts apply here, before anything is searched. A role with one part
 * left is decided; one without any is left empty. Of parts that are the same in every number, the first by id stands
 * for all.
 *
 * <p>Why: src/site/markdown/decisions.md#every-role-is-a-variable-and-a-tidy-build-drops-what-is-brought-along
 */
public final class Question {
  private final Assessor assessor;
  private final Map<Role, List<Part>> options;
  private final Map<String, List<Part>> twins;

  private Question(
      Assessor assessor, Map<Role, List<Part>> options, Map<String, List<Part>> twins) {
    this.assessor = assessor;
    this.options = options;
    this.twins = twins;
  }

  /** The parts of a catalogue that a scenario leaves open. */
  public static Question of(Catalog catalog, Assessor assessor) {
    var options = new EnumMap<Role, List<Part>>(Role.class);
    var twins = new TreeMap<String, List<Part>>();
    for (var role : Role.values()) {
      var each = Twins.of(role, options(role, catalog, assessor), assessor);
      options.put(role, List.copyOf(each.keySet()));
      each.forEach((part, others) -> {
        if (!others.isEmpty()) {
          twins.put(part.id(), List.copyOf(others));
        }
      });
    }
    return new Question(
        assessor, Collections.unmodifiableMap(options), Collections.unmodifiableMap(twins));
  }

  private static List<Part> options(Role role, Catalog catalog, Assessor assessor) {
    var scenario = assessor.scenario();
    var choice = scenario.choice();
    var fitting = new ArrayList<Part>();
    var soldOut = new ArrayList<Part>();
    var fixed = new ArrayList<Part>();
    var excluded = new HashSet<>(choice.excludedIds());
    var bands = bands(role, catalog);
    for (var part : catalog.parts()) {
      if (!takes(role, part, bands)
          || excluded.contains(part.id())
          || !isAllowed(role, part, choice)) {
        continue;
      }
      if (choice.fixedIds().contains(part.id())) {
        fixed.add(part);
      } else if (!displacesFixed(part, catalog, choice)) {
        (assessor.purse().canHave(part, role.pieces()) ? fitting : soldOut).add(part);
      }
    }
    if (!fixed.isEmpty()) {
      return fixed;
    }
    if (Role.EXTRAS.contains(role) && !scenario.wants(role)) {
      return List.of();
    }
    // Where nothing can be had, the limit names what is short; an empty role would say less.
    return fitting.isEmpty() ? soldOut : fitting;
  }

  /**
   * An antenna does not say what it is for: it is asked about for every role in which some port has
   * its band, so that fixing one for video leaves the radio its own.
   */
  private static boolean takes(Role role, Part part, Set<Band> bands) {
    return part instanceof Antenna antenna
        ? bands.contains(antenna.band())
        : !part.fills().isEmpty() && part.fills().get(0) == role;
  }

  /** Bands of the ports that a role is for. */
  private static Set<Band> bands(Role role, Catalog catalog) {
    var bands = EnumSet.noneOf(Band.class);
    for (var part : catalog.parts()) {
      var port = port(role, part);
      if (port != null) {
        bands.add(port.band());
      }
    }
    return bands;
  }

  private static @Nullable AntennaPort port(Role role, Part part) {
    if (role == Role.VIDEO_ANTENNA) {
      return part instanceof Transmitter transmitter
          ? transmitter.antenna()
          : part instanceof Board board && board.transmitter() != null
              ? board.transmitter().antenna()
              : null;
    }
    if (role == Role.RADIO_ANTENNA) {
      return part instanceof Receiver receiver
          ? receiver.antenna()
          : part instanceof Board board && board.receiver() != null
              ? board.receiver().antenna()
              : null;
    }
    return null;
  }

  /** Whether a part brings along what a fixed part is for, and so would push that one out. */
  private static boolean displacesFixed(Part part, Catalog catalog, Choice choice) {
    var alongside = part.fills().stream().skip(1).toList();
    return !alongside.isEmpty()
        && choice.fixedIds().stream()
            .flatMap(id -> catalog.part(id).stream())
            .filter(fixed -> !fixed.fills().isEmpty())
            .anyMatch(fixed -> alongside.contains(fixed.fills().get(0)));
  }

  private static boolean isAllowed(Role role, Part part, Choice choice) {
    return choice.allowedParts().stream()
        .filter(allowed -> allowed.role() == role)
        .allMatch(allowed -> allowed.parts().contains(part.id()));
  }

  public Assessor assessor() {
    return assessor;
  }

  /** Parts that may fill a role, in the order of ids. */
  public List<Part> options(Role role) {
    return options.getOrDefault(role, List.of());
  }

  /** Parts that a part stands for, since they are the same in every number: they are no options of their own. */
  public List<Part> twins(Part part) {
    return twins.getOrDefault(part.id(), List.of());
  }

  /** Ways to fill the roles, counting those that cannot fit. */
  public double combinations() {
    var combinations = 1.0;
    for (var role : Role.values()) {
      combinations *= Math.max(1, options(role).size());
    }
    return combinations;
  }

  /**
   * A build of one part a role, leaving out what another part brings along: no receiver beside one on
   * the board, no lead where the plugs match.
   */
  public static Build tidy(Map<Role, Part> chosen) {
    var build = Build.of(chosen);
    for (var role : List.of(
        Role.TRANSMITTER,
        Role.CAMERA,
        Role.RECEIVER,
        Role.VIDEO_ANTENNA,
        Role.RADIO_ANTENNA,
        Role.BUZZER)) {
      if (build.part(role).isPresent() && build.without(role).fills(role)) {
        build = build.without(role);
      }
    }
    var plug = build.board().map(Board::plug);
    var battery = build.battery();
    if (plug.isPresent()
        && battery.isPresent()
        && plug.get().connector() == battery.get().connector()) {
      build = build.without(Role.LEAD);
    }
    return build;
  }
}
