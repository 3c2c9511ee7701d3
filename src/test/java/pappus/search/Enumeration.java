package pappus.search;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pappus.catalog.Part;
import pappus.catalog.Role;

/** Tries every build of a small catalogue: the oracle of the searches. */
public final class Enumeration {
  private Enumeration() {}

  /** Every feasible build, as a pool keeps them. */
  public static Pool of(Question question) {
    var pool = new Pool();
    fill(question, List.of(Role.values()), new EnumMap<>(Role.class), pool);
    return pool;
  }

  private static void fill(Question question, List<Role> left, Map<Role, Part> chosen, Pool pool) {
    if (left.isEmpty()) {
      pool.offer(question.assessor().assess(Question.tidy(chosen)));
      return;
    }
    var role = left.get(0);
    var rest = left.subList(1, left.size());
    if (question.options(role).isEmpty()) {
      fill(question, rest, chosen, pool);
      return;
    }
    for (var part : question.options(role)) {
      chosen.put(role, part);
      fill(question, rest, chosen, pool);
      chosen.remove(role);
    }
  }
}
