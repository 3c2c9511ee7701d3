package pappus.answers.explain;

import pappus.answers.build.Against;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Changes;
import pappus.answers.build.Heading;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.change.Why;
import pappus.document.Lines;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** Why a build is as it is, for a terminal. */
public final class WhyText {
  private final Scenario scenario;
  private final int width;

  /**
   * @param width columns of the terminal
   */
  public WhyText(Scenario scenario, int width) {
    this.scenario = scenario;
    this.width = width;
  }

  /**
   * The whole answer.
   *
   * @param best the best build of the scenario
   */
  public String of(Assessment assessment, Why why, Best best) {
    var lines = new Lines(width);
    var changes = new Changes(scenario, assessment);
    lines.say(Heading.line(scenario));
    lines.blank().say(BuildWords.of(assessment)).say(new Against(scenario).of(assessment, best));
    lines.say(Reasons.binding(assessment));
    assessment.flight().ifPresent(flight -> {
      lines.say(Reasons.ending(flight));
    });
    Reasons.findings(assessment).forEach(lines::item);
    assessment
        .flight()
        .map(flight -> Reasons.counted(assessment.build(), flight.figures()))
        .filter(counted -> !counted.isEmpty())
        .ifPresent(counted -> {
          lines.blank().say(Reasons.COUNTED);
          counted.forEach(lines::item);
        });
    lines.blank().say("Room left:");
    for (var margin : why.margins()) {
      lines.item(
          margin.met()
              ? margin.label() + ": " + Reasons.room(margin) + "."
              : "broken: " + Reasons.broken(margin) + ".");
    }
    why.rates()
        .ifPresent(rates -> lines
            .blank()
            .say(changes.rates(rates))
            .say(changes.money(why.forMoney(), why.toGiveUp())));
    why.forSwitching().flatMap(changes::switching).ifPresent(lines::say);
    if (!why.savings().isEmpty()) {
      lines.blank().say("Grams to save, cheapest first:");
      why.savings().forEach(saving -> lines.item(changes.saving(saving)));
    }
    if (!why.swaps().isEmpty()) {
      lines.blank().say("Best swap of each part, the rest unchanged:");
      why.swaps().forEach(swaps -> lines.item(changes.best(swaps)));
    }
    return lines.blank().caution(Cautions.brief()).text();
  }
}
