package pappus.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.doubt.Doubts;
import pappus.part.Build;
import pappus.part.Part;
import pappus.search.Coverage;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Proof;
import pappus.search.Question;
import pappus.search.Row;

/**
 * Makes a ranking of what a search met: drops what differs too little, and marks equals.
 */
public final class Ranker {
  private final Question question;
  private final Incumbents incumbents;
  private final int apart;

  public Ranker(Question question, Incumbents incumbents) {
    this.question = question;
    this.incumbents = incumbents;
    this.apart = question.assessor().scenario().differences();
  }

  /** The ranking of everything in the incumbents. */
  public Ranking rank(int count, Ending ending) {
    return rank(count, Proof.of(ending));
  }

  /** The ranking of everything in the incumbents. */
  public Ranking rank(int count, Proof proof) {
    var ordered = incumbents.bestFirst();
    var best = incumbents.distinct(count, apart);
    var rows = best.stream()
        .map(row -> new Row(row, variants(row, best, ordered), false))
        .toList();
    return rank(rows, proof);
  }

  /** The ranking of rows that a search has put in order. */
  public Ranking rank(List<Row> found, Proof proof) {
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
    var coverage =
        new Coverage(question.combinations(), incumbents.assessed(), incumbents.feasible(), proof);
    return new Ranking(
        candidates,
        candidates.isEmpty() ? incumbents.closest() : Optional.empty(),
        coverage,
        Picks.NONE);
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

  /** Builds that differ from a row in less than rows do, and belong to no earlier row. */
  private List<Assessment> variants(
      Assessment row, List<Assessment> rows, List<Assessment> ordered) {
    return ordered.stream()
        .filter(other -> differences(row, other) < apart
            && !other.build().hasMainsOf(row.build())
            && rows.stream()
                .filter(earlier -> differences(earlier, other) < apart)
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
  private int[] heads(List<Assessment> rows, List<Band> bands) {
    var heads = new int[rows.size()];
    var isOfFlight = question.assessor().purpose().measure().isOfFlight();
    for (var row = 1; row < heads.length; row++) {
      if (!isOfFlight) {
        // A doubt of flights makes no two prices, masses or thrusts equal.
        heads[row] = row;
        continue;
      }
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
