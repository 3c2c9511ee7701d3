package pappus.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.PartCopy;
import pappus.quantity.Money;

/** Every part of a catalogue as what shops have of it, those that are the same in every number together. */
public final class Wares {
  private final List<Ware> all;
  private final Map<String, Ware> byId = new HashMap<>();

  private Wares(List<Ware> all) {
    this.all = List.copyOf(all);
    all.forEach(ware -> ware.parts().forEach(part -> byId.put(part.id(), ware)));
  }

  /**
   * The wares of an order.
   *
   * @param stocks what each shop has, in the order of the shops
   * @param named parts of which a scenario says something by name: they are like no other
   */
  public static Wares of(
      Catalog catalog, Shelf shelf, Order order, List<List<ShelfEntry>> stocks, Set<String> named) {
    var lots = lots(catalog, shelf, order, stocks);
    var leftovers = new TreeMap<String, Integer>();
    for (var part : catalog.parts()) {
      leftovers.put(part.id(), shelf.owned(part));
    }
    order
        .leftoversOrNone()
        .forEach(left -> leftovers.merge(left.part(), left.pieces(), Integer::sum));
    var alike = new LinkedHashMap<Object, List<Part>>();
    for (var part : catalog.parts()) {
      alike
          .computeIfAbsent(
              named.contains(part.id()) ? part.id() : looks(part, lots), fresh -> new ArrayList<>())
          .add(part);
    }
    var wares = new ArrayList<Ware>();
    for (var parts : alike.values()) {
      var of = new ArrayList<Lot>();
      var left = 0;
      for (var part : parts) {
        of.addAll(lots.getOrDefault(part.id(), List.of()));
        left += leftovers.getOrDefault(part.id(), 0);
      }
      of.sort(Comparator.comparingLong(Lot::cents)
          .thenComparingInt(Lot::shop)
          .thenComparing(lot -> lot.part().id()));
      wares.add(new Ware(wares.size(), parts, left, of));
    }
    return new Wares(wares);
  }

  /** All of a part but its id, maker, name and source, and the price of its record, which the lots tell. */
  private static Object looks(Part part, Map<String, List<Lot>> lots) {
    var free = PartCopy.with(part, Map.of("price", Money.ofCents(0, part.price().currency())));
    var names = "id=%s, maker=%s, name=%s, ".formatted(part.id(), part.maker(), part.name());
    var prices = lots.getOrDefault(part.id(), List.of()).stream()
        .map(lot -> List.of(lot.shop(), lot.cents(), lot.steps()))
        .toList();
    return List.of(
        free.toString().replace(names, "").replace("source=" + part.source(), ""), prices);
  }

  private static Map<String, List<Lot>> lots(
      Catalog catalog, Shelf shelf, Order order, List<List<ShelfEntry>> stocks) {
    var listed = EnumSet.noneOf(Kind.class);
    stocks.forEach(stock -> stock.forEach(
        entry -> catalog.part(entry.id()).ifPresent(part -> listed.add(part.kind()))));
    var lots = new HashMap<String, List<Lot>>();
    for (var shop = 0; shop < stocks.size(); shop++) {
      for (var entry : stocks.get(shop)) {
        var number = shop;
        catalog
            .part(entry.id())
            .ifPresent(part -> lots.computeIfAbsent(part.id(), fresh -> new ArrayList<>())
                .add(lot(order, number, part, entry)));
      }
    }
    for (var part : catalog.parts()) {
      if (!listed.contains(part.kind())) {
        var units = shelf.entry(part.id()).map(ShelfEntry::stock).orElse(null);
        lots.put(
            part.id(),
            List.of(new Lot(
                -1,
                part,
                part.price().cents(),
                units == null ? Lot.NO_END : units,
                steps(order, "", part))));
      }
    }
    return lots;
  }

  private static Lot lot(Order order, int shop, Part part, ShelfEntry entry) {
    var price = entry.price() == null ? part.price() : entry.price();
    return new Lot(
        shop,
        part,
        price.cents(),
        Objects.requireNonNull(entry.stock()),
        steps(order, order.shopsOrNone().get(shop).name(), part));
  }

  private static List<Lot.Step> steps(Order order, String shop, Part part) {
    return order.stepsOrNone().stream()
        .filter(step ->
            step.part().equals(part.id()) && (step.shop() == null || step.shop().equals(shop)))
        .map(step -> new Lot.Step(step.fromUnits(), Amount.cents(step.price())))
        .sorted(Comparator.comparingInt(Lot.Step::fromUnits))
        .toList();
  }

  /** All of them, by index. */
  public List<Ware> all() {
    return all;
  }

  /** The ware that a part is. */
  public Ware of(Part part) {
    return Objects.requireNonNull(byId.get(part.id()));
  }

  /** Parts at the price of their cheapest lot, without those that nobody has. */
  public List<Part> priced() {
    var priced = new ArrayList<Part>();
    for (var ware : all) {
      for (var part : ware.parts()) {
        if (ware.pieces() > 0) {
          var cents =
              ware.lots().isEmpty() ? part.price().cents() : ware.lots().get(0).cents();
          priced.add(PartCopy.with(
              part, Map.of("price", Money.ofCents(cents, part.price().currency()))));
        }
      }
    }
    return priced;
  }

  /**
   * How much there is, to be bought.
   *
   * @param withLeftovers whether what is there counts as units that can be bought, a begun unit as a whole one
   */
  public Shelf stock(boolean withLeftovers) {
    var entries = new ArrayList<ShelfEntry>();
    for (var ware : all) {
      var more = withLeftovers ? ware.part().sold().unitsFor(ware.leftover()) : 0;
      if (ware.stock() < Lot.NO_END) {
        ware.parts()
            .forEach(part -> entries.add(new ShelfEntry(
                part.id(), null, Math.min(100_000, ware.stock() + more), null, null)));
      }
    }
    return Shelf.of(entries);
  }
}
