package pappus.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pappus.assessment.flight.Avionics;
import pappus.assessment.flight.Draw;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.FlightCurves;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.FlightModels;
import pappus.assessment.flight.Flights;
import pappus.assessment.flight.FrameAir;
import pappus.assessment.flight.PartialBound;
import pappus.catalog.Shelf;
import pappus.compatibility.CompatibilityRule;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.fitting.Fitter;
import pappus.fitting.Fitting;
import pappus.fitting.Stock;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Role;
import pappus.physics.airframe.MassChance;
import pappus.physics.flight.Limits;
import pappus.reliance.Reliances;
import pappus.scenario.Outlook;
import pappus.scenario.Scenario;

/**
 * Judges builds for one scenario.
 *
 * <p>Both searches, the explanations and the tests ask this class, so that none of them can hold a
 * different opinion. Safe for use by several threads.
 */
public final class Assessor {
  /**
   * What a build only begun weighs and costs, small hardware that follows from it included; what is added adds to it.
   *
   * @param grams sum of the parts and the payload, g; of a frame without a board with the lightest of its heights, where
   *     that is lighter than the frame as listed
   * @param variance of that sum, g²
   * @param cents price of what has to be bought
   * @param pieces that have to be bought, but for small hardware
   * @param watts what everything beside the motors draws at the battery, W; final once every consumer is chosen
   */
  public record PartialBuild(double grams, double variance, long cents, int pieces, double watts) {}

  /** Thousandths are what is told of the figure to plan with. */
  private static final double GRAIN = 1000;

  private final Scenario scenario;
  private final Fitter fitter;
  private final RuleBook ruleBook;
  private final Flights flights;
  private final Flights expected;
  private final Reliances reliances;
  private final Purse purse;
  private final Purse purseAnew;
  private final double deviations;
  private final Purpose purpose;
  private final Optional<Aboard> aboard;

  /**
   * With the figures of classes alone.
   *
   * @param stock small hardware at hand
   * @param rules fit rules, in the order of reports
   */
  public Assessor(Scenario scenario, Stock stock, List<CompatibilityRule> rules) {
    this(scenario, stock, Shelf.EMPTY, rules);
  }

  /**
   * With the figures of classes alone.
   *
   * @param stock small hardware at hand
   * @param shelf what is owned, and how much of what can be bought
   * @param rules fit rules, in the order of reports
   */
  public Assessor(Scenario scenario, Stock stock, Shelf shelf, List<CompatibilityRule> rules) {
    this(scenario, stock, shelf, rules, 1, Evidence.NONE);
  }

  /**
   * @param stock small hardware at hand
   * @param shelf what is owned, and how much of what can be bought
   * @param rules fit rules, in the order of reports
   * @param powerFactor power that propellers need over what is computed, by the builder's own flights; 1 without any
   * @param evidence what the catalogue says of the figures of its records
   */
  public Assessor(
      Scenario scenario,
      Stock stock,
      Shelf shelf,
      List<CompatibilityRule> rules,
      double powerFactor,
      Evidence evidence) {
    this(scenario, stock, new AtHand(shelf, shelf), rules, powerFactor, evidence, Optional.empty());
  }

  /**
   * What a builder has.
   *
   * @param shelf what is owned, and how much of what can be bought
   * @param anew the same for a build that is soldered anew: what a quad that is there was soldered with is used up
   */
  record AtHand(Shelf shelf, Shelf anew) {}

  /**
   * @param stock small hardware at hand
   * @param rules fit rules, in the order of reports
   * @param powerFactor power that propellers need over what is computed, by the builder's own flights; 1 without any
   * @param evidence what the catalogue says of the figures of its records
   * @param aboard the quad that is there, if one is to be changed
   */
  Assessor(
      Scenario scenario,
      Stock stock,
      AtHand atHand,
      List<CompatibilityRule> rules,
      double powerFactor,
      Evidence evidence,
      Optional<Aboard> aboard) {
    this.scenario = scenario;
    this.fitter = new Fitter(scenario, stock);
    this.ruleBook = new RuleBook(scenario, rules, fitter, aboard);
    var alone = new Flights(scenario, Weighing.EXPECTED, powerFactor, evidence);
    var home = alone.wayHome().map(way -> new Reliances(scenario, way));
    ToDoubleFunction<Build> planWith =
        home.isEmpty() ? main -> 1 : main -> home.get().byTheLaw(main);
    this.expected = alone.planning(planWith);
    this.flights = scenario.outlookOrExpected() == Outlook.CAUTIOUS
        ? new Flights(scenario, Weighing.CAUTIOUS, powerFactor, evidence).planning(planWith)
        : expected;
    this.reliances = new Reliances(scenario, expected);
    var owned = Set.copyOf(scenario.choice().ownedIds());
    this.purse = new Purse(owned, atHand.shelf(), scenario.alsoBuyOrNothing());
    this.purseAnew = new Purse(owned, atHand.anew(), scenario.alsoBuyOrNothing());
    this.deviations = MassChance.deviationsFor(scenario.massCap().confidenceOrUsual());
    this.purpose = Purpose.of(scenario);
    this.aboard = aboard;
  }

