package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pappus.assessment.Assessment;
import pappus.assessment.Disbelief;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.FrameAir;
import pappus.part.Assumed;
import pappus.part.Board;
import pappus.part.Build;
import pappus.physics.motor.PartLoadLaw;
import pappus.scenario.Flight;

/**
 * What the reader should know about the numbers of a flight.
 *
 * <p>Why: src/site/markdown/decisions.md#hover-beyond-belief-is-marked-not-removed
 */
public final class Hints {
  /** So near to its top speed a flight is worth a word. */
  private static final double NEAR_TOP_SPEED = 0.7;

  /** A narrower spread is worth no word. */
  private static final double TOLD_SPREAD = 0.1;

  private Hints() {}

  /** Of a build; none where it does not fly. */
  public static List<String> of(Assessment assessment) {
    var hints = new ArrayList<String>();
    assessment.flight().ifPresent(flight -> {
      assessment.disbelief().forEach(disbelief -> hints.add(words(disbelief)));
      if (flight.powerFactor() != 1) {
        hints.add(String.format(
            Locale.ROOT,
            "Propeller power counts %.2f times what is computed, from your own flights.",
            flight.powerFactor()));
      }
      hints.addAll(assumed(assessment.build()));
      hints.addAll(knownBadly(assessment.build(), flight));
      flight.course().ifPresent(course -> {
        hints.addAll(drag(assessment));
        hints.addAll(course(course));
      });
      hints.addAll(ArmWords.remarks(assessment));
    });
    return hints;
  }

  private static String words(Disbelief disbelief) {
    return switch (disbelief) {
      case EFFICIENCY ->
        "Hover efficiency is outside what such aircraft reach: distrust these numbers.";
      case LONG_HOVER ->
        "Nothing under 250 g is known to hover longer than 48 minutes: distrust these numbers.";
      case LONG_FLIGHT ->
        "Nothing under 250 g is known to hover longer than 48 minutes, which makes 53 at the best airspeed: distrust these numbers.";
      case THRUST ->
        "Thrust-to-weight above 10 under 250 g is more than such aircraft reach: distrust it.";
    };
  }

  /** Numbers of the build that are known less well than others. */
  private static List<String> knownBadly(Build build, FlightEstimate flight) {
    var hints = new ArrayList<String>();
    if (build.propeller().orElseThrow().test() == null) {
      hints.add(
          "No test of the propeller: its coefficients are computed by blade elements from its size.");
    } else if (flight.hover().isBeyondTest() || flight.full().isBeyondTest()) {
      hints.add(
          build.propeller().orElseThrow().onlyRow().isPresent()
              ? "The propeller was tested at one speed; at others, blade elements scale its coefficients."
              : "The propeller turns outside its tested speeds; there, blade elements scale its coefficients.");
    }
    if (build.board().map(Board::controllerLoss).isEmpty()
        && flight.volts() > 0
        && !PartLoadLaw.isInsideEvidence(
            flight.volts(), build.motor().orElseThrow().statorDiameterMillimetres())) {
      hints.add(
          "Controller loss at part load was measured at 7.2 to 11.9 V on 11 to 22 mm stators; this build is outside that and may lose more.");
    }
    return hints;
  }

  /** What was filled by class where records say nothing: what a flight depends on, and how much else. */
  private static List<String> assumed(Build build) {
    var hints = new ArrayList<String>();
    for (var part : build.parts().values().stream().distinct().toList()) {
      var told = part.assumed().stream()
          .filter(one -> one.spread() >= TOLD_SPREAD)
          .map(Assumed::inWords)
          .toList();
      var others = part.assumed().size() - told.size();
      if (!part.assumed().isEmpty()) {
        hints.add("%s, assumed: %s%s."
            .formatted(
                part.name(),
                told.isEmpty() ? "" : String.join(", ", told),
                others == 0
                    ? ""
                    : (told.isEmpty() ? "" : "; ")
                        + others
                        + (told.isEmpty() ? " facts" : " more")
                        + ", which describe "
                        + part.id()
                        + " names"));
      }
    }
    return hints;
  }

  /** Where the drag area comes from that a frame does not state. */
  private static List<String> drag(Assessment assessment) {
    var frame = assessment.build().frame().orElseThrow();
    if (frame.dragAreaSquareMetres() != null) {
      return List.of();
    }
    var air = FrameAir.of(frame, Flight.HOVERING);
    return List.of(String.format(
        Locale.ROOT,
        "The frame's drag area is not known: %.4f m² is assumed by %s, an engineering estimate.",
        air.leastDragArea(
            assessment.mass().grams(), assessment.build().battery().orElseThrow()),
        air.isDragAssumed()
            ? "the mass, since its arms' width is not known either"
            : "its plates and arms, the pack and the mass"));
  }

  /** How far the numbers of a course can be trusted. */
  private static List<String> course(Course course) {
    var hints = new ArrayList<String>();
    var stretches = course.stretches();
    if (stretches.stream().anyMatch(stretch -> stretch.cruise().isClamped())) {
      hints.add(
          "Forward flight counts at least 0.914 of hover power: theory promises less, but no multirotor was seen to need less.");
    }
    if (stretches.stream().anyMatch(stretch -> stretch.cruise().isBeyondTest())) {
      hints.add(
          "In forward flight the propeller turns outside its tested speeds; there, blade elements scale its coefficients.");
    }
    var fastest = stretches.stream()
        .mapToDouble(stretch -> stretch.cruise().airspeedMPerS())
        .max();
    if (fastest.orElse(0) > NEAR_TOP_SPEED * course.topSpeedMPerS()) {
      hints.add(
          "Top speed is an upper bound: propellers lose thrust near their pitch speed, which static tests do not show, so this close to it the numbers flatter.");
    }
    return hints;
  }
}
