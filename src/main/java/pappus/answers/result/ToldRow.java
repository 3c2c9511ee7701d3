package pappus.answers.result;

import java.util.Map;

/**
 * One candidate as a result tells it.
 *
 * @param roles ids by role
 * @param milliseconds in the air
 * @param feasible whether it keeps every rule and limit
 */
public record ToldRow(Map<String, String> roles, long milliseconds, boolean feasible) {
  public ToldRow {
    roles = Map.copyOf(roles);
  }
}
