package pappus.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * The feasible builds a search has met, the best for each choice of frame, motor, propeller and
 * battery; and of the others the one that is closest to feasible.
 */
public final class Incumbents {
  /** The objective, then price or else the figure to plan with, then ids: the one order of every ranking. */
  public static final Comparator<Assessment> BEST_FIRST = Comparator.comparingLong(
          Assessment::objective)
      .thenComparingLong(assessment -> assessment.merit().second())
      .reversed()
      .thenComparing(assessment -> assessment.build().toString());

  private static final int MOST = 20_000;

  /** What mostly decides how long a build flies and what is in its way. */
  private static final List<Role> DECIDING =
      Role.MAIN.stream().filter(role -> role != Role.FRAME).toList();

  private final TreeMap<String, Assessment> byKey = new TreeMap<>();
  private final TreeMap<String, Assessment> closestWith = new TreeMap<>();
  private @Nullable Assessment closest;
  private long assessed;
  private long feasible;

  /** Takes note of an assessment. */
  public void offer(Assessment assessment) {
    assessed++;
    if (assessment.isFeasible()) {
      feasible++;
      byKey.merge(
          key(assessment.build()),
          assessment,
          (held, offered) -> BEST_FIRST.compare(offered, held) < 0 ? offered : held);
      if (byKey.size() > MOST) {
        keepBetterHalf();
      }
      return;
    }
    if (closest == null || CLOSEST_FIRST.compare(assessment, closest) < 0) {
      closest = assessment;
    }
    for (var role : DECIDING) {
      closestWith.merge(
          role.key() + ' ' + id(assessment.build(), role),
          assessment,
          (held, offered) -> CLOSEST_FIRST.compare(offered, held) < 0 ? offered : held);
    }
  }

  /** The shortfall, then as in every ranking. */
  static final Comparator<Assessment> CLOSEST_FIRST =
      Comparator.comparingLong(Assessment::shortfall).thenComparing(BEST_FIRST);

  private void keepBetterHalf() {
    var better = bestFirst().subList(0, MOST / 2);
    byKey.clear();
    better.forEach(assessment -> byKey.put(key(assessment.build()), assessment));
  }

  /** The feasible ones, best first. */
  public List<Assessment> bestFirst() {
    var sorted = new ArrayList<>(byKey.values());
    sorted.sort(BEST_FIRST);
    return sorted;
  }

  /**
   * The best builds, each of which differs from every earlier one in some main parts.
   *
   * @param count so many at most
   * @param apart main parts that differ at least, 1 or 2
   */
  public List<Assessment> distinct(int count, int apart) {
    var kept = new ArrayList<Assessment>();
    for (var assessment : bestFirst()) {
      if (kept.size() == count) {
        break;
      }
      if (kept.stream()
          .allMatch(earlier -> earlier.build().differences(assessment.build()) >= apart)) {
        kept.add(assessment);
      }
    }
    return kept;
  }

  /** The infeasible one with the least shortfall, if none but infeasible ones were met. */
  public Optional<Assessment> closest() {
    return Optional.ofNullable(closest);
  }

  /**
   * For each motor, propeller and battery the infeasible build with the least shortfall, the longest flying first:
   * where they fly longer than any feasible one, a swap may bring a better one in reach.
   */
  public List<Assessment> nearlyFeasible() {
    return closestWith.values().stream().distinct().sorted(BEST_FIRST).toList();
  }

  /** Builds assessed, counting repeats. */
  public long assessed() {
    return assessed;
  }

  /** Feasible ones among them, counting repeats. */
  public long feasible() {
    return feasible;
  }

  /** What makes two builds the same candidate: their main parts. */
  public static String key(Build build) {
    return Role.MAIN.stream().map(role -> id(build, role)).collect(Collectors.joining(" "));
  }

  private static String id(Build build, Role role) {
    return build.part(role).map(Part::id).orElse("-");
  }
}
