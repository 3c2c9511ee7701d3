package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Changes;
import pappus.answers.build.Journey;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.change.Changed;
import pappus.change.Upgrades;
import pappus.document.Lines;
import pappus.document.Table;

/** A quad as it is, and what changes of it gain, for a terminal. */
public final class UpgradeText {
  private final Assessor assessor;
  private final Upgrades upgrades;
  private final boolean isForRange;

  public UpgradeText(Assessor assessor, Upgrades upgrades) {
    this.assessor = assessor;
    this.upgrades = upgrades;
    this.isForRange = assessor.scenario().isForRange();
  }

  /**
   * What comes before the ranking.
   *
   * @param width columns of the terminal
   */
  public String of(int width) {
    var lines = new Lines(width);
    var now = upgrades.now();
    lines.say("The quad as it is: " + BuildWords.of(now) + planning(now));
    if (!now.isFeasible()) {
      lines.say("As it is it breaks " + Changes.allBroken(now) + ".");
    }
    Reasons.setAside(now).forEach(lines::item);
    if (upgrades.byPrice().isEmpty()) {
      lines.say(
          upgrades.isProof()
              ? "No change that is allowed gains anything within what is asked for."
              : "No change was found that gains anything within what is asked for.");
    } else {
      say("What a change gains for its price:", upgrades.byPrice(), width, lines);
      say("What a change gains for its mass:", upgrades.byMass(), width, lines);
      lines.say(
          upgrades.isProof()
              ? "Proven: none gains more for as little money or mass."
              : "Not proven: what else could gain was not looked into to the end.");
    }
    return lines.blank().text();
  }

  private String planning(Assessment build) {
    return build.flight().isEmpty()
        ? ""
        : " Plan with " + Journey.figure(isForRange, planWith(build)) + ".";
  }

  private double planWith(Assessment build) {
    return assessor.planned(build) / 1000.0;
  }

  private void say(String title, List<Assessment> builds, int width, Lines lines) {
    lines.blank().say(title);
    var per = isForRange ? 1000 : 60;
    var columns = List.of(
        Table.Column.number(isForRange ? "km more" : "min more", "gained", 1),
        Table.Column.number(Reasons.currency(upgrades.now()), "price", 0),
        Table.Column.number("g", "grams", 0),
        Table.Column.number("plan on", "plan-with", 1),
        Table.Column.text("with", "changed"));
    var rows = new ArrayList<List<Object>>();
    for (var build : builds) {
      rows.add(List.of(
          upgrades.gained(build) / per,
          build.cost().cents() / 100.0,
          build.mass().grams(),
          planWith(build) / per,
          changes(build) + (build.isBeyondBelief() ? " ?" : "")));
    }
    new Table(columns, rows).lines(width).forEach(lines::whole);
  }

  private String changes(Assessment build) {
    return Changed.between(upgrades.now().build(), build.build()).stream()
        .map(changed -> changed
            .after()
            .map(part -> changed.role().label() + " " + part.name())
            .orElse("no " + changed.role().label()))
        .collect(Collectors.joining(", "));
  }
}
