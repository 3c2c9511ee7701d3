package pappus.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToLongFunction;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose.Measure;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.search.Question;

/**
 * What is traded for what: builds that no other surpasses in flight, mass and price at once, mass as it is needed at
 * the scenario's confidence.
 *
 * @param builds longest or farthest flight first
 * @param measure of the flight: what is expected, or what to plan with
 * @param share of the best flight down to which builds were looked for
 * @param proof how far the search came
 */
public record ParetoFront(List<Assessment> builds, Measure measure, double share, Proof proof) {
  public ParetoFront {
    builds = List.copyOf(builds);
  }

  /** Of flights expected. */
  public ParetoFront(List<Assessment> builds, double share, Proof proof) {
    this(builds, Measure.FLIGHT, share, proof);
  }

  /** Of builds that were met, those that no other of them surpasses; one that nobody believes surpasses none that is. */
  public static ParetoFront of(
      List<Assessment> met, Question question, Measure measure, double share, Proof proof) {
    var deviations = question.assessor().deviations();
    var front = new ArrayList<Assessment>();
    ToLongFunction<Assessment> flight =
        measure == Measure.PLAN_WITH ? Assessment::planned : Assessment::flown;
    // Of equal flights the lighter and then the cheaper comes first: what surpasses another is
    // before it.
    var ordered = met.stream()
        .sorted(Comparator.comparingLong(flight)
            .reversed()
            .thenComparingLong(build -> build.mass().neededMilligrams(deviations))
            .thenComparingLong(build -> build.cost().cents()))
        .toList();
    var best = ordered.stream()
        .filter(build -> !build.isBeyondBelief())
        .findFirst()
        .or(() -> ordered.stream().findFirst())
        .map(flight::applyAsLong)
        .orElse(0L);
    for (var build : ordered) {
      if (flight.applyAsLong(build) < share * best) {
        break;
      }
      var milligrams = build.mass().neededMilligrams(deviations);
      if (front.stream()
          .filter(other -> !other.isBeyondBelief() || build.isBeyondBelief())
          .noneMatch(other -> other.mass().neededMilligrams(deviations) <= milligrams
              && other.cost().cents() <= build.cost().cents())) {
        front.add(question.held(build));
      }
    }
    return new ParetoFront(front, measure, share, proof);
  }

  /** Whether none is missing down to the share asked for. */
  public boolean isProof() {
    return proof.ending() == Ending.PROVEN;
  }

  /** The flight above which none is missing, seconds or metres; empty where nothing is proven. */
  public OptionalDouble wholeAbove() {
    var unit = measure == Measure.PLAN_WITH ? 1_000.0 : 1_000_000.0;
    if (!isProof()) {
      var atMost = proof.atMost();
      return atMost.isPresent()
          ? OptionalDouble.of(atMost.getAsLong() / unit)
          : OptionalDouble.empty();
    }
    return builds.stream()
        .limit(1)
        .mapToDouble(
            best -> share * (measure == Measure.PLAN_WITH ? best.planned() : best.flown()) / unit)
        .findFirst();
  }

  /** Builds of it that no other surpasses in flight and price, the dearest first. */
  public List<Assessment> againstPrice() {
    var front = new ArrayList<Assessment>();
    var least = Long.MAX_VALUE;
    for (var build : builds) {
      if (build.cost().cents() < least) {
        least = build.cost().cents();
        front.add(build);
      }
    }
    return front;
  }

  /**
   * Builds of it that no other surpasses in flight and mass, the heaviest first.
   *
   * @param deviations kept below the cap
   */
  public List<Assessment> againstMass(double deviations) {
    var front = new ArrayList<Assessment>();
    var least = Long.MAX_VALUE;
    for (var build : builds) {
      var milligrams = build.mass().neededMilligrams(deviations);
      if (milligrams < least) {
        least = milligrams;
        front.add(build);
      }
    }
    return front;
  }
}
