package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.ArmWords;
import pappus.assessment.Assessment;
import pappus.part.FrameDrawing;
import pappus.quantity.Units;

/** How a pair of arms bends. */
record ArmJson(
    @JsonPropertyDescription("Which motors they carry.") FrameDrawing.Pair pair,

    @JsonPropertyDescription(
        "First bending frequency with motor and propeller at the tip, Hz, ± 15 %.")
    double hertz,

    @JsonPropertyDescription("How far a motor lifts its arm at full throttle, mm.")
    double millimetresAtFullThrust,

    @JsonPropertyDescription(
        "Bending stress at the root with all of the aircraft's weight on one motor, N/mm².")
    double newtonsPerSquareMillimetre) {
  /** Of a build; empty where its arms are not drawn. */
  static Optional<List<ArmJson>> of(Assessment assessment) {
    var weight = Units.gramsToNewtons(assessment.mass().grams());
    return Optional.of(ArmWords.of(assessment).stream()
            .map(arm -> new ArmJson(
                arm.pair(),
                arm.hertz(),
                ArmWords.millimetresAtFullThrust(arm, assessment),
                arm.rootStressPerNewton() * weight))
            .toList())
        .filter(arms -> !arms.isEmpty());
  }
}
