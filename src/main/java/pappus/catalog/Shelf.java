package pappus.catalog;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import pappus.part.Part;
import pappus.quantity.Money;

/**
 * What is at hand and what can be bought, for the parts somebody has counted; of others there is as much as wanted.
 *
 * <p>Why: src/site/markdown/decisions.md#the-shelf-lies-beside-the-parts
 */
public final class Shelf {
  /** Name of its list, its schema and, with .json, its file in a catalogue folder. */
  public static final String NAME = "shelf";

  public static final String FILE_NAME = NAME + ".json";

  /** Nobody has counted anything. */
  public static final Shelf EMPTY = new Shelf(new TreeMap<>());

  private final NavigableMap<String, ShelfEntry> byId;

  private Shelf(NavigableMap<String, ShelfEntry> byId) {
    this.byId = byId;
  }

  /** A shelf of entries; of several for one part the last counts. */
  public static Shelf of(Collection<ShelfEntry> entries) {
    var byId = new TreeMap<String, ShelfEntry>();
    entries.forEach(entry -> byId.put(entry.id(), entry));
    return new Shelf(byId);
  }

  /** Every entry, in the order of ids. */
  public Collection<ShelfEntry> entries() {
    return Collections.unmodifiableCollection(byId.values());
  }

  /** The entry on a part, if there is one. */
  public Optional<ShelfEntry> entry(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** This shelf with more of some parts at hand. */
  public Shelf with(Map<? extends Part, Integer> more) {
    var entries = new TreeMap<>(byId);
    more.forEach((part, pieces) -> {
      var there = byId.get(part.id());
      entries.put(
          part.id(),
          new ShelfEntry(
              part.id(),
              owned(part) + pieces,
              there == null ? null : there.stock(),
              there == null ? null : there.price(),
              there == null ? null : there.note()));
    });
    return new Shelf(entries);
  }

  /** Parts at the prices of this shelf, where it has any. */
  public List<Part> priced(Collection<? extends Part> parts) {
    var listed = new TreeMap<String, Money>();
    parts.forEach(part -> listed.put(part.id(), part.price()));
    return parts.stream().map(part -> priced(part, listed)).toList();
  }

  /** A frame with options costs as much more than it does as listed as before. */
  private Part priced(Part part, Map<String, Money> listed) {
    var entry = byId.get(part.id());
    if (entry != null && entry.price() != null) {
      return Repriced.of(part, entry.price());
    }
    if (!part.listedId().equals(part.id())) {
      var own = byId.get(part.listedId());
      var before = listed.get(part.listedId());
      if (own != null && own.price() != null && before != null) {
        var cents = own.price().cents() + part.price().cents() - before.cents();
        return Repriced.of(part, Money.ofCents(Math.max(0, cents), own.price().currency()));
      }
    }
    return part;
  }

  /** Pieces of a part at hand. */
  public int owned(Part part) {
    var entry = byId.get(part.id());
    return entry == null || entry.owned() == null ? 0 : entry.owned();
  }

  /** Pieces of a part that can be had, at hand and bought; none if there is no end of them. */
  public Optional<Long> pieces(Part part) {
    var entry = byId.get(part.id());
    return entry == null || entry.stock() == null
        ? Optional.empty()
        : Optional.of(owned(part) + (long) entry.stock() * part.sold().pieces());
  }

  /** Whether so many pieces of a part can be had. */
  public boolean has(Part part, int needed) {
    return pieces(part).map(pieces -> pieces >= needed).orElse(true);
  }
}
