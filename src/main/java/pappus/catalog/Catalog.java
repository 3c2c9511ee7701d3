package pappus.catalog;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** All parts there are to choose from, in the order of their ids. */
public final class Catalog {
  private final NavigableMap<String, Part> byId;
  private final Map<Kind, List<Part>> byKind;

  private Catalog(NavigableMap<String, Part> byId) {
    this.byId = byId;
    this.byKind = new EnumMap<>(Kind.class);
    for (var kind : Kind.values()) {
      byKind.put(
          kind, byId.values().stream().filter(part -> part.kind() == kind).toList());
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

  /** How many parts there are. */
  public int size() {
    return byId.size();
  }
}
