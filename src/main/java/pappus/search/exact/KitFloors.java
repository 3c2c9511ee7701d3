package pappus.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Build;
import pappus.catalog.Part;
import pappus.catalog.Role;

/**
 * What accessories add at least to a build with a battery, whatever the frame.
 *
 * <p>Mass and draw trade against each other. For each of many rates of exchange the least of mass plus draw at that
 * rate is worked out: the least of each role adds up, since accessories are chosen one by one but for what rules say
 * of two of them. All of these bounds together leave a region that every set of accessories is in; steps along its
 * edge are what it can do best.
 */
final class KitFloors {
  private static final int STEPS = 32;

  /** Grams that weigh as much as a watt: about 8 on small quads. */
  private static final double[] RATES = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 17, 20, 25, 40};

  private final Goods goods;
  private final Map<String, List<KitFloor>> floors = new ConcurrentHashMap<>();

  /** So many of each number count: what one rate of exchange looks at. */
  private record Measure(double grams, double variance, double watts, double cents, double ohm) {
    double of(Adds adds) {
      return grams * adds.grams()
          + variance * adds.variance()
          + watts * adds.watts()
          + cents * adds.cents()
          + ohm * adds.ohm();
    }
  }

  KitFloors(Goods goods) {
    this.goods = goods;
  }

  /** Floors with a battery and any frame, one a sort of boards; empty if no accessories go with it. */
  List<KitFloor> of(Battery battery) {
    return floorsWith(goods.with(battery));
  }

  /** Floors for a build with a battery, and with its frame where it has one. */
  List<KitFloor> of(Build build) {
    return floorsWith(goods.with(build));
  }

  private List<KitFloor> floorsWith(With with) {
    var known = floors.get(with.kind());
    if (known == null) {
      var exchange = new ArrayList<double[]>();
      for (var rate : RATES) {
        exchange.add(least(new Measure(1, 0, rate, 0, 0), with));
      }
      var watts = least(new Measure(0, 0, 1, 0, 0), with);
      var variance = least(new Measure(0, 1, 0, 0, 0), with);
      var cents = least(new Measure(0, 0, 0, 1, 0), with);
      var ohm = least(new Measure(0, 0, 0, 0, 1), with);
      var all = new ArrayList<KitFloor>();
      for (var own = 0; own < 2; own++) {
        if (watts[own] < Double.POSITIVE_INFINITY) {
          var sort = own;
          all.add(floor(
              own == 1 ? goods.leastOwnLoss() : OptionalDouble.empty(),
              exchange.stream().mapToDouble(both -> both[sort]).toArray(),
              watts[own],
              variance[own],
              (long) Math.floor(cents[own]),
              ohm[own]));
        }
      }
      known = List.copyOf(all);
      floors.put(with.kind(), known);
    }
    return known;
  }

  private static KitFloor floor(
      OptionalDouble loss,
      double[] exchange,
      double watts,
      double variance,
      long cents,
      double ohm) {
    var lightest = exchange[0];
    var most = watts;
    for (var i = 1; i < RATES.length; i++) {
      most = Math.max(most, (exchange[i] - lightest) / RATES[i]);
    }
    var grams = new double[STEPS + 1];
    var drawn = new double[STEPS + 1];
    for (var step = 0; step <= STEPS; step++) {
      drawn[step] = watts + (most - watts) * step / STEPS;
      var to = watts + (most - watts) * (step + 1) / STEPS;
      grams[step] = lightest;
      for (var i = 1; i < RATES.length && step < STEPS; i++) {
        grams[step] = Math.max(grams[step], exchange[i] - RATES[i] * to);
      }
    }
    return new KitFloor(
        loss,
        Numbers.of(STEPS + 1, step -> grams[step]),
        Numbers.of(STEPS + 1, step -> drawn[step]),
        variance,
        cents,
        ohm);
  }

  /** Least of a measure with boards by the law, and with boards of their own loss; infinite if none go. */
  private double[] least(Measure measure, With with) {
    var values = new EnumMap<Role, double[]>(Role.class);
    var both = new double[] {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    // A payload draws whatever is chosen.
    var independent = measure.of(Adds.NOTHING.drawing(goods.nothing().watts()));
    // Followers first: what follows of need counts with its bringer.
    for (var place = Goods.ORDER.size() - 1; place >= 0; place--) {
      var role = Goods.ORDER.get(place);
      var options = goods.question().options(role);
      if (options.isEmpty()) {
        continue;
      }
      var of = new double[options.size()];
      var followers = new EnumMap<Role, Map<String, Double>>(Role.class);
      for (var i = 0; i < of.length; i++) {
        of[i] = value(role, options.get(i), measure, with, values, followers);
      }
      values.put(role, of);
      if (role == Role.BOARD) {
        for (var i = 0; i < of.length; i++) {
          var sort = goods.hasOwnLoss(options.get(i)) ? 1 : 0;
          both[sort] = Math.min(both[sort], of[i]);
        }
      } else if (isIndependent(role)) {
        independent += Arrays.stream(of).min().orElse(0);
      }
    }
    both[0] += independent;
    both[1] += independent;
    return both;
  }

  /** Whether a role follows no other, the board's lead aside. */
  private static boolean isIndependent(Role role) {
    return role != Role.LEAD
        && role != Role.BOARD
        && Goods.ORDER.stream().noneMatch(other -> Goods.followers(other).contains(role));
  }

  private double value(
      Role role,
      Part part,
      Measure measure,
      With with,
      Map<Role, double[]> values,
      Map<Role, Map<String, Double>> followers) {
    if (!goods.goesWith(with, role, part)) {
      return Double.POSITIVE_INFINITY;
    }
    var value = measure.of(
        goods.own(role, part, with.battery()).heavier(goods.mountingGrams(with, role, part)));
    for (var follower : goods.following(role, part, with.battery())) {
      var pairing = goods.pairings().of(role, follower);
      var pieces = measure.cents() > 0 ? 1 : goods.pieces(role, part, follower);
      var beside = part instanceof Board && follower == Role.TRANSMITTER;
      var key = "%s %s %s"
          .formatted(
              pieces,
              pairing.isAsked() ? pairing.sort(part) : part.id(),
              beside ? goods.mountingSort(part) : -1);
      var known = followers.computeIfAbsent(follower, fresh -> new HashMap<>());
      var best = known.get(key);
      if (best == null) {
        best = pieces
            * follower(
                pairing,
                part,
                follower,
                values,
                option -> beside ? measure.grams() * goods.mountingGrams(with, part, option) : 0);
        known.put(key, best);
      }
      value += best;
    }
    return value;
  }

  private double follower(
      Pairing pairing,
      Part part,
      Role follower,
      Map<Role, double[]> values,
      ToDoubleFunction<Part> more) {
    var options = goods.question().options(follower);
    var of = Objects.requireNonNull(values.get(follower));
    var best = Double.POSITIVE_INFINITY;
    for (var i = 0; i < of.length; i++) {
      if (of[i] < best && (pairing.isOpen() || pairing.fit(part, options.get(i)))) {
        best = Math.min(best, of[i] + more.applyAsDouble(options.get(i)));
      }
    }
    return best;
  }
}