  private Assessor(Assessor other, Purpose purpose) {
    this.scenario = other.scenario;
    this.fitter = other.fitter;
    this.ruleBook = other.ruleBook;
    this.expected = other.expected;
    this.flights = other.flights;
    this.reliances = other.reliances;
    this.purse = other.purse;
    this.purseAnew = other.purseAnew;
    this.deviations = other.deviations;
    this.aboard = other.aboard;
    this.purpose = purpose;
  }

  /** The same opinion on the same parts, ranked by something else; what was worked out so far is kept. */
  public Assessor with(Purpose other) {
    return new Assessor(this, other);
  }

  /** The fit rules as builds are held to them. */
  public RuleBook ruleBook() {
    return ruleBook;
  }

  /** What builds are ranked by. */
  public Purpose purpose() {
    return purpose;
  }

  /** The quad that is there, if one is to be changed. */
  public Optional<Aboard> aboard() {
    return aboard;
  }

  /** Whether a build may have a part in a role: what may not change of a quad that is there is not asked about. */
  public boolean permits(Role role, Part part) {
    return aboard.filter(there -> there.keeps(role)).isPresent() || scenario.permits(role, part);
  }

  public Scenario scenario() {
    return scenario;
  }

  /** What the builder has, and how much of what can be bought. */
  public Purse purse() {
    return purse;
  }

  /** Standard deviations of mass kept below the cap for the scenario's confidence. */
  public double deviations() {
    return deviations;
  }

  /** Everything about one build. */
  public Assessment assess(Build build) {
    var fitting = fitter.fit(build);
    var findings = ruleBook.findings(fitting);
    var mass = MassTable.of(fitting);
    var paying =
        aboard.filter(there -> there.isSolderedAnew(build)).isPresent() ? purseAnew : purse;
    var cost = CostTable.of(fitting, paying);
    var outlay = scenario.alsoBuy() == null
        ? Optional.<CostTable>empty()
        : Optional.of(CostTable.whole(fitting, paying));
    var missing = Role.FLYING.stream()
        .filter(role -> build.part(role).isEmpty() && !scenario.lumped().contains(role))
        .findFirst();
    if (missing.isPresent()) {
      return grounded(
          build,
          fitting,
          findings,
          mass,
          cost,
          outlay,
          "there is no " + missing.get().label());
    }
    FlightEstimate flight;
    try {
      flight = flights.fly(fitting, mass.grams());
    } catch (IllegalArgumentException outsideTheModel) {
      // The physics refuses what it was not made for; the reader sees its reason.
      return grounded(
          build,
          fitting,
          findings,
          mass,
          cost,
          outlay,
          String.valueOf(outsideTheModel.getMessage()));
    }
    var planning = new Planning(() -> planned(build, flight, fitting, mass));
    var planWith =
        purpose.asksForPlan() || !purpose.measure().isOfFlight() ? planning.thousandths() : 0;
    var disbeliefs =
        purpose.onlyBelieved() ? Disbelief.of(build, mass.grams(), flight).size() : 0;
    return new Assessment(
        build,
        fitting,
        findings,
        mass,
        cost,
        outlay,
        Optional.of(flight),
        Optional.empty(),
        LimitTable.of(
            scenario, purpose, deviations, mass, cost, purse, flight, planWith, disbeliefs),
        Merit.of(
            purpose,
            Assessment.flown(flight),
            planWith,
            cost,
            mass.grams(),
            flight.thrustToWeight()),
        planning);
  }

  private long planned(Build build, FlightEstimate flight, Fitting fitting, MassTable mass) {
    var share = planWith(build, flight, mass);
    return (long) Math.floor(share * likeliest(fitting, mass.grams(), flight) * GRAIN);
  }

  /** The figure to plan with of an assessed build, in whole thousandths of a second or of a metre; 0 without a flight. */
  public long planned(Assessment assessment) {
    return assessment.planned();
  }

  private static Assessment grounded(
      Build build,
      Fitting fitting,
      List<Finding> findings,
      MassTable mass,
      CostTable cost,
      Optional<CostTable> outlay,
      String why) {
    return new Assessment(
        build,
        fitting,
        findings,
        mass,
        cost,
        outlay,
        Optional.empty(),
        Optional.of(why),
        List.of(),
        Merit.NONE,
        Planning.NONE);
  }

  /** What a build only begun weighs and costs; it need not have any part. */
  public PartialBuild begun(Build begun) {
    var fitting = fitter.fit(begun);
    var mass = MassTable.of(fitting);
    var cost = CostTable.of(fitting, purse);
    // Before a board is there nobody knows which height the frame is ordered with: it may be the
    // lightest.
    var height = begun.board().isPresent()
        ? 0
        : begun.frame().map(Frame::leastAddedGrams).orElse(0.0);
    return new PartialBuild(
        mass.grams() + height,
        mass.doubtGrams() * mass.doubtGrams(),
        cost.cents(),
        cost.piecesToBuy(),
        Avionics.draws(fitting).stream().mapToDouble(Draw::watts).sum());
  }

