package pappus.catalog;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pappus.files.Source;
import pappus.files.json.ReadBack;
import tools.jackson.core.JacksonException;

/** Reads a build back from a result of this tool. */
public final class ResultFile {
  /** What is read of it. */
  private record Told(
      @Nullable List<Row> candidates,
      @JsonSetter(nulls = Nulls.AS_EMPTY) @Nullable List<Pick> picks) {}

  private record Row(@Nullable Map<String, String> roles) {}

  private record Pick(@Nullable String pick, @Nullable Map<String, String> roles) {}

  private ResultFile() {}

  /**
   * Ids by role of one build.
   *
   * @param name its rank from 1, or what it is picked for
   * @throws pappus.files.InputException naming the place, if what is read is no such value
   * @throws IllegalArgumentException if it is no result, or has no such build
   */
  public static Map<String, String> roles(Source source, String name) {
    try {
      var told = ReadBack.read(source, Told.class);
      var roles = Character.isDigit(name.charAt(0))
          ? candidate(source, told, Integer.parseInt(name)).roles()
          : pick(source, told, name).roles();
      if (roles == null || roles.isEmpty()) {
        throw new IllegalArgumentException(
            "%s must name the parts of candidate %s by role, but names none."
                .formatted(source.name(), name));
      }
      return roles;
    } catch (JacksonException e) {
      throw new IllegalArgumentException(
          source.name() + " must be a result of this tool, but is not JSON.", e);
    }
  }

  private static Row candidate(Source source, Told told, int rank) {
    var candidates = Objects.requireNonNullElse(told.candidates(), List.<Row>of());
    if (rank < 1 || rank > candidates.size()) {
      throw new IllegalArgumentException("%s must hold a candidate %s, but has %s."
          .formatted(source.name(), rank, candidates.size()));
    }
    return candidates.get(rank - 1);
  }

  private static Pick pick(Source source, Told told, String name) {
    var picks = Objects.requireNonNullElse(told.picks(), List.<Pick>of());
    return picks.stream()
        .filter(row -> name.equals(row.pick()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("%s must hold the pick %s, but has %s."
            .formatted(
                source.name(),
                name,
                picks.isEmpty()
                    ? "none"
                    : picks.stream().map(Pick::pick).collect(Collectors.joining(", ")))));
  }
}
