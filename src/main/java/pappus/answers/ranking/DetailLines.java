package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Figures;
import pappus.answers.build.Hints;
import pappus.answers.build.Journey;
import pappus.answers.build.LinkWords;
import pappus.answers.build.OutlayWords;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.doubt.Band;
import pappus.scenario.Scenario;

/** What to know of the first pick before anything else. */
final class DetailLines {
  private static final int INDENT = 2;
  private static final int MOST_NOTES = 2;

  private final Scenario scenario;
  private final Figures figures;

  DetailLines(Scenario scenario, Figures figures) {
    this.scenario = scenario;
    this.figures = figures;
  }

  void of(String name, Assessment build, Band band, Lines lines) {
    var notes = notes(build);
    var more = notes.size() - MOST_NOTES;
    lines.whole(Spoken.sentence(name)
        + " in detail"
        + (more > 0 ? ", %s more remark%s in assess".formatted(more, more == 1 ? "" : "s") : ""));
    var flight = build.flight().orElseThrow();
    say(lines, "With " + BuildLines.accessoryNames(build) + BuildLines.height(build) + ".");
    if (scenario.aircraft() == null) {
      // Of a quad that is changed it was said what is aboard.
      BuildLines.atHand(build).ifPresent(line -> say(lines, line));
    }
    OutlayWords.of(build, scenario, band.planWith()).forEach(line -> say(lines, line));
    Journey.briefly(build, band.planWith()).ifPresent(line -> say(lines, line));
    if (LinkWords.matter(scenario) && !LinkWords.briefly(build).isEmpty()) {
      say(lines, LinkWords.briefly(build) + " " + LinkWords.LAW);
    }
    say(
        lines,
        Reasons.leastRoom(build) + " Chance under the mass cap: "
            + BuildLines.chance(build, scenario) + ".");
    say(lines, Reasons.endsBriefly(flight) + " " + band(band));
    notes.stream().limit(MOST_NOTES).forEach(note -> lines.row("  - " + note, INDENT + 2));
  }

  private String band(Band band) {
    return "Band %s to %s %s, mostly %s."
        .formatted(
            figures.planned(band.low()),
            figures.planned(band.high()),
            figures.unit(),
            band.largestFirst().get(0).doubt().label());
  }

  private static List<String> notes(Assessment build) {
    return new ArrayList<>(Stream.concat(Reasons.findings(build).stream(), Hints.of(build).stream())
        .toList());
  }

  private static void say(Lines lines, String text) {
    lines.row("  " + text, INDENT);
  }
}
