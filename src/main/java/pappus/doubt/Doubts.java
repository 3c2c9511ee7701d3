package pappus.doubt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.FlightEstimate;
import pappus.evidence.BatteryFigures;
import pappus.evidence.BoardFigures;
import pappus.evidence.BuildFigures;
import pappus.evidence.Figure;
import pappus.evidence.Weighing;
import pappus.part.Build;
import pappus.part.Part;
import pappus.physics.airframe.ArmShadow;
import pappus.physics.airframe.NeighbouringDiscs;
import pappus.physics.motor.PartLoadLaw;
import pappus.physics.propeller.PropellerCurve;

/**
 * First-order propagation to what builds are ranked by, seconds or metres: each uncertain number is moved by one
 * standard deviation either way, and the build is flown again; losses make the low end, gains the high one. C_T is
 * moved at a kept figure of merit, and the other way round, because the errors of C_T and C_P go together.
 *
 * <p>Why: src/site/markdown/decisions.md#the-band-is-first-order-with-losses-and-gains-apart
 */
public final class Doubts {
  /** Of a drag area that a record states, and of one that is seen or goes with the mass (engineering estimates). */
  private static final double DRAG_STATED = 0.20;

  private static final double DRAG_ASSUMED = 0.35;

  /** Of what the electronics draw, of which records do not say how it is known (engineering estimate). */
  private static final double AVIONICS = 0.25;

  /** Of the exponent of a no-load current of which only one speed is known (engineering estimate). */
  private static final double NO_LOAD_GROWTH = 0.5;

  private static final double NO_LOAD_GROWTH_STATED = 0.2;

  /** Blades are moulded to half a percent (common practice, no published source). */
  private static final double DIAMETER = 0.005;

  /** Of what wind costs (engineering estimate). */
  private static final double WIND = 0.05;

  private final Assessor assessor;
  private final Map<List<Object>, Reliance> reliances = new ConcurrentHashMap<>();

  public Doubts(Assessor assessor) {
    this.assessor = assessor;
  }

  /** The band of a build that flies. */
  public Band band(Assessment assessment) {
    var flown = assessor.whatIf(assessment);
    var unrated = flown.applyAsDouble(Factors.NONE);
    var contributions = new ArrayList<Contribution>();
    for (var source : sources(assessment)) {
      contributions.add(Contribution.of(
          source.doubt(),
          source.name(),
          source.deviation(),
          unrated,
          flown.applyAsDouble(source.doubt().moved(Factors.NONE, source.more())),
          flown.applyAsDouble(source.doubt().moved(Factors.NONE, -source.deviation()))));
    }
    return new Band(assessor.likeliest(assessment), contributions, planWith(assessment));
  }

  /** Share of the estimate to plan with of a build that flies, 0 to 1. */
  private double planWith(Assessment assessment) {
    var build = assessment.build();
    var flight = assessment.flight().orElseThrow();
    var loss = flight.figures().board().rippleShare(Weighing.EXPECTED);
    var key = List.<Object>of(
        build.frame().orElseThrow().id(),
        build.motor().orElseThrow().id(),
        build.propeller().orElseThrow().id(),
        build.battery().orElseThrow().id(),
        loss,
        flight.figures().board().controllerLoss().map(Figure::deviation));
    return reliances
        .computeIfAbsent(key, main -> Reliance.of(assessor, assessment, this, AVIONICS))
        .planWith(assessment.mass().doubtGrams(), flight.draws(), AVIONICS);
  }

  /**
   * One number.
   *
   * @param deviation one standard deviation
   * @param more the same toward more of it
   */
  record Source(Doubt doubt, String name, double deviation, double more) {
    Source(Doubt doubt, String name, double deviation) {
      this(doubt, name, deviation, deviation);
    }
  }

  /** Every number of a build that flies. */
  List<Source> sources(Assessment assessment) {
    var build = assessment.build();
    var flight = assessment.flight().orElseThrow();
    var sources = sourcesOfMain(build, flight.figures(), flight);
    sources.add(new Source(Doubt.AVIONICS, "electronics of " + build, AVIONICS));
    sources.add(new Source(Doubt.MASS, "mass of " + build, assessment.mass().doubtGrams()));
    return sources;
  }

