package pappus.order.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
  private static final int MOST_ROUNDS = 16;

  private static final int ROUNDS_OF_SUMS = 5;

  /** Worst shares are told apart as far as this, millionths. */
  private static final long FINE = 3_000;

  /** Prices move so far towards those of the last program. */
  private static final double STEP = 0.6;

  /** What is asked about lies above what the program reaches by such a part of what is open. */
  private static final int PART = 4;

  /** Bound and program are near enough, of the sum. */
  private static final double NEAR = 1e-3;

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
    var priced = ask(g -> unit, share);
    var least = Long.MAX_VALUE;
    for (var g = 0; g < askers.size(); g++) {
      var top = priced.get(g).points().stream()
          .mapToLong(Oracle.Point::objective)
          .max()
          .orElse(0);
      least = Math.min(least, Column.share(top, askers.get(g).best().atMost()) + 1);
    }
    return least;
  }

  private List<Priced> ask(Prices prices, long share) {
    last = prices;
    return ask(g -> prices.of(g, inputs), share);
  }

  /** Each group by itself, several at once: none knows of another, so that the answers are the same. */
  private List<Priced> ask(IntFunction<long[]> prices, long share) {
    questions += askers.size();
    return IntStream.range(0, askers.size())
        .parallel()
        .mapToObj(g -> oracles.get(g).ask(prices.apply(g), Levels.objective(askers.get(g), share)))
        .toList();
  }

  /**
   * Builds of a group that a learner may get and that may be of use: those that are worth most at the last prices, and those
   * that cost least.
   *
   * @param share that each has, millionths
   * @param most so many at most of each
   */
  public List<Column> useful(Asker asker, long share, int most) {
    var allowed =
        asker.allowed().stream().filter(column -> column.share() >= share).toList();
    var now = last;
    if (now == null || allowed.size() <= most) {
      return allowed;
    }
    var prices = now.of(asker.asked().index(), inputs);
    var worth = Comparator.comparingDouble((Column column) -> -worth(column, prices))
        .thenComparingInt(Column::number);
    var cheap = Comparator.comparingLong(Column::ownCents).thenComparingInt(Column::number);
    return Stream.of(worth, cheap)
        .flatMap(by -> allowed.stream().sorted(by).limit(by == worth ? most : most / 4))
        .distinct()
        .sorted(Comparator.comparingInt(Column::number))
        .toList();
  }

  private static double worth(Column column, long[] prices) {
    return column.share() / (double) Column.WHOLE - dues(column, prices);
  }

  /** What the pieces of a build cost at some prices, shares. */
  static double dues(Column column, long[] prices) {
    var dues = 0.0;
    for (var need : column.needs()) {
      dues += need.pieces() * (double) prices[need.ware().index()];
    }
    return dues / Prices.SCALE;
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
    @Nullable Prices before = null;
    for (var round = 0; round < MOST_ROUNDS && !stopped.getAsBoolean(); round++) {
      low = reached(low, high);
      progress.accept("worst share, %s.%s to %s.%s %%"
          .formatted(low / 10_000, low / 1000 % 10, high / 10_000, high / 1000 % 10));
      if (high - low <= FINE) {
        break;
      }
      var share = low == 0 ? high * (PART - 1) / PART : low + Math.max(FINE, (high - low) / PART);
      var now = program(share).maximise(column -> 1).prices();
      var prices = before == null ? now : before.towards(now, STEP);
      var met = met();
      high = levels.tooMuch(prices, ask(prices, share), share, high);
      if (met == met() && before == null && high > share) {
        // The program itself has no better prices.
        break;
      }
      before = met == met() ? null : prices;
    }
    return high;
  }

  /** The largest share, nearly, that the program over the builds met gives to everybody. */
  private long reached(long known, long tooMuch) {
    var low = known;
    var high = tooMuch;
    while (high - low > FINE) {
      var share = (low + high) / 2;
      if (program(share).maximise(column -> 1).value() > inputs.learners() - 1e-5) {
        low = share;
      } else {
        high = share;
      }
    }
    return low;
  }

  /**
   * The sum of shares, of one each, that no order surpasses in which everybody has some share.
   *
   * @param share millionths
   */
  public double mostInAll(long share) {
    var bound = Double.POSITIVE_INFINITY;
    @Nullable Prices best = null;
    ToDoubleFunction<Column> gain =
        column -> Levels.SERVED + column.share() / (double) Column.WHOLE;
    for (var round = 0; round < ROUNDS_OF_SUMS && !stopped.getAsBoolean(); round++) {
      progress.accept("sum of shares, round " + (round + 1));
      var solved = program(share).maximise(gain);
      var prices = best == null ? solved.prices() : best.towards(solved.prices(), STEP);
      var met = met();
      var now = levels.sum(prices, ask(prices, share), share);
      if (now < bound) {
        bound = now;
        best = prices;
      }
      var reached = solved.value() - Levels.SERVED * inputs.learners();
      if (met() == met || bound - reached < NEAR * reached) {
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
   * @param saves whether little money comes before a large sum of shares
   * @return everybody's builds, by group; empty where a group has none with the share
   */
  public List<Column> dive(long share, long heldBack, boolean saves) {
    progress.accept("rounding at %s.%s %%".formatted(share / 10_000, share / 1000 % 10));
    var columns = new ArrayList<List<Column>>();
    for (var asker : askers) {
      columns.add(
          asker.allowed().stream().filter(column -> column.share() >= share).toList());
    }
    return new Dive(inputs, charges, askers, columns, stopped)
        .given(
            heldBack,
            column -> Levels.SERVED + (saves ? 0 : column.share() / (double) Column.WHOLE),
            saves ? 1 : 0);
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
