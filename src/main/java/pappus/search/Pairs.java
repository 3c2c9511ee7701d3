package pappus.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** Which parts of one role go with a part of another, asked of the fit rules and remembered. */
public final class Pairs {
  private final Question question;
  private final Map<String, List<Part>> known = new HashMap<>();

  public Pairs(Question question) {
    this.question = question;
  }

  /** Parts of a role that no rule sets against the given part; in the order of ids. */
  public List<Part> with(Role role, Part part, Role other) {
    return known.computeIfAbsent(role.key() + ' ' + part.id() + ' ' + other.key(), asked -> {
      var alone = Build.empty().with(role, part);
      return question.options(other).stream()
          .filter(option -> question.assessor().goesTogether(alone.with(other, option)))
          .toList();
    });
  }
}