  /**
   * Those of its main parts.
   *
   * @param figures what counts of them
   * @param flight of the build, or of its main parts in another state
   */
  List<Source> sourcesOfMain(Build build, BuildFigures figures, FlightEstimate flight) {
    var propeller = build.propeller().orElseThrow();
    var motor = build.motor().orElseThrow();
    var battery = build.battery().orElseThrow();
    var frame = build.frame().orElseThrow();
    var sources = new ArrayList<>(List.of(
        of(Doubt.THRUST, "thrust coefficient", propeller, figures.propeller().thrust()),
        of(Doubt.MERIT, "figure of merit", propeller, figures.propeller().merit()),
        new Source(Doubt.DIAMETER, "diameter of " + propeller.id(), DIAMETER),
        of(Doubt.RESISTANCE, "resistance", motor, figures.motor().winding()),
        of(Doubt.NO_LOAD, "no-load current", motor, figures.motor().noLoad()),
        new Source(
            Doubt.NO_LOAD_GROWTH,
            "growth of the no-load current of " + motor.id(),
            motor.noLoadGrowth() == null ? NO_LOAD_GROWTH : NO_LOAD_GROWTH_STATED),
        of(Doubt.CELL_RESISTANCE, "cell resistance", battery, figures.battery().cellResistance()),
        new Source(
            Doubt.SLOW_RESISTANCE,
            "slow resistance of " + battery.chemistry(),
            BatteryFigures.slowDoubt(battery)),
        of(Doubt.CAPACITY, "capacity", battery, figures.battery().delivered()),
        loss(build, figures.board(), flight.volts()),
        new Source(Doubt.THRUST_LOST, "thrust lost on " + frame.id(), thrustLost(build, flight))));
    var row = propeller.onlyRow();
    if (row.isPresent()) {
      var away = Math.log(flight.hoverRpm() / propeller.rpm(row.get()));
      sources.add(new Source(
          Doubt.MERIT_WITH_SPEED,
          "figure of merit with speed of " + propeller.id(),
          PropellerCurve.EXPONENT_DOUBT * Math.abs(away)));
    }
    if (assessor.asksForDrag()) {
      sources.add(new Source(
          Doubt.DRAG,
          "drag area of " + frame.id(),
          frame.dragAreaSquareMetres() == null ? DRAG_ASSUMED : DRAG_STATED));
    }
    if (assessor.isWindy()) {
      sources.add(new Source(Doubt.WIND, "wind", WIND));
    }
    return sources;
  }

  private static Source of(Doubt doubt, String name, Part part, Figure figure) {
    return new Source(doubt, name + " of " + part.id(), figure.deviation());
  }

  /** Beyond the evidence the law may well promise too much, but hardly too little. */
  private static Source loss(Build build, BoardFigures figures, double volts) {
    var board = build.board().orElseThrow();
    var stator = build.motor().orElseThrow().statorDiameterMillimetres();
    return figures
        .controllerLoss()
        .map(figure -> of(Doubt.LOSS, "part-load loss", board, figure))
        .orElseGet(() -> new Source(
            Doubt.LOSS,
            "law of part-load loss",
            PartLoadLaw.DOUBT_LN_RIPPLE,
            PartLoadLaw.isInsideEvidence(volts, stator)
                ? PartLoadLaw.DOUBT_LN_RIPPLE
                : PartLoadLaw.DOUBT_LN_RIPPLE_BEYOND));
  }

  /** One standard deviation of ln of the thrust kept: of the arms' shadow, and of what a neighbouring disc costs. */
  private static double thrustLost(Build build, FlightEstimate flight) {
    var frame = build.frame().orElseThrow();
    var diameter = build.propeller().orElseThrow().diameterMillimetres();
    var gap =
        Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres()) / diameter - 1;
    var neighbour = 1 - NeighbouringDiscs.kept(gap);
    var arms = frame.armWidthMillimetres() == null
            || frame.assumed("armWidthMillimetres").isPresent()
        ? ArmShadow.UNKNOWN_DOUBT
        : ArmShadow.DOUBT * flight.thrustLost();
    return StrictMath.hypot(arms, neighbour) / (1 - flight.thrustLost());
  }
}
