package pappus.assessment;

import java.util.List;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** Where tests have builds judged by every rule. */
public final class Desk {
  private Desk() {}

  public static Assessment assess(Build build) {
    return assess(build, Scenarios.plain());
  }

  public static Assessment assess(Build build, Scenario scenario) {
    return assess(build, scenario, Parts.hardware());
  }

  public static Assessment assess(Build build, Scenario scenario, List<? extends Part> stock) {
    return new Assessor(scenario, Stock.of(stock), Rules.ALL).assess(build);
  }

  public static Assessment assess(Build build, ShelfEntry... entries) {
    var shelf = Shelf.of(List.of(entries));
    return new Assessor(Scenarios.plain(), Stock.of(Parts.hardware()), shelf, Rules.ALL)
        .assess(build);
  }

  static Scenario capped(MassCap cap) {
    return Parts.with(Scenarios.plain(), "massCap", cap);
  }

  public static Limit limit(Assessment assessment, String id) {
    return assessment.limits().stream()
        .filter(limit -> limit.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + id + " in " + assessment.limits()));
  }

  static Finding finding(Assessment assessment, String rule) {
    return assessment.findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + rule + " in " + assessment.findings()));
  }
}
