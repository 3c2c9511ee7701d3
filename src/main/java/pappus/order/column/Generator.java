package pappus.order.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import pappus.order.OrderInputs;
import pappus.order.column.Oracle.Priced;

/**
 * Finds the builds that an order may need and proves what no order surpasses: solves the program over the builds that were
 * met, asks which builds are worth most at its prices, and so on. Rounds and their order are fixed, so that the same
 * order has the same answer.
 */
public final class Generator {
  /** So often at most the worst share is asked about, and so often the sum. */
  private static final int MOST_ROUNDS = 10;

  private static final int ROUNDS_OF_SUMS = 6;

  /** Worst shares are told apart as far as this, millionths. */
  private static final long FINE = 1_500;

  /** Bound and program are near enough, of the sum. */
  private static final double NEAR = 2e-4;

  /** Numbers of learners are told from whole ones by as much. */
  private static final double NEARLY_WHOLE = 1e-4;

  private final OrderInputs inputs;
  private final List<Asker> askers;
  private final List<Oracle> oracles;
  private final Levels levels;
  private final Charges charges;
  private final Consumer<String> progress;
  private final BooleanSupplier stopped;
  private @Nullable Prices last;
  private int questions;

  /**
   * @param askers by group
   * @param oracles of the same
   * @param progress told what is being done
   * @param stopped asked whether to end soon
   */
  public Generator(
      OrderInputs inputs,
      List<Asker> askers,
      List<Oracle> oracles,
      Consumer<String> progress,
      BooleanSupplier stopped) {
    this.inputs = inputs;
    this.askers = List.copyOf(askers);
    this.oracles = List.copyOf(oracles);
    this.charges = new Charges(inputs);
    this.levels = new Levels(inputs, charges, this.askers);
    this.progress = progress;
    this.stopped = stopped;
  }

  /** Questions to the exact search so far. */
  public int questions() {
    return questions;
  }

  /**
   * Meets builds at the shops' prices.
   *
   * @param share that they must have at least, millionths: the less, the more of them
   * @return the least over the groups of the largest share that any build of a group has, millionths: the worst share is
   *     no larger
   */
  public long begin(long share) {
    progress.accept("pricing at the shops' prices");
    var unit = Oracle.ofUnits(inputs.wares().all());
    var least = Long.MAX_VALUE;
    for (var g = 0; g < askers.size(); g++) {
      var asker = askers.get(g);
      var priced = oracles.get(g).ask(unit, Levels.objective(asker, share));
      questions++;
      var top =
          priced.points().stream().mapToLong(Oracle.Point::objective).max().orElse(0);
      least = Math.min(least, Column.share(top, asker.best().atMost()) + 1);
    }
    return least;
  }

  private List<Priced> ask(Prices prices, long share) {
    last = prices;
    var priced = new ArrayList<Priced>();
    for (var g = 0; g < askers.size(); g++) {
      var from = Levels.objective(askers.get(g), share);
      priced.add(oracles.get(g).ask(prices.of(g, inputs), from));
      questions++;
    }
    return priced;
  }

  /**
   * Builds of a group that a learner may get and that may be of use: those that are worth most at the last prices, each with
   * a share.
   *
   * @param share millionths
   * @param most so many at most
   */
  public List<Column> useful(Asker asker, long share, int most) {
    var allowed =
        asker.allowed().stream().filter(column -> column.share() >= share).toList();
    var now = last;
    if (now == null || allowed.size() <= most) {
      return allowed;
    }
    var prices = now.of(asker.asked().index(), inputs);
    return allowed.stream()
        .sorted(Comparator.comparingDouble((Column column) -> -worth(column, prices))
            .thenComparingInt(Column::number))
        .limit(most)
        .sorted(Comparator.comparingInt(Column::number))
        .toList();
  }

  private static double worth(Column column, long[] prices) {
    var dues = 0.0;
    for (var need : column.needs()) {
      dues += need.pieces() * (double) prices[need.ware().index()];
    }
    return column.share() / (double) Column.WHOLE - dues / Prices.SCALE;
  }

  private int met() {
    return askers.stream().mapToInt(asker -> asker.met().size()).sum();
  }

  /** Columns that have a share; those beyond a learner's own budget too, since bounds are of their average. */
  private Program program(long share) {
    var columns = new ArrayList<List<Column>>();
    for (var asker : askers) {
      var least = Math.max(share, asker.asked().group().leastMillionths());
      columns.add(asker.met().stream().filter(column -> column.share() >= least).toList());
    }
    return new Program(inputs, charges, askers, columns);
  }

  /**
   * The least share, millionths, that is proven to be more than everybody can get, as near as rounds allow.
   *
   * @param known share that some order gives to everybody; 0 if none is known
   * @param than a share that is too much already
   */
  public long tooMuchForAll(long known, long than) {
    var low = known;
    var high = than;
    var learners = inputs.learners();
    for (var round = 0;
        round < MOST_ROUNDS && high - low > FINE && !stopped.getAsBoolean();
        round++) {
      progress.accept("worst share, %s.%s to %s.%s %%"
          .formatted(low / 10_000, low / 1000 % 10, high / 10_000, high / 1000 % 10));
      var share = (low + high) / 2;
      var solved = program(share).maximise(column -> 1);
      if (solved.value() > learners - 1e-5) {
        low = share;
        continue;
      }
      var before = met();
      var from = Math.max(low, share * 6 / 10);
      high = levels.tooMuch(solved.prices(), ask(solved.prices(), from), from, high);
      if (high > share && met() == before) {
        low = share;
      }
    }
    return high;
  }

