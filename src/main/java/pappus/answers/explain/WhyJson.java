package pappus.answers.explain;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pappus.answers.build.Changes;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.result.StandingJson;
import pappus.answers.result.SwapJson;
import pappus.answers.shape.AssessmentJson;
import pappus.answers.shape.FlightJson;
import pappus.answers.shape.LimitJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.change.BestSwaps;
import pappus.change.Rates;
import pappus.change.Saving;
import pappus.change.Swap;
import pappus.change.Why;
import pappus.part.Role;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** Why a build is as it is, with every digit. Gains are in seconds, or metres where the goal is range. */
public record WhyJson(
    @JsonPropertyDescription("Where it stands against the best.")
    StandingJson standing,

    @JsonPropertyDescription("The build.") AssessmentJson build,

    @JsonPropertyDescription("Room to everything that bounds it.")
    List<LimitJson> margins,

    @JsonPropertyDescription("What one gram more costs, s, or m where the goal is range.")
    Optional<Double> lostPerGram,

    @JsonPropertyDescription("What one watt more costs, s, or m where the goal is range.")
    Optional<Double> lostPerWatt,

    @JsonPropertyDescription(
        "What is gained if controllers of which nothing is known switch at 48 kHz, s, or m where the goal is range.")
    Optional<Double> gainedBySwitching,

    @JsonPropertyDescription("What money is worth, in a sentence.")
    Optional<String> money,

    @JsonPropertyDescription("The swap that gains most for each unit of money.")
    Optional<SwapJson> mostForTheMoney,

    @JsonPropertyDescription("The swap that saves most money for what it loses.")
    Optional<SwapJson> cheapestToGiveUp,

    @JsonPropertyDescription("Where grams can be saved, the cheapest first.")
    List<Saved> savings,

    @JsonPropertyDescription("The best swap of each role.") List<Swaps> swaps) {
  /** Grams to be saved. */
  record Saved(
      @JsonPropertyDescription("How.") String way,
      @JsonPropertyDescription("On what.") String what,
      @JsonPropertyDescription("How much, g.") double grams,

      @JsonPropertyDescription("What that gains, s, or m where the goal is range.")
      double gained,

      @JsonPropertyDescription(
          "What it costs, cents; left out where that depends on where it is bought.")
      Optional<Long> cents,

      @JsonPropertyDescription("The swap, where it is one.") Optional<SwapJson> swap,
      @JsonPropertyDescription("The same in words.") String text) {
    static Saved of(Saving saving, Function<Swap, SwapJson> swaps, Changes changes) {
      var cents = saving.cents();
      return new Saved(
          FlightJson.key(saving.way()),
          saving.what(),
          saving.grams(),
          saving.gained(),
          cents.isPresent() ? Optional.of(cents.getAsLong()) : Optional.empty(),
          saving.swap().map(swaps),
          changes.saving(saving));
    }
  }

  /** Swaps of one role. */
  record Swaps(
      @JsonPropertyDescription("Which.") Role role,
      @JsonPropertyDescription("How many parts were tried.") int tried,

      @JsonPropertyDescription("The best that breaks nothing.")
      Optional<SwapJson> best,

      @JsonPropertyDescription("One that gains more, but breaks one thing.")
      Optional<SwapJson> longerButBroken,

      @JsonPropertyDescription("The same in words.") String text) {
    static Swaps of(BestSwaps best, Function<Swap, SwapJson> swaps, Changes changes) {
      return new Swaps(
          best.role(),
          best.tried(),
          best.best().map(swaps),
          best.tempting().map(swaps),
          changes.best(best));
    }
  }

  /** The whole answer. */
  public static String of(Scenario scenario, Run run, Assessment assessment, Why why, Best best) {
    var changes = new Changes(scenario, assessment);
    var parts = new NamedParts();
    Function<Swap, SwapJson> swaps = swap -> SwapJson.of(swap, scenario, parts);
    var answer = new WhyJson(
        StandingJson.of(best, assessment, scenario, parts),
        AssessmentJson.of(assessment, scenario, assessment.shareToPlanWith(), parts),
        why.margins().stream().map(LimitJson::of).toList(),
        why.rates().map(Rates::perGram),
        why.rates().map(Rates::perWatt),
        why.forSwitching(),
        why.rates().map(rates -> changes.money(why.forMoney(), why.toGiveUp())),
        why.forMoney().map(swaps),
        why.toGiveUp().map(swaps),
        why.savings().stream().map(saving -> Saved.of(saving, swaps, changes)).toList(),
        why.swaps().stream().map(each -> Swaps.of(each, swaps, changes)).toList());
    return Document.of(
        scenario, run, assessment.isFeasible() ? "feasible" : "infeasible", answer, parts);
  }
}
