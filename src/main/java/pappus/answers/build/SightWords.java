package pappus.answers.build;

import java.util.ArrayList;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Spoken;
import pappus.sight.Sight;

/**
 * What the pilot's camera sees past the propellers.
 *
 * <p>Why: src/site/markdown/decisions.md#a-clear-view-is-counted-in-plan
 */
public final class SightWords {
  /** Nearer to the middle of the picture than this share of half its height, the horizon is in the middle. */
  private static final double MIDDLE = 0.05;

  private SightWords() {}

  /** In a sentence; empty for a build without frame, propeller or camera. */
  public static Optional<String> sentence(Assessment assessment) {
    return Sight.of(assessment.build()).map(sight -> {
      var told = new ArrayList<String>();
      told.add("Ahead of the camera %s° to either side are clear of propellers, seen from above"
          .formatted(Spoken.number(sight.freeHalfAngle(), 0)));
      sight
          .view()
          .ifPresent(view ->
              told.add("it sees %s°".formatted(Spoken.number(view.horizontalDegrees() / 2, 0))));
      sight
          .covered()
          .ifPresent(covered -> told.add("front discs are seen in %s %% of its picture"
              .formatted(Spoken.number(100 * covered, 0))));
      horizon(assessment, sight).ifPresent(told::add);
      return String.join("; ", told) + " (by their places and a lens that spreads angles evenly).";
    });
  }

  /** How far the aircraft leans forward in the fastest stretch of its flight, degrees; empty in hover. */
  public static Optional<Double> leaning(Assessment assessment) {
    return assessment
        .flight()
        .flatMap(FlightEstimate::course)
        .map(Course::stretches)
        .flatMap(stretches -> stretches.stream()
            .map(stretch -> StrictMath.toDegrees(stretch.cruise().tiltRad()))
            .max(Double::compare));
  }

  private static Optional<String> horizon(Assessment assessment, Sight sight) {
    var leaning = leaning(assessment);
    if (leaning.isEmpty() || sight.horizon(leaning.get()).isEmpty()) {
      return Optional.empty();
    }
    var at = sight.horizon(leaning.get()).getAsDouble();
    var half = Spoken.number(50 * Math.abs(at), 0) + " % of its height";
    var side = at > 0 ? "above" : "below";
    return Optional.of("leaning %s° forward, the horizon is %s"
        .formatted(
            Spoken.number(leaning.get(), 0),
            Math.abs(at) > 1
                ? "out of the picture, " + side + " it"
                : Math.abs(at) < MIDDLE
                    ? "in the middle of the picture"
                    : half + " " + side + " the middle of the picture"));
  }
}
