package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pappus.catalog.Build;
import pappus.catalog.Known;
import pappus.catalog.Mass;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.Fitter;
import pappus.compatibility.Fitting;
import pappus.compatibility.RolesRule;
import pappus.compatibility.Stock;
import pappus.compatibility.Verdict;
import pappus.evidence.Weighing;
import pappus.physics.airframe.Airframe;
import pappus.physics.airframe.MassChance;
import pappus.physics.battery.Delivery;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.EfficiencyBand;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.LandingRule;
import pappus.physics.flight.Limits;
import pappus.physics.flight.Rotor;
import pappus.physics.motor.PartLoadLaw;
import pappus.scenario.Outlook;
import pappus.scenario.Scenario;
import pappus.scenario.Waiver;

/**
 * Judges builds for one scenario.
 *
 * <p>Both searches, the explanations and the tests ask this class, so that none of them can hold a
 * different opinion. Safe for use by several threads.
 */
public final class Assessor {
  private static final List<Role> MAIN =
      List.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY, Role.BOARD);
  private static final double HALF_CHARGE = 0.5;

  /** Of a frame that states none, m²: an engineering estimate. */
  private static final double ASSUMED_DRAG_AREA = 0.005;

  /** So near to its top speed a flight is worth a word. */
  private static final double NEAR_TOP_SPEED = 0.7;

  /** Beyond these a practitioner would laugh (common practice, no published source). */
  private static final double LIGHT_KG = 0.250;

  private static final double LONGEST_LIGHT_SECONDS = 48 * 60;
  private static final double MOST_LIGHT_THRUST = 10;

  private final Scenario scenario;
  private final List<CompatibilityRule> rules;
  private final Fitter fitter;
  private final FlightModels models;
  private final FlightModels expected;
  private final CoursePlanner courses;
  private final Set<String> owned;
  private final double deviations;

  /**
   * @param stock small hardware at hand
   * @param rules fit rules, in the order of reports
   */
  public Assessor(Scenario scenario, Stock stock, List<CompatibilityRule> rules) {
    this.scenario = scenario;
    this.rules = List.copyOf(rules);
    this.fitter = new Fitter(scenario, stock);
    this.models = new FlightModels(scenario, weighing(scenario));
    this.expected = new FlightModels(scenario, Weighing.EXPECTED);
    this.courses = new CoursePlanner(scenario);
    this.owned = Set.copyOf(scenario.choice().ownedIds());
    this.deviations = MassChance.deviationsFor(scenario.massCap().confidenceOrUsual());
  }

  private static Weighing weighing(Scenario scenario) {
    return scenario.outlookOrExpected() == Outlook.CAUTIOUS ? Weighing.CAUTIOUS : Weighing.EXPECTED;
  }

  public Scenario scenario() {
    return scenario;
  }

  /** Standard deviations of mass kept below the cap for the scenario's confidence. */
  public double deviations() {
    return deviations;
  }

  /** Everything about one build. */
  public Assessment assess(Build build) {
    var fitting = fitter.fit(build);
    var findings = rules.stream().map(rule -> find(rule, fitting)).toList();
    var mass = mass(fitting);
    var cost = cost(fitting);
    var missing = MAIN.stream().filter(role -> build.part(role).isEmpty()).findFirst();
    if (missing.isPresent()) {
      return grounded(
          build, fitting, findings, mass, cost, "there is no " + missing.get().label());
    }
    FlightEstimate flight;
    try {
      flight =
          fly(models, build, fitting, mass.grams(), Factors.NONE, FlightModels.continuous(build));
    } catch (IllegalArgumentException outsideTheModel) {
      // The physics refuses what it was not made for; the reader sees its reason.
      return grounded(
          build, fitting, findings, mass, cost, String.valueOf(outsideTheModel.getMessage()));
    }
    return new Assessment(
        build,
        fitting,
        findings,
        mass,
        cost,
        Optional.of(flight),
        Optional.empty(),
        LimitTable.of(scenario, deviations, mass, cost, flight));
  }

  private static Assessment grounded(
      Build build,
      Fitting fitting,
      List<Finding> findings,
      MassTable mass,
      CostTable cost,
      String why) {
    return new Assessment(
        build, fitting, findings, mass, cost, Optional.empty(), Optional.of(why), List.of());
  }

  /**
   * Whether no fit rule but the one on missing roles sets the parts of a build only begun apart. A hint
   * for searches that try changes, not a proof: a rule on the balance judges without the masses that are
   * still missing.
   */
  public boolean goesTogether(Build begun) {
    var fitting = fitter.fit(begun);
    return rules.stream()
        .filter(rule -> !(rule instanceof RolesRule)
            && begun.parts().keySet().stream().anyMatch(rule.reads()::contains))
        .noneMatch(rule -> find(rule, fitting).breaks());
  }

  /**
   * What builds are ranked by as a function of changed numbers, all else equal: seconds, or metres over ground
   * where the goal is range; for doubts and what-ifs. Always by the likeliest figures, whatever the outlook, and
   * without continuous ratings: a little more current than a rating still flies as long, where the ranking rightly
   * sees no flight.
   *
   * @throws IllegalArgumentException from the function, if the physics refuses what is asked
   */
  public ToDoubleFunction<Factors> whatIf(Build build) {
    var fitting = fitter.fit(build);
    var grams = mass(fitting).grams();
    return factors -> fly(expected, build, fitting, grams, factors, Limits.NONE).figure();
  }

  /** What a build is ranked by at the likeliest figures, whatever the outlook. */
  public double likeliest(Build build) {
    var fitting = fitter.fit(build);
    var grams = mass(fitting).grams();
    return fly(expected, build, fitting, grams, Factors.NONE, FlightModels.continuous(build))
        .figure();
  }

  private Finding find(CompatibilityRule rule, Fitting fitting) {
    var verdict = rule.check(fitting);
    if (verdict instanceof Verdict.Fits
        || (verdict instanceof Verdict.Unknown && scenario.keepsUnknown())) {
      return new Finding(rule.id(), verdict, Optional.empty(), false);
    }
    var waiver = rule.mayBeWaived() ? waiver(rule, fitting.build()) : Optional.<Waiver>empty();
    return new Finding(rule.id(), verdict, waiver, waiver.isEmpty());
  }

  private Optional<Waiver> waiver(CompatibilityRule rule, Build build) {
    return scenario.waived().stream()
        .filter(waiver -> waiver.rule().equals(rule.id())
            && build.parts().entrySet().stream()
                .anyMatch(entry -> rule.reads().contains(entry.getKey())
                    && waiver.parts().contains(entry.getValue().id())))
        .findFirst();
  }

  private MassTable mass(Fitting fitting) {
    var build = fitting.build();
    var lines = new ArrayList<MassLine>();
    build.parts().forEach((role, part) -> {
      var pieces = build.count(role);
      lines.add(line(role.label(), Optional.of(part), pieces, part.mass(), 1));
    });
    fitting
        .stackPlan()
        .flatMap(plan -> plan.height())
        .filter(height -> height.addedGrams() > 0)
        .ifPresent(height -> lines.add(line(
            "longer standoffs",
            Optional.empty(),
            1,
            Mass.of(height.addedGrams(), Known.ESTIMATED),
            1)));
    for (var item : fitting.hardware().items()) {
      lines.add(
          line(item.label(), item.part(), item.pieces(), item.each(), item.cutOff() ? -1 : 1));
    }
    if (scenario.payloadGrams() > 0) {
      lines.add(
          line("payload", Optional.empty(), 1, Mass.of(scenario.payloadGrams(), Known.MAKER), 1));
    }
    return MassTable.of(lines);
  }

  private static MassLine line(String label, Optional<Part> part, int pieces, Mass each, int sign) {
    return new MassLine(
        label,
        part,
        pieces,
        each,
        sign * pieces * each.grams(),
        pieces * each.standardDeviationGrams());
  }

  private CostTable cost(Fitting fitting) {
    var build = fitting.build();
    var lines = new ArrayList<CostLine>();
    build.parts().forEach((role, part) -> lines.add(cost(role.label(), part, build.count(role))));
    for (var item : fitting.hardware().items()) {
      item.part().ifPresent(part -> lines.add(cost(item.label(), part, item.pieces())));
    }
    return CostTable.of(lines);
  }

  private CostLine cost(String label, Part part, int pieces) {
    var has = owned.contains(part.id());
    var units = part.sold().unitsFor(pieces);
    return new CostLine(
        label, part, pieces, units, has ? 0 : units * part.price().cents(), has);
  }

  private FlightEstimate fly(
      FlightModels models,
      Build build,
      Fitting fitting,
      double grams,
      Factors factors,
      Limits continuous) {
    var battery = build.battery().orElseThrow();
    var lost = Math.max(0, 1 - (1 - scenario.flight().thrustLostOrUsual()) * factors.thrustKept());
    var drag = build.frame().orElseThrow().dragAreaSquareMetres();
    var airframe = new Airframe(
        (grams + factors.addedGrams()) / 1000,
        lost,
        factors.drag() * (drag == null ? ASSUMED_DRAG_AREA : drag));
    var rotor = models.rotor(build, factors);
    var draws = Avionics.draws(fitting);
    var avionicsW = draws.stream().mapToDouble(Draw::watts).sum();
    var aircraft = new Aircraft(airframe, build.frame().orElseThrow().rotors(), rotor, avionicsW);
    var pack = models.pack(build, factors);
    var hover = Hover.of(aircraft);
    var burst = FlightModels.burst(build);
    var floor = floorVolts(battery);
    var fullCharge = Math.min(scenario.flight().thrustAtChargeOrMidFlight(), pack.startCharge());
    var full = FullThrottle.of(aircraft, pack, fullCharge, floor, burst);
    var fresh = FullThrottle.of(aircraft, pack, pack.startCharge(), floor, burst);
    var flown = courses.hovers()
        ? Optional.<CoursePlanner.Flown>empty()
        : Optional.of(courses.fly(aircraft, hover, full, pack, landing(build), continuous));
    var endurance = flown.isPresent()
        ? flown.get().endurance()
        : Endurance.of(hover.steady(), pack, landing(build), continuous);
    var hints = new ArrayList<String>();
    var delivery = pack.deliver(hover.steady().load(), HALF_CHARGE);
    var volts = delivery instanceof Delivery.Delivered now ? now.terminalVolts() : 0;
    var beyond = addDisbelief(build, hover, full, volts, airframe, endurance.seconds(), hints);
    addHints(build, rotor, hover, full, volts, hints);
    flown.ifPresent(course -> addCourseHints(course.course(), drag == null, hints));
    return new FlightEstimate(
        hover,
        volts,
        volts > 0 ? hover.steady().busCurrentA(volts) : 0,
        volts > 0 ? hover.steady().duty(volts) : 1,
        split(hover, volts),
        volts > 0 ? hover.efficiency(volts) : 0,
        draws,
        endurance,
        flown.map(CoursePlanner.Flown::course),
        full.thrustToWeight(airframe),
        fresh.thrustToWeight(airframe),
        full,
        continuous,
        burst,
        hints,
        beyond);
  }

  private static PowerSplit split(Hover hover, double volts) {
    var steady = hover.steady();
    var electrical = steady.rotorCount() * steady.point().electricalPowerW();
    var rotors = volts > 0 ? steady.busPowerW(volts) - steady.avionicsW() : electrical;
    return new PowerSplit(
        hover.inducedPowerW(),
        hover.profilePowerW(),
        electrical - steady.shaftPowerW(),
        rotors - electrical,
        steady.avionicsW());
  }

  private LandingRule landing(Build build) {
    var chemistry = build.battery().orElseThrow().chemistry();
    var reserve = scenario.flight().reserve();
    var volts = scenario.flight().landingVoltsPerCell();
    return new LandingRule(
        reserve == null ? chemistry.reserve() : reserve,
        volts == null ? chemistry.landingVolts() : volts);
  }

  private double floorVolts(pappus.catalog.Battery battery) {
    var asked = scenario.flight().floorVoltsPerCell();
    return asked == null ? battery.chemistry().floorVolts() : asked;
  }

  private static void addHints(
      Build build, Rotor rotor, Hover hover, FullThrottle full, double volts, List<String> hints) {
    if (build.propeller().orElseThrow().test() == null) {
      hints.add(
          "The propeller is known by its size alone; its coefficients are worked out from blade elements.");
    } else if (hover.isHeld() || full.isHeld()) {
      hints.add(
          "The propeller turns outside the speeds it was tested at; the nearest value is held.");
    }
    if (build.board().orElseThrow().controllerLoss() == null
        && volts > 0
        && !PartLoadLaw.isInsideEvidence(volts, rotor.motor().referenceResistanceOhm())) {
      hints.add(
          "The loss of the speed controllers was measured at 7.4 to 11.1 V and 0.11 to 0.34 Ω; this build is outside.");
    }
  }

  private static void addCourseHints(Course course, boolean isDragAssumed, List<String> hints) {
    if (isDragAssumed) {
      hints.add(
          "The frame's drag area is not known: 0.005 m² is assumed, an engineering estimate.");
    }
    var stretches = course.stretches();
    if (stretches.stream().anyMatch(stretch -> stretch.cruise().isClamped())) {
      hints.add(
          "Forward flight is not counted below 0.914 of the power of hover: theory promised less, but multirotors were not seen to need less.");
    }
    if (stretches.stream().anyMatch(stretch -> stretch.cruise().isHeld())) {
      hints.add(
          "In forward flight the propeller turns outside the speeds it was tested at; the nearest value is held.");
    }
    var fastest = stretches.stream()
        .mapToDouble(stretch -> stretch.cruise().airspeedMPerS())
        .max();
    if (fastest.orElse(0) > NEAR_TOP_SPEED * course.topSpeedMPerS()) {
      hints.add(
          "The top speed is an upper bound: propellers lose thrust near their pitch speed, which static tests do not show; so near to it the numbers flatter.");
    }
  }

  /** Whether the numbers are outside what such aircraft are known to reach; says which. */
  private boolean addDisbelief(
      Build build,
      Hover hover,
      FullThrottle full,
      double volts,
      Airframe airframe,
      double seconds,
      List<String> hints) {
    var band = EfficiencyBand.warning(
        airframe.massKg(), build.board().orElseThrow().controllerLoss() != null);
    if (volts > 0 && band.isPresent() && !band.get().contains(hover.efficiency(volts))) {
      hints.add(
          "The efficiency in hover is outside what such aircraft reach: distrust these numbers.");
    }
    if (airframe.massKg() < LIGHT_KG && courses.hovers() && seconds > LONGEST_LIGHT_SECONDS) {
      hints.add(
          "No aircraft below 250 g is known to hover longer than 48 minutes: distrust these numbers.");
    }
    if (airframe.massKg() < LIGHT_KG
        && !courses.hovers()
        && seconds > LONGEST_LIGHT_SECONDS / ForwardFlight.LEAST_OF_HOVER) {
      hints.add(
          "No aircraft below 250 g is known to hover longer than 48 minutes, which makes 53 at the best airspeed: distrust these numbers.");
    }
    if (airframe.massKg() < LIGHT_KG && full.thrustToWeight(airframe) > MOST_LIGHT_THRUST) {
      hints.add(
          "Thrust over weight above 10 below 250 g is more than such aircraft reach: distrust it.");
    }
    return !hints.isEmpty();
  }
}
