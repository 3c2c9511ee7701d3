package pappus.answers.whatif;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.Against;
import pappus.answers.result.BriefJson;
import pappus.answers.result.NamedParts;
import pappus.scenario.Scenario;
import pappus.whatif.relax.ClashCount;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.SmallestRelaxation;

/** What stands in the way of a scenario, with every digit. */
public record RelaxationJson(
    @JsonPropertyDescription("How far it can be trusted.") Trust standing,

    @JsonPropertyDescription("The best build, where nothing stands in the way.")
    Optional<BriefJson> best,

    @JsonPropertyDescription("Demands that cannot be met together.")
    List<Asked> conflict,

    @JsonPropertyDescription("The smallest change of each that helps by itself.")
    List<Relief> reliefs,

    @JsonPropertyDescription("Demands to be given up together, where none helps by itself.")
    List<Together> together,

    @JsonPropertyDescription("Which fit rules set apart the parts that the scenario leaves open.")
    List<ClashCount> clashes) {
  /** How far it can be trusted. */
  record Trust(
      @JsonPropertyDescription("Whether every no in it is proven.")
      boolean proven,

      @JsonPropertyDescription("The same in sentences.") String text,

      @JsonPropertyDescription("Whether it ended before it was done.")
      boolean endedEarly,

      @JsonPropertyDescription("Searches made.") int searches) {
    static Trust of(Relaxation relaxation, Scenario scenario) {
      var best = relaxation.best();
      return new Trust(
          best.build().isPresent() ? best.isProof() : relaxation.isProof(),
          best.build()
              .map(build -> new Against(scenario).of(build, best))
              .orElseGet(() -> RelaxWords.standing(relaxation)),
          relaxation.isCutShort(),
          relaxation.searches());
    }
  }

  /** What is asked. */
  record Asked(
      @JsonPropertyDescription("Id of the demand.") String demand,
      @JsonPropertyDescription("What it asks, in words.") String asks) {
    static Asked of(Demand demand) {
      return new Asked(demand.id(), demand.text());
    }
  }

  /** The smallest change of one demand. */
  record Relief(
      @JsonUnwrapped Asked asked,

      @JsonPropertyDescription("What was asked; left out where the demand is given up.")
      Optional<String> from,

      @JsonPropertyDescription("What would help.") Optional<String> to,

      @JsonPropertyDescription("Whether no smaller change is proven to help.")
      boolean leastProven,

      @JsonPropertyDescription("Whether no build then is proven to be better.")
      boolean bestProven,

      @JsonPropertyDescription("The same in words.") String text,
      @JsonPropertyDescription("The best build then.") BriefJson build) {
    static Relief of(SmallestRelaxation relief, Scenario scenario, NamedParts parts) {
      var isStep = !relief.from().isEmpty();
      return new Relief(
          Asked.of(relief.demand()),
          Optional.of(relief.from()).filter(from -> isStep),
          Optional.of(relief.to()).filter(to -> isStep),
          relief.isLeast(),
          relief.isBest(),
          RelaxWords.relief(relief),
          BriefJson.of(relief.build(), scenario, parts));
    }
  }

  /** Demands given up together. */
  record Together(
      @JsonPropertyDescription("Which.") List<Asked> demands,

      @JsonPropertyDescription("Whether no build then is proven to be better.")
      boolean bestProven,

      @JsonPropertyDescription("The same in words.") String text,
      @JsonPropertyDescription("The best build then.") BriefJson build) {
    static Together of(Relaxation.Together one, Scenario scenario, NamedParts parts) {
      return new Together(
          one.demands().stream().map(Asked::of).toList(),
          one.isBest(),
          RelaxWords.together(one),
          BriefJson.of(one.build(), scenario, parts));
    }
  }

  /**
   * The answer.
   *
   * @param parts gains those that are named by id
   */
  static RelaxationJson of(Relaxation relaxation, Scenario scenario, NamedParts parts) {
    return new RelaxationJson(
        Trust.of(relaxation, scenario),
        relaxation.best().build().map(build -> BriefJson.of(build, scenario, parts)),
        relaxation.conflict().stream().map(Asked::of).toList(),
        relaxation.reliefs().stream()
            .map(relief -> Relief.of(relief, scenario, parts))
            .toList(),
        relaxation.together().stream()
            .map(one -> Together.of(one, scenario, parts))
            .toList(),
        relaxation.clashes());
  }
}
