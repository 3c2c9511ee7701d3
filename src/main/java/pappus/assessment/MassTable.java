package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.fitting.Fitting;
import pappus.part.Frame;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Part;
import pappus.physics.airframe.MassChance;
import pappus.scenario.MassCap;

/**
 * What the aircraft weighs at take-off.
 *
 * @param lines everything that leaves the ground
 * @param grams sum, g
 * @param doubtGrams one standard deviation of the sum, g
 */
public record MassTable(List<Line> lines, double grams, double doubtGrams) {
  /** Label of what is carried besides. */
  public static final String PAYLOAD = "payload";

  /**
   * One line of a mass table.
   *
   * @param label what it is
   * @param part its catalogue part; empty for payload, wire and what is counted at a usual mass
   * @param pieces how many fly
   * @param each mass of one
   * @param grams mass of all, g; below zero for what is cut off or shorter than listed
   * @param doubtGrams one standard deviation of all, g: equal pieces err together
   */
  public record Line(
      String label, Optional<Part> part, int pieces, Mass each, double grams, double doubtGrams) {}

  public MassTable {
    lines = List.copyOf(lines);
  }

  /** Some lines and their sum. */
  public static MassTable of(List<Line> lines) {
    var grams = 0.0;
    var variance = 0.0;
    for (var line : lines) {
      grams += line.grams();
      variance += line.doubtGrams() * line.doubtGrams();
    }
    return new MassTable(lines, grams, Math.sqrt(variance));
  }

  /** Everything that a build as it goes together takes off with, lump and payload included. */
  static MassTable of(Fitting fitting) {
    var build = fitting.build();
    var lines = new ArrayList<Line>();
    build.parts().forEach((role, part) -> {
      var pieces = build.count(role);
      lines.add(line(role.label(), Optional.of(part), pieces, part.mass(), 1));
    });
    fitting
        .stackPlan()
        .flatMap(plan -> plan.height())
        .map(Frame.PlateHeight::addedGrams)
        .filter(grams -> Math.abs(grams) >= Mass.LEAST_GRAMS)
        .ifPresent(grams -> lines.add(line(
            grams > 0 ? "longer standoffs" : "shorter standoffs",
            Optional.empty(),
            1,
            Mass.of(Math.abs(grams), Known.ESTIMATED),
            grams > 0 ? 1 : -1)));
    for (var item : fitting.hardware().items()) {
      lines.add(
          line(item.label(), item.part(), item.pieces(), item.each(), item.cutOff() ? -1 : 1));
    }
    var lump = fitting.scenario().lump();
    if (lump != null) {
      lines.add(line(lump.name(), Optional.empty(), 1, Mass.of(lump.grams(), Known.MAKER), 1));
    }
    var payloadGrams = fitting.scenario().payloadGrams();
    if (payloadGrams > 0) {
      lines.add(line(PAYLOAD, Optional.empty(), 1, Mass.of(payloadGrams, Known.MAKER), 1));
    }
    return of(lines);
  }

  private static Line line(String label, Optional<Part> part, int pieces, Mass each, int sign) {
    return new Line(
        label,
        part,
        pieces,
        each,
        sign * pieces * each.grams(),
        pieces * each.standardDeviationGrams());
  }

  /** Mass that is not passed at so many standard deviations, whole milligrams, rounded up. */
  public long neededMilligrams(double deviations) {
    return (long) Math.ceil((grams + deviations * doubtGrams) * 1000 - 1e-6);
  }

  /** Probability of staying under a cap. */
  public double chanceUnder(MassCap cap) {
    return MassChance.under(cap.grams(), grams, doubtGrams);
  }
}
