package pappus.order.column;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.assessment.CostTable;
import pappus.order.Wares;
import pappus.part.Build;

/**
 * One build that a learner of a group may get.
 *
 * @param group place of the group in the order
 * @param number in the order in which the builds of its group were met
 * @param share of the group's best flight, millionths, rounded down
 * @param ownCents what it is worth to the learner: all its pieces in proportion to the price of their units
 * @param extraCents what of that is no part, such as a lump that is wired already
 * @param needs by ware and by what it serves as
 */
public record Column(
    int group,
    int number,
    Assessment assessment,
    long share,
    long ownCents,
    long extraCents,
    List<Need> needs) {
  /** Units of a share in the best flight. */
  public static final long WHOLE = 1_000_000;

  public Column {
    needs = List.copyOf(needs);
  }

  /**
   * A build as a column.
   *
   * @param assessment by the group's assessor
   * @param best objective of the group's best build, or what none surpasses
   */
  static Column of(int group, int number, Assessment assessment, long best, Wares wares) {
    var needs = new ArrayList<Need>(needs(assessment.cost(), wares).values());
    var extra = extraCents(assessment.cost());
    var own = extra;
    for (var need : needs) {
      own += need.ware().shareOfUnit(need.pieces());
    }
    return new Column(
        group, number, assessment, share(assessment.objective(), best), own, extra, needs);
  }

  /** Share of the best, millionths, rounded down. */
  static long share(long objective, long best) {
    return best <= 0 ? 0 : (long) Math.floor((double) WHOLE * objective / best);
  }

  private static LinkedHashMap<String, Need> needs(CostTable cost, Wares wares) {
    var needs = new LinkedHashMap<String, Need>();
    for (var line : cost.lines()) {
      var pieces = line.pieces() - line.fromHand();
      if (pieces > 0) {
        var ware = wares.of(line.part());
        needs.merge(
            ware.index() + " " + line.label(),
            new Need(ware, line.label(), pieces),
            (one, more) -> new Need(ware, line.label(), one.pieces() + more.pieces()));
      }
    }
    return needs;
  }

  /** What of a build's price is no part. */
  static long extraCents(CostTable cost) {
    return cost.own().stream().mapToLong(line -> line.cents()).sum();
  }

  /** Each is met once: its place tells it from all others. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Column column && group == column.group && number == column.number;
  }

  @Override
  public int hashCode() {
    return 31 * group + number;
  }

  @Override
  public String toString() {
    return build().toString();
  }

  /** The build. */
  public Build build() {
    return assessment.build();
  }

  /** Whole thousandths of the best. */
  public long thousandths() {
    return share / 1000;
  }
}
