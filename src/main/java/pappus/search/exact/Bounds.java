package pappus.search.exact;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Merit;
import pappus.assessment.Purpose;
import pappus.assessment.flight.BelievedDraw;
import pappus.assessment.flight.FrameAir;
import pappus.assessment.flight.PartialBound;
import pappus.assessment.flight.Trade;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Role;
import pappus.reliance.Reliance;
import pappus.reliance.Sources;
import pappus.reliance.Surest;
import pappus.search.Question;

/**
 * What holds for every build of a question: the cap, the budget, and how far rounding may lead astray.
 *
 * <p>Why: src/site/markdown/decisions.md#what-cannot-be-bounded-is-said
 */
final class Bounds {
  /** By so much a limit may be missed that the assessment still finds kept. */
  private static final double EDGE = 1e-6;

  /** Far above the rounding of sums; without a choice of speeds the physics falls strictly, as a test asks. */
  private static final double ROUNDING = 1e-12;

  /** Best speeds are found to some parts in a million million. */
  private static final double ROUNDING_OF_SPEEDS = 1e-11;

  /** What more draw and resistance take of the mass that is carried is less than the rest. */
  private static final double NEARLY = 0.97;

  private static final double STEP_WATTS = 0.005;
  private static final double STEP_OHM = 0.00002;

  /** Where a stay ends is found to some parts in a thousand million of it. */
  private static final double ROUNDING_OF_STAYS = 1e-8;

  /** So much longer may a flight at a best speed last with more drag, since it is slower: measured below 5e-4. */
  private static final double SLOWED_BY_DRAG = 1e-2;

  private static final double MICRO_IN_MILLI = 1000;

  private final Assessor assessor;
  private final double deviations;
  private final double capGrams;
  private final double budgetCents;
  private final double leastThrustToWeight;
  private final double leastFigure;
  private final double rounding;
  private final Purpose purpose;
  private volatile long leastFlight;
  private final double leastLossDoubt;
  private final @Nullable Front front;
  private final Map<List<Object>, BelievedDraw> believedDraws = new ConcurrentHashMap<>();

  /** For what a ranking looks for. */
  Bounds(Question question) {
    this(question, null);
  }

  /**
   * @param front what surpasses builds that are not known yet; absent where mass and price are no aims
   */
  Bounds(Question question, @Nullable Front front) {
    this.front = front;
    var assessor = question.assessor();
    var scenario = assessor.scenario();
    var budget = scenario.budget();
    this.assessor = assessor;
    this.deviations = assessor.deviations();
    this.capGrams = scenario.massCap().largestMilligrams() / 1000.0;
    this.budgetCents = budget == null ? Double.POSITIVE_INFINITY : budget.cents();
    this.leastThrustToWeight = scenario.leastThrustToWeight();
    this.purpose = assessor.purpose();
    this.leastFlight = purpose.leastFlight();
    this.leastLossDoubt = question.options(Role.BOARD).stream()
        .filter(Board.class::isInstance)
        .map(Board.class::cast)
        .mapToDouble(assessor.reliances()::doubt)
        .min()
        .orElse(Sources.LAW);
    this.leastFigure = assessor.prospects().leastOfRound() * (1 - EDGE);
    this.rounding = assessor.prospects().keepsBack()
        ? ROUNDING_OF_STAYS
        : assessor.prospects().choosesSpeeds() ? ROUNDING_OF_SPEEDS : ROUNDING;
  }

  double capGrams() {
    return capGrams;
  }

  /** Infinite where money is no matter. */
  double budgetCents() {
    return budgetCents;
  }

  double leastThrustToWeight() {
    return leastThrustToWeight * (1 - EDGE);
  }

  /** Whether mass and price alone keep any build with at least these numbers from being feasible. */
  boolean isTooMuch(double grams, double variance, long cents) {
    var needed = grams + deviations * Math.sqrt(variance);
    return cents > budgetCents
        || needed > capGrams + EDGE
        || (front != null && front.surpasses(needed, cents));
  }

  /** Microseconds or micrometres that no figure up to this one is worth more than; hopeless below one round of legs. */
  long flown(double figure) {
    return figure <= 0 || figure < leastFigure
        ? Aim.HOPELESS
        : (long) Math.floor(Math.min(figure * (1 + rounding), 1e12) * Assessment.OBJECTIVE);
  }

  /** Whether builds are ranked by a flight that nobody need rely on, and none has a least one. */
  boolean asksForFlightAlone() {
    return purpose.measure() == Purpose.Measure.FLIGHT && leastFlight == 0;
  }

  /** Whether it matters how much of a flight can be relied on. */
  boolean asksForPlan() {
    return purpose.asksForPlan();
  }

  /** From now on builds need a longer or farther flight to plan with; for what is bounded after this. */
  void raiseLeastFlight(long thousandths) {
    leastFlight = thousandths;
  }

