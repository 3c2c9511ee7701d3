package pappus.catalog;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import pappus.files.Closest;
import pappus.part.Antenna;
import pappus.part.Band;
import pappus.part.Build;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Role;

/** All parts there are to choose from, in the order of their ids. */
public final class Catalog {
  private final NavigableMap<String, Part> byId;
  private final Map<Kind, List<Part>> byKind;
  private final Map<Role, Set<Band>> portBands;

  private Catalog(NavigableMap<String, Part> byId) {
    this.byId = byId;
    this.byKind = new EnumMap<>(Kind.class);
    for (var kind : Kind.values()) {
      byKind.put(
          kind, byId.values().stream().filter(part -> part.kind() == kind).toList());
    }
    this.portBands = new EnumMap<>(Role.class);
    Role.ANTENNAS.forEach(role -> portBands.put(role, EnumSet.noneOf(Band.class)));
    for (var part : byId.values()) {
      var build = part.fills().isEmpty()
          ? Build.empty()
          : Build.empty().with(part.fills().get(0), part);
      portBands.forEach(
          (role, bands) -> build.port(role).ifPresent(port -> bands.add(port.band())));
    }
  }

  /**
   * A catalogue of these parts.
   *
   * @throws IllegalArgumentException if two have one id
   */
  public static Catalog of(Collection<? extends Part> parts) {
    var byId = new TreeMap<String, Part>();
    for (var part : parts) {
      if (byId.put(part.id(), part) != null) {
        throw new IllegalArgumentException(
            "id must be unique, but two parts are called %s.".formatted(part.id()));
      }
    }
    return new Catalog(byId);
  }

  /** The part of an id, if there is one. */
  public Optional<Part> part(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The part of an id, if there is one and it is of that kind. */
  public <P extends Part> Optional<P> part(String id, Class<P> record) {
    return part(id).filter(record::isInstance).map(record::cast);
  }

  /** Currency of its prices, which all parts share; empty text without parts. */
  public String currency() {
    return byId.isEmpty() ? "" : byId.firstEntry().getValue().price().currency();
  }

  /** Every id, in order. */
  public Collection<String> ids() {
    return Collections.unmodifiableSet(byId.keySet());
  }

  /** Every part, in the order of ids. */
  public Collection<Part> parts() {
    return Collections.unmodifiableCollection(byId.values());
  }

  /** The parts of a kind, in the order of ids. */
  public List<Part> ofKind(Kind kind) {
    return byKind.getOrDefault(kind, List.of());
  }

  /** The parts of one record class, in the order of ids. */
  public <P extends Part> List<P> ofKind(Class<P> record) {
    return byId.values().stream().filter(record::isInstance).map(record::cast).toList();
  }

  /**
   * Roles that a part may be chosen for. An antenna does not say what it is for: it is every role for which some port
   * of the catalogue has its band. Small hardware is for none.
   */
  public Set<Role> roles(Part part) {
    var roles = EnumSet.noneOf(Role.class);
    if (part instanceof Antenna antenna) {
      portBands.forEach((role, bands) -> {
        if (bands.contains(antenna.band())) {
          roles.add(role);
        }
      });
    } else {
      part.fills().stream().limit(1).forEach(roles::add);
    }
    return roles;
  }

  /** What is wrong with an id that is to name a part of a kind, in words; nothing if it does. */
  public Optional<String> wrong(Kind kind, String id) {
    return part(id).filter(part -> part.kind() == kind).isPresent()
        ? Optional.empty()
        : Optional.of("must name a %s of the catalogue, but there is none of this id.%s"
            .formatted(
                kind.key(),
                Closest.advice(id, ofKind(kind).stream().map(Part::id).toList())));
  }

  /** How many parts there are. */
  public int size() {
    return byId.size();
  }
}
