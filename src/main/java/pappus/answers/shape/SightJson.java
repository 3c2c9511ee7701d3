package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.answers.build.SightWords;
import pappus.assessment.Assessment;
import pappus.sight.Sight;

/** What the pilot's camera sees past the propellers. */
record SightJson(
    @JsonPropertyDescription(
        "From straight ahead to the front disc at either side, seen from above, degrees.")
    double freeHalfAngleDegrees,

    @JsonPropertyDescription(
        "Share of the picture in which a front disc is seen, 0 to 1; left out where the camera's view or tilt is not known.")
    Optional<Double> coveredShare,

    @JsonPropertyDescription(
        "How far the aircraft leans forward in the fastest stretch, degrees; left out in hover.")
    Optional<Double> leaningDegrees,

    @JsonPropertyDescription(
        "Where the horizon stands then: 0 in the middle of the picture, 1 at its upper edge, -1 at its lower, beyond these out of it.")
    Optional<Double> horizon) {
  /** Of a build; empty without frame, propeller or camera. */
  static Optional<SightJson> of(Assessment assessment) {
    var leaning = SightWords.leaning(assessment);
    return Sight.of(assessment.build())
        .map(sight -> new SightJson(
            sight.freeHalfAngle(),
            boxed(sight.covered()),
            leaning,
            leaning.flatMap(degrees -> boxed(sight.horizon(degrees)))));
  }

  private static Optional<Double> boxed(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
