package pappus.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pappus.assessment.flight.FlightEstimate;
import pappus.fitting.Fitting;
import pappus.part.Build;

/**
 * Our opinion on one build for one scenario, whether it is feasible or not.
 *
 * <p>Why: src/site/markdown/decisions.md#the-objective-counts-microseconds
 *
 * @param build the parts
 * @param fitting how they go together
 * @param findings one a fit rule
 * @param mass what it weighs
 * @param cost what counts of its price: to fly once, or with what the scenario buys beside it
 * @param outlay all that is bought with it; empty where the scenario buys nothing beside a build
 * @param flight how it flies; empty if a main part is missing or the flight cannot be computed
 * @param whyNoFlight why there is no flight; empty where there is one
 * @param limits every limit
 * @param merit what it is ranked by
 * @param planning the figure to plan with, worked out when it is first asked for
 */
public record Assessment(
    Build build,
    Fitting fitting,
    List<Finding> findings,
    MassTable mass,
    CostTable cost,
    Optional<CostTable> outlay,
    Optional<FlightEstimate> flight,
    Optional<String> whyNoFlight,
    List<Limit> limits,
    Merit merit,
    Planning planning) {
  /** Units of the objective in a second or metre. */
  public static final double OBJECTIVE = 1e6;

  /** Above any sum of excesses, so that one broken rule weighs more than all limits. */
  private static final long RULE_WEIGHT = 20 * Limit.LARGEST_EXCESS;

  public Assessment {
    findings = List.copyOf(findings);
    limits = List.copyOf(limits);
  }

  /** Whether it goes together, keeps every limit and flies. */
  public boolean isFeasible() {
    return shortfall() == 0;
  }

  /** Fit rules that keep it from being a candidate. */
  public List<Finding> broken() {
    return findings.stream().filter(Finding::breaks).toList();
  }

  /**
   * How far from feasible, as one whole number: a fixed weight for each broken rule, and each limit's
   * relative excess in millionths. Zero if and only if it is feasible.
   */
  public long shortfall() {
    var sum = 0L;
    for (var finding : findings) {
      if (finding.breaks()) {
        sum += RULE_WEIGHT;
      }
    }
    for (var limit : limits) {
      sum += limit.excessMillionths();
    }
    return flight.isEmpty() ? sum + Limit.LARGEST_EXCESS : sum;
  }

  /** What of its numbers is outside what such aircraft are known to reach; nothing without a flight. */
  public Set<Disbelief> disbelief() {
    return flight.map(flown -> Disbelief.of(build, mass.grams(), flown)).orElse(Set.of());
  }

  /** Whether its numbers are outside what such aircraft are known to reach. */
  public boolean isBeyondBelief() {
    return !disbelief().isEmpty();
  }

  /** Whole milliseconds of flight; 0 without a flight. */
  public long milliseconds() {
    return flight.map(FlightEstimate::milliseconds).orElse(0L);
  }

  /**
   * Whole microseconds of flight, or micrometres over ground where the range counts; 0 without a flight. So fine a number
   * keeps apart what differs at all: with a coarse one, a proof would have to try thousands of accessories that differ
   * by less than it shows.
   */
  public long flown() {
    return flight.map(Assessment::flown).orElse(0L);
  }

  /** The figure to plan with, in whole thousandths of a second or of a metre; 0 without a flight. */
  public long planned() {
    return planning.thousandths();
  }

  /** Share of the flight that is told to plan with, 0 to 1; 1 without a flight. */
  public double shareToPlanWith() {
    return flown() > 0 ? Math.min(1, planned() / 1000.0 / figure(flown())) : 1;
  }

  static long flown(FlightEstimate flight) {
    return (long) Math.floor(flight.figure() * OBJECTIVE);
  }

  /** What searches make as large as they can: {@link #flown}, or what else builds are ranked by. */
  public long objective() {
    return merit.objective();
  }

  /** Seconds of flight, or metres over ground, of microseconds or micrometres. */
  public static double figure(long flown) {
    return flown / OBJECTIVE;
  }

  /** How the build stands to a limit; empty where it is not held to it. */
  public Optional<Limit> limit(LimitKind kind) {
    return limits.stream().filter(limit -> limit.is(kind)).findFirst();
  }

  /** The limit with the least room relative to its bound: the one that binds. */
  public Optional<Limit> tightest() {
    return limits.stream()
        .filter(limit -> !limit.met() || limit.hasRoom())
        .min(Comparator.comparingDouble(Limit::relativeMargin).thenComparing(Limit::id));
  }
}
