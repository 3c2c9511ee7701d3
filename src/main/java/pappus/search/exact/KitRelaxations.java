package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pappus.part.Build;
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

  private KitLeasts least(With with) {
    var least = alone.computeIfAbsent(
        goods.kind(with.battery()), fresh -> KitLeasts.alone(goods, classes, with.battery()));
    return leasts.computeIfAbsent(with.kind(), fresh -> KitLeasts.of(goods, classes, with, least));
  }

  /** For boards of some sorts together. */
  private KitRelaxation floor(KitLeasts known, List<Integer> sorts) {
    var rates = KitRelaxation.RATES.size();
    return floor(
        goods.losses().get(sorts.get(0)),
        IntStream.range(0, rates)
            .mapToDouble(rate -> known.exchange(rate, sorts))
            .toArray(),
        known.watts(sorts),
        known.variance(sorts),
        (long) Math.floor(known.cents(sorts)),
        (int) Math.floor(known.pieces(sorts)),
        known.ohm(sorts));
  }

  private static KitRelaxation floor(
      OptionalDouble loss,
      double[] exchange,
      double watts,
      double variance,
      long cents,
      int pieces,
      double ohm) {
    var lightest = exchange[0];
    var most = watts;
    for (var i = 1; i < KitRelaxation.RATES.size(); i++) {
      most = Math.max(most, (exchange[i] - lightest) / KitRelaxation.RATES.get(i));
    }
    var grams = new double[STEPS + 1];
    var drawn = new double[STEPS + 1];
    for (var step = 0; step <= STEPS; step++) {
      drawn[step] = watts + (most - watts) * step / STEPS;
      var to = watts + (most - watts) * (step + 1) / STEPS;
      grams[step] = lightest;
      for (var i = 1; i < KitRelaxation.RATES.size() && step < STEPS; i++) {
        grams[step] = Math.max(grams[step], exchange[i] - KitRelaxation.RATES.get(i) * to);
      }
    }
    return new KitRelaxation(
        loss,
        Numbers.of(exchange.length, rate -> exchange[rate]),
        Numbers.of(STEPS + 1, step -> grams[step]),
        Numbers.of(STEPS + 1, step -> drawn[step]),
        variance,
        cents,
        pieces,
        ohm);
  }
}
