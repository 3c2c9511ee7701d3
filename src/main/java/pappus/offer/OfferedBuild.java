package pappus.offer;

import java.util.List;
import pappus.assessment.Assessment;

/**
 * One build of an offer.
 *
 * @param rank in the result
 * @param assessment by the shop's prices
 * @param planWith what to plan with, seconds or metres: never the estimate
 * @param lines its parts
 * @param totals with what the shop adds
 * @param standIns for what is out of stock, each after those before it
 * @param labels what it is best at among the builds offered
 */
public record OfferedBuild(
    int rank,
    Assessment assessment,
    double planWith,
    List<OfferLine> lines,
    Totals totals,
    List<StandIn> standIns,
    List<String> labels) {
  public OfferedBuild {
    lines = List.copyOf(lines);
    standIns = List.copyOf(standIns);
    labels = List.copyOf(labels);
  }
}
