package pappus.offer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Builds offered to a customer.
 *
 * @param shop who offers
 * @param date of the offer
 * @param customer whom it is for
 * @param number by which the shop files it
 * @param builds one to three, of one result or of several
 * @param isCounted whether stock was told
 */
public record Offer(
    Shop shop,
    LocalDate date,
    Optional<String> customer,
    Optional<String> number,
    List<OfferedBuild> builds,
    boolean isCounted) {
  /** What builds are compared by: the more, the better. */
  static final Map<String, ToDoubleFunction<OfferedBuild>> GOALS = goals();

  private static final String LIGHTEST = "lightest";

  public Offer {
    builds = labelled(builds);
  }

  private static Map<String, ToDoubleFunction<OfferedBuild>> goals() {
    var goals = new LinkedHashMap<String, ToDoubleFunction<OfferedBuild>>();
    goals.put("longest flight", OfferedBuild::deliveredPlanWith);
    goals.put(
        "best value",
        build -> build.deliveredPlanWith() / Math.max(1, build.deliveredTotals().gross()));
    goals.put(LIGHTEST, build -> -build.delivered().mass().grams());
    return goals;
  }

  /**
   * Each with what it is best at; minutes are not set against kilometres, nor flights asked for otherwise. What is
   * better than such aircraft are known to fly is not praised, unless there is nothing else.
   */
  private static List<OfferedBuild> labelled(List<OfferedBuild> builds) {
    var areAlike = builds.stream().map(OfferedBuild::scenario).distinct().count() == 1;
    var believed =
        builds.stream().filter(build -> !build.delivered().isBeyondBelief()).toList();
    var compared = believed.isEmpty() ? builds : believed;
    var labelled = new ArrayList<OfferedBuild>();
    for (var build : builds) {
      var labels = new ArrayList<String>();
      GOALS.forEach((label, better) -> {
        if (builds.size() > 1
            && compared.contains(build)
            && (areAlike || label.equals(LIGHTEST))
            && compared.stream()
                .filter(other -> !other.equals(build))
                .allMatch(other -> better.applyAsDouble(build) > better.applyAsDouble(other))) {
          labels.add(label);
        }
      });
      labelled.add(build.labelled(labels));
    }
    return List.copyOf(labelled);
  }

  /** Last day on which it holds. */
  public LocalDate validUntil() {
    return date.plusDays(shop.settings().validDays());
  }
}