  /** Whether an assessed build has the least flight that is looked for by now. */
  boolean isFlightEnough(Assessment assessment) {
    return leastFlight == purpose.leastFlight() || assessment.merit().second() >= leastFlight;
  }

  /** Whether builds are ranked by thrust. */
  boolean asksForThrust() {
    return purpose.measure() == Purpose.Measure.THRUST;
  }

  /**
   * The objective of builds that fly no farther and have at least some mass and price.
   *
   * @param flown microseconds or micrometres, or {@link Aim#HOPELESS}
   * @param share of its flight that no such build can rely on more of
   * @param thrustToWeight that none surpasses
   */
  long objective(long flown, double share, Adds least, double thrustToWeight) {
    if (flown < 0 || asksForFlightAlone()) {
      return flown;
    }
    var planWith = planWith(flown, share);
    return planWith < leastFlight
        ? Aim.HOPELESS
        : Merit.objective(
            purpose.measure(),
            flown,
            planWith,
            least.cents(),
            least.pieces(),
            least.grams() - EDGE,
            thrustToWeight * (1 + EDGE));
  }

  /**
   * The same of builds of which it is known now that they can rely on less.
   *
   * @param objective that they were thought to reach
   */
  long lessReliable(long objective, long flown, double share) {
    var planWith = planWith(flown, share);
    if (planWith < leastFlight) {
      return Aim.HOPELESS;
    }
    return purpose.measure() == Purpose.Measure.PLAN_WITH
        ? Math.min(objective, planWith)
        : objective;
  }

  private static long planWith(long flown, double share) {
    return (long) Math.floor(flown * share * (1 + ROUNDING_OF_SPEEDS) / MICRO_IN_MILLI);
  }

  /**
   * The aim of every ranking for parts that are decided.
   *
   * @param begun has motor, propeller and battery
   * @param air what the frames that may be taken do to it
   * @param least draw beside the motors, W, and resistance of board and lead, Ω
   * @param losses least ripple of boards of each sort that may be taken, over that of the law
   */
  Optional<Aim> aim(Build begun, FrameAir air, Adds least, List<OptionalDouble> losses) {
    return assessor
        .prospects()
        .of(begun)
        .map(prospect -> new Aimed(begun, prospect, air, least, losses));
  }

  /** Steps of draw and resistance. */
  private record Decided(long watts, long ohm) {}

  /** At what a ranking aims for parts that are decided. */
  private final class Aimed implements Aim {
    private final PartialBound prospect;
    private final FrameAir air;
    private final Adds draw;
    private final List<OptionalDouble> losses;
    private final double heaviest;
    private final Map<Decided, Double> carried = new ConcurrentHashMap<>();
    private final boolean maySlow;
    private final double longer;
    private volatile @Nullable BelievedDraw believed;
    private final Build begun;
    private final @Nullable Surest surest;
    private volatile @Nullable Reliance sure;

    Aimed(
        Build begun, PartialBound prospect, FrameAir air, Adds draw, List<OptionalDouble> losses) {
      this.begun = begun;
      this.prospect = prospect;
      this.air = air;
      this.draw = draw;
      this.losses = losses;
      this.surest = purpose.asksForPlan() ? assessor.reliances().surest(begun) : null;
      this.heaviest = Math.min(capGrams, carriedGrams(draw.watts(), draw.ohm()));
      this.maySlow = prospect.maySlow(least(heaviest, OptionalDouble.empty()));
      this.longer =
          air.isDragKnown() || !assessor.prospects().choosesSpeeds() ? 1 : 1 + SLOWED_BY_DRAG;
    }

    /** Until a board is decided, those of a sort lose up to a step more than the least of them. */
    private List<OptionalDouble> mostLosses() {
      return begun.board().isPresent()
          ? losses
          : losses.stream()
              .map(loss ->
                  loss.isEmpty() ? loss : OptionalDouble.of(loss.getAsDouble() + Goods.LOSSES))
              .toList();
    }

    private static Build mains(Build begun) {
      return Build.empty()
          .with(Role.MOTOR, begun.motor().orElseThrow())
          .with(Role.PROPELLER, begun.propeller().orElseThrow())
          .with(Role.BATTERY, begun.battery().orElseThrow());
    }

    /** Share of its flight that no build of these can rely on more of. */
    private double share(Adds least, OptionalDouble loss) {
      if (surest == null) {
        return 1;
      }
      var doubtGrams = Math.sqrt(least.variance());
      var most = surest
          .with(loss, loss.isPresent() ? leastLossDoubt : Sources.LAW)
          .planWith(doubtGrams, least.watts());
      return sure == null ? most : Math.min(most, sure.planWith(doubtGrams, least.watts()));
    }

