package pappus.answers.ranking;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.answers.result.SwapJson;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.change.Changed;
import pappus.change.Upgrades;

/** A quad that is there, and what changes of it gain. */
record UpgradesJson(
    @JsonPropertyDescription("The quad as it is.") BriefJson asItIs,

    @JsonPropertyDescription("What to plan with as it is, s, or m where the goal is range.")
    Optional<Double> planWith,

    @JsonPropertyDescription("Whether no other change gains more for as little.")
    boolean proven,

    @JsonPropertyDescription("The best for so much money, the cheapest first.")
    List<Change> byPrice,

    @JsonPropertyDescription("The best for so much mass, the lightest first.")
    List<Change> byMass) {
  /** One change. */
  record Change(
      @JsonPropertyDescription("What it gains, s, or m where the goal is range.")
      double gained,

      @JsonPropertyDescription("What it costs, cents.") long cents,

      @JsonPropertyDescription("Mass added, g; below 0 for less.")
      double gramsMore,

      @JsonPropertyDescription("What changes.") List<SwapJson.Difference> changed,

      @JsonPropertyDescription(
          "The build then, with what to plan with and whether that is to be believed.")
      BriefJson build) {}

  static UpgradesJson of(Upgrades upgrades, Assessor assessor, NamedParts parts) {
    var now = upgrades.now();
    return new UpgradesJson(
        BriefJson.of(now, assessor.scenario(), parts),
        now.flight().map(flight -> assessor.planned(now) / 1000.0),
        upgrades.isProof(),
        changes(upgrades.byPrice(), upgrades, assessor, parts),
        changes(upgrades.byMass(), upgrades, assessor, parts));
  }

  private static List<Change> changes(
      List<Assessment> builds, Upgrades upgrades, Assessor assessor, NamedParts parts) {
    var now = upgrades.now();
    return builds.stream()
        .map(build -> new Change(
            upgrades.gained(build),
            build.cost().cents(),
            build.mass().grams() - now.mass().grams(),
            Changed.between(now.build(), build.build()).stream()
                .map(changed -> SwapJson.Difference.of(changed, parts))
                .toList(),
            BriefJson.of(build, assessor.scenario(), parts)))
        .toList();
  }
}
