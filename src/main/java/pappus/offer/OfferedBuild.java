package pappus.offer;

import java.util.List;
import pappus.assessment.Assessment;
import pappus.change.Swap;
import pappus.part.Part;
import pappus.scenario.Scenario;

/**
 * One build of an offer.
 *
 * @param rank in its result
 * @param scenario that asked for it
 * @param assessment by the shop's prices
 * @param planWith what to plan with, seconds or metres: never the estimate
 * @param lines its parts
 * @param totals with what the shop adds
 * @param standIns for what is out of stock, each after those before it
 * @param standInLines its parts once they stand in; those of the build where there are none
 * @param labels what it is best at among the builds offered
 */
public record OfferedBuild(
    int rank,
    Scenario scenario,
    Assessment assessment,
    double planWith,
    List<OfferLine> lines,
    Totals totals,
    List<StandIn> standIns,
    List<OfferLine> standInLines,
    List<String> labels) {
  public OfferedBuild {
    lines = List.copyOf(lines);
    standIns = List.copyOf(standIns);
    standInLines = List.copyOf(standInLines);
    labels = List.copyOf(labels);
  }

  OfferedBuild labelled(List<String> best) {
    return new OfferedBuild(
        rank, scenario, assessment, planWith, lines, totals, standIns, standInLines, best);
  }

  /** Those that stand in, where any was found. */
  public List<StandIn> taken() {
    return standIns.stream().filter(one -> one.swap().isPresent()).toList();
  }

  /** What is delivered: the build with what stands in. */
  public Assessment delivered() {
    return after(assessment, standIns);
  }

  /** A build once everything stands in that does. */
  static Assessment after(Assessment build, List<StandIn> standIns) {
    var after = build;
    for (var one : standIns) {
      after = one.swap().map(Swap::assessment).orElse(after);
    }
    return after;
  }

  /** What that costs. */
  public Totals deliveredTotals() {
    return standIns.isEmpty() ? totals : standIns.get(standIns.size() - 1).totals();
  }

  /** What to plan with then, seconds or metres. */
  public double deliveredPlanWith() {
    return standIns.isEmpty() ? planWith : standIns.get(standIns.size() - 1).planWith();
  }

  /** What has to be ordered before it can be delivered; spares aside. */
  public List<Part> toOrder() {
    return standInLines.stream()
        .filter(line -> line.standing() == OfferLine.Standing.TO_ORDER
            || (line.standing() == OfferLine.Standing.SHORT && !line.isEnoughToFly()))
        .map(OfferLine::part)
        .toList();
  }
}
