package pappus.answers.explain;

import java.util.List;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.change.WhyNot;
import pappus.document.Lines;
import pappus.scenario.Scenario;

/** Why a part is not in a build, for a terminal. */
public final class WhyNotText {
  private WhyNotText() {}

  /**
   * The whole answer, the two builds side by side.
   *
   * @param width columns of the terminal
   */
  public static String of(Scenario scenario, WhyNot why, int width) {
    var lines = new Lines(width);
    lines.say(Heading.line(scenario));
    lines
        .blank()
        .say("Why not %s [%s]?".formatted(why.part().name(), why.part().id()))
        .say("This build: " + BuildWords.of(why.swap().base()));
    new WhyNots(scenario, why).all().forEach(lines::item);
    why.best().build().ifPresent(best -> {
      lines.blank();
      new SideBySide(scenario, List.of(why.swap().base(), best)).say(lines, width);
    });
    return lines.blank().caution(Cautions.brief()).text();
  }
}
