package pappus.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import pappus.assessment.Assessor;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.part.Build;

/**
 * Builds of a result, to be offered: what does not fly as it was told is not to be promised to anybody.
 *
 * @param file the result, for what is wrong
 * @param rows its candidates, the best first
 */
public record ToldBuilds(String file, List<Row> rows) {
  /**
   * A candidate.
   *
   * @param roles ids by role
   * @param milliseconds in the air
   */
  public record Row(Map<String, String> roles, long milliseconds) {}

  public ToldBuilds {
    rows = List.copyOf(rows);
  }

  /**
   * Builds of a shop's parts by rank, in the order they are offered.
   *
   * @param ranks of builds, from 1; where there are none, the desk picks
   * @param catalog what the result was made from, as it is now
   * @param assessor who judges by that
   * @throws InputException if there is no such rank, or a build does not fly as it was told
   */
  public Map<Integer, Build> of(
      List<Integer> ranks, Catalog catalog, Assessor assessor, OfferDesk desk) {
    var problems = new Problems();
    ranks.stream()
        .filter(rank -> rank > rows.size())
        .forEach(rank -> problems.add(Problem.ofFile(
            file, "must hold a candidate %s, but has %s.".formatted(rank, rows.size()))));
    if (rows.isEmpty()) {
      problems.add(Problem.ofFile(file, "must hold a candidate, but has none."));
    }
    problems.throwIfAny();
    var all = new TreeMap<Integer, Build>();
    for (var rank = 1; rank <= rows.size(); rank++) {
      if (ranks.isEmpty() || ranks.contains(rank)) {
        var row = rows.get(rank - 1);
        check(rank, row, catalog, assessor);
        all.put(rank, build(row, desk.catalog()));
      }
    }
    var builds = new LinkedHashMap<Integer, Build>();
    (ranks.isEmpty() ? desk.pick(all) : new ArrayList<>(ranks))
        .forEach(rank -> builds.put(rank, Objects.requireNonNull(all.get(rank))));
    return builds;
  }

  private void check(int rank, Row row, Catalog catalog, Assessor assessor) {
    var assessed = assessor.assess(build(row, catalog));
    if (assessed.milliseconds() != row.milliseconds() || !assessed.isFeasible()) {
      throw wrong(String.format(
          Locale.ROOT,
          "candidate %d must fly as the result tells, %.2f min, but flies %.2f min%s. Maybe run recommend again.",
          rank,
          row.milliseconds() / 60_000.0,
          assessed.milliseconds() / 60_000.0,
          assessed.isFeasible() ? "" : " and breaks a rule or limit"));
    }
  }

  private Build build(Row row, Catalog catalog) {
    try {
      return BuildText.of(row.roles(), catalog);
    } catch (IllegalArgumentException unknown) {
      throw wrong(String.valueOf(unknown.getMessage()));
    }
  }

  private InputException wrong(String what) {
    return InputException.badData(Problem.ofFile(file, what));
  }
}
