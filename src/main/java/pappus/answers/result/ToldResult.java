package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.files.Fingerprint;
import pappus.files.InputException;
import pappus.files.Source;
import pappus.files.json.ReadBack;
import tools.jackson.core.JacksonException;

/**
 * A ranking as its result file tells it, to be checked: of what {@code recommend} writes, what is read back.
 *
 * @param standing what it claims
 * @param inputs every file that was read, the scenario first
 * @param catalogs as they were asked for
 * @param set what was asked otherwise than the scenario's file says; absent: nothing
 * @param candidates its candidates, the best first
 */
public record ToldResult(
    Standing standing,
    List<Fingerprint> inputs,
    List<String> catalogs,
    @JsonSetter(nulls = Nulls.AS_EMPTY) @Nullable List<String> set,
    List<ToldRow> candidates) {
  public ToldResult {
    inputs = List.copyOf(inputs);
    catalogs = List.copyOf(catalogs);
    set = set == null ? null : List.copyOf(set);
    candidates = List.copyOf(candidates);
  }

  /** What was asked otherwise than the scenario's file says. */
  public List<String> settings() {
    return set == null ? List.of() : set;
  }

  /**
   * Names of files that are not as they were when the result was made.
   *
   * @param now as they are
   */
  public List<String> changed(List<Fingerprint> now) {
    var same = new HashSet<>(now);
    return inputs.stream()
        .filter(input -> !same.contains(input))
        .map(Fingerprint::name)
        .toList();
  }

  /**
   * What a result claims.
   *
   * @param proven whether no other combination does better
   * @param wanted candidates asked for
   */
  public record Standing(boolean proven, int wanted) {}

  /** Tells a result from other files. */
  private record Marks(
      @Nullable Object standing,
      @Nullable List<Object> inputs,
      @Nullable List<Object> candidates) {
    boolean areThere() {
      return standing != null && inputs != null && candidates != null;
    }
  }

  private static boolean isRanking(Source source) {
    try {
      return ReadBack.read(source, Marks.class).areThere();
    } catch (InputException | JacksonException noneOfOurs) {
      return false;
    }
  }

  /**
   * Reads one.
   *
   * @throws InputException naming the place, if a field that is read is missing or no such value
   * @throws IllegalArgumentException if it is no ranking of this tool
   */
  public static ToldResult of(Source source) {
    try {
      var told = ReadBack.read(source, ToldResult.class);
      if (!told.inputs().isEmpty()) {
        return told;
      }
    } catch (InputException refused) {
      if (isRanking(source)) {
        throw refused;
      }
    } catch (JacksonException e) {
      throw new IllegalArgumentException("must be a result of this tool, but is not JSON.", e);
    }
    throw new IllegalArgumentException(
        "must be a result of recommend, but has no candidates, inputs and standing.");
  }
}
