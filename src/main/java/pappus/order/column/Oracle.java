package pappus.order.column;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Predicate;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.order.Earlier;
import pappus.order.Lot;
import pappus.order.Ware;
import pappus.order.Wares;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.PartCopy;
import pappus.part.Sale;
import pappus.quantity.Money;
import pappus.search.Ending;
import pappus.search.Question;
import pappus.search.exact.FrontSearch;
import pappus.search.exact.Prepared;

/**
 * Asks the exact search which builds are worth most where a piece of each ware has a price of its own: every build that
 * none surpasses in flight and in the sum of those prices.
 */
public final class Oracle {
  /** The most that a piece can cost; what a price is rounded down to makes a bound no tighter than it is. */
  static final long MOST = Money.MOST.movePointRight(2).longValueExact();

  private static final int MOST_STOCK = 100_000;

  private final Asker asker;
  private final Wares wares;
  private final long effort;
  private final int threads;
  private final Shelf shelf;
  private final Predicate<Part> allowed;

  /**
   * A build with what it costs at the prices asked for.
   *
   * @param objective of it
   * @param dues no more than the sum of the prices of its pieces
   */
  record Point(long objective, long dues) {}

  /**
   * What is worth most.
   *
   * @param points longest flight first; of what was not looked into one with nothing to pay
   * @param isWhole whether everything was looked into
   */
  record Priced(List<Point> points, boolean isWhole) {
    Priced {
      points = List.copyOf(points);
    }

    /** The least dues of a build with an objective; empty if there is none. */
    OptionalLong least(long objective) {
      return points.stream()
          .filter(point -> point.objective() >= objective)
          .mapToLong(Point::dues)
          .min();
    }
  }

  /**
   * @param effort nodes that each search branches at most
   * @param threads that share the work; no answer depends on it
   */
  public Oracle(Asker asker, Wares wares, long effort, int threads) {
    this(asker, wares, effort, threads, part -> true);
  }

  /** Of builds that keep the main parts of one. */
  static Oracle keeping(Build kept, Asker asker, Wares wares, long effort, int threads) {
    var ids = kept.parts().values().stream().map(Part::id).toList();
    return new Oracle(
        asker,
        wares,
        effort,
        threads,
        part -> Collections.disjoint(part.fills(), Earlier.MAIN) || ids.contains(part.id()));
  }

  private Oracle(Asker asker, Wares wares, long effort, int threads, Predicate<Part> allowed) {
    this.asker = asker;
    this.allowed = allowed;
    this.wares = wares;
    this.effort = effort;
    this.threads = threads;
    var entries = new ArrayList<ShelfEntry>();
    for (var ware : wares.all()) {
      if (ware.stock() < Lot.NO_END) {
        ware.parts()
            .forEach(part -> entries.add(new ShelfEntry(
                part.id(), null, (int) Math.min(MOST_STOCK, ware.pieces()), null, null)));
      }
    }
    this.shelf = Shelf.of(entries);
  }

  /**
   * The front at some prices; whatever is on it is met by the asker.
   *
   * @param prices of a piece of each ware, in any unit, 0 to {@link #MOST}
   * @param from objective that builds must have
   */
  Priced ask(long[] prices, long from) {
    var asked = asker.asked();
    var currency = asked.catalog().currency();
    var parts = new ArrayList<Part>();
    for (var part : asked.catalog().parts()) {
      if (!allowed.test(part)) {
        continue;
      }
      var price = Money.ofCents(prices[wares.of(part).index()], currency);
      parts.add(PartCopy.with(part, Map.of("price", price, "sold", Sale.EACH)));
    }
    var catalog = Catalog.of(parts);
    var supply =
        new Supply(catalog, shelf, asked.supply().flown(), asked.supply().evidence());
    var question = Question.of(catalog, supply.assessor(asked.scenario()));
    var found =
        FrontSearch.ofPrices(question, Prepared.of(question), threads).runFrom(from, effort);
    var points = new ArrayList<Point>();
    for (var one : found.builds()) {
      asker.meet(one.build());
      points.add(new Point(one.objective(), one.cost().cents() - Column.extraCents(one.cost())));
    }
    if (found.ending() != Ending.PROVEN) {
      found.atMost().ifPresent(most -> points.add(new Point(most, 0)));
    }
    return new Priced(points, found.ending() == Ending.PROVEN);
  }

  /** Prices in proportion to what units cost. */
  static long[] ofUnits(List<Ware> wares) {
    var prices = new long[wares.size()];
    for (var ware : wares) {
      prices[ware.index()] = ware.leastCents() / ware.unit();
    }
    return prices;
  }
}
