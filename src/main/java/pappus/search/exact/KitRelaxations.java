package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * What accessories add at least to a build with a battery, whatever the frame.
 *
 * <p>Mass and draw trade against each other. For each of many rates of exchange the least of mass plus draw at that
 * rate is worked out: the least of each role adds up, since accessories are chosen one by one but for what rules say
 * of two of them. All of these bounds together leave a region that every set of accessories is in; steps along its
 * edge are what it can do best.
 */
final class KitRelaxations {
  private static final int STEPS = 32;

  private final Goods goods;
  private final Map<String, List<KitRelaxation>> floors = new ConcurrentHashMap<>();
  private final Map<String, KitLeasts> leasts = new ConcurrentHashMap<>();
  private final Map<String, Map<Role, double[][]>> alone = new ConcurrentHashMap<>();
  private final KitClasses classes;

  KitRelaxations(Goods goods) {
    this.goods = goods;
    this.classes = new KitClasses(goods);
  }

  /** Floors with a battery and frame: one for boards by the law, one for those with a loss of their own. */
  List<KitRelaxation> coarse(With with) {
    var known = least(with);
    var byLaw = new ArrayList<Integer>();
    var byOwn = new ArrayList<Integer>();
    for (var sort = 0; sort < goods.losses().size(); sort++) {
      (goods.losses().get(sort).isEmpty() ? byLaw : byOwn).add(sort);
    }
    return Stream.of(byLaw, byOwn)
        .map(sorts -> sorts.stream().filter(known::isThere).toList())
        .filter(sorts -> !sorts.isEmpty())
        .map(sorts -> floor(known, sorts))
        .toList();
  }

  /** Floors for a build with a battery, and with its frame where it has one, one for each sort of boards. */
  List<KitRelaxation> of(Build build) {
    return of(goods.with(build));
  }

  /** Floors with a battery and frame, one for each sort of boards. */
  List<KitRelaxation> of(With with) {
    return floors.computeIfAbsent(with.kind(), fresh -> {
      var known = least(with);
      return IntStream.range(0, goods.losses().size())
          .boxed()
          .filter(known::isThere)
          .map(sort -> floor(known, List.of(sort)))
          .toList();
    });
  }

  /** What of those that follow a part adds at least; empty if some that has to does not go with it. */
  Optional<Adds> following(With with, Role role, Part part) {
    return least(with).following(role, part);
  }

  private KitLeasts least(With with) {
    var least = alone.computeIfAbsent(
        goods.kind(with.battery()), fresh -> KitLeasts.alone(goods, classes, with.battery()));
    return leasts.computeIfAbsent(with.kind(), fresh -> KitLeasts.of(goods, classes, with, least));
  }

  /** For boards of some sorts together. */
  private KitRelaxation floor(KitLeasts known, List<Integer> sorts) {
    return floor(
        goods.losses().get(sorts.get(0)),
        known.support(sorts),
        known.variance(sorts),
        (long) Math.floor(known.cents(sorts)),
        (int) Math.floor(known.pieces(sorts)),
        known.ohm(sorts));
  }

  private static KitRelaxation floor(
      OptionalDouble loss, Support support, double variance, long cents, int pieces, double ohm) {
    var lightest = support.leastGrams();
    var watts = support.watts();
    var most = watts;
    for (var i = 1; i < Support.RATES.length; i++) {
      most = Math.max(most, (support.grams().at(i) - lightest) / Support.RATES[i]);
    }
    var grams = new double[STEPS + 1];
    var drawn = new double[STEPS + 1];
    for (var step = 0; step <= STEPS; step++) {
      drawn[step] = watts + (most - watts) * step / STEPS;
      var to = watts + (most - watts) * (step + 1) / STEPS;
      grams[step] = lightest;
      for (var i = 1; i < Support.RATES.length && step < STEPS; i++) {
        grams[step] = Math.max(grams[step], support.grams().at(i) - Support.RATES[i] * to);
      }
    }
    return new KitRelaxation(
        loss,
        support,
        Numbers.of(STEPS + 1, step -> grams[step]),
        Numbers.of(STEPS + 1, step -> drawn[step]),
        variance,
        cents,
        pieces,
        ohm);
  }
}
