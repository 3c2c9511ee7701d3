package pappus.answers.ranking;

import java.util.List;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.change.Changed;
import pappus.change.Upgrades;
import pappus.document.Lines;
import pappus.part.Part;
import pappus.scenario.Scenario;

/** A quad as it is, and what changes of it gain, for a terminal. */
public final class UpgradeText {
  private static final String INDENT = "  ";

  /** Where names begin, and what they have at least. */
  private static final int COLUMN = 38;

  private static final int LEAST_ROOM = 20;

  private final Upgrades upgrades;
  private final Figures figures;
  private final int width;

  /** @param width columns of the terminal */
  public UpgradeText(Scenario scenario, Upgrades upgrades, int width) {
    this.upgrades = upgrades;
    this.figures = new Figures(scenario.isForRange());
    this.width = width;
  }

  /** What comes before the ranking. */
  public String of() {
    var lines = new Lines(width);
    var now = upgrades.now();
    lines.say("The quad as it is: " + BuildLines.names(now) + ".");
    if (now.flight().isEmpty()) {
      lines.say("As it is it does not fly: " + Changes.allBroken(now) + ".");
    } else if (!now.isFeasible()) {
      lines.say("As it is it breaks " + Changes.allBroken(now) + ".");
    }
    Reasons.setAside(now).forEach(lines::item);
    if (upgrades.byPrice().isEmpty()) {
      lines.say(
          upgrades.isProof()
              ? "No allowed change gains anything within these limits."
              : "No change was found that gains anything within these limits.");
    } else {
      say("What a change gains for its price", upgrades.byPrice(), lines);
      say("What a change gains for its mass", upgrades.byMass(), lines);
      lines.say(
          upgrades.isProof()
              ? "Proven: no change gains more for as little money or mass."
              : "Not proven: the search for other gains was not finished.");
    }
    return lines.blank().text();
  }

  private void say(String title, List<Assessment> builds, Lines lines) {
    lines.blank().whole(title + ", " + figures.unit());
    lines.whole(INDENT + figures.heading());
    lines.whole(row(upgrades.now(), List.of("as it is")));
    builds.forEach(build -> lines.whole(row(build, changes(build))));
  }

  private String row(Assessment build, List<String> names) {
    return INDENT
        + figures.of(build)
        + (build.isBeyondBelief() ? " ? " : "   ")
        + BuildLines.within(names, Math.max(LEAST_ROOM, width - COLUMN));
  }

  private List<String> changes(Assessment build) {
    return Changed.between(upgrades.now().build(), build.build()).stream()
        .map(changed ->
            changed.after().map(Part::name).orElse("no " + changed.role().label()))
        .toList();
  }
}
