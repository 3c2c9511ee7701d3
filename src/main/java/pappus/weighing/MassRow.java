package pappus.weighing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessor;
import pappus.files.Closest;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.part.Build;
import pappus.quantity.Require;

/**
 * One reading of a scale.
 *
 * @param file where it stands
 * @param line in it
 * @param what id of a part, {@code dry} for the aircraft without its pack, or {@code ready} for all that takes off
 * @param grams read, of all pieces together
 * @param pieces on the scale
 * @param stepGrams step of the scale
 */
public record MassRow(
    String file, int line, String what, double grams, int pieces, double stepGrams) {
  /** The aircraft without its pack. */
  public static final String DRY = "dry";

  /** All that takes off. */
  public static final String READY = "ready";

  private static final String PIECES = "pieces";
  private static final String STEP = "step_g";

  /** What a bench sheet expects of each row; only the scale's reading counts here. */
  private static final String EXPECTED = "expected_g";

  /** Nothing that flies weighs less. */
  private static final double LEAST_GRAMS = 0.01;

  /** Pocket scales read so. */
  private static final double USUAL_STEP_GRAMS = 0.1;

  /** Pocket scales err so at least: common practice, no published source. */
  private static final double LEAST_ERROR_GRAMS = 0.2;

  /**
   * One standard deviation of one piece, g: the rounding of the step, and an error of the scale as large as its step or
   * 0.2 g (common practice, no published source), over the pieces weighed together.
   */
  public double deviationGrams() {
    var rounding = stepGrams / Math.sqrt(12);
    var error = Math.max(stepGrams, LEAST_ERROR_GRAMS);
    return Math.sqrt(rounding * rounding + error * error) / pieces;
  }

  /** Of one piece, g. */
  public double gramsEach() {
    return grams / pieces;
  }

  /**
   * The rows of a file in its order; what is wrong with it is added to the problems. A row whose grams are blank was
   * not weighed yet and is passed over; there must be one that was.
   */
  public static List<MassRow> read(Source source, Problems problems) {
    var found = new Problems();
    var table =
        CsvTable.read(source, List.of("what", "grams"), List.of(PIECES, STEP, EXPECTED), found);
    var rows = new ArrayList<MassRow>();
    if (table.has("what") && table.has("grams")) {
      var weighed =
          table.rows().stream().filter(row -> !table.isBlank(row, "grams")).toList();
      if (weighed.isEmpty() && !table.rows().isEmpty() && found.isEmpty()) {
        found.add(Problem.ofFile(
            source.name(),
            "grams must be filled in in at least one row, but are blank in all %s. Maybe the file was not saved after weighing."
                .formatted(table.rows().size())));
      }
      for (var row : weighed) {
        var bad = new Problems();
        var what = table.text(row, "what", bad);
        var grams = table.number(row, "grams", LEAST_GRAMS, 25_000, bad);
        var pieces = !table.isBlank(row, PIECES) ? table.number(row, PIECES, 1, 1000, bad) : 1;
        var step =
            !table.isBlank(row, STEP) ? table.number(row, STEP, 0.001, 10, bad) : USUAL_STEP_GRAMS;
        if (bad.isEmpty() && pieces != Math.rint(pieces)) {
          bad.add(new Problem(
              source.name(),
              row.line(),
              PIECES + " must be a whole number, but is " + Require.plain(pieces) + "."));
        }
        if (bad.isEmpty() && grams / pieces < LEAST_GRAMS) {
          bad.add(new Problem(
              source.name(),
              row.line(),
              "grams must be at least %s for each of %s pieces, but are %s in all."
                  .formatted(
                      Require.plain(LEAST_GRAMS), Require.plain(pieces), Require.plain(grams))));
        }
        if (bad.isEmpty()) {
          rows.add(new MassRow(source.name(), row.line(), what, grams, (int) pieces, step));
        }
        found.addAll(bad);
      }
    }
    problems.addAll(found);
    return rows;
  }

  /** What was weighed must be of the build, each once, and ready heavier than dry. */
  public static void check(List<MassRow> rows, Assessor assessor, Build build, Problems problems) {
    var known = new ArrayList<String>();
    assessor.assess(build).mass().lines().stream()
        .flatMap(line -> line.part().stream())
        .forEach(part -> known.add(part.id()));
    known.add(DRY);
    known.add(READY);
    var lines = new HashMap<String, Integer>();
    for (var row : rows) {
      var earlier = lines.putIfAbsent(row.what(), row.line());
      if (earlier != null) {
        problems.add(new Problem(
            row.file(),
            row.line(),
            "what must be there once, but %s is in line %s already."
                .formatted(Shown.text(row.what()), earlier)));
      }
      if (!known.contains(row.what())) {
        problems.add(new Problem(
            row.file(),
            row.line(),
            "what must be a part of the build, dry or ready, but is %s.%s"
                .formatted(Shown.text(row.what()), Closest.advice(row.what(), known))));
      }
    }
    var dry = row(rows, DRY);
    var ready = row(rows, READY);
    if (dry.isPresent()
        && ready.isPresent()
        && ready.get().gramsEach() <= dry.get().gramsEach()) {
      problems.add(new Problem(
          ready.get().file(),
          ready.get().line(),
          "grams must be more than the dry aircraft's %s, but is %s."
              .formatted(
                  Require.plain(dry.get().gramsEach()),
                  Require.plain(ready.get().gramsEach()))));
    }
    if (build.battery().isEmpty()) {
      problems.add(Problem.ofFile("BUILD", "must have a battery, but has none."));
    }
  }

  private static Optional<MassRow> row(List<MassRow> rows, String what) {
    return rows.stream().filter(row -> row.what().equals(what)).findFirst();
  }
}
