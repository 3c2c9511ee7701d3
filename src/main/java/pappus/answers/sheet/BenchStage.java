package pappus.answers.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pappus.answers.build.Cautions;
import pappus.answers.build.Hints;
import pappus.answers.build.Reasons;
import pappus.scenario.Scenario;

/**
 * What is done in one go with a build, and what to tick before it.
 *
 * @param key for machines: small letters
 * @param title for people
 * @param checks sentences, each said here and nowhere else on the page
 * @param sections tables that it takes; empty where there are steps instead
 */
public record BenchStage(
    String key, String title, List<String> checks, List<SheetSection> sections) {
  public BenchStage {
    checks = List.copyOf(checks);
    sections = List.copyOf(sections);
  }

  private static final String BASKET =
      "What is in the basket has these ids, and comes in whole units as it is sold.";

  private static final String WEIGHED =
      "Every part is weighed and its grams are written down: what is soldered in is not weighed any more.";

  /** Buying, mounting, first power, first flight. */
  static List<BenchStage> of(BenchSheet sheet, Scenario scenario) {
    var assessment = sheet.assessment();
    var toBuy = sheet.bench().stream().filter(SheetSection::isBought).toList();
    var toMount = sheet.bench().stream().filter(section -> !section.isBought()).toList();
    var stages = new ArrayList<BenchStage>();
    stages.add(new BenchStage(
        "buy",
        "Before you buy",
        Stream.of(
                Stream.of(BASKET),
                Reasons.notKnown(assessment).stream(),
                Hints.of(assessment).stream())
            .flatMap(texts -> texts)
            .toList(),
        toBuy));
    stages.add(new BenchStage(
        "mount",
        "Before you mount",
        Stream.concat(Stream.of(WEIGHED), Reasons.toMind(assessment).stream()).toList(),
        toMount));
    stages.add(new BenchStage(
        "power",
        "First power-up, propellers off",
        Stream.concat(Cautions.pack(assessment).stream(), sheet.steps().stream())
            .toList(),
        List.of()));
    if (!sheet.card().isEmpty()) {
      stages.add(new BenchStage(
          "card",
          "First-flight card",
          Stream.of(
                  Stream.of(Cautions.ESTIMATES, Cautions.flight(scenario)),
                  Cautions.heat(assessment, scenario).stream())
              .flatMap(texts -> texts)
              .toList(),
          sheet.card()));
    }
    return stages;
  }
}
