package pappus.answers.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.doubt.Band;
import pappus.evidence.BuildFigures;
import pappus.part.Build;
import pappus.scenario.Goal;

/** How sure the numbers of a build are. */
public final class DoubtJson {
  private DoubtJson() {}

  /** A band in the unit of the goal, what makes it wide, and what would narrow it. */
  public static Map<String, Object> band(Band band, Goal goal) {
    var unit = goal == Goal.RANGE ? "Metres" : "Seconds";
    var content = new LinkedHashMap<String, Object>();
    content.put("planWith" + unit, band.low());
    content.put("low" + unit, band.low());
    content.put("high" + unit, band.high());
    content.put("deviation" + unit, band.deviation());
    content.put("halfWidthPercent", 100 * band.halfWidth());
    content.put(
        "contributions",
        band.largestFirst().stream()
            .map(one -> {
              var entry = new LinkedHashMap<String, Object>();
              entry.put("what", one.doubt().label());
              entry.put("source", one.source());
              entry.put(goal == Goal.RANGE ? "metres" : "seconds", one.effect());
              return entry;
            })
            .toList());
    content.put(
        "worthMeasuring",
        band.worthMeasuring().stream()
            .map(measurement -> {
              var entry = new LinkedHashMap<String, Object>();
              entry.put("what", measurement.label());
              entry.put("halfWidthPercent", 100 * band.halfWidthAfter(measurement));
              return entry;
            })
            .toList());
    return content;
  }

  /** Uncertain figures of the parts: what their records state, their class has, and what counts. */
  static List<Map<String, Object>> figures(Build build) {
    return BuildFigures.of(build).all(build).stream().map(DoubtJson::figure).toList();
  }

  private static Map<String, Object> figure(BuildFigures.Of one) {
    var figure = one.figure();
    var entry = new LinkedHashMap<String, Object>();
    entry.put("part", one.part().id());
    entry.put("what", figure.name());
    if (!figure.unit().isEmpty()) {
      entry.put("unit", figure.unit());
    }
    figure.stated().ifPresent(stated -> entry.put("stated", stated));
    entry.put("usualForItsClass", figure.law());
    entry.put("counted", figure.counted());
    entry.put("deviationPercent", 100 * figure.deviation());
    return entry;
  }
}
