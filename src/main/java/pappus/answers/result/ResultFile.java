package pappus.answers.result;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import pappus.files.Source;
import pappus.files.json.ReadBack;
import tools.jackson.core.JacksonException;

/** Reads a build back from a result of this tool. */
public final class ResultFile {
  /** What is read of it. */
  private record Told(@Nullable List<Row> candidates) {}

  private record Row(@Nullable Map<String, String> roles) {}

  private ResultFile() {}

  /**
   * Ids by role of one candidate.
   *
   * @param rank from 1
   * @throws pappus.files.InputException naming the place, if what is read is no such value
   * @throws IllegalArgumentException if it is no result, or has no such candidate
   */
  public static Map<String, String> roles(Source source, int rank) {
    try {
      var candidates = Objects.requireNonNullElse(
          ReadBack.read(source, Told.class).candidates(), List.<Row>of());
      if (rank < 1 || rank > candidates.size()) {
        throw new IllegalArgumentException("%s must hold a candidate %s, but has %s."
            .formatted(source.name(), rank, candidates.size()));
      }
      var roles = candidates.get(rank - 1).roles();
      if (roles == null || roles.isEmpty()) {
        throw new IllegalArgumentException(
            "%s must name the parts of candidate %s by role, but names none."
                .formatted(source.name(), rank));
      }
      return roles;
    } catch (JacksonException e) {
      throw new IllegalArgumentException(
          source.name() + " must be a result of this tool, but is not JSON.", e);
    }
  }
}
