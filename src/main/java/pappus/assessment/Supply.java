package pappus.assessment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import pappus.catalog.Catalog;
import pappus.catalog.ReadCatalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.compatibility.KeptLeadRule;
import pappus.compatibility.Rules;
import pappus.evidence.Evidence;
import pappus.fitting.Stock;
import pappus.links.Links;
import pappus.part.Antenna;
import pappus.part.Build;
import pappus.part.Flown;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Sundry;
import pappus.scenario.Scenario;

/**
 * What builds can be made from.
 *
 * @param catalog every part, at the shelf's prices
 * @param shelf what is owned, and how much of what can be bought
 * @param flown what own flights say of the power needed, by way of flying
 * @param evidence what all records that were read say of each other's figures, whichever are left to choose from
 * @param aboard the quad that a scenario may change, as far as it does
 */
public record Supply(
    Catalog catalog,
    Shelf shelf,
    Map<String, Flown> flown,
    Evidence evidence,
    Optional<Build> aboard) {
  public Supply {
    flown = Collections.unmodifiableMap(new TreeMap<>(flown));
  }

  /** With nothing built yet. */
  public Supply(Catalog catalog, Shelf shelf, Map<String, Flown> flown, Evidence evidence) {
    this(catalog, shelf, flown, evidence, Optional.empty());
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
    return new Supply(Catalog.of(parts), shelf, flown, evidence, aboard);
  }

  /** This supply with as much as wanted of everything: what is at hand stays, prices are in the parts already. */
  public Supply uncounted() {
    var left = shelf.entries().stream()
        .filter(entry -> entry.owned() != null)
        .map(entry -> new ShelfEntry(entry.id(), entry.owned(), null, entry.price(), entry.note()))
        .toList();
    return new Supply(catalog, Shelf.of(left), flown, evidence, aboard);
  }

  /** What was read. */
  public static Supply of(ReadCatalog read) {
    return new Supply(read.catalog(), read.shelf(), read.flown());
  }

  /** This supply with a scenario's draft frame, in every way that it can be ordered, in the place of any part of the same id. */
  public Supply drafting(Scenario scenario) {
    var drafts = scenario.drafts();
    if (drafts.isEmpty()) {
      return this;
    }
    var ids = drafts.stream().map(Part::id).toList();
    var parts = new ArrayList<Part>(catalog.parts());
    parts.removeIf(part -> ids.contains(part.id()));
    parts.addAll(drafts);
    return with(parts);
  }

  /** This supply with a quad that is there. */
  public Supply aboard(Build build) {
    return new Supply(catalog, shelf, flown, evidence, Optional.of(build));
  }

  /**
   * Who judges builds from it for a scenario.
   *
   * @throws IllegalStateException if the scenario changes a quad that was not read
   */
  public Assessor assessor(Scenario scenario) {
    var excluded = List.copyOf(scenario.choice().excludedIds());
    var owned = scenario.choice().ownedIds();
    var stock = catalog.parts().stream()
        .filter(part -> !excluded.contains(part.id()))
        .filter(part -> owned.contains(part.id()) || shelf.has(part, 1))
        .toList();
    var own = flown.get(scenario.flight().style().word());
    var factor = own == null ? 1 : own.powerFactor();
    var asked = scenario.aircraft();
    if (asked != null && aboard.isEmpty()) {
      throw new IllegalStateException("The quad of a scenario must be read before it is judged.");
    }
    var rules = new ArrayList<>(Rules.of(scenario));
    var links = new Links(scenario, antennas());
    var bought = new Assessor(
        links,
        Stock.of(stock),
        new Assessor.AtHand(shelf, shelf),
        rules,
        factor,
        evidence,
        Optional.empty());
    if (asked == null) {
      return bought;
    }
    var quad = new Aboard(aboard.orElseThrow(), asked);
    var pieces = bought.assess(quad.build()).cost().pieces();
    var anew = new LinkedHashMap<>(pieces);
    anew.keySet().removeIf(Supply::isUsedUp);
    if (!quad.keeps(Role.LEAD) && !asked.mayChange().contains(Role.LEAD)) {
      rules.add(new KeptLeadRule(quad.build()));
    }
    return new Assessor(
        links,
        Stock.of(stock, pieces.keySet()),
        new Assessor.AtHand(shelf.with(pieces), shelf.with(anew)),
        rules,
        factor,
        evidence,
        Optional.of(quad));
  }

  /** All that a build may get. */
  private List<Antenna> antennas() {
    return Stream.concat(
            catalog.parts().stream(),
            aboard.stream().flatMap(quad -> quad.parts().values().stream()))
        .filter(Antenna.class::isInstance)
        .map(Antenna.class::cast)
        .toList();
  }

  /** Solder and ties cannot be taken off and used again. */
  private static boolean isUsedUp(Part part) {
    return part instanceof Sundry sundry && sundry.purpose() == Sundry.Purpose.SOLDER_AND_TIES;
  }
}
