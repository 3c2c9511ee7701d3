package pappus.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Role;

/**
 * What accessories add at least to a build with a battery, whatever the frame: no set of them that goes together is
 * lighter than a point of the front that draws as little.
 */
final class KitFronts {
  /** Steps between the thriftiest accessories and the lightest. */
  private static final int STEPS = 6;

  /** Rates of exchange about those of small quads, where a gram costs an eighth of a watt. */
  private static final double[] GRAMS_PER_WATT = {3, 8, 20};

  /** Searches compare whole numbers: so many to a gram, and above any mass. */
  private static final double FINE = 1e5;

  private static final long HEAVIEST = 1_000_000_000_000L;

  /** What whole numbers may hide, g and W. */
  private static final double ROUNDING = 1e-4;

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
    return fronts.computeIfAbsent(
        key,
        asked -> Stream.of(front(battery, false), front(battery, true))
            .flatMap(Optional::stream)
            .toList());
  }

  /**
   * Steps of draw, each with the mass that no set of accessories up to it is below: for each rate of exchange the
   * least of mass plus draw at that rate is found, and bounds every other set.
   */
  private Optional<Front> front(Battery battery, boolean ownLoss) {
    var begun = Build.empty().with(Role.BATTERY, battery);
    var lightest = least(begun, ownLoss, 1, 0);
    var thriftiest = least(begun, ownLoss, 0, 1);
    if (lightest.isEmpty() || thriftiest.isEmpty()) {
      return Optional.empty();
    }
    var leastWatts = thriftiest.get().watts();
    var step = Math.max(0, lightest.get().watts() - leastWatts) / STEPS;
    var grams = new double[STEPS];
    Arrays.fill(grams, lightest.get().grams());
    for (var rate : GRAMS_PER_WATT) {
      var best = least(begun, ownLoss, 1, rate).orElseThrow();
      for (var i = 0; i < STEPS; i++) {
        var most = leastWatts + (i + 1) * step;
        grams[i] = Math.max(grams[i], best.grams() + rate * (best.watts() - most));
      }
    }
    var points = new ArrayList<Point>();
    for (var i = 0; i < STEPS; i++) {
      points.add(new Point(grams[i] - ROUNDING, leastWatts + i * step - ROUNDING));
    }
    points.add(new Point(lightest.get().grams() - ROUNDING, leastWatts + STEPS * step - ROUNDING));
    var loss = goods.question().options(Role.BOARD).stream()
        .map(board -> goods.assessor().ownLoss((Board) board))
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .min(Comparator.naturalOrder());
    return Optional.of(new Front(
        ownLoss && loss.isPresent() ? OptionalDouble.of(loss.get()) : OptionalDouble.empty(),
        List.copyOf(points)));
  }

  /** The accessories with the least of mass and draw at the given rates; empty if none go together. */
  private Optional<Point> least(Build begun, boolean ownLoss, double perGram, double perWatt) {
    var found = new ArrayList<Build>();
    Aim aim = (build, grams, variance, watts, cents, loss) -> loss.isPresent() == ownLoss
        ? HEAVIEST - (long) Math.floor((perGram * grams + perWatt * watts) * FINE)
        : Aim.HOPELESS;
    var search = new KitSearch(goods, aim, begun, 0, 0);
    while (found.isEmpty() && search.most() >= 0) {
      search.step(found::add);
    }
    return found.stream()
        .findFirst()
        .map(goods.assessor()::begun)
        .map(counted ->
            new Point(counted.grams() - goods.assessor().begun(begun).grams(), counted.watts()));
  }
}