  /** Least watts at the battery that a part can add to a build with a battery, however it is fed in the end. */
  public double leastWatts(Part part, Battery battery) {
    return Avionics.least(part, battery, scenario);
  }

  /** Ripple of a board's controllers over that of the law, if anything is known of them. */
  public OptionalDouble rippleShare(Board board) {
    return bounding().models().rippleShare(board);
  }

  /** What a frame does to the air about an aircraft. */
  public FrameAir air(Frame frame) {
    return flights.air(frame);
  }

  /** Whether it is flown in the wind of the place. */
  public boolean isWindy() {
    return scenario.air().windOrCalm() > 0;
  }

  /** Whether the drag of a frame matters. */
  public boolean asksForDrag() {
    return flights.asksForDrag();
  }

  /**
   * What a build only begun can reach at most, whatever is added.
   *
   * @param begun has motor, propeller and battery; its board and lead count if they are chosen
   * @return empty if the physics refuses what it was not made for, as it will of every build with these parts
   */
  public Optional<PartialBound> prospect(Build begun) {
    try {
      return Optional.of(bounding().prospect(begun));
    } catch (IllegalArgumentException outsideTheModel) {
      return Optional.empty();
    }
  }

  /** Whether an aircraft is flown at speeds of its own choice, which are found to a tolerance only. */
  public boolean choosesSpeeds() {
    return flights.choosesSpeeds();
  }

  /** What builds are ranked by of one round of legs at least, seconds or metres; 0 where none is asked for. */
  public double leastOfRound() {
    return flights.leastOfRound();
  }

  /** Whether charge is kept back for what follows a stay, by the figure to plan with. */
  public boolean keepsBack() {
    return flights.keepsBack();
  }

  /** The physics' models of parts, by the outlook of the scenario or else what surpasses it. */
  public FlightModels models() {
    return bounding().models();
  }

  /** Whether what builds can reach is bounded by the same figures as with another. */
  public boolean boundsLike(Assessor other) {
    return bounding() == other.bounding();
  }

  /** Whether only builds count that are believed, and those are told by the figures that bound what they reach. */
  public boolean boundsBelief() {
    return purpose.onlyBelieved() && bounding() == flights;
  }

  /** The figure to plan with is always by the likeliest figures, and a cautious outlook promises no more than these. */
  private Flights bounding() {
    return purpose.asksForPlan() ? expected : flights;
  }

  /**
   * What an assessed build is ranked by as a function of changed numbers, all else equal: seconds, or metres over
   * ground where the goal is range; for doubts and what-ifs. Always by the likeliest figures, whatever the outlook,
   * and without continuous ratings: a little more current than a rating still flies as long, where the ranking
   * rightly sees no flight.
   *
   * @throws IllegalArgumentException from the function, if the physics refuses what is asked
   */
  public ToDoubleFunction<Factors> whatIf(Assessment assessment) {
    var fitting = assessment.fitting();
    var grams = assessment.mass().grams();
    return factors -> expected.fly(fitting, grams, factors, Limits.NONE).figure();
  }

  /** Share of the estimate to plan with of an assessed build that flies, 0 to 1. */
  public double planWith(Assessment assessment) {
    return planWith(assessment.build(), assessment.flight().orElseThrow(), assessment.mass());
  }

  private double planWith(Build build, FlightEstimate flight, MassTable mass) {
    var watts = flight.draws().stream().mapToDouble(Draw::watts).sum();
    return reliances.planWith(build, flight.figures(), mass.doubtGrams(), watts);
  }

  /** How far builds are relied on at most, by their main parts and board. */
  public Reliances reliances() {
    return reliances;
  }

  /** An assessed build's flight in curves; empty without a flight. */
  public Optional<FlightCurves> curves(Assessment assessment) {
    return assessment
        .flight()
        .map(flight -> flights.curves(assessment.fitting(), assessment.mass().grams(), flight));
  }

  /**
   * Charge that an assessed build takes from its pack in so long, mAh, by the likeliest figures and without ratings.
   *
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public double milliampHours(Assessment assessment, Factors factors, double seconds) {
    return expected.milliampHours(
        assessment.fitting(), assessment.mass().grams(), factors, seconds);
  }

  /**
   * Volts of an assessed build's pack in flight after so much charge, by the likeliest figures; empty where the pack
   * has not so much.
   *
   * @throws IllegalArgumentException if the physics refuses what is asked
   */
  public OptionalDouble voltsAfter(Assessment assessment, Factors factors, double milliampHours) {
    return expected.voltsAfter(
        assessment.fitting(), assessment.mass().grams(), factors, milliampHours);
  }

  /** The flight of an assessed build that flies at the likeliest figures, whatever the outlook. */
  public double likeliest(Assessment assessment) {
    return likeliest(
        assessment.fitting(), assessment.mass().grams(), assessment.flight().orElseThrow());
  }

  private double likeliest(Fitting fitting, double grams, FlightEstimate flown) {
    return flights == expected ? flown.figure() : expected.fly(fitting, grams).figure();
  }
}
