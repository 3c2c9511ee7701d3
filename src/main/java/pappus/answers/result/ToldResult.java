package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
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
 * @param picks builds to choose among, by what they are picked for; empty in results of old
 */
public record ToldResult(
    Standing standing,
    List<Fingerprint> inputs,
    List<String> catalogs,
    @JsonSetter(nulls = Nulls.AS_EMPTY) @Nullable List<String> set,
    List<ToldRow> candidates,
    @JsonSetter(nulls = Nulls.AS_EMPTY) @Nullable List<ToldPick> picks) {
  public ToldResult {
    inputs = List.copyOf(inputs);
    catalogs = List.copyOf(catalogs);
    set = set == null ? null : List.copyOf(set);
    candidates = List.copyOf(candidates);
    picks = picks == null ? null : List.copyOf(picks);
  }

  /** A pick as a result tells it. */
  public record ToldPick(
      String pick, Map<String, String> roles, long milliseconds, boolean feasible) {
    ToldRow row() {
      return new ToldRow(roles, milliseconds, feasible);
    }
  }

  /** All builds that can be named: candidates by their rank, then picks in their order. */
  public List<ToldRow> builds() {
    return Stream.concat(candidates.stream(), picksOrNone().stream().map(ToldPick::row))
        .toList();
  }

  /**
   * The place, from 1, of a build among all that can be named.
   *
   * @param name a rank, or what a build is picked for
   * @return empty if there is no such build
   */
  public OptionalInt place(String name) {
    if (name.matches("[1-9][0-9]{0,2}")) {
      var rank = Integer.parseInt(name);
      return rank <= candidates.size() ? OptionalInt.of(rank) : OptionalInt.empty();
    }
    for (var i = 0; i < picksOrNone().size(); i++) {
      if (picksOrNone().get(i).pick().equals(name)) {
        return OptionalInt.of(candidates.size() + i + 1);
      }
    }
    return OptionalInt.empty();
  }

  private List<ToldPick> picksOrNone() {
    return picks == null ? List.of() : picks;
  }

  /** What may be named, in words. */
  public String names() {
    var names = new ArrayList<String>();
    if (!candidates.isEmpty() || picksOrNone().isEmpty()) {
      names.add(candidates.size() == 1 ? "1" : "1 to " + candidates.size());
    }
    picksOrNone().forEach(pick -> names.add(pick.pick()));
    return String.join(", ", names);
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
