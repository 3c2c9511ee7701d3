package pappus.compatibility;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pappus.catalog.Catalog;
import pappus.fitting.Fitter;
import pappus.fitting.Stock;
import pappus.part.Antenna;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Receiver;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.scenario.Scenario;

/** Parts that go with nothing of another role, two by two. */
public final class Loners {
  /** These judge a whole build. */
  private static final Set<String> WHOLE_BUILD = Set.of("roles", "balance");

  private static final List<CompatibilityRule> RULES =
      Rules.ALL.stream().filter(rule -> !WHOLE_BUILD.contains(rule.id())).toList();

  /** Enough for every pattern, plug and voltage there is in one role. */
  private static final int MOST_LIKELY = 40;

  private final Fitter fitter;

  /** Partners that fitted the parts before, the last first, by own role and theirs. */
  private final Map<List<Role>, Deque<Part>> met = new HashMap<>();

  private final Map<Role, List<Part>> byRole = new EnumMap<>(Role.class);

  public Loners(Catalog catalog) {
    fitter = new Fitter(Scenario.anything(), Stock.of(List.copyOf(catalog.parts())));
    for (var part : catalog.parts()) {
      if (part instanceof Antenna) {
        continue;
      }
      if (!part.fills().isEmpty()) {
        byRole.computeIfAbsent(part.fills().get(0), role -> new ArrayList<>()).add(part);
      }
    }
  }

  /** Of some parts those that fit no part of a role they must meet, and why not, in their order. */
  public Map<Part, String> among(List<Part> parts) {
    var loners = new LinkedHashMap<Part, String>();
    for (var part : parts) {
      (part instanceof Antenna antenna ? lonely(antenna) : lonely(part))
          .ifPresent(why -> loners.put(part, why));
    }
    return loners;
  }

  private Optional<String> lonely(Part part) {
    if (part.fills().isEmpty()) {
      return Optional.empty();
    }
    var own = part.fills().get(0);
    var meets = EnumSet.noneOf(Role.class);
    for (var rule : RULES) {
      if (rule.reads().contains(own) && rule.reads().size() < Role.values().length) {
        meets.addAll(rule.reads());
      }
    }
    part.fills().forEach(meets::remove);
    for (var role : meets) {
      var partners = byRole.getOrDefault(role, List.of());
      var why = fitsNone(own, part, role, partners);
      if (why.isPresent()) {
        return why;
      }
    }
    return Optional.empty();
  }

  /** An antenna is for video or for the radio, which only its port decides. */
  private Optional<String> lonely(Antenna antenna) {
    var senders = new ArrayList<Part>(byRole.getOrDefault(Role.TRANSMITTER, List.of()));
    var radios = new ArrayList<Part>(byRole.getOrDefault(Role.RECEIVER, List.of()));
    for (var part : byRole.getOrDefault(Role.BOARD, List.of())) {
      if (part instanceof Board board && board.transmitter() != null) {
        senders.add(board);
      }
      if (part instanceof Board board && board.receiver() != null) {
        radios.add(board);
      }
    }
    if (senders.isEmpty() && radios.isEmpty()) {
      return Optional.empty();
    }
    var fits = senders.stream().anyMatch(part -> isMet(Role.VIDEO_ANTENNA, antenna, part))
        || radios.stream().anyMatch(part -> isMet(Role.RADIO_ANTENNA, antenna, part));
    return fits
        ? Optional.empty()
        : Optional.of("fits no port of any transmitter, receiver or board of the catalogue.");
  }

  private boolean isMet(Role role, Antenna antenna, Part part) {
    var own = part instanceof Transmitter
        ? Role.TRANSMITTER
        : part instanceof Receiver ? Role.RECEIVER : Role.BOARD;
    return clash(own, part, role, antenna).isEmpty();
  }

  private Optional<String> fitsNone(Role own, Part part, Role role, List<Part> partners) {
    var likely = met.computeIfAbsent(List.of(own, role), key -> new ArrayDeque<>());
    if (Stream.concat(likely.stream(), partners.stream())
        .filter(partner -> clash(own, part, role, partner).isEmpty())
        .findFirst()
        .map(partner -> remember(partner, likely))
        .isPresent()) {
      return Optional.empty();
    }
    return partners.stream()
        .findFirst()
        .flatMap(partner -> clash(own, part, role, partner))
        .map(why -> "fits no %s of the catalogue, such as: %s".formatted(role.label(), why));
  }

  /** What fitted one part fits the next like it: a large catalogue need not be gone through for each. */
  private static Part remember(Part partner, Deque<Part> likely) {
    likely.remove(partner);
    likely.addFirst(partner);
    if (likely.size() > MOST_LIKELY) {
      likely.removeLast();
    }
    return partner;
  }

  private Optional<String> clash(Role own, Part part, Role role, Part partner) {
    var fitting = fitter.fit(Build.of(Map.of(own, part, role, partner)));
    for (var rule : RULES) {
      var reads = rule.reads();
      if (reads.contains(own)
          && reads.contains(role)
          && rule.check(fitting) instanceof Verdict.Clashes clashes
          && !servesWithLead(rule, own, part, role, partner)) {
        return Optional.of(clashes.reason().text());
      }
    }
    return Optional.empty();
  }

  /** Bare pads and a pack with a plug meet by a pigtail, which is a part of its own. */
  private boolean servesWithLead(
      CompatibilityRule rule, Role own, Part part, Role role, Part partner) {
    return rule.reads().contains(Role.LEAD)
        && own != Role.LEAD
        && role != Role.LEAD
        && byRole.getOrDefault(Role.LEAD, List.of()).stream()
            .map(lead -> Build.of(Map.of(own, part, role, partner, Role.LEAD, lead)))
            .anyMatch(build -> !(rule.check(fitter.fit(build)) instanceof Verdict.Clashes));
  }
}
