package pappus.compatibility;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import pappus.catalog.Catalog;
import pappus.compatibility.Match.Grade;
import pappus.fitting.Fitter;
import pappus.fitting.Stock;
import pappus.part.Adapter;
import pappus.part.Antenna;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Lead;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Screw;
import pappus.scenario.Scenario;

/** Asks the fit rules what goes with some parts, for a scenario that asks for nothing. */
public final class Matcher {
  private static final Comparator<Part> LIGHTEST =
      Comparator.<Part>comparingDouble(part -> part.mass().grams()).thenComparing(Part::id);

  private final Catalog catalog;
  private final Fitter fitter;

  public Matcher(Catalog catalog) {
    this.catalog = catalog;
    this.fitter = new Fitter(Scenario.anything(), Stock.of(List.copyOf(catalog.parts())));
  }

  /**
   * Every part of the catalogue that some rule judges beside the given ones together, by kind, in the order of kinds
   * and ids.
   */
  public Map<Kind, List<Match>> with(List<Part> given) {
    var matches = new EnumMap<Kind, List<Match>>(Kind.class);
    for (var kind : Kind.values()) {
      if (given.stream().anyMatch(part -> part.kind() == kind)) {
        continue;
      }
      var found = catalog.ofKind(kind).stream()
          .flatMap(part -> match(given, part).stream())
          .toList();
      if (!found.isEmpty()) {
        matches.put(kind, found);
      }
    }
    return matches;
  }

  /** How parts that are to go together do among themselves: each with those before it, but for what fits directly. */
  public List<Match> among(List<Part> given) {
    return IntStream.range(1, given.size())
        .mapToObj(i -> match(given.subList(0, i), given.get(i)))
        .flatMap(Optional::stream)
        .filter(match -> match.grade() != Grade.DIRECT)
        .toList();
  }

  /** How a part goes with others; absent where no rule has anything to say of them together. */
  public Optional<Match> match(List<Part> given, Part part) {
    var verdicts = new ArrayList<Verdict>();
    for (var other : given) {
      hardware(part, other, given).or(() -> hardware(other, part, given)).ifPresent(verdicts::add);
    }
    var adapters = new ArrayList<Part>();
    var chosen = given.stream().filter(other -> !isHardware(other)).toList();
    if (!isHardware(part) && !chosen.isEmpty()) {
      var build = build(chosen, part);
      if (build.isEmpty()) {
        return Optional.empty();
      }
      var role = role(build.get(), part);
      for (var rule : Rules.ALL) {
        if (judges(rule, build.get(), role)) {
          verdicts.add(verdict(rule, build.get(), adapters));
        }
      }
      addAdapters(chosen, build.get(), adapters);
    }
    return verdicts.isEmpty() ? Optional.empty() : Optional.of(graded(part, verdicts, adapters));
  }

  /** Those that the others do not need among themselves already. */
  private void addAdapters(List<Part> others, Build build, List<Part> adapters) {
    var before = build(others.subList(0, others.size() - 1), others.get(others.size() - 1))
        .map(this::adapters)
        .orElse(List.of());
    adapters(build).stream().filter(adapter -> !before.contains(adapter)).forEach(adapters::add);
  }

  private List<Part> adapters(Build build) {
    return fitter.fit(build).hardware().items().stream()
        .flatMap(item -> item.part().stream())
        .filter(Adapter.class::isInstance)
        .toList();
  }

  /** What is to be said of small hardware beside another part; of screws, on the arms of a frame that is given. */
  private static Optional<Verdict> hardware(Part small, Part other, List<Part> given) {
    if (small instanceof Screw screw && other instanceof Motor motor) {
      var onArms = given.stream()
          .filter(Frame.class::isInstance)
          .findFirst()
          .map(frame -> HardwareMatch.onArms(screw, motor, (Frame) frame));
      if (onArms.isPresent()) {
        return onArms;
      }
    }
    return HardwareMatch.of(small, other);
  }

