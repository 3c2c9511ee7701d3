package pappus.assessment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pappus.assessment.flight.Draw;
import pappus.assessment.flight.FlightCurves;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.Flights;
import pappus.catalog.Shelf;
import pappus.compatibility.CompatibilityRule;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.fitting.Fitter;
import pappus.fitting.Fitting;
import pappus.fitting.Stock;
import pappus.links.Links;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.physics.airframe.MassChance;
import pappus.reliance.Reliances;
import pappus.scenario.Outlook;
import pappus.scenario.Scenario;
import pappus.sight.Sight;

/**
 * Judges builds for one scenario.
 *
 * <p>Both searches, the explanations and the tests ask this class, so that none of them can hold a
 * different opinion. Safe for use by several threads.
 */
public final class Assessor {
  /** Thousandths are what is told of the figure to plan with. */
  private static final double GRAIN = 1000;

  private final Scenario scenario;
  private final Fitter fitter;
  private final RuleBook ruleBook;
  private final Flights flights;
  private final Flights expected;
  private final Likeliest likeliest;
  private final Prospects prospects;
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
    this(
        new Links(scenario),
        stock,
        new AtHand(shelf, shelf),
        rules,
        powerFactor,
        evidence,
        Optional.empty());
  }

  /**
   * What a builder has.
   *
   * @param shelf what is owned, and how much of what can be bought
   * @param anew the same for a build that is soldered anew: what a quad that is there was soldered with is used up
   */
  record AtHand(Shelf shelf, Shelf anew) {}

  /**
   * @param links of the scenario, with the antennas that there are
   * @param stock small hardware at hand
   * @param rules fit rules, in the order of reports
   * @param powerFactor power that propellers need over what is computed, by the builder's own flights; 1 without any
   * @param evidence what the catalogue says of the figures of its records
   * @param aboard the quad that is there, if one is to be changed
   */
  Assessor(
      Links links,
      Stock stock,
      AtHand atHand,
      List<CompatibilityRule> rules,
      double powerFactor,
      Evidence evidence,
      Optional<Aboard> aboard) {
    this.scenario = links.scenario();
    this.fitter = new Fitter(stock, links);
    this.ruleBook = new RuleBook(scenario, rules, fitter, aboard);
    var alone = new Flights(scenario, Weighing.EXPECTED, powerFactor, evidence);
    var home = alone.wayHome().map(way -> new Reliances(scenario, way));
    ToDoubleFunction<Build> planWith =
        home.isEmpty() ? main -> 1 : main -> home.get().byTheLaw(main);
    this.expected = alone.planning(planWith);
    this.flights = scenario.outlookOrExpected() == Outlook.CAUTIOUS
        ? new Flights(scenario, Weighing.CAUTIOUS, powerFactor, evidence).planning(planWith)
        : expected;
    this.likeliest = new Likeliest(expected, flights == expected);
    this.reliances = new Reliances(scenario, expected);
    var owned = Set.copyOf(scenario.choice().ownedIds());
    this.purse = new Purse(owned, atHand.shelf(), scenario.alsoBuyOrNothing());
    this.purseAnew = new Purse(owned, atHand.anew(), scenario.alsoBuyOrNothing());
    this.deviations = MassChance.deviationsFor(scenario.massCap().confidenceOrUsual());
    this.purpose = Purpose.of(scenario);
    this.aboard = aboard;
    this.prospects = prospects(purpose);
  }

  private Assessor(Assessor other, Purpose purpose) {
    this.scenario = other.scenario;
    this.fitter = other.fitter;
    this.ruleBook = other.ruleBook;
    this.expected = other.expected;
    this.flights = other.flights;
    this.likeliest = other.likeliest;
    this.reliances = other.reliances;
    this.purse = other.purse;
    this.purseAnew = other.purseAnew;
    this.deviations = other.deviations;
    this.aboard = other.aboard;
    this.purpose = purpose;
    this.prospects = prospects(purpose);
  }

  private Prospects prospects(Purpose asked) {
    return new Prospects(
        scenario,
        fitter,
        purse,
        asked.onlyBelieved(),
        asked.asksForPlan() ? expected : flights,
        flights);
  }

  /** The same opinion on the same parts, ranked by something else; what was worked out so far is kept. */
  public Assessor with(Purpose other) {
    return new Assessor(this, other);
  }

  /** What builds only begun can come to. */
  public Prospects prospects() {
    return prospects;
  }

  /** Assessed builds by the likeliest figures, whatever the outlook. */
  public Likeliest likeliest() {
    return likeliest;
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
            scenario,
            purpose,
            deviations,
            mass,
            cost,
            purse,
            flight,
            fitting.reach(),
            Sight.clearDegrees(build.frame().orElseThrow(), build.propeller().orElseThrow()),
            planWith,
            disbeliefs),
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
    return (long) Math.floor(share * likeliest.figure(fitting, mass.grams(), flight) * GRAIN);
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
}
