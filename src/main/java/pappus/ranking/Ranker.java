package pappus.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.doubt.Doubts;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Coverage;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Proof;
import pappus.search.Question;
import pappus.search.Row;

/**
 * Makes a ranking of what a search met: improves what is near the top part by part, drops what
 * differs too little, and marks equals.
 */
public final class Ranker {
  private static final int MOST_ROUNDS = 6;
  private static final int MOST_NEARLY = 24;

  private final Question question;
  private final Incumbents pool;
  private final int apart;

  public Ranker(Question question, Incumbents pool) {
    this.question = question;
    this.pool = pool;
    this.apart = question.assessor().scenario().differences();
  }

  /**
   * Swaps every part of every leading candidate, and of some that only just miss, for every other of its role, until
   * none gets better. This also finds each candidate its best accessories.
   *
   * @param count candidates wanted
   * @param stopped asked now and then whether to give up early
   */
  public void improve(int count, BooleanSupplier stopped) {
    var done = new LinkedHashSet<Build>();
    for (var round = 0; round < MOST_ROUNDS; round++) {
      var leaders = new ArrayList<>(distinct(pool.bestFirst(), count + 5));
      var worst = leaders.isEmpty() ? 0 : leaders.get(leaders.size() - 1).objective();
      pool.nearlyFeasible().stream()
          .filter(near -> near.objective() > worst)
          .limit(MOST_NEARLY)
          .forEach(leaders::add);
      var fresh = leaders.stream().map(Assessment::build).filter(done::add).toList();
      if (fresh.isEmpty()) {
        return;
      }
      for (var build : fresh) {
        for (var role : Role.values()) {
          if (stopped.getAsBoolean()) {
            return;
          }
          swapAll(build, role);
        }
      }
    }
  }

  private void swapAll(Build build, Role role) {
    for (var option : question.options(role)) {
      var chosen = new java.util.EnumMap<Role, Part>(Role.class);
      chosen.putAll(build.parts());
      chosen.put(role, option);
      var swapped = Question.tidy(chosen);
      if (!swapped.equals(build)) {
        pool.offer(question.assessor().assess(swapped));
      }
    }
  }

  /** The ranking of everything in the pool. */
  public Ranking rank(int count, Ending ending) {
    return rank(count, Proof.of(ending));
  }

  /** The ranking of everything in the pool. */
  public Ranking rank(int count, Proof reach) {
    var ordered = pool.bestFirst();
    var best = distinct(ordered, count);
    var rows = best.stream()
        .map(row -> new Row(row, variants(row, best, ordered), false))
        .toList();
    return rank(rows, reach);
  }

  /** The ranking of rows that a search has put in order. */
  public Ranking rank(List<Row> found, Proof reach) {
    var rows = found.stream().map(row -> question.held(row.assessment())).toList();
    found.forEach(row -> row.variants().forEach(question::held));
    var doubts = new Doubts(question.assessor());
    var bands = rows.stream().map(doubts::band).toList();
    var heads = heads(rows, bands);
    var candidates = new ArrayList<Candidate>();
    for (var row = 0; row < rows.size(); row++) {
      var head = heads[row];
      candidates.add(new Candidate(
          rows.get(row),
          bands.get(row),
          found.get(row).variants(),
          found.get(row).isCutShort(),
          twins(rows.get(row).build()),
          head == row ? OptionalInt.empty() : OptionalInt.of(head + 1),
          isCheapest(row, heads, rows)));
    }
    var coverage = new Coverage(question.combinations(), pool.assessed(), pool.feasible(), reach);
    return new Ranking(
        candidates, candidates.isEmpty() ? pool.closest() : Optional.empty(), coverage);
  }

  private Map<Part, List<Part>> twins(Build build) {
    var twins = new LinkedHashMap<Part, List<Part>>();
    for (var part : build.parts().values()) {
      if (!question.twins(part).isEmpty()) {
        twins.put(part, question.twins(part));
      }
    }
    return twins;
  }

  /** The best builds each of which differs from every earlier one in as many main parts as asked for. */
  private List<Assessment> distinct(List<Assessment> ordered, int count) {
    var kept = new ArrayList<Assessment>();
    for (var assessment : ordered) {
      if (kept.size() == count) {
        break;
      }
      if (kept.stream().allMatch(earlier -> differences(earlier, assessment) >= apart)) {
        kept.add(assessment);
      }
    }
    return kept;
  }

  /** Builds that differ from a row in one main part, and belong to no earlier row; none where they are rows. */
  private List<Assessment> variants(
      Assessment row, List<Assessment> rows, List<Assessment> ordered) {
    if (apart == 1) {
      return List.of();
    }
    return ordered.stream()
        .filter(other -> differences(row, other) == 1
            && rows.stream()
                .filter(earlier -> differences(earlier, other) <= 1)
                .findFirst()
                .filter(earlier -> earlier.build().equals(row.build()))
                .isPresent())
        .limit(Row.MOST_VARIANTS)
        .toList();
  }

  private static int differences(Assessment one, Assessment other) {
    return one.build().differences(other.build());
  }

  /** For each row the first row of its group: its shortfall against that one is below their doubt. */
  private static int[] heads(List<Assessment> rows, List<Band> bands) {
    var heads = new int[rows.size()];
    for (var row = 1; row < heads.length; row++) {
      var head = heads[row - 1];
      var shortfall = bands.get(head).estimate() - bands.get(row).estimate();
      heads[row] = shortfall < bands.get(head).deviationOfDifference(bands.get(row)) ? head : row;
    }
    return heads;
  }

  private static boolean isCheapest(int row, int[] heads, List<Assessment> rows) {
    var group =
        IntStream.range(0, heads.length).filter(i -> heads[i] == heads[row]).toArray();
    if (group.length < 2) {
      return false;
    }
    var cheapest = group[0];
    for (var member : group) {
      if (rows.get(member).cost().cents() < rows.get(cheapest).cost().cents()) {
        cheapest = member;
      }
    }
    return cheapest == row;
  }
}
