package pappus.answers.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A ranking as its result file tells it, to be checked.
 *
 * @param proven whether it claims that no other combination does better
 * @param inputs name and SHA-256 of every file that was read, the scenario first
 * @param catalogs as they were asked for
 * @param wanted candidates asked for
 * @param rows its candidates
 */
public record ToldResult(
    boolean proven,
    Map<String, String> inputs,
    List<String> catalogs,
    int wanted,
    List<ToldRow> rows) {
  public ToldResult {
    catalogs = List.copyOf(catalogs);
    rows = List.copyOf(rows);
  }

  /**
   * Reads one.
   *
   * @param text its content
   * @throws IllegalArgumentException if it is no ranking of this tool
   */
  public static ToldResult of(String text) {
    JsonNode document;
    try {
      document = JsonMapper.shared().readTree(text);
    } catch (JacksonException e) {
      throw new IllegalArgumentException("must be a result of this tool, but is not JSON.", e);
    }
    if (!document.path("candidates").isArray()
        || document.path("inputs").size() == 0
        || !document.path("standing").path("proven").isBoolean()) {
      throw new IllegalArgumentException(
          "must be a result of recommend, but has no candidates, inputs and standing.");
    }
    var inputs = new LinkedHashMap<String, String>();
    for (var input : document.path("inputs")) {
      inputs.put(input.path("name").asString(), input.path("sha256").asString());
    }
    var catalogs = new ArrayList<String>();
    document.path("catalogs").forEach(catalog -> catalogs.add(catalog.asString()));
    var rows = new ArrayList<ToldRow>();
    for (var candidate : document.path("candidates")) {
      var roles = new LinkedHashMap<String, String>();
      candidate
          .path("roles")
          .properties()
          .forEach(entry -> roles.put(entry.getKey(), entry.getValue().asString()));
      rows.add(new ToldRow(
          roles,
          candidate.path("milliseconds").asLong(),
          candidate.path("feasible").asBoolean()));
    }
    return new ToldResult(
        document.path("standing").path("proven").asBoolean(),
        inputs,
        catalogs,
        document.path("standing").path("wanted").asInt(rows.size()),
        rows);
  }
}
