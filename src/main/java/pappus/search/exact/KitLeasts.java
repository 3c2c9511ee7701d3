package pappus.search.exact;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Part;
import pappus.part.Role;

/**
 * The least that accessories add together, by many measures at once: mass with each watt counted as so many grams at
 * each rate of exchange, draw, variance, price and resistance. Each part is counted with the best of each role that
 * it leaves to be filled.
 *
 * <p>Why: src/site/markdown/decisions.md#what-comes-along-counts-before-accessories-are-looked-at
 */
final class KitLeasts {
  private static final int RATES = Support.RATES.length;
  private static final int WATTS = RATES;
  private static final int VARIANCE = RATES + 1;
  private static final int CENTS = RATES + 2;
  private static final int OHM = RATES + 3;
  private static final int PIECES = RATES + 4;
  private static final int MEASURES = RATES + 5;

  private final Goods goods;
  private final KitClasses classes;
  private final With with;
  private final Map<Role, double[][]> alone;
  private final Map<Role, double[][]> values = new EnumMap<>(Role.class);
  private final Map<Followed, double[]> followed = new HashMap<>();
  private final double[][] sorts;

  /**
   * Parts that leave the same to be filled.
   *
   * @param sort of the part against the role that follows
   * @param mounting of a board, which tells what a transmitter beside it asks for
   */
  private record Followed(Role role, Role follower, Object sort, int mounting, int pieces) {}

  private KitLeasts(Goods goods, KitClasses classes, With with, Map<Role, double[][]> alone) {
    this.goods = goods;
    this.classes = classes;
    this.with = with;
    this.alone = alone;
    this.sorts = new double[goods.losses().size()][];
  }

  /** @param alone what parts of each class add by themselves with the battery, see {@link #alone} */
  static KitLeasts of(Goods goods, KitClasses classes, With with, Map<Role, double[][]> alone) {
    var leasts = new KitLeasts(goods, classes, with, alone);
    leasts.fill();
    return leasts;
  }

  /** The least that parts of each class add by themselves to any build with a battery. Row: class. */
  static Map<Role, double[][]> alone(Goods goods, KitClasses classes, Battery battery) {
    var alone = new EnumMap<Role, double[][]>(Role.class);
    for (var role : Goods.ORDER) {
      var options = goods.options(role);
      var classOf = classes.classOf(role);
      var of = new double[classes.samples(role).size()][];
      for (var option = 0; option < classOf.length; option++) {
        var measured = measured(goods.own(role, options.get(option), battery), 1);
        var known = of[classOf[option]];
        if (known == null) {
          of[classOf[option]] = measured;
        } else {
          lower(known, measured);
        }
      }
      alone.put(role, of);
    }
    return alone;
  }

  private void fill() {
    // A payload draws whatever is chosen.
    var independent = measured(Adds.NOTHING.drawing(goods.nothing().watts()), 1);
    for (var sort = 0; sort < sorts.length; sort++) {
      sorts[sort] = infinite();
    }
    // Followers first: what follows of need counts with its bringer.
    for (var place = Goods.ORDER.size() - 1; place >= 0; place--) {
      var role = Goods.ORDER.get(place);
      var samples = classes.samples(role);
      if (goods.question().options(role).isEmpty()) {
        continue;
      }
      var of = new double[samples.size()][];
      for (var i = 0; i < of.length; i++) {
        of[i] = value(role, samples.get(i), Objects.requireNonNull(alone.get(role))[i]);
      }
      values.put(role, of);
      if (role == Role.BOARD) {
        for (var i = 0; i < of.length; i++) {
          lower(sorts[goods.lossSort(samples.get(i))], of[i]);
        }
      } else if (isAlone(role)) {
        var least = infinite();
        Arrays.stream(of).forEach(each -> lower(least, each));
        add(independent, least, 1);
      }
    }
    if (goods.assessor().scenario().lumped().contains(Role.BOARD)) {
      Arrays.fill(sorts[0], 0);
    }
    for (var sort : sorts) {
      add(sort, independent, 1);
    }
  }

