package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.catalog.Build;
import pappus.physics.flight.EfficiencyBand;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.flight.FullThrottle;
import pappus.physics.flight.Hover;
import pappus.physics.flight.Rotor;
import pappus.physics.motor.PartLoadLaw;

/**
 * What the reader should know about the numbers of a flight.
 *
 * <p>Why: src/site/markdown/decisions.md#hover-beyond-belief-is-marked-not-removed
 */
final class Hints {
  /** So near to its top speed a flight is worth a word. */
  private static final double NEAR_TOP_SPEED = 0.7;

  /** Beyond these a practitioner would laugh (common practice, no published source). */
  private static final double LIGHT_KG = 0.250;

  private static final double LONGEST_LIGHT_SECONDS = 48 * 60;
  private static final double MOST_LIGHT_THRUST = 10;

  private Hints() {}

  /** That the builder's own flights count. */
  static List<String> ownFlights(double powerFactor) {
    return powerFactor == 1
        ? List.of()
        : List.of(String.format(
            Locale.ROOT,
            "The propellers' power counts %.2f times what is computed, by flights of your own.",
            powerFactor));
  }

  /** Numbers of the build that are known less well than others. */
  static List<String> knownBadly(
      Build build, Rotor rotor, Hover hover, FullThrottle full, double volts) {
    var hints = new ArrayList<String>();
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
    return hints;
  }

  /** How far the numbers of a course can be trusted. */
  static List<String> course(Course course, boolean isDragAssumed) {
    var hints = new ArrayList<String>();
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
    return hints;
  }

  /** What is outside of what such aircraft are known to reach. */
  static List<String> disbelief(
      Build build,
      double massKg,
      boolean hovers,
      Hover hover,
      double volts,
      double thrustToWeight,
      double seconds) {
    var hints = new ArrayList<String>();
    var band = EfficiencyBand.warning(massKg, build.board().orElseThrow().controllerLoss() != null);
    if (volts > 0 && band.isPresent() && !band.get().contains(hover.efficiency(volts))) {
      hints.add(
          "The efficiency in hover is outside what such aircraft reach: distrust these numbers.");
    }
    if (massKg < LIGHT_KG && hovers && seconds > LONGEST_LIGHT_SECONDS) {
      hints.add(
          "No aircraft below 250 g is known to hover longer than 48 minutes: distrust these numbers.");
    }
    if (massKg < LIGHT_KG
        && !hovers
        && seconds > LONGEST_LIGHT_SECONDS / ForwardFlight.LEAST_OF_HOVER) {
      hints.add(
          "No aircraft below 250 g is known to hover longer than 48 minutes, which makes 53 at the best airspeed: distrust these numbers.");
    }
    if (massKg < LIGHT_KG && thrustToWeight > MOST_LIGHT_THRUST) {
      hints.add(
          "Thrust over weight above 10 below 250 g is more than such aircraft reach: distrust it.");
    }
    return hints;
  }
}
