package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.answers.build.Against;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.answers.build.GoalWords;
import pappus.assessment.Assessment;
import pappus.change.Changed;
import pappus.document.Spoken;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;
import pappus.whatif.relax.Demand;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.Step;
import pappus.whatif.sweep.Sweep;

/** What a sweep and a trade-off say, in sentences. */
public final class SweepWords {
  /** Less for each unit, in seconds or metres, is told of all of them together. */
  private static final double LEAST_EACH = 0.5;

  /** Accessories that are named; more of them are counted. */
  private static final int MOST_NAMED = 2;

  private SweepWords() {}

  /** What is not as the scenario has it. */
  public static String varied(Sweep sweep, Scenario scenario) {
    var ids = sweep.axes().stream().map(Axis::id).toList();
    return "Varied here: %s.".formatted(String.join(", ", ids))
        + (ids.contains("temperature")
            ? " That is the air; the pack is at %s °C all the same."
                .formatted(Spoken.number(scenario.air().packTemperatureOrWarm(), 0))
            : "");
  }

  /** What the best build of a step is, beside the step before. */
  public static String winner(Step step, boolean isFirst) {
    if (step.best().build().isEmpty()) {
      return step.best().isProof()
          ? "nothing is feasible" + step.inTheWay().map(SweepWords::inTheWay).orElse("")
          : "nothing was found";
    }
    if (isFirst) {
      return step.best().build().get().build().parts().entrySet().stream()
          .filter(entry -> Role.MAIN.contains(entry.getKey()))
          .map(entry -> entry.getValue().name())
          .collect(Collectors.joining(", "));
    }
    return step.changed().isEmpty()
        ? "the same"
        : changes(step.changed(), step.best().build().get());
  }

  /** What leaves no build, whatever else is given up. */
  private static String inTheWay(List<Demand> demands) {
    return switch (demands.size()) {
      case 0 -> ": no parts of the catalogue go together";
      case 1 -> "; in the way: " + demands.get(0).text();
      default ->
        "; in the way: " + demands.stream().map(Demand::text).collect(Collectors.joining(" with "));
    };
  }

  /** In what a build of the same frame, motor, propeller and battery differs from the one before. */
  public static String beside(Assessment before, Assessment after) {
    return "the same with " + changes(Changed.between(before.build(), after.build()), after);
  }

  private static String changes(List<Changed> changed, Assessment after) {
    var mains = changed.stream().filter(each -> Role.MAIN.contains(each.role())).toList();
    var others =
        changed.stream().filter(each -> !Role.MAIN.contains(each.role())).toList();
    var words = new ArrayList<String>();
    mains.forEach(each -> words.add(each.after().orElseThrow().name()));
    if (others.size() > MOST_NAMED) {
      words.add("%s accessories".formatted(others.size()));
    } else {
      others.forEach(each -> words.add(change(each, after.build())));
    }
    return String.join(", ", words);
  }

  private static String change(Changed changed, Build after) {
    return changed
        .after()
        .map(Part::name)
        .map(name -> changed.role().label() + " " + name)
        .orElseGet(() -> after.fills(changed.role())
            ? changed.role().label() + " built in"
            : "no " + changed.role().label());
  }

  /** What each unit of the one thing that varies is worth in the mean; absent where it is no number, or a limit. */
  public static Optional<String> slope(Sweep sweep, Scenario scenario) {
    var isForRange = scenario.isForRange();
    var goal = new GoalWords(scenario);
    var axis = sweep.axes().get(0);
    var feasible =
        sweep.steps().stream().filter(step -> step.best().build().isPresent()).toList();
    if (sweep.axes().size() > 1
        || axis.unit().isEmpty()
        || axis.tightens() != Axis.Tightens.NEITHER
        || feasible.size() < 2) {
      return Optional.empty();
    }
    var first = feasible.get(0);
    var last = feasible.get(feasible.size() - 1);
    if (!goal.isOfFlight()) {
      return Optional.of("From %s to %s %s: the best build %s at first, and %s at last."
          .formatted(
              first.values().get(0),
              last.values().get(0),
              axis.unit(),
              goal.has(first.best().build().orElseThrow()),
              goal.has(last.best().build().orElseThrow())));
    }
    var units = Double.parseDouble(last.values().get(0))
        - Double.parseDouble(first.values().get(0));
    var gained = Assessment.figure(last.best().build().orElseThrow().flown()
        - first.best().build().orElseThrow().flown());
    var changes = new Changes(isForRange, "");
    if (Math.abs(gained / units) < LEAST_EACH) {
      return Optional.of("From %s to %s %s, the best build flies %s in all."
          .formatted(
              first.values().get(0),
              last.values().get(0),
              axis.unit(),
              new Figures(isForRange)
                  .against(
                      first.best().build().orElseThrow(), last.best().build().orElseThrow())));
    }
    var each = changes.longer(gained / units);
    return Optional.of("From %s to %s %s, the best build flies %s per %s on average."
        .formatted(first.values().get(0), last.values().get(0), axis.unit(), each, axis.unit()));
  }

  /** How far a sweep can be trusted, and what it took. */
  public static String standing(Sweep sweep) {
    var steps = sweep.steps().size();
    var unproven = sweep.steps().stream().filter(step -> !step.best().isProof()).count();
    var took = " %s %s took %s %s; the others follow from looser ones."
        .formatted(
            steps,
            steps == 1 ? "step" : "steps",
            sweep.searches(),
            sweep.searches() == 1 ? "search" : "searches");
    if (sweep.searches() == steps) {
      took = "";
    }
    return (unproven == 0
            ? "Proven at each step: no other build from this catalogue does better."
            : "Not proven at %s of %s steps: there may be something better."
                .formatted(unproven, steps))
        + took;
  }

  /** How far a trade-off can be trusted. */
  public static String standing(ParetoFront front, Against against) {
    var downTo =
        "down to %s %% of the longest flight".formatted(Spoken.number(100 * front.share(), 0));
    if (front.isProof()) {
      return "Proven: none is missing %s.".formatted(front.share() > 0 ? downTo : "at all");
    }
    return front.proof().atMost().isPresent()
        ? "The search stopped early: every build above the flight it had come down to is here."
            + against.more(front.proof())
        : "Not proven: these were found along the way." + against.more(front.proof());
  }
}
