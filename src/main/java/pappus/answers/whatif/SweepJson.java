package pappus.answers.whatif;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Optional;
import pappus.answers.build.Against;
import pappus.answers.result.StandingJson;
import pappus.answers.result.SwapJson;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.NamedParts;
import pappus.assessment.Assessment;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;
import pappus.whatif.sweep.FrameAdvice;
import pappus.whatif.sweep.Sweep;

/** What varies, step by step, and what is traded for what, with every digit. */
public record SweepJson(
    @JsonPropertyDescription("How far it can be trusted.") Trust standing,
    @JsonPropertyDescription("What varies.") Optional<List<Axis>> axes,
    @JsonPropertyDescription("The best build at each step.") Optional<List<Step>> steps,

    @JsonPropertyDescription("Builds that no other surpasses in flight, mass and price at once.")
    Optional<List<Point>> front,

    @JsonPropertyDescription("What a designer of the frame asks next.")
    Optional<FrameAdviceJson> frame) {
  /** How far it can be trusted. */
  record Trust(
      @JsonPropertyDescription("Whether all of it is proven.")
      boolean proven,

      @JsonPropertyDescription("Of the steps, in sentences.")
      Optional<String> sweep,

      @JsonPropertyDescription("Searches made for the steps.")
      Optional<Integer> searches,

      @JsonPropertyDescription("Of what is traded for what, in sentences.")
      Optional<String> front,

      @JsonPropertyDescription(
          "What no build that was not seen surpasses, s, or m where the goal is range.")
      Optional<Double> frontAtMost) {
    static Trust of(Optional<Sweep> sweep, Optional<ParetoFront> front, Scenario scenario) {
      return new Trust(
          sweep.map(Sweep::isProof).orElse(true)
              && front.map(ParetoFront::isProof).orElse(true),
          sweep.map(SweepWords::standing),
          sweep.map(Sweep::searches),
          front.map(found -> SweepWords.standing(found, new Against(scenario))),
          front.map(ParetoFront::proof).flatMap(StandingJson::atMost));
    }
  }

  /** What varies. */
  record Axis(
      @JsonPropertyDescription("Which.") String id,

      @JsonPropertyDescription("Its unit; empty for a pure number.")
      String unit) {}

  /** One step. */
  record Step(
      @JsonPropertyDescription("A value for each of what varies.")
      List<String> values,

      @JsonPropertyDescription("Whether no build is proven to be better.")
      boolean proven,

      @JsonPropertyDescription("Whether it follows from a looser step without a search.")
      boolean carriedOver,

      @JsonPropertyDescription("The best build.") Optional<BriefJson> best,

      @JsonPropertyDescription("Mass it needs at the confidence asked for, g.")
      Optional<Double> neededGrams,

      @JsonPropertyDescription(
          "First bending frequency of its softest arms, Hz, ± 15 %; left out where they are not drawn.")
      Optional<Double> armHertz,

      @JsonPropertyDescription("Roles that differ from the step before.")
      List<SwapJson.Difference> changed,

      @JsonPropertyDescription(
          "Where no build is feasible: demands that together leave none, whatever else is given up; empty if no parts go together at all.")
      Optional<List<InTheWay>> inTheWay) {}

  /** A demand that is in the way. */
  record InTheWay(
      @JsonPropertyDescription("Which.") String id,
      @JsonPropertyDescription("In words.") String text) {}

  /** A build on the front. */
  record Point(
      @JsonUnwrapped BriefJson build,

      @JsonPropertyDescription("Mass it needs at the confidence asked for, g.")
      double neededGrams) {}

  /**
   * The answer.
   *
   * @param deviations of mass kept below the cap
   * @param parts gains those that are named by id
   */
  static SweepJson of(
      Optional<Sweep> sweep,
      Optional<ParetoFront> front,
      Optional<FrameAdvice> advice,
      Scenario scenario,
      double deviations,
      NamedParts parts) {
    return new SweepJson(
        Trust.of(sweep, front, scenario),
        sweep.map(found ->
            found.axes().stream().map(axis -> new Axis(axis.id(), axis.unit())).toList()),
        sweep.map(found -> found.steps().stream()
            .map(step -> step(step, scenario, deviations, parts))
            .toList()),
        front.map(found -> found.builds().stream()
            .map(
                build -> new Point(BriefJson.of(build, scenario, parts), needed(build, deviations)))
            .toList()),
        advice.map(found -> FrameAdviceJson.of(found, scenario, parts)));
  }

  private static Step step(
      pappus.whatif.sweep.Step step, Scenario scenario, double deviations, NamedParts parts) {
    var best = step.best();
    return new Step(
        step.values(),
        best.isProof(),
        step.isCarriedOver(),
        best.build().map(build -> BriefJson.of(build, scenario, parts)),
        best.build().map(build -> needed(build, deviations)),
        ArmsVaried.hertz(step),
        step.changed().stream()
            .map(changed -> SwapJson.Difference.of(changed, parts))
            .toList(),
        step.inTheWay()
            .map(demands -> demands.stream()
                .map(demand -> new InTheWay(demand.id(), demand.text()))
                .toList()));
  }

  private static double needed(Assessment build, double deviations) {
    return build.mass().neededMilligrams(deviations) / 1000.0;
  }
}