  /**
   * The sum of shares, of one each, that no order surpasses in which everybody has some share.
   *
   * @param share millionths
   */
  public double mostInAll(long share) {
    var bound = Double.POSITIVE_INFINITY;
    ToDoubleFunction<Column> gain =
        column -> Levels.SERVED + column.share() / (double) Column.WHOLE;
    for (var round = 0; round < ROUNDS_OF_SUMS && !stopped.getAsBoolean(); round++) {
      var solved = program(share).maximise(gain);
      progress.accept("sum of shares, round " + (round + 1));
      var before = met();
      bound = Math.min(bound, levels.sum(solved.prices(), ask(solved.prices(), share), share));
      var reached = solved.value() - Levels.SERVED * inputs.learners();
      if (met() == before || bound - reached < NEAR * reached) {
        break;
      }
    }
    return bound;
  }

  /**
   * An order that is near to the program: it is solved again and again, each time with what most of a learner takes given
   * to one.
   *
   * @param share that each is to have, millionths
   * @param heldBack cents of the budget that are left for what fractions do not tell
   * @return everybody's builds, by group; empty where a group has none with the share
   */
  public List<Column> dive(long share, long heldBack) {
    progress.accept("rounding at %s.%s %%".formatted(share / 10_000, share / 1000 % 10));
    var columns = new ArrayList<List<Column>>();
    for (var asker : askers) {
      columns.add(
          asker.allowed().stream().filter(column -> column.share() >= share).toList());
      if (columns.get(columns.size() - 1).isEmpty()) {
        return List.of();
      }
    }
    var kept = new LinkedHashMap<Column, Integer>();
    var left = inputs.learners();
    while (left > 0 && !stopped.getAsBoolean()) {
      var solved = new Program(inputs, charges, askers, columns, kept, heldBack)
          .maximise(column -> Levels.SERVED + column.share() / (double) Column.WHOLE);
      var more = keep(solved.taken(), kept);
      left -= more;
      if (more == 0) {
        break;
      }
    }
    return given(columns, kept);
  }

  /** Keeps all whole learners of a solution, or else one more of what has most of one; how many more that are. */
  private int keep(Map<Column, Double> taken, Map<Column, Integer> kept) {
    var more = 0;
    @Nullable Column most = null;
    var mostOf = 0.0;
    for (var one : taken.entrySet()) {
      var before = kept.getOrDefault(one.getKey(), 0);
      var whole = (int) Math.floor(one.getValue() + NEARLY_WHOLE);
      if (whole > before) {
        kept.put(one.getKey(), whole);
        more += whole - before;
      } else if (one.getValue() - before > mostOf && isOpen(one.getKey(), kept)) {
        mostOf = one.getValue() - before;
        most = one.getKey();
      }
    }
    if (more == 0 && most != null && mostOf > NEARLY_WHOLE) {
      kept.merge(most, 1, Integer::sum);
      return 1;
    }
    return more;
  }

  private boolean isOpen(Column column, Map<Column, Integer> kept) {
    var served = kept.entrySet().stream()
        .filter(one -> one.getKey().group() == column.group())
        .mapToInt(Map.Entry::getValue)
        .sum();
    return served < askers.get(column.group()).pieces();
  }

  /** Whom the program does not serve gets what costs least. */
  private List<Column> given(List<List<Column>> columns, Map<Column, Integer> kept) {
    var given = new ArrayList<Column>();
    for (var g = 0; g < askers.size(); g++) {
      var its = new ArrayList<Column>();
      for (var one : kept.entrySet()) {
        for (var i = 0; i < one.getValue() && one.getKey().group() == g; i++) {
          its.add(one.getKey());
        }
      }
      var cheapest = columns.get(g).stream()
          .min(Comparator.comparingLong(Column::ownCents).thenComparingInt(Column::number))
          .orElseThrow();
      while (its.size() < askers.get(g).pieces()) {
        its.add(cheapest);
      }
      given.addAll(its.subList(0, askers.get(g).pieces()));
    }
    return given;
  }

  /** What one piece more of each ware is worth at the end, shares, by the program over the builds met. */
  public Worth worth(long share) {
    var solved =
        program(share).maximise(column -> Levels.SERVED + column.share() / (double) Column.WHOLE);
    return new Worth(
        inputs.wares().all().stream().map(solved.prices()::stock).toList(),
        solved.prices().cent());
  }

  /**
   * What more of something is worth, by the program.
   *
   * @param piece of each ware in stock, shares
   * @param cent of the budget, shares
   */
  public record Worth(List<Double> piece, double cent) {
    public Worth {
      piece = List.copyOf(piece);
    }
  }
}
