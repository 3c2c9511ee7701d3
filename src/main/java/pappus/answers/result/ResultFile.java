package pappus.answers.result;

import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Reads a build back from a result of this tool. */
public final class ResultFile {
  private ResultFile() {}

  /**
   * Ids by role of one candidate.
   *
   * @param name of the file, for messages
   * @param text its content
   * @param rank from 1
   * @throws IllegalArgumentException if it is no result, or has no such candidate
   */
  public static Map<String, String> roles(String name, String text, int rank) {
    try {
      var candidates = JsonMapper.shared().readTree(text).path("candidates");
      if (!candidates.isArray() || rank < 1 || rank > candidates.size()) {
        throw new IllegalArgumentException(
            name + " must hold a candidate " + rank + ", but has " + candidates.size() + ".");
      }
      var roles = new LinkedHashMap<String, String>();
      candidates
          .get(rank - 1)
          .path("roles")
          .properties()
          .forEach(entry -> roles.put(entry.getKey(), entry.getValue().asString()));
      if (roles.isEmpty()) {
        throw new IllegalArgumentException(
            name + " must name the parts of candidate " + rank + " by role, but names none.");
      }
      return roles;
    } catch (JacksonException e) {
      throw new IllegalArgumentException(
          name + " must be a result of this tool, but is not JSON.", e);
    }
  }
}