  /** Whether nothing that is chosen may bring a role along: it counts by itself. */
  private boolean isAlone(Role role) {
    for (var above = role.bringer(); above.isPresent(); above = above.get().bringer()) {
      if (!goods.question().options(above.get()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  private static double[] infinite() {
    var infinite = new double[MEASURES];
    Arrays.fill(infinite, Double.POSITIVE_INFINITY);
    return infinite;
  }

  private static double[] measured(Adds adds, int pieces) {
    var measured = new double[MEASURES];
    for (var rate = 0; rate < RATES; rate++) {
      measured[rate] = pieces * (adds.grams() + Support.RATES[rate] * adds.watts());
    }
    measured[WATTS] = pieces * adds.watts();
    measured[VARIANCE] = adds.variance();
    measured[CENTS] = adds.cents();
    measured[OHM] = adds.ohm();
    measured[PIECES] = adds.pieces();
    return measured;
  }

  private static void lower(double[] least, double[] other) {
    for (var measure = 0; measure < MEASURES; measure++) {
      least[measure] = Math.min(least[measure], other[measure]);
    }
  }

  /** Adds so many pieces, which err together; they are bought in sets, whose price is already that of the pieces. */
  private static void add(double[] sum, double[] other, int pieces) {
    for (var measure = 0; measure < MEASURES; measure++) {
      var times = measure == CENTS || measure == PIECES ? 1 : pieces;
      sum[measure] += (measure == VARIANCE ? pieces * pieces : times) * other[measure];
    }
  }

  /**
   * @param part one of the class
   * @param least what a part of it adds by itself
   */
  private double[] value(Role role, Part part, double[] least) {
    if (!goods.goesWith(with, role, part)) {
      return infinite();
    }
    var value = least.clone();
    var mounting = goods.mountingGrams(with, role, part);
    for (var rate = 0; rate < RATES; rate++) {
      value[rate] += mounting;
    }
    for (var follower : goods.following(role, part, with.battery())) {
      var key = followed(role, part, follower);
      var best = followed.get(key);
      if (best == null) {
        best = follower(role, part, follower);
        followed.put(key, best);
      }
      add(value, best, key.pieces);
    }
    return value;
  }

  private Followed followed(Role role, Part part, Role follower) {
    return new Followed(
        role,
        follower,
        goods.pairings().of(role, follower).sort(part),
        isBeside(part, follower) && with.frame() != null ? goods.mountingSort(part) : -1,
        goods.pieces(role, part, follower));
  }

  private static boolean isBeside(Part part, Role follower) {
    return part instanceof Board && follower == Role.TRANSMITTER;
  }

  /**
   * What of those that follow a part adds at least; empty if some that has to does not go with it.
   *
   * @param part goes with the battery and the frame
   */
  Optional<Adds> following(Role role, Part part) {
    var sum = new double[MEASURES];
    for (var follower : goods.following(role, part, with.battery())) {
      var key = followed(role, part, follower);
      add(sum, Objects.requireNonNull(followed.get(key)), key.pieces);
    }
    return sum[WATTS] < Double.POSITIVE_INFINITY
        ? Optional.of(new Adds(
            Support.of(rate -> sum[rate], sum[WATTS]),
            sum[VARIANCE],
            (long) sum[CENTS],
            (int) sum[PIECES],
            sum[OHM]))
        : Optional.empty();
  }

  private double[] follower(Role role, Part part, Role follower) {
    var pairing = goods.pairings().of(role, follower);
    var beside = isBeside(part, follower);
    var options = classes.samples(follower);
    var of = Objects.requireNonNull(values.get(follower));
    var least = infinite();
    for (var i = 0; i < of.length; i++) {
      if (of[i][WATTS] < Double.POSITIVE_INFINITY
          && (pairing.isOpen() || pairing.fit(part, options.get(i)))) {
        var more = beside ? goods.mountingGrams(with, part, options.get(i)) : 0;
        for (var measure = 0; measure < MEASURES; measure++) {
          var value = of[i][measure] + (measure < RATES ? more : 0);
          least[measure] = Math.min(least[measure], value);
        }
      }
    }
    return least;
  }

  /** Whether accessories with boards of a sort go at all. */
  boolean isThere(int sort) {
    return sorts[sort][WATTS] < Double.POSITIVE_INFINITY;
  }

  /** Least mass and draw with boards of some sorts. */
  Support support(List<Integer> of) {
    return Support.of(rate -> least(rate, of), least(WATTS, of));
  }

  /** Least variance, g². */
  double variance(List<Integer> of) {
    return least(VARIANCE, of);
  }

  double cents(List<Integer> of) {
    return least(CENTS, of);
  }

  /** Fewest to buy. */
  double pieces(List<Integer> of) {
    return least(PIECES, of);
  }

  /** Least resistance of board and lead, Ω. */
  double ohm(List<Integer> of) {
    return least(OHM, of);
  }

  private double least(int measure, List<Integer> of) {
    return of.stream().mapToDouble(sort -> sorts[sort][measure]).min().orElseThrow();
  }
}
