package pappus.evidence.prior;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Propeller;
import pappus.part.Propeller.Row;
import pappus.quantity.Require;

/** Propellers: what blades of their size and pitch reach at rest. */
final class PropellerPriors {
  /** Scatter of the thrust coefficient, and its hard bounds. */
  private static final double THRUST_DEVIATION = 0.08;

  /** Trend of the figure of merit to either side; twice and a half its scatter of .04. */
  private static final double MERIT_BAND = 0.10;

  /** Speed times diameter that tips stand, rpm·in: Mach .88 (common practice, no published source). */
  private static final double FASTEST = 225_000;

  private PropellerPriors() {}

  static List<String> remarks(Propeller propeller) {
    var remarks = new ArrayList<String>();
    var fifth = propeller.diameterInches() / 5;
    var law = 4.2 * fifth * fifth * StrictMath.pow(propeller.blades() / 3.0, 0.85);
    // 4.2 g (D/5 in)² (B/3)^.85, ±13 %: common practice, no published source.
    Bounds.about(law, 0.13, 0.6 * law, 1.6 * law)
        .remark("mass", propeller.mass().grams(), " g")
        .ifPresent(remarks::add);
    var test = propeller.test();
    if (test != null) {
      addTest(propeller, test.rows(), remarks);
    }
    return List.copyOf(remarks);
  }

  private static void addTest(Propeller propeller, List<Row> rows, List<String> remarks) {
    var merit = meritLaw(propeller);
    var meritBounds = new Bounds(merit - MERIT_BAND, merit + MERIT_BAND, 0.30, 0.70);
    var thrust = thrustLaw(propeller);
    var thrustBounds = Bounds.about(thrust, THRUST_DEVIATION, 0.07, 0.36);
    var middle = middle(rows);
    for (var i = 0; i < rows.size(); i++) {
      var row = rows.get(i);
      var at = " at " + Require.plain(propeller.rpm(row)) + " rpm";
      // Slow rows are worse by their Reynolds number: the laws are those of the middle.
      (i == middle ? meritBounds : Bounds.hard(0.30, 0.70))
          .remark("figure of merit" + at, merit(row), "")
          .ifPresent(remarks::add);
      (i == middle ? thrustBounds : Bounds.hard(0.07, 0.36))
          .remark("thrust coefficient" + at, row.thrustCoefficient(), "")
          .ifPresent(remarks::add);
      if (propeller.rpm(row) * propeller.diameterInches() > FASTEST) {
        remarks.add("a test%s is faster than blades of %s inch stand."
            .formatted(at, Require.plain(propeller.diameterInches())));
      }
    }
    for (var i = 1; i < rows.size(); i++) {
      addFall(propeller, rows.get(i - 1), rows.get(i), remarks);
    }
    var rise = rows.get(rows.size() - 1).thrustCoefficient() / rows.get(0).thrustCoefficient() - 1;
    // Deters, Ananda, Selig, AIAA 2014-2151.
    Bounds.hard(-0.005, 0.205)
        .remark("rise of the thrust coefficient over the test", rise, "")
        .ifPresent(remarks::add);
  }

  /** Faster blades push more and ask more: a coefficient that undoes the speed is a slip. */
  private static void addFall(Propeller propeller, Row slower, Row faster, List<String> remarks) {
    var speeds = propeller.rpm(faster) / propeller.rpm(slower);
    var rpm = "from %s to %s rpm, though it turns faster: maybe a slip."
        .formatted(Require.plain(propeller.rpm(slower)), Require.plain(propeller.rpm(faster)));
    if (faster.thrustCoefficient() * speeds * speeds < slower.thrustCoefficient()) {
      remarks.add("thrust falls " + rpm);
    }
    if (faster.powerCoefficient() * speeds * speeds * speeds < slower.powerCoefficient()) {
      remarks.add("power falls " + rpm);
    }
  }

  /** The row that the laws are those of. */
  static int middle(List<Row> rows) {
    return rows.size() / 2;
  }

  static double merit(Row row) {
    return StrictMath.pow(row.thrustCoefficient(), 1.5)
        / (row.powerCoefficient() * Math.sqrt(Math.PI / 2));
  }

  /**
   * .61 (D/5 in)^.30, a little more at fine pitch: bench of P. Cao and J. Strawson (open data set,
   * 2018, MIT licence); trend with size after Deters, Ananda, Selig, AIAA 2014-2151.
   */
  static double meritLaw(Propeller propeller) {
    var pitch = propeller.pitchInches() / propeller.diameterInches();
    return 0.61 * StrictMath.pow(propeller.diameterInches() / 5, 0.30)
        + Math.max(-0.05, Math.min(0.05, 0.05 - (pitch - 0.5) / 7));
  }

  /** .1054 B^.451 (p/D)^.484, fitted to eight propellers of the same bench. */
  static double thrustLaw(Propeller propeller) {
    return 0.1054
        * StrictMath.pow(propeller.blades(), 0.451)
        * StrictMath.pow(propeller.pitchInches() / propeller.diameterInches(), 0.484);
  }
}
