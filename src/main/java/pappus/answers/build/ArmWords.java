package pappus.answers.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.physics.structure.Cantilever;
import pappus.quantity.Units;
import pappus.structure.ArmBending;

/**
 * What arms do under their motors, where they are drawn: engineering estimates, of which no rule is made.
 *
 * <p>Why: src/site/markdown/decisions.md#a-frame-weighs-what-its-drawing-says
 */
public final class ArmWords {
  /** One standard deviation of a frequency, share of it. */
  public static final double DOUBT = Cantilever.DOUBT;

  /** Arms that bend first below this are soft, Hz. */
  public static final double SOFT_HERTZ = ArmBending.SOFT_HERTZ;

  /** One strength is told beside another's where they differ by more. */
  private static final double ALIKE = 0.05;

  private static final String NO_RULE = "A remark by an engineering estimate, no rule.";

  private ArmWords() {}

  /** The arms of a build, the softest first; none where they are not drawn. */
  public static List<ArmBending> of(Assessment assessment) {
    var build = assessment.build();
    if (build.frame().isEmpty() || build.motor().isEmpty() || build.propeller().isEmpty()) {
      return List.of();
    }
    return ArmBending.of(
            build.frame().get(), build.motor().get(), build.propeller().get())
        .stream()
        .sorted(Comparator.comparingDouble(ArmBending::hertz))
        .toList();
  }

  /** First bending frequency of its softest arms, Hz; empty where they are not drawn. */
  public static Optional<Double> hertz(Assessment assessment) {
    return of(assessment).stream().findFirst().map(ArmBending::hertz);
  }

  /** How far a motor lifts its arm at full throttle where thrust is judged, mm. */
  public static double millimetresAtFullThrust(ArmBending arm, Assessment assessment) {
    return assessment
        .flight()
        .map(flight -> arm.millimetresPerNewton() * flight.full().thrustN() / rotors(assessment))
        .orElse(0.0);
  }

  private static int rotors(Assessment assessment) {
    return assessment.build().frame().orElseThrow().rotors();
  }

  /**
   * The largest bending stress at the root of an arm with all of the aircraft's weight on its motor, N/mm²; empty where
   * no arms are drawn. A hard landing is some multiple of that, the same for all.
   */
  public static OptionalDouble stressAtWeight(Assessment assessment) {
    return of(assessment).stream()
        .mapToDouble(ArmBending::rootStressPerNewton)
        .map(perNewton -> perNewton * Units.gramsToNewtons(assessment.mass().grams()))
        .max();
  }

  /** How they bend, and what their roots bear; empty where they are not drawn. */
  public static Optional<String> sentence(Assessment assessment) {
    var arms = of(assessment);
    if (arms.isEmpty()) {
      return Optional.empty();
    }
    var told = apart(arms).stream()
        .map(arm ->
            (apart(arms).size() == 1 ? "" : arm.pair().word() + " ") + bends(arm, assessment))
        .collect(Collectors.joining(", "));
    return Optional.of(
        "Arms bend first at %s; with all of its weight on one motor, the root of an arm bears %s N/mm²: engineering estimates, frequencies ± %s %%."
            .formatted(
                told,
                Spoken.number(stressAtWeight(assessment).orElseThrow(), 0),
                Spoken.number(100 * Cantilever.DOUBT, 0)));
  }

  /** One of both pairs where they bend alike. */
  private static List<ArmBending> apart(List<ArmBending> arms) {
    return arms.size() == 2 && arms.get(0).hertz() == arms.get(1).hertz()
        ? arms.subList(0, 1)
        : arms;
  }

  private static String bends(ArmBending arm, Assessment assessment) {
    return "%s Hz and by %s mm at full thrust"
        .formatted(
            Spoken.number(arm.hertz(), 0),
            Spoken.number(millimetresAtFullThrust(arm, assessment), 2));
  }

  /** Where a frequency asks for a word. */
  public static List<String> remarks(Assessment assessment) {
    var remarks = new ArrayList<String>();
    var arms = apart(of(assessment));
    for (var arm : arms) {
      var bend = "%s first bend at %s Hz"
          .formatted(
              arms.size() == 1 ? "The arms" : "The " + arm.pair().word() + " arms",
              Spoken.number(arm.hertz(), 0));
      assessment
          .flight()
          .filter(flight -> arm.meets(flight.hoverRpm()))
          .ifPresent(flight -> remarks.add(bend
              + ", and rotors turn %s times a second in hover, within %s %%: they may shake there. %s"
                  .formatted(
                      Spoken.number(flight.hoverRpm() / 60, 0),
                      Spoken.number(100 * Cantilever.DOUBT, 0),
                      NO_RULE)));
      if (arm.isSoft()) {
        remarks.add(bend
            + ", below the %s that keep clear of what steadies the flight. %s"
                .formatted(Spoken.number(ArmBending.SOFT_HERTZ, 0), NO_RULE));
      }
    }
    return remarks;
  }

  /**
   * What an arm of one build stands beside another's, each bearing the same multiple of its own weight: no promise of
   * what either stands. Empty where the arms of either are not drawn.
   */
  public static Optional<String> beside(Assessment one, Assessment other, String what) {
    var own = stressAtWeight(one);
    var others = stressAtWeight(other);
    if (own.isEmpty() || others.isEmpty()) {
      return Optional.empty();
    }
    var times = others.getAsDouble() / own.getAsDouble();
    return Optional.of(
        Math.abs(times - 1) < ALIKE
            ? "stands as much as " + what
            : "stands %s times what %s stands".formatted(Spoken.number(times, 1), what));
  }
}