    /** No more mass keeps the thrust asked for with so much draw and resistance, g. */
    private double carriedGrams(double watts, double ohm) {
      return losses.stream()
          .mapToDouble(loss -> prospect.mostGrams(
              leastThrustToWeight(), new PartialBound.Least(0, watts, ohm, loss, air)))
          .max()
          .orElse(0);
    }

    /** The same where more is decided: looked up in steps, and only for what is nearly too heavy. */
    private boolean isCarried(Adds least) {
      return least.grams() < NEARLY * heaviest || least.grams() <= EDGE + carriedGrams(least);
    }

    private double carriedGrams(Adds least) {
      return carried.computeIfAbsent(
          new Decided((long) Math.floor(least.watts() / STEP_WATTS), (long)
              Math.floor(least.ohm() / STEP_OHM)),
          fresh -> carriedGrams(fresh.watts * STEP_WATTS, fresh.ohm * STEP_OHM));
    }

    private PartialBound.Least least(double grams, OptionalDouble loss) {
      return new PartialBound.Least(grams, draw.watts(), draw.ohm(), loss, air);
    }

    @Override
    public long atMost(Adds least, OptionalDouble loss) {
      var watts = Math.max(least.watts(), leastWatts(least.grams()));
      return isHopeless(least)
          ? Aim.HOPELESS
          : flown(longer
              * prospect.figure(
                  new PartialBound.Least(least.grams(), watts, least.ohm(), loss, air), maySlow));
    }

    @Override
    public boolean isOfFlight() {
      return purpose.measure().isOfFlight();
    }

    @Override
    public double leastWatts(double grams) {
      if (!assessor.prospects().boundsBelief()) {
        return 0;
      }
      var known = believed;
      if (known == null) {
        known = believedDraws.computeIfAbsent(
            List.of(
                begun.motor().orElseThrow().id(),
                begun.propeller().orElseThrow().id(),
                begun.battery().orElseThrow().id(),
                air,
                losses,
                draw.ohm(),
                begun.board().isPresent()),
            fresh -> prospect
                .belief()
                .draw(
                    assessor.prospects().begun(mains(begun)).grams(),
                    capGrams,
                    draw.ohm(),
                    mostLosses(),
                    air));
        believed = known;
      }
      return known.leastWatts(grams);
    }

    @Override
    public boolean mayCount(Adds whole, OptionalDouble loss) {
      return !assessor.prospects().boundsBelief()
          || prospect
              .belief()
              .admits(new PartialBound.Least(whole.grams(), whole.watts(), whole.ohm(), loss, air));
    }

    @Override
    public long objective(long flown, Adds least, OptionalDouble loss) {
      return flown < 0 || asksForFlightAlone()
          ? flown
          : Bounds.this.objective(flown, share(least, loss), least, thrustToWeight(least));
    }

    private double thrustToWeight(Adds least) {
      return asksForThrust() && least.grams() > 0
          ? carriedGrams(least) * leastThrustToWeight() / least.grams()
          : 0;
    }

    @Override
    public long again(long objective, long flown, Adds least) {
      if (objective < 0
          || surest == null
          || begun.frame().isEmpty()
          || begun.board().isEmpty()) {
        return objective;
      }
      var now = sure;
      if (now == null) {
        now = assessor.reliances().of(begun);
        sure = now;
      }
      var watts = Math.max(draw.watts(), least.watts());
      return lessReliable(objective, flown, now.planWith(Math.sqrt(least.variance()), watts));
    }

    @Override
    public boolean isFor(FrameAir other) {
      return prospect.areAlike(air, other);
    }

    @Override
    public boolean isHopeless(Adds least) {
      return least.grams() > heaviest + EDGE
          || !isCarried(least)
          || isTooMuch(least.grams(), least.variance(), least.cents());
    }

    @Override
    public Trade trade(Adds usual, OptionalDouble loss, OptionalDouble mostLoss, double fromGrams) {
      // Where a flight has but to be good enough, one look tells as much as all that a trade takes.
      return isOfFlight()
              && !maySlow
              && (air.isDragKnown() || !assessor.prospects().asksForDrag())
          ? Trade.of(
              prospect,
              new PartialBound.Least(usual.grams(), usual.watts(), usual.ohm(), loss, air),
              mostLoss,
              fromGrams,
              heaviest)
          : Trade.NONE;
    }

    @Override
    public double mostGrams(double variance) {
      return Math.min(heaviest, capGrams - deviations * Math.sqrt(variance)) + EDGE;
    }

    @Override
    public long atMost(Trade trade, double watts, double ohm, OptionalDouble loss) {
      var lightest = least(trade.fromGrams(), loss);
      return flown(longer
          * trade.factor()
          * (watts < 0
              ? prospect.figure(lightest, maySlow)
              : prospect.figure(
                  new PartialBound.Least(trade.atGrams(), watts, ohm, loss, air), lightest)));
    }
  }
}
