package pappus.search.timefold;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Pairs;
import pappus.search.Question;

/** The planning problem: a choice for every role, and what judges and remembers builds. */
@PlanningSolution
@SuppressWarnings({"unused", "NullAway"}) // the solver reads and fills the fields by reflection
class BuildChoice {
  @PlanningEntityCollectionProperty
  private List<RoleChoice> choices;

  @PlanningScore
  private @Nullable HardSoftLongScore score;

  private Question question;
  private Incumbents incumbents;
  private Pairs pairs;

  BuildChoice() {}

  BuildChoice(Map<Role, Part> start, Question question, Incumbents incumbents, Pairs pairs) {
    this.choices = Stream.of(Role.values())
        .map(role -> new RoleChoice(role, question.options(role), start.get(role)))
        .toList();
    this.question = question;
    this.incumbents = incumbents;
    this.pairs = pairs;
  }

  /** In the order of roles. */
  List<RoleChoice> choices() {
    return choices;
  }

  RoleChoice of(Role role) {
    return choices.stream().filter(choice -> choice.role() == role).findFirst().orElseThrow();
  }

  Question question() {
    return question;
  }

  Incumbents incumbents() {
    return incumbents;
  }

  Pairs pairs() {
    return pairs;
  }

  /** The build as it would be built. */
  Build toBuild() {
    var chosen = new EnumMap<Role, Part>(Role.class);
    for (var choice : choices) {
      if (choice.part() != null) {
        chosen.put(choice.role(), choice.part());
      }
    }
    return Build.of(chosen).tidy();
  }
}
