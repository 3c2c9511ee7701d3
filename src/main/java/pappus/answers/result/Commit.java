package pappus.answers.result;

import java.io.IOException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** The commit a jar was built from. */
public final class Commit {
  private Commit() {}

  /** Its short id; "unknown" where the sources came without their history. */
  public static String id() {
    try (var stream = Commit.class.getResourceAsStream("/pappus/cli/commit.json")) {
      return stream == null
          ? "unknown"
          : JsonMapper.shared().readTree(stream).path("git.commit.id.abbrev").asString("unknown");
    } catch (IOException | JacksonException e) {
      return "unknown";
    }
  }
}
