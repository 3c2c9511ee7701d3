package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pappus.answers.result.ToldResult.Standing;
import pappus.answers.result.ToldResult.ToldPick;
import pappus.files.Fingerprint;
import pappus.files.InputException;
import pappus.files.Source;
import pappus.files.json.ReadBack;
import tools.jackson.core.JacksonException;

/**
 * An order as its result file tells it: of what {@code order} writes, what is read back.
 *
 * @param order its name
 * @param groups who gets what
 * @param paid what was to be paid
 * @param buys what was to be bought
 * @param catalogs as they were asked for
 * @param inputs every file that was read, the order's first
 */
public record ToldOrder(
    String order,
    List<Group> groups,
    Paid paid,
    List<Bought> buys,
    List<String> catalogs,
    List<Fingerprint> inputs) {
  public ToldOrder {
    groups = List.copyOf(groups);
    buys = List.copyOf(buys);
    catalogs = List.copyOf(catalogs);
    inputs = List.copyOf(inputs);
  }

  /** What was to be paid. */
  public record Paid(long postageCents) {}

  /** Pieces of a part that were to be bought, or came. */
  public record Bought(String part, int pieces, long cents) {}

  /** What came before it was told. */
  public record Revision(List<Bought> came, long spentCents) {
    static final Revision NONE = new Revision(List.of(), 0);

    public Revision {
      came = List.copyOf(came);
    }

    /** Postage of what came. */
    public long postageCents() {
      return spentCents - came.stream().mapToLong(Bought::cents).sum();
    }
  }

  /** Tells what was revised from what was not. */
  private record Before(
      @JsonSetter(nulls = Nulls.AS_EMPTY) @Nullable Map<String, Object> revision) {}

  private record Revised(Revision revision) {}

  /**
   * What came before a file of {@code order} was written.
   *
   * @throws InputException naming the place, if a field that is read is missing or no such value
   */
  public static Revision before(Source source) {
    var before = ReadBack.read(source, Before.class).revision;
    return before == null || before.isEmpty()
        ? Revision.NONE
        : ReadBack.read(source, Revised.class).revision;
  }

  /** A group and the file of its scenario. */
  public record Group(String name, String scenario, List<Build> builds) {
    public Group {
      builds = List.copyOf(builds);
    }

    private boolean has(String build) {
      return name.equals(build) || builds.stream().anyMatch(one -> one.name.equals(build));
    }
  }

  /** A build of a group. */
  public record Build(
      String name, int learners, Map<String, String> roles, long milliseconds, boolean feasible) {
    ToldPick as(String other) {
      return new ToldPick(other, roles, milliseconds, feasible);
    }
  }

  /** Tells an order from other files. */
  private record Marks(@Nullable Object order, @Nullable List<Object> groups) {}

  /** Whether a file is what {@code order} wrote. */
  public static boolean isOne(Source source) {
    try {
      var marks = ReadBack.read(source, Marks.class);
      return marks.order != null && marks.groups != null;
    } catch (InputException | JacksonException noneOfOurs) {
      return false;
    }
  }

  /**
   * Reads one.
   *
   * @throws InputException naming the place, if a field that is read is missing or no such value
   */
  public static ToldOrder of(Source source) {
    return ReadBack.read(source, ToldOrder.class);
  }

  /**
   * What a result of the scenario of one of its builds would tell: the builds of all groups with that scenario as picks of
   * their names; the first of a group also by the name of the group.
   *
   * @param build of a group, or a group
   * @throws IllegalArgumentException if it has none of that name
   */
  public ToldResult result(String build) {
    var group = groups.stream()
        .filter(one -> one.has(build))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(
            "must have a group or a build of the name after #, one of %s, but has none."
                .formatted(String.join(", ", names()))));
    var picks = new ArrayList<ToldPick>();
    for (var one : groups) {
      if (one.scenario.equals(group.scenario)) {
        one.builds.forEach(its -> picks.add(its.as(its.name)));
        if (one.builds.stream().noneMatch(its -> its.name.equals(one.name))) {
          one.builds.stream().findFirst().ifPresent(first -> picks.add(first.as(one.name)));
        }
      }
    }
    // Of all that the order was made from, a build of it is of its own scenario and the catalogues.
    var other = new HashSet<String>();
    groups.forEach(one -> other.add(one.scenario));
    other.remove(group.scenario);
    var files = inputs.stream()
        .skip(1)
        .filter(input -> !other.contains(input.name()) && !input.name().endsWith(".csv"))
        .sorted(Comparator.comparing(input -> !input.name().equals(group.scenario)))
        .toList();
    return new ToldResult(
        new Standing(false, picks.size()), files, catalogs, List.of(), List.of(), picks);
  }

  private List<String> names() {
    return groups.stream()
        .flatMap(group -> group.builds.stream().map(Build::name))
        .toList();
  }
}
