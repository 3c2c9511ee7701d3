package pappus.assessment.flight;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import pappus.evidence.BatteryFigures;
import pappus.evidence.BoardFigures;
import pappus.evidence.BuildFigures;
import pappus.evidence.Evidence;
import pappus.evidence.MotorFigures;
import pappus.evidence.PropellerFigures;
import pappus.evidence.Weighing;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Motor;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.physics.atmosphere.Air;
import pappus.physics.atmosphere.StandardAtmosphere;
import pappus.physics.battery.Ageing;
import pappus.physics.battery.Cell;
import pappus.physics.battery.Chemistry;
import pappus.physics.battery.Condition;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.LandingRule;
import pappus.physics.flight.Rotor;
import pappus.physics.motor.MotorModel;
import pappus.physics.motor.PartLoadLaw;
import pappus.physics.motor.SpeedController;
import pappus.physics.motor.WindingHeat;
import pappus.physics.propeller.BladeElements;
import pappus.physics.propeller.PropellerCurve;
import pappus.physics.propeller.PropellerInAir;
import pappus.physics.propeller.PropellerModel;
import pappus.physics.propeller.StaticPoint;
import pappus.quantity.Require;
import pappus.quantity.Units;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/**
 * Turns catalogue parts, in the units of data sheets, into the physics' own models in SI, for one scenario. Safe for
 * use by several threads.
 *
 * <p>Why: src/site/markdown/decisions.md#own-flights-count-through-the-figure-of-merit
 */
public final class FlightModels {
  /** The charge of a cell is what it delivers, not its label. */
  private static final double NOTHING_WITHHELD = 1;

  private static final double CELSIUS = 273.15;
  private static final double STANDARD_TEST_DENSITY = 1.225;
  private static final double STANDARD_TEST_CELSIUS = 15;

  private final Air air;
  private final Flight flight;
  private final Map<String, Pack> packs = new ConcurrentHashMap<>();
  private final double packK;
  private final Map<String, PropellerModel> curves = new ConcurrentHashMap<>();
  private final Map<Geometry, PropellerModel> geometries = new ConcurrentHashMap<>();
  private final Map<String, PropellerInAir> inAir = new ConcurrentHashMap<>();
  private final Map<String, MotorModel> motors = new ConcurrentHashMap<>();
  private final Map<String, Cell> cells = new ConcurrentHashMap<>();
  private final Weighing weighing;
  private final double powerFactor;
  private final Evidence evidence;
  private final Map<String, MotorFigures> motorFigures = new ConcurrentHashMap<>();
  private final Map<String, PropellerFigures> propellerFigures = new ConcurrentHashMap<>();
  private final Map<String, BatteryFigures> batteryFigures = new ConcurrentHashMap<>();

  /**
   * @param weighing which number stands for an uncertain figure of a record
   * @param powerFactor power that propellers need over what is computed; it goes into their figure of merit, so that
   *     bounds and full throttle follow it
   * @param evidence what the catalogue says of the figures of its records
   */
  public FlightModels(Scenario scenario, Weighing weighing, double powerFactor, Evidence evidence) {
    this.evidence = evidence;
    this.powerFactor = Require.positive("powerFactor", powerFactor);
    this.weighing = weighing;
    var place = scenario.air();
    var celsius = place.temperatureCelsius();
    this.air = celsius == null
        ? StandardAtmosphere.at(place.altitudeMetres())
        : StandardAtmosphere.at(place.altitudeMetres(), celsius + CELSIUS);
    this.flight = scenario.flight();
    this.packK = place.packTemperatureOrWarm() + CELSIUS;
  }

  /** Power that propellers need over what is computed, by the builder's own flights; 1 without any. */
  double powerFactor() {
    return powerFactor;
  }

  private Condition condition(Chemistry chemistry) {
    var volts = flight.chargedToVoltsPerCell();
    var ageing = switch (flight.packAgeOrNew()) {
      case NEW -> Ageing.NEW;
      case USED -> Ageing.USED;
      case TIRED -> Ageing.TIRED;
    };
    return new Condition(
        packK, ageing, NOTHING_WITHHELD, volts == null ? 1 : chemistry.chargeAtVolts(volts));
  }

  /** What counts of the parts of a build; of a board that it has not, nothing is known. */
  public BuildFigures figures(Build build) {
    return new BuildFigures(
        figures(build.motor().orElseThrow()),
        figures(build.propeller().orElseThrow()),
        figures(build.battery().orElseThrow()),
        build.board().map(this::figures).orElse(BoardFigures.UNKNOWN));
  }

  private MotorFigures figures(Motor motor) {
    return motorFigures.computeIfAbsent(motor.id(), id -> evidence.motor(motor));
  }

