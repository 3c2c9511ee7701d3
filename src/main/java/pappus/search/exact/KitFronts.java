package pappus.search.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Role;

/**
 * What accessories add at least to a build with a battery, whatever the frame: no set of them that goes together is
 * lighter than a point of the front that draws as little.
 */
final class KitFronts {
  /** Sets that differ by less are one point. */
  private static final double STEP_WATTS = 0.02;

  /** Above any mass in mg. */
  private static final long HEAVIEST = 1_000_000_000_000L;

  private final Goods goods;
  private final Map<String, List<Front>> fronts = new ConcurrentHashMap<>();

  /**
   * Accessories with boards of one sort.
   *
   * @param loss least part-load loss of the boards; absent: by the law
   * @param points the lightest first
   */
  record Front(OptionalDouble loss, List<Point> points) {
    /** Less than any of its points in everything. */
    Point least() {
      var grams = points.stream().mapToDouble(Point::grams).min().orElse(0);
      var watts = points.stream().mapToDouble(Point::watts).min().orElse(0);
      return new Point(grams, watts);
    }
  }

  /**
   * A set of accessories.
   *
   * @param grams added to the mass of the battery, g
   * @param watts at the battery, payload included, W
   */
  record Point(double grams, double watts) {}

  KitFronts(Goods goods) {
    this.goods = goods;
  }

  /** Fronts for a battery, one a sort of boards; empty if no accessories go with it. */
  List<Front> of(Battery battery) {
    var key = battery.cellsInSeries() + " " + battery.chemistry() + " " + battery.connector();
    var known = fronts.get(key);
    if (known == null) {
      known = List.of(front(battery, false), front(battery, true)).stream()
          .filter(front -> !front.points.isEmpty())
          .toList();
      fronts.put(key, known);
    }
    return known;
  }

  private Front front(Battery battery, boolean ownLoss) {
    var begun = Build.empty().with(Role.BATTERY, battery);
    var alone = goods.assessor().begun(begun).grams();
    var points = new ArrayList<Point>();
    var limit = Double.POSITIVE_INFINITY;
    while (true) {
      var found = lightest(begun, limit, ownLoss);
      if (found.isEmpty()) {
        break;
      }
      var counted = goods.assessor().begun(found.get(0));
      var watts = counted.watts() - STEP_WATTS;
      points.add(new Point(counted.grams() - alone, Math.max(0, watts)));
      limit = watts;
    }
    var loss = goods.question().options(Role.BOARD).stream()
        .map(board -> goods.assessor().ownLoss((Board) board))
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .min(Comparator.naturalOrder());
    return new Front(
        ownLoss && loss.isPresent() ? OptionalDouble.of(loss.get()) : OptionalDouble.empty(),
        List.copyOf(points));
  }

  private List<Build> lightest(Build begun, double belowWatts, boolean ownLoss) {
    var found = new ArrayList<Build>();
    Aim aim = (build, grams, variance, watts, cents, loss) ->
        loss.isPresent() == ownLoss && watts < belowWatts
            ? HEAVIEST - (long) Math.floor(grams * 1000)
            : Aim.HOPELESS;
    var search = new KitSearch(goods, aim, begun, 0, 0);
    while (found.isEmpty() && search.most() >= 0) {
      search.step(found::add);
    }
    return found;
  }
}
