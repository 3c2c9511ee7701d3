package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.assessment.Heat;
import pappus.assessment.flight.Draw;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.PowerSplit;
import pappus.physics.flight.Limits;
import pappus.scenario.Flight;
import pappus.scenario.Scenario;

/** How a build flies, with every digit. */
public record FlightJson(
    @JsonPropertyDescription("In the air, s.") double seconds,
    @JsonPropertyDescription("What ends it.") String endsBy,
    @JsonPropertyDescription("Charge used, mAh.") double usedMilliampHours,
    @JsonPropertyDescription("Mean power of the pack, W.") double meanWatts,
    @JsonPropertyDescription("Under load at take-off, V.") double startVolts,
    @JsonPropertyDescription("Under load at landing, V.") double endVolts,
    @JsonPropertyDescription("Current at take-off, A.") double startAmps,
    @JsonPropertyDescription("Current at landing, A.") double endAmps,
    @JsonPropertyDescription("How it is flown.") Flight.Style style,
    @JsonUnwrapped @Nullable CourseJson course,
    @JsonPropertyDescription("Hover at half charge.") Hover hover,

    @JsonPropertyDescription("Where the power of hover goes, W.")
    PowerSplit powerSplit,

    @JsonPropertyDescription("What the rest of the power is drawn by.")
    List<Draw> draws,

    @JsonPropertyDescription("Whether a figure is beyond what such quads are known to do.")
    boolean beyondBelief,

    @JsonPropertyDescription("Full thrust-to-weight, at the charge at which it is judged.")
    double thrustToWeight,

    @JsonPropertyDescription("The same with a full pack.") double freshThrustToWeight,
    @JsonPropertyDescription("At full throttle.") FullThrottle fullThrottle,

    @JsonPropertyDescription(
        "To what motor output has to be limited in the flight firmware, so that no part is overtaxed on a full pack or where thrust is judged, %; 100: it need not be.")
    int motorOutputPercent,

    @JsonPropertyDescription("How warm the motors get.") Warmth heat,

    @JsonPropertyDescription("Continuous ratings, of those that are known.")
    Ratings continuousAmps,

    @JsonPropertyDescription("Burst ratings, of those that are known.")
    Ratings burstAmps) {
  /** Hover in one place. */
  record Hover(
      @JsonPropertyDescription("Of the pack under load, V.") double volts,
      @JsonPropertyDescription("Of the pack, A.") double amps,
      @JsonPropertyDescription("Of the pack, W.") double watts,

      @JsonPropertyDescription("Duty of the controllers, 0 to 1.")
      double throttle,

      @JsonPropertyDescription("Of one motor, A.") double motorAmps,
      @JsonPropertyDescription("Of the propellers, rpm.") double rpm,

      @JsonPropertyDescription("Least power by momentum theory, W.")
      double momentumWatts,

      @JsonPropertyDescription("Least power over that of the pack, 0 to 1.")
      double efficiency) {
    static Hover of(FlightEstimate flight) {
      var point = flight.hover().steady().point();
      return new Hover(
          flight.volts(),
          flight.amps(),
          flight.split().totalW(),
          flight.duty(),
          point.currentA(),
          point.speedRadPerS() * 30 / Math.PI,
          flight.hover().idealPowerW(),
          flight.efficiency());
    }
  }

  /** The most thrust. */
  record FullThrottle(
      @JsonPropertyDescription("Of all propellers, N.") double thrustNewtons,

      @JsonPropertyDescription("Duty of the controllers, 0 to 1.")
      double throttle,

      @JsonPropertyDescription("What keeps it from more.") String cappedBy,
      @JsonPropertyDescription("Of one motor, A.") double motorAmps,
      @JsonPropertyDescription("Of the pack, A.") double amps,
      @JsonPropertyDescription("Of the pack under load, V.") double volts) {
    static FullThrottle of(FlightEstimate flight) {
      var full = flight.full();
      return new FullThrottle(
          full.thrustN(),
          full.duty(),
          key(full.limit()),
          full.point().currentA(),
          full.busCurrentA(),
          full.busVolts());
    }
  }

  /** How warm the motors get. */
  record Warmth(
      @JsonPropertyDescription("Winding in steady flight, °C.")
      double steadyWindingCelsius,

      @JsonPropertyDescription("Winding after a burst, °C.") double burstWindingCelsius,
      @JsonPropertyDescription("Length of the burst, s.") double burstSeconds,
      @JsonPropertyDescription("What that rests on.") String assumption) {
    static Warmth of(Heat heat) {
      return new Warmth(
          heat.steadyCelsius(), heat.burstCelsius(), heat.burstSeconds(), Heat.ASSUMPTION);
    }
  }

  /** Ratings; unknown ones are left out: JSON has no infinity. */
  record Ratings(
      @JsonPropertyDescription("Of one motor, A.") Optional<Double> motor,
      @JsonPropertyDescription("Of one controller, A.") Optional<Double> controller,
      @JsonPropertyDescription("Of the pack, A.") Optional<Double> pack,
      @JsonPropertyDescription("Of its plug, A.") Optional<Double> plug,
      @JsonPropertyDescription("Of the lead, A.") Optional<Double> lead) {
    static Ratings of(Limits limits) {
      return new Ratings(
          known(limits.motorA()),
          known(limits.controllerA()),
          known(limits.packA()),
          known(limits.connectorA()),
          known(limits.leadA()));
    }

    private static Optional<Double> known(double amps) {
      return Optional.of(amps).filter(rated -> rated < Double.POSITIVE_INFINITY);
    }
  }

  /**
   * Hover, course, full throttle and heat.
   *
   * @param planWith share of the estimate to plan with
   */
  static FlightJson of(
      FlightEstimate flight, Assessment assessment, Scenario scenario, double planWith) {
    var endurance = flight.endurance();
    var discharge = endurance.discharge();
    return new FlightJson(
        endurance.seconds(),
        key(endurance.ending()),
        discharge.usedCoulomb() / 3.6,
        endurance.meanPowerW(),
        discharge.startVolts(),
        discharge.endVolts(),
        discharge.startA(),
        discharge.endA(),
        scenario.flight().style(),
        flight
            .course()
            .map(course -> CourseJson.of(course, assessment, planWith))
            .orElse(null),
        Hover.of(flight),
        flight.split(),
        flight.draws(),
        assessment.isBeyondBelief(),
        flight.thrustToWeight(),
        flight.freshThrustToWeight(),
        FullThrottle.of(flight),
        flight.motorOutputPercent(),
        Warmth.of(Heat.of(scenario, assessment)),
        Ratings.of(flight.continuous()),
        Ratings.of(flight.burst()));
  }

  /** A constant as it stands in JSON. */
  public static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
