package pappus.search;

import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.CostTable;
import pappus.assessment.Finding;
import pappus.assessment.Limit;
import pappus.assessment.Merit;
import pappus.assessment.Planning;
import pappus.assessment.flight.FlightEstimate;
import pappus.physics.flight.Ending;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.ThrottleLimit;

/** Assessments with one thing changed, so that a test can name the case it is about. */
public final class Changed {
  private Changed() {}

  /** Flies so many seconds. */
  public static Assessment seconds(Assessment from, double seconds) {
    var flight = from.flight().orElseThrow();
    var endurance =
        new Endurance(seconds, flight.endurance().ending(), flight.endurance().discharge());
    return with(from, from.cost(), flight(flight, endurance, flight.full(), flight.fresh()));
  }

  /** Costs so many cents. */
  public static Assessment cents(Assessment from, long cents) {
    return with(
        from,
        new CostTable(from.cost().lines(), from.cost().own(), cents),
        from.flight().orElseThrow());
  }

  /** Flies so many seconds and costs so many cents. */
  public static Assessment told(Assessment from, double seconds, long cents) {
    return cents(seconds(from, seconds), cents);
  }

  /** Ends its flight for another reason. */
  public static FlightEstimate ending(FlightEstimate from, Ending ending) {
    var endurance =
        new Endurance(from.endurance().seconds(), ending, from.endurance().discharge());
    return flight(from, endurance, from.full(), from.fresh());
  }

  /** Has its full throttle capped by something, at a share of full opening. */
  public static FlightEstimate cap(FlightEstimate from, ThrottleLimit limit, double duty) {
    return flight(
        from,
        from.endurance(),
        capped(from.full(), limit, duty),
        capped(from.fresh(), ThrottleLimit.FULL_DUTY, 1));
  }

  /** Has its full throttle on a fresh pack capped by something, at a share of full opening. */
  public static FlightEstimate capFresh(FlightEstimate from, ThrottleLimit limit, double duty) {
    return flight(from, from.endurance(), from.full(), capped(from.fresh(), limit, duty));
  }

  private static FullThrottle capped(FullThrottle full, ThrottleLimit limit, double duty) {
    return new FullThrottle(
        full.thrustN(),
        duty,
        limit,
        full.point(),
        full.busCurrentA(),
        full.busVolts(),
        full.isBeyondTest());
  }

  /** Stands to its limits so. */
  public static Assessment limits(Assessment from, List<Limit> limits) {
    return new Assessment(
        from.build(),
        from.fitting(),
        from.findings(),
        from.mass(),
        from.cost(),
        from.outlay(),
        from.flight(),
        from.whyNoFlight(),
        limits,
        from.merit(),
        from.planning());
  }

  /** Is judged so by the fit rules. */
  public static Assessment findings(Assessment from, List<Finding> findings) {
    return new Assessment(
        from.build(),
        from.fitting(),
        findings,
        from.mass(),
        from.cost(),
        from.outlay(),
        from.flight(),
        from.whyNoFlight(),
        from.limits(),
        from.merit(),
        from.planning());
  }

  private static Assessment with(Assessment from, CostTable cost, FlightEstimate flight) {
    return new Assessment(
        from.build(),
        from.fitting(),
        from.findings(),
        from.mass(),
        cost,
        from.outlay(),
        Optional.of(flight),
        from.whyNoFlight(),
        from.limits(),
        new Merit((long) Math.floor(flight.figure() * Assessment.OBJECTIVE), -cost.cents()),
        // As surely as before.
        new Planning(() -> Math.round(from.shareToPlanWith() * flight.figure() * 1000)));
  }

  private static FlightEstimate flight(
      FlightEstimate from, Endurance endurance, FullThrottle full, FullThrottle fresh) {
    return new FlightEstimate(
        from.hover(),
        from.volts(),
        from.amps(),
        from.duty(),
        from.split(),
        from.efficiency(),
        from.draws(),
        endurance,
        from.course(),
        from.thrustToWeight(),
        from.freshThrustToWeight(),
        full,
        fresh,
        from.continuous(),
        from.burst(),
        from.rotor(),
        from.thrustLost(),
        from.powerFactor(),
        from.figures());
  }
}
