package pappus.assessment;

import java.util.List;
import pappus.catalog.Build;
import pappus.catalog.Part;
import pappus.catalog.Parts;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.compatibility.Rules;
import pappus.compatibility.Stock;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** Where tests have builds judged by every rule. */
final class Desk {
  private Desk() {}

  static Assessment assess(Build build) {
    return assess(build, Scenarios.plain());
  }

  static Assessment assess(Build build, Scenario scenario) {
    return assess(build, scenario, Parts.hardware());
  }

  static Assessment assess(Build build, Scenario scenario, List<? extends Part> stock) {
    return new Assessor(scenario, Stock.of(stock), Rules.ALL).assess(build);
  }

  static Assessment assess(Build build, ShelfEntry... entries) {
    var shelf = Shelf.of(List.of(entries));
    return new Assessor(Scenarios.plain(), Stock.of(Parts.hardware()), shelf, Rules.ALL)
        .assess(build);
  }

  static Scenario capped(MassCap cap) {
    return Parts.with(Scenarios.plain(), "massCap", cap);
  }

  static Limit limit(Assessment assessment, String id) {
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