  /** What counts of a propeller. */
  public PropellerFigures figures(Propeller propeller) {
    return propellerFigures.computeIfAbsent(propeller.id(), id -> evidence.propeller(propeller));
  }

  /** Current that a pack, its plug and its leads stand for some seconds, A. */
  public double burstAmps(Battery battery) {
    return Ratings.burstAmps(battery, figures(battery));
  }

  /** What counts of a pack. */
  public BatteryFigures figures(Battery battery) {
    return batteryFigures.computeIfAbsent(battery.id(), id -> evidence.battery(battery));
  }

  /** What counts of a board. */
  public BoardFigures figures(Board board) {
    return evidence.board(board);
  }

  /** The air of the place. */
  public Air air() {
    return air;
  }

  /**
   * The rotor of a build.
   *
   * @param loss ripple of its controllers over that of the law; absent: as the law says
   */
  Rotor rotor(Build build, OptionalDouble loss, Factors factors) {
    var motor = build.motor().orElseThrow();
    var propeller = build.propeller().orElseThrow();
    var share = loss.orElse(1) * factors.loss();
    return new Rotor(
        factors.thrust() == 1 && factors.merit() == 1 && factors.diameter() == 1
            ? propeller(propeller)
            : in(scaled(curve(propeller), factors.thrust(), factors.merit())
                .sized(factors.diameter())),
        motor(motor, factors),
        controller(motor, share));
  }

  /** An aircraft in steady flight, its windings as warm as hover makes them. */
  Aircraft steadily(Aircraft aircraft, Build build) {
    var motorKg = build.motor().orElseThrow().mass().grams() / 1000;
    return aircraft.warmedInHover(WindingHeat.thermalResistanceKPerW(motorKg), air.temperatureK());
  }

  /**
   * The rotor of parts that are all a board is known by.
   *
   * @param share ripple of its controllers over that of the law; absent: as the law says
   */
  public Rotor rotor(Motor part, Propeller propeller, OptionalDouble share) {
    return new Rotor(propeller(propeller), motor(part), controller(part, share.orElse(1)));
  }

  /** A propeller in the scenario's air. */
  public PropellerInAir propeller(Propeller propeller) {
    return inAir.computeIfAbsent(propeller.id(), id -> in(curve(propeller)));
  }

  private PropellerInAir in(PropellerModel curve) {
    return curve.in(air.densityKgPerM3(), air.viscosityPaS());
  }

  /** A motor as its figures count. */
  public MotorModel motor(Motor part) {
    return motor(part, Factors.NONE);
  }

  /**
   * The controllers of a motor.
   *
   * @param share ripple of the board over that of the law
   */
  public SpeedController controller(Motor part, double share) {
    return PartLoadLaw.BENCH.controllerFor(part.statorDiameterMillimetres(), lossOhm(part), share);
  }

  /** Ripple of a board's controllers over that of the law, if anything is known of them. */
  public OptionalDouble rippleShare(Board board) {
    return figures(board).rippleShare(weighing);
  }

  /**
   * Resistance that the law of part load is asked with, Ω: caution's extra would lower the ripple, and of a winding
   * that no record states, less of it is the harmful way.
   */
  public double lossOhm(Motor part) {
    var reference = motor(part).referenceResistanceOhm();
    var winding = figures(part).winding();
    if (winding.stated().isEmpty()) {
      var less = winding.prior() * StrictMath.exp(-0.5 * winding.deviation());
      return reference - (winding.by(weighing, 1) - less) / 1000;
    }
    return weighing == Weighing.CAUTIOUS
        ? reference - (winding.by(weighing, 1) - winding.posterior()) / 1000
        : reference;
  }

  /** At a kept figure of merit C_P goes with C_T to the power of 1.5; none becomes better than the ideal one. */
  private static PropellerModel scaled(PropellerModel curve, double thrust, double merit) {
    var most = (1 - 1e-9) / curve.highestFigureOfMerit();
    return curve.scaled(thrust, StrictMath.pow(thrust, 1.5) / Math.min(merit, most));
  }

  private MotorModel motor(Motor motor, Factors factors) {
    return factors.resistance() == 1 && factors.noLoad() == 1 && factors.noLoadGrowth() == 1
        ? motors.computeIfAbsent(motor.id(), id -> newMotor(motor, factors))
        : newMotor(motor, factors);
  }

