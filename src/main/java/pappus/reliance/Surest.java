package pappus.reliance;

import java.util.List;
import java.util.OptionalDouble;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.Flights;
import pappus.evidence.BatteryFigures;
import pappus.evidence.BuildFigures;
import pappus.part.Build;
import pappus.scenario.Scenario;

/**
 * How far any build with a motor, a propeller and a battery is relied on at most: by what their own doubts and those of the
 * controllers' loss take of a hover on a frame that takes nothing, one by one. It costs a dozen hovers, and a search knows it
 * before it knows frame and board.
 *
 * <p>Why: src/site/markdown/decisions.md#the-figure-to-plan-with-is-a-share-of-the-estimate
 *
 * @param ofThree variance of what the doubts of the three parts take, share of the flight
 * @param ofLoss what the controllers' loss by the law takes per one of ln of it, share of the flight
 * @param perGram what a gram costs, share of the flight
 * @param perWatt what a watt costs, share of the flight
 */
public record Surest(double ofThree, double ofLoss, double perGram, double perWatt) {
  /** So much of the variance counts: nearly all builds have more of it (engineering estimate). */
  private static final double COUNTED = 0.8;

  /** A frame, g (engineering estimate). */
  private static final double FRAME_GRAMS = 40;

  /** What three parts fly in. */
  private record State(Flights flights, Build three, double grams, double watts) {
    double figure(Factors factors) {
      return flights.hovered(three, OptionalDouble.empty(), grams, watts, factors);
    }
  }

  /**
   * Of three parts.
   *
   * @param flights by the likeliest figures
   * @param three has motor, propeller and battery
   * @param figures what counts of them
   */
  static Surest of(Scenario scenario, Flights flights, Build three, BuildFigures figures) {
    var grams = Reliance.otherGrams(scenario) + FRAME_GRAMS;
    for (var role : three.parts().keySet()) {
      grams += three.count(role) * three.part(role).orElseThrow().mass().grams();
    }
    var state = new State(flights, three, grams, Reliance.otherWatts(scenario));
    var estimate = state.figure(Factors.NONE);
    if (estimate <= 0) {
      return new Surest(0, 0, 0, 0);
    }
    var motor = three.motor().orElseThrow();
    var ofThree = 0.0;
    // In one order, since a sum of doubles depends on it.
    for (var taken : List.of(
        lost(state, estimate, Doubt.MERIT, -figures.propeller().merit().deviation()),
        lost(state, estimate, Doubt.RESISTANCE, figures.motor().winding().deviation()),
        lost(state, estimate, Doubt.NO_LOAD, figures.motor().noLoad().deviation()),
        lost(
            state,
            estimate,
            Doubt.SLOW_RESISTANCE,
            BatteryFigures.slowDoubt(three.battery().orElseThrow())),
        lost(state, estimate, Doubt.CAPACITY, -figures.battery().delivered().deviation()))) {
      ofThree += taken * taken;
    }
    var growth = Sources.growthDoubt(motor);
    var ofGrowth = Math.max(
        lost(state, estimate, Doubt.NO_LOAD_GROWTH, growth),
        lost(state, estimate, Doubt.NO_LOAD_GROWTH, -growth));
    var ofLoss = lost(state, estimate, Doubt.LOSS, Sources.LAW) / Sources.LAW;
    return new Surest(
        ofThree + ofGrowth * ofGrowth,
        ofLoss,
        lost(state, estimate, Doubt.MASS, 1),
        lost(state, estimate, Doubt.AVIONICS, Reliance.AVIONICS) / Reliance.AVIONICS / state.watts);
  }

  private static double lost(State state, double estimate, Doubt doubt, double by) {
    return Math.max(0, 1 - state.figure(doubt.moved(Factors.NONE, by)) / estimate);
  }

  /**
   * With controllers that lose at least so much.
   *
   * @param share ripple of the controllers over that of the law; absent: as the law says
   * @param doubt one standard deviation of its ln at least
   */
  public Reliance with(OptionalDouble share, double doubt) {
    var ofControllers = ofLoss * Math.min(1, share.orElse(1)) * doubt;
    var counted = Math.sqrt(COUNTED);
    return new Reliance(
        COUNTED * (ofThree + ofControllers * ofControllers), counted * perGram, counted * perWatt);
  }
}
