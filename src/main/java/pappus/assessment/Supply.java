package pappus.assessment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.catalog.Catalog;
import pappus.catalog.ReadCatalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.compatibility.Rules;
import pappus.evidence.Evidence;
import pappus.fitting.Stock;
import pappus.part.Flown;
import pappus.part.Part;
import pappus.scenario.Scenario;

/**
 * What builds can be made from.
 *
 * @param catalog every part, at the shelf's prices
 * @param shelf what is owned, and how much of what can be bought
 * @param flown what own flights say of the power needed, by way of flying
 * @param evidence what all records that were read say of each other's figures, whichever are left to choose from
 */
public record Supply(Catalog catalog, Shelf shelf, Map<String, Flown> flown, Evidence evidence) {
  public Supply {
    flown = Collections.unmodifiableMap(new TreeMap<>(flown));
  }

  /** As a catalogue is read. */
  public Supply(Catalog catalog, Shelf shelf, Map<String, Flown> flown) {
    this(catalog, shelf, flown, Evidence.of(catalog.parts()));
  }

  /** Without flights of one's own. */
  public Supply(Catalog catalog, Shelf shelf) {
    this(catalog, shelf, Map.of());
  }

  /** This supply with other parts. */
  public Supply with(List<? extends Part> parts) {
    return new Supply(Catalog.of(parts), shelf, flown, evidence);
  }

  /** This supply with as much as wanted of everything: what is at hand stays, prices are in the parts already. */
  public Supply uncounted() {
    var left = shelf.entries().stream()
        .filter(entry -> entry.owned() != null)
        .map(entry -> new ShelfEntry(entry.id(), entry.owned(), null, entry.price(), entry.note()))
        .toList();
    return new Supply(catalog, Shelf.of(left), flown, evidence);
  }

  /** What was read. */
  public static Supply of(ReadCatalog read) {
    return new Supply(read.catalog(), read.shelf(), read.flown());
  }

  /** This supply with a scenario's draft frame, in the place of any frame of the same id. */
  public Supply drafting(Scenario scenario) {
    var draft = scenario.draftFrame();
    if (draft == null) {
      return this;
    }
    var parts = new ArrayList<Part>(catalog.parts());
    parts.removeIf(part -> part.id().equals(draft.id()));
    parts.add(draft);
    return with(parts);
  }

  /** Who judges builds from it for a scenario. */
  public Assessor assessor(Scenario scenario) {
    var excluded = List.copyOf(scenario.choice().excludedIds());
    var owned = scenario.choice().ownedIds();
    var stock = catalog.parts().stream()
        .filter(part -> !excluded.contains(part.id()))
        .filter(part -> owned.contains(part.id()) || shelf.has(part, 1))
        .toList();
    var own = flown.get(scenario.flight().style().word());
    return new Assessor(
        scenario, Stock.of(stock), shelf, Rules.ALL, own == null ? 1 : own.powerFactor(), evidence);
  }
}
