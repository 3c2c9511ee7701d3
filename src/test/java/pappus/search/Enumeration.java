package pappus.search;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import pappus.assessment.Assessment;
import pappus.part.Part;
import pappus.part.Role;

/** Tries every build of a small catalogue: the oracle of the searches. */
public final class Enumeration {
  private Enumeration() {}

  /** Every feasible build, as a pool keeps them. */
  public static Incumbents of(Question question) {
    var pool = new Incumbents();
    each(question, pool::offer);
    return pool;
  }

  /** Tells every build, feasible or not; some more than once. */
  public static void each(Question question, Consumer<Assessment> told) {
    fill(question, List.of(Role.values()), new EnumMap<>(Role.class), told);
  }

  private static void fill(
      Question question, List<Role> left, Map<Role, Part> chosen, Consumer<Assessment> told) {
    if (left.isEmpty()) {
      told.accept(question.assessor().assess(Question.tidy(chosen)));
      return;
    }
    var role = left.get(0);
    var rest = left.subList(1, left.size());
    if (question.options(role).isEmpty()) {
      fill(question, rest, chosen, told);
      return;
    }
    for (var part : question.options(role)) {
      chosen.put(role, part);
      fill(question, rest, chosen, told);
      chosen.remove(role);
    }
  }
}
