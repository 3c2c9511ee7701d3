package pappus.search;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import pappus.assessment.Assessment;
import pappus.assessment.RuleBook;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** Tries every build of a small catalogue: the oracle of the searches. */
public final class Enumeration {
  /** Chosen first, and by what fills these roles alone: no accessory takes their place. */
  private static final Set<Role> FIRST =
      EnumSet.of(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY, Role.BOARD);

  private Enumeration() {}

  /** Every build, as incumbents keep them. */
  public static Incumbents of(Question question) {
    var incumbents = new Incumbents();
    each(question, incumbents::offer);
    return incumbents;
  }

  /** Tells every build once, feasible or not: choices that differ in what another part brings along are one. */
  public static void each(Question question, Consumer<Assessment> told) {
    builds(question, begun -> false)
        .forEach(build -> told.accept(question.assessor().assess(build)));
  }

  /**
   * Every feasible build. What a fit rule sets apart is not flown, which takes eight times as long, and first parts that a
   * rule on them alone sets apart are not completed: the same rule would break in the assessment.
   */
  public static List<Assessment> feasible(Question question) {
    var book = question.assessor().ruleBook();
    return builds(question, begun -> clashes(book, begun)).stream()
        .filter(book::goesTogether)
        .map(question.assessor()::assess)
        .filter(Assessment::isFeasible)
        .toList();
  }

  private static boolean clashes(RuleBook book, Build begun) {
    var chosen = begun.parts().keySet();
    return FIRST.containsAll(chosen)
        && book.all().stream()
            .filter(rule -> chosen.containsAll(rule.reads()))
            .anyMatch(rule -> book.isBroken(rule, begun));
  }

  /** The best of them, if there is any. */
  public static Optional<Assessment> best(Question question) {
    return feasible(question).stream().min(Incumbents.BEST_FIRST);
  }

  private static Set<Build> builds(Question question, Predicate<Build> isHopeless) {
    var builds = new LinkedHashSet<Build>();
    fill(question, List.of(Role.values()), new EnumMap<>(Role.class), isHopeless, builds);
    return builds;
  }

  private static void fill(
      Question question,
      List<Role> left,
      Map<Role, Part> chosen,
      Predicate<Build> isHopeless,
      Set<Build> builds) {
    if (left.isEmpty()) {
      builds.add(Question.tidy(chosen));
      return;
    }
    var role = left.get(0);
    var rest = left.subList(1, left.size());
    if (question.options(role).isEmpty()) {
      fill(question, rest, chosen, isHopeless, builds);
      return;
    }
    for (var part : question.options(role)) {
      chosen.put(role, part);
      if (!isHopeless.test(Build.of(chosen))) {
        fill(question, rest, chosen, isHopeless, builds);
      }
      chosen.remove(role);
    }
  }
}