  private static boolean isHardware(Part part) {
    return part.fills().isEmpty() && !(part instanceof Antenna);
  }

  /**
   * Whether a rule reads a role and another that is there; that every role is filled nobody asks here, and what depends
   * on all of them only where it can be foreseen.
   */
  private static boolean judges(CompatibilityRule rule, Build build, Role role) {
    return !(rule instanceof RolesRule)
        && rule.reads().contains(role)
        && (readsSome(rule) || rule.foresees(build.parts().keySet()))
        && build.parts().keySet().stream()
            .anyMatch(other -> other != role && rule.reads().contains(other));
  }

  private static boolean readsSome(CompatibilityRule rule) {
    return rule.reads().size() < Role.values().length;
  }

  /** What a rule says; where plugs do not match, of the lightest lead between them. */
  private Verdict verdict(CompatibilityRule rule, Build build, List<Part> adapters) {
    var fitting = fitter.fit(build);
    if (!readsSome(rule)) {
      return rule.mayStillFit(fitting) ? Verdict.FITS : rule.check(fitting);
    }
    var verdict = rule.check(fitting);
    if (!(verdict instanceof Verdict.Clashes)
        || !(rule instanceof BatteryPlugRule)
        || build.lead().isPresent()) {
      return verdict;
    }
    var lead = catalog.ofKind(Lead.class).stream()
        .sorted(LIGHTEST)
        .filter(option ->
            !(rule.check(fitter.fit(build.with(Role.LEAD, option))) instanceof Verdict.Clashes))
        .findFirst();
    lead.ifPresent(adapters::add);
    return lead.isPresent() ? Verdict.FITS : verdict;
  }

  private static Match graded(Part part, List<Verdict> verdicts, List<Part> adapters) {
    var clashes = new ArrayList<String>();
    var unknown = new ArrayList<String>();
    var notes = new ArrayList<String>();
    for (var verdict : verdicts) {
      verdict.<Void>match(
          fits -> {
            fits.notes().forEach(note -> notes.add(note.text()));
            return null;
          },
          clash -> {
            clashes.add(clash.reason().text());
            return null;
          },
          missing -> {
            unknown.add("Not known: " + missing.missingFact().text() + ".");
            return null;
          });
    }
    if (!clashes.isEmpty()) {
      return new Match(part, Grade.NOT, List.of(), clashes);
    }
    if (!unknown.isEmpty()) {
      return new Match(part, Grade.UNKNOWN, List.of(), unknown);
    }
    if (!adapters.isEmpty()) {
      return new Match(part, Grade.ADAPTER, adapters, notes);
    }
    return new Match(part, notes.isEmpty() ? Grade.DIRECT : Grade.WARNING, List.of(), notes);
  }

  /** All of them together; absent where two would fill one role. */
  private static Optional<Build> build(List<Part> given, Part part) {
    var all = new ArrayList<>(given);
    all.add(part);
    var build = Build.empty();
    for (var one : all) {
      if (!(one instanceof Antenna)) {
        var role = one.fills().get(0);
        if (build.part(role).isPresent()) {
          return Optional.empty();
        }
        build = build.with(role, one);
      }
    }
    for (var one : all) {
      if (one instanceof Antenna antenna) {
        var role = antennaRole(build, antenna);
        if (role.isEmpty() || build.part(role.get()).isPresent()) {
          return Optional.empty();
        }
        build = build.with(role.get(), one);
      }
    }
    return Optional.of(build);
  }

  private static Role role(Build build, Part part) {
    return build.parts().entrySet().stream()
        .filter(entry -> entry.getValue().id().equals(part.id()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  /** For the port that is there, that of its own band first. */
  private static Optional<Role> antennaRole(Build build, Antenna antenna) {
    var ports =
        Role.ANTENNAS.stream().filter(role -> build.port(role).isPresent()).toList();
    return ports.stream()
        .filter(role -> build.port(role).orElseThrow().band() == antenna.band())
        .findFirst()
        .or(() -> ports.stream().findFirst());
  }
}
