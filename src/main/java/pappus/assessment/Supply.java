package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import pappus.catalog.Catalog;
import pappus.catalog.Part;
import pappus.catalog.Shelf;
import pappus.compatibility.Rules;
import pappus.compatibility.Stock;
import pappus.scenario.Scenario;

/**
 * What builds can be made from.
 *
 * @param catalog every part, at the shelf's prices
 * @param shelf what is owned, and how much of what can be bought
 */
public record Supply(Catalog catalog, Shelf shelf) {

  /** What there is for a scenario: its draft frame too, in the place of any frame of the same id. */
  public static Supply of(Catalog catalog, Shelf shelf, Scenario scenario) {
    var draft = scenario.draftFrame();
    if (draft == null) {
      return new Supply(catalog, shelf);
    }
    var parts = new ArrayList<Part>(catalog.parts());
    parts.removeIf(part -> part.id().equals(draft.id()));
    parts.add(draft);
    return new Supply(Catalog.of(parts), shelf);
  }

  /** Who judges builds from it for a scenario. */
  public Assessor assessor(Scenario scenario) {
    var excluded = List.copyOf(scenario.choice().excludedIds());
    var owned = scenario.choice().ownedIds();
    var stock = catalog.parts().stream()
        .filter(part -> !excluded.contains(part.id()))
        .filter(part -> owned.contains(part.id()) || shelf.has(part, 1))
        .toList();
    return new Assessor(scenario, Stock.of(stock), shelf, Rules.ALL);
  }
}
