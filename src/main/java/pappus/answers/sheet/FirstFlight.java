package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import pappus.answers.build.Journey;
import pappus.assessment.Assessment;
import pappus.assessment.Heat;
import pappus.assessment.flight.FlightCurves;
import pappus.doubt.Band;
import pappus.reliance.Doubt;
import pappus.reliance.Reliance;
import pappus.scenario.Scenario;
import pappus.weighing.FlightFit;
import pappus.weighing.StyleFit;

/** What a pilot reads on the first flights, and what to suspect when it is not as estimated. */
public final class FirstFlight {
  /** The first packs are flown a fifth shorter (common practice, no published source). */
  public static final double FIRST_PACKS = 0.8;

  public static final String THROTTLE =
      "Throttle is the controllers' duty, and where the stick stands if the throttle curve is straight. After the first minute land, unplug and feel the motors.";

  public static final String LANDMARKS =
      "Volts are read in flight, under load: on the ground the same pack shows more. Land at whichever comes first, timer, charge or volts. The timer is what to plan with, and a fifth less for the first packs, each with its own turn back (common practice, no published source). The last line is the middle of the estimate: half of such builds do not last so long, so never fly to it.";

  /** For legs that lead away: where they stand at any moment is not looked at. */
  public static final String WAY_HOME =
      "Turn back is when a fifth of the time is left, wherever the legs have led by then: where the way home takes longer than that, turn back sooner.";

  public static final String READINGS =
      "A smaller difference says nothing: it is within the doubt of the estimate. Weigh first, since every other reading follows from the mass. What you see, hear and feel has the last word on safety.";

  /** Share of the stick (engineering estimate). */
  private static final double THROTTLE_POINTS = 5;

  private FirstFlight() {}

  /**
   * A reading that was expected otherwise.
   *
   * @param reading what is read
   * @param expected estimate, in the unit
   * @param unit of it
   * @param from difference that means something, in the unit
   * @param basis what that rests on
   * @param higher what to suspect if more is read
   * @param lower what to suspect if less is read; empty text: nothing
   */
  public record Suspect(
      String reading,
      double expected,
      String unit,
      double from,
      String basis,
      String higher,
      String lower) {}

  /** For a leg that lasts as long as possible. */
  public static final String STAY =
      "Turn back is when the planned stay is over: the charge kept back counts on a way home that takes more than it should.";

  /** Doubt of power and so of charge drawn in a given time, share: the band's but for what the pack holds. */
  public static double powerDoubt(Band band) {
    return band.halfWidthWithout(Doubt.CAPACITY);
  }

  /** Doubt of what the charger puts back after a given time, share. */
  public static double chargeDoubt(Band band) {
    return Math.hypot(powerDoubt(band), StyleFit.CHARGER);
  }

  /**
   * What to suspect when readings differ.
   *
   * @param curves of the same assessment
   */
  public static List<Suspect> suspects(
      Assessment assessment, FlightCurves curves, Band band, Scenario scenario) {
    var suspects = new ArrayList<Suspect>();
    suspects.add(new Suspect(
        "mass ready to fly",
        assessment.mass().grams(),
        "g",
        Reliance.tenth(assessment.mass().doubtGrams()),
        "doubt of the masses",
        "more solder, glue or wire than counted, or one heavy part: weigh part by part",
        "a part is missing or lighter than listed, or the scale: check it with a coin"));
    curves.fresh().ifPresent(hover -> addHover(assessment, hover, band, suspects));
    var planned = Journey.plannedSeconds(assessment, band);
    curves
        .after(planned)
        .ifPresent(landed -> suspects.add(new Suspect(
            "charge put back after the timer",
            landed.milliampHours(),
            "mAh",
            chargeDoubt(band) * landed.milliampHours(),
            "doubt of the power, and of the charger",
            "whatever raises the watts; wind, or brisker flying than counted; a pack that was not full at take-off",
            "calmer flying than counted, or a shorter time in the air than the timer says")));
    suspects.add(new Suspect(
        "minutes until it must land",
        assessment.flight().orElseThrow().endurance().seconds() / 60,
        "min",
        band.halfWidth() * assessment.flight().orElseThrow().endurance().seconds() / 60,
        "doubt of the flight",
        "the volts are read too high: check the landing volts against a meter before you trust it",
        "a cold, worn or not quite full pack; wind; more mass or drag than counted"));
    var heat = Heat.of(scenario, assessment);
    suspects.add(new Suspect(
        "windings after steady flight, estimated",
        heat.steadyCelsius(),
        "°C",
        Math.max(0, heat.steadyCelsius() - Heat.airCelsius(scenario)),
        "a factor of two in the rise: engineering estimate",
        "one motor alone: its bearing, bell, screws or propeller; all four: too coarse a propeller, or a tune that shakes",
        ""));
    return suspects;
  }

  private static void addHover(
      Assessment assessment, FlightCurves.HoverPoint hover, Band band, List<Suspect> suspects) {
    var cells = assessment.build().battery().orElseThrow().cellsInSeries();
    suspects.add(new Suspect(
        "throttle in hover, fresh pack",
        100 * hover.duty(),
        "%",
        THROTTLE_POINTS,
        "engineering estimate",
        "more mass; propellers upside down or of another kind; a thrust figure that flatters; a cold or worn pack",
        "less mass; a throttle curve in the radio or the flight software"));
    suspects.add(new Suspect(
        "power in hover, fresh pack",
        hover.watts(),
        "W",
        powerDoubt(band) * hover.watts(),
        "doubt of the power",
        "more mass; a bent or nicked propeller, a dry bearing, a bell that rubs; the current sensor reads too much: compare with the charger",
        "the current sensor reads too little: compare with the charger; less mass"));
    suspects.add(
        new Suspect(
            "pack in hover, fresh",
            hover.volts(),
            "V",
            FlightFit.LANDING_DOUBT * cells,
            "0.1 V a cell: engineering estimate",
            "the voltage sensor's scale: compare with a meter",
            "a cold, worn or not quite full pack; a plug or joint that gets warm; the voltage sensor's scale"));
  }
}
