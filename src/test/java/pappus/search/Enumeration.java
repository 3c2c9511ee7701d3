package pappus.search;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** Tries every build of a small catalogue: the oracle of the searches. */
public final class Enumeration {
  private Enumeration() {}

  /** Every build, as incumbents keep them. */
  public static Incumbents of(Question question) {
    var incumbents = new Incumbents();
    each(question, incumbents::offer);
    return incumbents;
  }

  /** Tells every build once, feasible or not: choices that differ in what another part brings along are one. */
  public static void each(Question question, Consumer<Assessment> told) {
    var builds = new LinkedHashSet<Build>();
    fill(question, List.of(Role.values()), new EnumMap<>(Role.class), builds);
    builds.forEach(build -> told.accept(question.assessor().assess(build)));
  }

  /**
   * Every feasible build. What a fit rule sets apart is not flown, which takes eight times as long: the same rule would
   * break in the assessment.
   */
  public static List<Assessment> feasible(Question question) {
    var builds = new LinkedHashSet<Build>();
    fill(question, List.of(Role.values()), new EnumMap<>(Role.class), builds);
    var assessor = question.assessor();
    return builds.stream()
        .filter(assessor.ruleBook()::goesTogether)
        .map(assessor::assess)
        .filter(Assessment::isFeasible)
        .toList();
  }

  /** The best of them, if there is any. */
  public static Optional<Assessment> best(Question question) {
    return feasible(question).stream().min(Incumbents.BEST_FIRST);
  }

  private static void fill(
      Question question, List<Role> left, Map<Role, Part> chosen, Set<Build> builds) {
    if (left.isEmpty()) {
      builds.add(Question.tidy(chosen));
      return;
    }
    var role = left.get(0);
    var rest = left.subList(1, left.size());
    if (question.options(role).isEmpty()) {
      fill(question, rest, chosen, builds);
      return;
    }
    for (var part : question.options(role)) {
      chosen.put(role, part);
      fill(question, rest, chosen, builds);
      chosen.remove(role);
    }
  }
}
