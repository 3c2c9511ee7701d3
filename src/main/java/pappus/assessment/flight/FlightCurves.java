package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.physics.battery.Delivery;
import pappus.physics.battery.Discharge;
import pappus.physics.battery.Mixture;
import pappus.physics.battery.Pack;
import pappus.physics.battery.Until;
import pappus.physics.flight.Aircraft;
import pappus.physics.flight.Endurance;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.scenario.Flight.Style;

/**
 * What a build does from take-off to landing, from standing to its top speed and from idle to full throttle; for
 * pictures and for the builder's first flight.
 *
 * <p>Why: src/site/markdown/decisions.md#volts-to-turn-back-and-to-land-are-read-off-the-flights-own-trace
 *
 * @param flight volts and current over time as it is flown, from take-off to the end; empty without a flight
 * @param power from the battery against airspeed in calm air, at the volts of the hover at half charge
 * @param throttle thrust against how far the controllers are open, at the charge at which thrust is judged, up to what
 *     its parts allow; empty if the pack cannot lift anything
 * @param fresh hover on the full pack, if it carries one
 * @param halfEmpty hover at half charge, if the pack carries one
 */
public record FlightCurves(
    List<Discharge.Moment> flight,
    List<Speeds.Step> power,
    List<FullThrottle> throttle,
    Optional<HoverPoint> fresh,
    Optional<HoverPoint> halfEmpty) {
  /** What is left of the planned time when it is time to fly home (common practice, no published source). */
  public static final double HOME_SHARE = 0.2;

  private static final int AIRSPEED_STEPS = 30;
  private static final int THROTTLE_STEPS = 24;

  public FlightCurves {
    flight = List.copyOf(flight);
    power = List.copyOf(power);
    throttle = List.copyOf(throttle);
  }

  /**
   * A hover at one moment of the pack.
   *
   * @param charge state of charge, 0 to 1
   * @param volts of the pack, V
   * @param amps from the pack, A
   * @param duty how far the controllers are open, 0 to 1
   */
  public record HoverPoint(double charge, double volts, double amps, double duty) {
    /** From the battery, W. */
    public double watts() {
      return volts * amps;
    }
  }

  /**
   * A moment on which the pilot acts.
   *
   * @param seconds in the air
   * @param volts of the pack in flight, V
   * @param milliampHours taken from the pack until then
   */
  public record Landmark(double seconds, double volts, double milliampHours) {}

  /**
   * @param aircraft as at full throttle
   * @param steadily the same warmed by its hover
   * @param course empty for a hover
   * @param floorVolts a cell, as for {@code full}
   */
  static FlightCurves of(
      Aircraft aircraft,
      Aircraft steadily,
      Pack pack,
      Hover hover,
      FullThrottle full,
      double fullCharge,
      double floorVolts,
      Optional<Course> course,
      Endurance endurance) {
    var forward = course.map(Course::forward).orElseGet(() -> new ForwardFlight(steadily, hover));
    return new FlightCurves(
        trace(pack, hover, course, endurance),
        power(pack, hover, forward, full),
        FullThrottle.upTo(full, aircraft, pack, fullCharge, floorVolts, THROTTLE_STEPS),
        point(pack, hover, pack.startCharge()),
        point(pack, hover, 0.5));
  }

  private static List<Discharge.Moment> trace(
      Pack pack, Hover hover, Optional<Course> course, Endurance endurance) {
    if (endurance.seconds() <= 0) {
      return List.of();
    }
    var end = endurance.discharge().endCharge();
    var stretches = course.map(Course::stretches).orElse(List.of());
    if (course
        .filter(flown -> flown.stay().isPresent()
            || (flown.style() == Style.CRUISE && flown.stretches().size() == 2))
        .isPresent()) {
      return oneByOne(pack, stretches, end);
    }
    var shares = stretches.isEmpty()
        ? List.of(new Mixture.Share(hover.steady().load(), 1))
        : stretches.stream().map(FlightCurves::share).toList();
    return Mixture.trace(pack, shares, pack.startCharge(), end);
  }

  private static Mixture.Share share(Stretch stretch) {
    return new Mixture.Share(stretch.cruise().steady().load(), stretch.seconds());
  }

  /** One after the other, each under its own load. */
  private static List<Discharge.Moment> oneByOne(Pack pack, List<Stretch> stretches, double end) {
    var moments = new ArrayList<Discharge.Moment>();
    var charge = pack.startCharge();
    var seconds = 0.0;
    var coulomb = 0.0;
    for (var i = 0; i < stretches.size(); i++) {
      var stretch = stretches.get(i);
      var load = stretch.cruise().steady().load();
      var flown = Discharge.of(pack, load, new Until(0, 0, stretch.seconds()), charge);
      var last = i == stretches.size() - 1;
      for (var moment :
          Mixture.trace(pack, List.of(share(stretch)), charge, last ? end : flown.endCharge())) {
        moments.add(new Discharge.Moment(
            seconds + moment.seconds(),
            moment.charge(),
            moment.volts(),
            moment.currentA(),
            coulomb + moment.usedCoulomb()));
      }
      charge = flown.endCharge();
      seconds += flown.seconds();
      coulomb += flown.usedCoulomb();
    }
    return moments;
  }

  private static List<Speeds.Step> power(
      Pack pack, Hover hover, ForwardFlight forward, FullThrottle full) {
    if (!(pack.deliver(hover.steady().load(), 0.5) instanceof Delivery.Delivered now)) {
      return List.of();
    }
    var top = forward.topSpeedMPerS(full);
    var steps = new ArrayList<Speeds.Step>();
    for (var i = 0; i <= AIRSPEED_STEPS && top > 0; i++) {
      var airspeed = top * i / AIRSPEED_STEPS;
      steps.add(
          new Speeds.Step(airspeed, forward.at(airspeed).steady().busPowerW(now.terminalVolts())));
    }
    return steps;
  }

  private static Optional<HoverPoint> point(Pack pack, Hover hover, double charge) {
    if (!(pack.deliver(hover.steady().load(), charge) instanceof Delivery.Delivered now)) {
      return Optional.empty();
    }
    var volts = now.terminalVolts();
    var duty = hover.steady().duty(volts);
    return duty > 1
        ? Optional.empty()
        : Optional.of(new HoverPoint(charge, volts, hover.steady().busCurrentA(volts), duty));
  }

  /** When the flight ends, as it is computed: what then is in the air has to be on the ground. */
  public Optional<Landmark> land() {
    return after(Double.POSITIVE_INFINITY);
  }

  /**
   * When to turn back: where a course leads out and back, when the way out is over; where it stays, when the stay is; else
   * when a fifth of the time is left. All of the time to plan with.
   *
   * @param course empty for a hover
   * @param planWith share of the estimate to plan with, 0 to 1
   */
  public Optional<Landmark> turnBack(Optional<Course> course, double planWith) {
    if (flight.isEmpty()) {
      return Optional.empty();
    }
    var stay = course.flatMap(Course::stay);
    if (stay.isPresent()) {
      var flown = course.get();
      return after(flown.secondsAbout(stay.get(), false)
          + planWith * flown.stretches().get(stay.get().stretch()).seconds());
    }
    var share = course
        .filter(flown -> flown.style() == Style.CRUISE)
        .map(flown -> flown.stretches().get(0).seconds()
            / (flown.stretches().size() == 1 ? 2 * flown.roundSeconds() : flown.roundSeconds()))
        .orElse(1 - HOME_SHARE);
    return after(share * planWith * flight.get(flight.size() - 1).seconds());
  }

  /**
   * After so long in the air, or when the flight ends, whichever comes first.
   *
   * @param seconds since take-off
   */
  public Optional<Landmark> after(double seconds) {
    return flight.isEmpty()
        ? Optional.empty()
        : Optional.of(at(Math.min(seconds, flight.get(flight.size() - 1).seconds())));
  }

  /** Between the moments of the flight, on a straight line. */
  private Landmark at(double seconds) {
    var next = 1;
    while (next < flight.size() - 1 && flight.get(next).seconds() < seconds) {
      next++;
    }
    var before = flight.get(next - 1);
    var after = flight.get(next);
    var way = after.seconds() > before.seconds()
        ? (seconds - before.seconds()) / (after.seconds() - before.seconds())
        : 1;
    return new Landmark(
        seconds,
        before.volts() + way * (after.volts() - before.volts()),
        (before.usedCoulomb() + way * (after.usedCoulomb() - before.usedCoulomb())) / 3.6);
  }
}
