package pappus.reliance;

import java.util.ArrayList;
import java.util.List;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.FrameAir;
import pappus.evidence.BatteryFigures;
import pappus.evidence.BoardFigures;
import pappus.evidence.BuildFigures;
import pappus.evidence.Figure;
import pappus.part.Build;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.physics.airframe.ArmShadow;
import pappus.physics.airframe.NeighbouringDiscs;
import pappus.physics.motor.PartLoadLaw;
import pappus.physics.propeller.PropellerCurve;

/** Which numbers of main parts are not known for sure, and by how much. */
public final class Sources {
  /** Of a drag area that a record states (engineering estimate). */
  private static final double DRAG_STATED = 0.20;

  /** Of the exponent of a no-load current of which only one speed is known (engineering estimate). */
  private static final double NO_LOAD_GROWTH = 0.5;

  private static final double NO_LOAD_GROWTH_STATED = 0.2;

  /** Blades are moulded to half a percent (common practice, no published source). */
  private static final double DIAMETER = 0.005;

  /** Of controllers of which nothing is known but the law. */
  public static final double LAW = PartLoadLaw.DOUBT_LN_RIPPLE;

  /** Of what wind costs (engineering estimate). */
  private static final double WIND = 0.05;

  private Sources() {}

  /**
   * Those of main parts and of the air they fly in.
   *
   * @param build whose
   * @param figures what counts of its parts
   * @param flight of the build, or of its main parts in another state
   * @param asksForDrag whether the drag of an aircraft matters
   * @param isWindy whether it is flown in the wind of the place
   */
  public static List<Source> of(
      Build build,
      BuildFigures figures,
      FlightEstimate flight,
      boolean asksForDrag,
      boolean isWindy) {
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
            growthDoubt(motor)),
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
    if (asksForDrag) {
      sources.add(new Source(
          Doubt.DRAG,
          "drag area of " + frame.id(),
          frame.dragAreaSquareMetres() == null ? FrameAir.UNSTATED_SPREAD : DRAG_STATED));
    }
    if (isWindy) {
      sources.add(new Source(Doubt.WIND, "wind", WIND));
    }
    return sources;
  }

  static double growthDoubt(Motor motor) {
    return motor.noLoadGrowth() == null ? NO_LOAD_GROWTH : NO_LOAD_GROWTH_STATED;
  }

  private static Source of(Doubt doubt, String name, Part part, Figure figure) {
    return new Source(doubt, name + " of " + part.id(), figure.deviation());
  }

  /** Beyond the evidence the law may well promise too much, but hardly too little. */
  private static Source loss(Build build, BoardFigures figures, double volts) {
    var stator = build.motor().orElseThrow().statorDiameterMillimetres();
    return figures
        .controllerLoss()
        .map(figure -> of(Doubt.LOSS, "part-load loss", build.board().orElseThrow(), figure))
        .orElseGet(() -> new Source(
            Doubt.LOSS,
            "law of part-load loss",
            LAW,
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
