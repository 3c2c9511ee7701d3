package pappus.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Purpose;
import pappus.part.Build;
import pappus.ranking.Candidate;
import pappus.ranking.Finder;
import pappus.ranking.ParetoFront;
import pappus.ranking.Ranking;
import pappus.search.Ending;
import pappus.search.Question;

/**
 * What changes of a quad that is there gain: of the builds that no other surpasses in flight, mass and price at once,
 * those that fly longer than it does, or farther.
 *
 * @param now the quad as it is
 * @param byPrice the best for so much money, the cheapest change first
 * @param byMass the best for so much mass, the lightest build first
 * @param isProof whether no other change does better
 */
public record Upgrades(
    Assessment now, List<Assessment> byPrice, List<Assessment> byMass, boolean isProof) {
  /** More steps than these tell no more. */
  private static final int MOST_STEPS = 5;

  /** Choices to look into; what that leaves open is said. */
  private static final long LOOKS = 400_000;

  public Upgrades {
    byPrice = List.copyOf(byPrice);
    byMass = List.copyOf(byMass);
  }

  /**
   * Looks for them.
   *
   * @param quad as it is
   * @param ranking of the question
   */
  public static Upgrades of(Build quad, Question question, Ranking ranking, Finder finder) {
    var purpose = question.assessor().purpose();
    if (purpose.measure().isOfFlight()) {
      var best = ranking.candidates().stream().findFirst().map(Candidate::assessment);
      return of(quad, question, best, ranking.coverage().isProof(), finder);
    }
    // Whatever builds are ranked by, a change gains flight.
    var flight = question.with(
        new Purpose(Purpose.Measure.FLIGHT, purpose.leastFlight(), purpose.onlyBelieved()));
    var best = finder.best(flight, LOOKS);
    return of(quad, flight, best.build(), best.proof().ending() == Ending.PROVEN, finder);
  }

  private static Upgrades of(
      Build quad, Question question, Optional<Assessment> best, boolean isProof, Finder finder) {
    var assessor = question.assessor();
    var now = assessor.assess(quad);
    var least = now.isFeasible() ? now.flown() : 0;
    if (best.isEmpty() || best.get().flown() <= least) {
      return new Upgrades(now, List.of(), List.of(), isProof);
    }
    var front = finder.front(
        question, Purpose.Measure.FLIGHT, (double) least / best.get().flown(), LOOKS);
    var builds = front.builds().isEmpty() ? List.of(best.get()) : front.builds();
    var better = new ParetoFront(
        builds.stream().filter(build -> build.flown() > least).toList(),
        front.share(),
        front.proof());
    return new Upgrades(
        now,
        steps(better.againstPrice(), least),
        steps(better.againstMass(assessor.deviations()), least),
        front.isProof());
  }

  /** The best, and before it those that gain a good part of what is to be had; what asks least first. */
  private static List<Assessment> steps(List<Assessment> bestFirst, long from) {
    var rising =
        bestFirst.stream().sorted(Comparator.comparingLong(Assessment::flown)).toList();
    if (rising.isEmpty()) {
      return List.of();
    }
    var best = rising.get(rising.size() - 1);
    var step = (best.flown() - from) / MOST_STEPS;
    var steps = new ArrayList<Assessment>();
    var last = from;
    for (var build : rising) {
      if (build.flown() == best.flown() || build.flown() >= last + step) {
        steps.add(build);
        last = build.flown();
      }
    }
    return steps;
  }

  /** What a build gains over the quad as it is, s or m; all of it where that keeps not all that is asked for. */
  public double gained(Assessment build) {
    return Assessment.figure(build.flown() - (now.isFeasible() ? now.flown() : 0));
  }
}