  private MotorModel newMotor(Motor motor, Factors factors) {
    var figures = figures(motor);
    var path = figures.pathMilliohms() / 1000;
    return MotorModel.of(
        Units.rpmToRadPerS(figures.loadedKv()),
        figures.winding().by(weighing, 1) / 1000 * factors.resistance(),
        path > 0 ? path : MotorModel.DEFAULT_SERIES_OHM,
        figures.noLoad().by(weighing, 1) * factors.noLoad(),
        motor.noLoadVolts(),
        // A doubt may ask for more than any current grows by.
        Math.min(
            2,
            (motor.noLoadGrowth() == null
                    ? PartLoadLaw.BENCH.noLoadExponent()
                    : motor.noLoadGrowth())
                * factors.noLoadGrowth()));
  }

  private PropellerModel curve(Propeller propeller) {
    return curves.computeIfAbsent(
        propeller.id(),
        id -> powerFactor == 1
            ? newCurve(propeller)
            : scaled(newCurve(propeller), 1, 1 / powerFactor));
  }

  private PropellerModel newCurve(Propeller propeller) {
    var diameterM = Units.inchesToMetres(propeller.diameterInches());
    var test = propeller.test();
    if (test == null) {
      var computed =
          computed(diameterM, Units.inchesToMetres(propeller.pitchInches()), propeller.blades());
      var merit = figures(propeller).merit();
      return scaled(computed, 1, merit.by(weighing, -1) / merit.by(Weighing.STATED, -1));
    }
    var density = test.airDensityKgPerCubicMetre();
    var celsius = test.airTemperatureCelsius();
    var testAir = new Air(
        (celsius == null ? STANDARD_TEST_CELSIUS : celsius) + CELSIUS,
        101_325,
        density == null ? STANDARD_TEST_DENSITY : density);
    var stated = PropellerCurve.through(
        diameterM,
        Units.inchesToMetres(propeller.pitchInches()),
        propeller.blades(),
        testAir.densityKgPerM3() / testAir.viscosityPaS(),
        test.rows().stream()
            .map(row -> new StaticPoint(
                Units.rpmToRadPerS(propeller.rpm(row)),
                row.thrustCoefficient(),
                row.powerCoefficient()))
            .toList());
    // How coefficients go with speed is the test's; their height is what counts of it. Whether a
    // larger C_T at the same figure of merit helps depends on the motor: it knows no caution.
    var figures = figures(propeller);
    return scaled(
        stated,
        figures.thrust().by(weighing, 0) / figures.thrust().by(Weighing.STATED, 0),
        figures.merit().by(weighing, -1) / figures.merit().by(Weighing.STATED, 0));
  }

  /** Many propellers are of one geometry, and blade elements take a while. */
  private PropellerModel computed(double diameterM, double pitchM, int blades) {
    return geometries.computeIfAbsent(
        new Geometry(diameterM, pitchM, blades),
        fresh -> BladeElements.propeller(diameterM, pitchM, blades));
  }

  private record Geometry(double diameterM, double pitchM, int blades) {}

  public Pack pack(Build build, Factors factors) {
    var battery = build.battery().orElseThrow();
    var cell = factors.cellResistance() == 1 && factors.capacity() == 1 && factors.slow() == 1
        ? cells.computeIfAbsent(battery.id(), id -> cell(battery, factors))
        : cell(battery, factors);
    return Pack.of(
        cell, battery.cellsInSeries(), battery.cellsInParallel(), Ratings.wiringOhm(build));
  }

  /** A pack behind no more than its own lead and plug. */
  public Pack bare(Battery battery) {
    return packs.computeIfAbsent(
        battery.id(), id -> pack(Build.empty().with(Role.BATTERY, battery), Factors.NONE));
  }

  /** One cell of a battery in the condition in which it is flown. */
  public Cell cell(Battery battery) {
    return cell(battery, Factors.NONE);
  }

  /** When to land with a battery. */
  public LandingRule landing(Battery battery) {
    var chemistry = battery.chemistry();
    var reserve = flight.reserve();
    var volts = flight.landingVoltsPerCell();
    return new LandingRule(
        reserve == null ? chemistry.reserve() : reserve,
        volts == null ? chemistry.landingVolts() : volts);
  }

  /** Volts a cell of a battery that full throttle must not pass. */
  public double floorVolts(Battery battery) {
    var asked = flight.floorVoltsPerCell();
    return asked == null ? battery.chemistry().floorVolts() : asked;
  }

  private Cell cell(Battery battery, Factors factors) {
    var figures = figures(battery);
    var parallel = battery.cellsInParallel();
    return Cell.of(
        BatteryFigures.chemistry(battery),
        figures.delivered().by(weighing, -1) * 3.6 / parallel * factors.capacity(),
        figures.cellResistance().by(weighing, 1) / 1000 * parallel * factors.cellResistance(),
        factors.slow(),
        condition(BatteryFigures.chemistry(battery)));
  }
}
