package pappus.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;

/**
 * Builds to choose among, by what they let one plan with, and what giving up a little of the flight saves.
 *
 * <p>Why: src/site/markdown/decisions.md#a-pick-is-what-can-be-relied-on
 *
 * @param picks the first answers what was asked for; empty if nothing feasible was found
 * @param givingUp what saves money or mass against the one that flies longest or farthest, by falling flight
 * @param areBelieved whether all of them have numbers that such aircraft are known to reach; else nothing that has flies
 * @param isProven whether all of it is proven
 */
public record Picks(
    List<Pick> picks, List<GivenUp> givingUp, boolean areBelieved, boolean isProven) {
  /** Of nothing. */
  public static final Picks NONE = new Picks(List.of(), List.of(), true, true);

  /** A pick that saves a smaller share of the first one's price falls away. */
  public static final double LEAST_PRICE = 0.05;

  /** Of its mass. */
  public static final double LEAST_MASS = 0.03;

  /** One that has no more than such a share of thrust over weight beyond it. */
  public static final double LEAST_THRUST = 0.10;

  /** A line of what is given up saves at least such a share more of price or mass than those above it. */
  private static final double LEAST_SAVING = 0.02;

  /**
   * A build that plans with less and saves something.
   *
   * @param planWith in thousandths of a second or of a metre
   */
  public record GivenUp(Assessment build, long planWith) {}

  public Picks {
    picks = List.copyOf(picks);
    givingUp = List.copyOf(givingUp);
  }

  /** What answers what was asked for: the longest or the farthest, unless something else is to be best. */
  public Optional<Pick> first() {
    return picks.stream().findFirst();
  }

  /** The longest or the farthest, against which flight is given up. */
  public Optional<Pick> mostFlight() {
    return picks.stream().filter(pick -> pick.kind().isOfFlight()).findFirst().or(this::first);
  }

  /** The pick of a name, if there is one. */
  public Optional<Pick> named(String word) {
    return picks.stream().filter(pick -> pick.kind().word().equals(word)).findFirst();
  }

  /** The pick that a build is. */
  public Optional<Pick> of(Assessment build) {
    return picks.stream()
        .filter(pick -> pick.build().build().equals(build.build()))
        .findFirst();
  }

  /** Of builds that save something, those that save enough more than all that fly longer. */
  static List<GivenUp> worthTelling(Assessment first, List<GivenUp> all) {
    var told = new ArrayList<GivenUp>();
    var cents = first.cost().cents();
    var grams = first.mass().grams();
    for (var one : all.stream()
        .sorted(Comparator.comparingLong(GivenUp::planWith)
            .reversed()
            .thenComparing(other -> other.build().cost().cents())
            .thenComparing(other -> other.build().build().toString()))
        .toList()) {
      var saved = cents - one.build().cost().cents();
      var lost = grams - one.build().mass().grams();
      if (saved >= LEAST_SAVING * first.cost().cents()
          || lost >= LEAST_SAVING * first.mass().grams()) {
        told.add(one);
        cents = Math.min(cents, one.build().cost().cents());
        grams = Math.min(grams, one.build().mass().grams());
      }
    }
    return told;
  }

  /** Whether a pick has enough that the one of most flight has not. */
  static boolean isOfItsOwn(Pick.Kind kind, Assessment mostFlight, Assessment other) {
    return switch (kind) {
      case LONGEST, FARTHEST, CHEAPEST, OWNED -> true;
      case THRIFTY ->
        (double) other.cost().cents()
            <= (1 - LEAST_PRICE) * (double) mostFlight.cost().cents();
      case LIGHTEST ->
        other.mass().grams() <= (1 - LEAST_MASS) * mostFlight.mass().grams();
      case STRONGEST -> thrust(other) >= (1 + LEAST_THRUST) * thrust(mostFlight);
    };
  }

  private static double thrust(Assessment build) {
    return build.flight().orElseThrow().thrustToWeight();
  }
}
