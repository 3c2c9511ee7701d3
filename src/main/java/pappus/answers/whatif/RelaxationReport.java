package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import pappus.answers.build.Against;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.result.AnswerJson;
import pappus.answers.result.Run;
import pappus.document.Lines;
import pappus.scenario.Scenario;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Relaxation;

/** What stands in the way of a scenario, for a terminal and for a machine. */
public final class RelaxationReport {
  private static final int SHOWN_CLASHES = 8;

  private final Scenario scenario;
  private final Relaxation relaxation;

  public RelaxationReport(Scenario scenario, Relaxation relaxation) {
    this.scenario = scenario;
    this.relaxation = relaxation;
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    Heading.brief(scenario).forEach(lines::say);
    lines.blank();
    var best = relaxation.best();
    if (best.build().isPresent()) {
      return lines
          .say("Nothing stands in the way: " + BuildWords.of(best.build().get()))
          .say(new Against(scenario).of(best.build().get(), best))
          .text();
    }
    lines.say(RelaxWords.conflict(relaxation.conflict(), relaxation.isProof()));
    if (!relaxation.reliefs().isEmpty()) {
      lines
          .blank()
          .say("The smallest change of each that helps by itself, and the best build then:");
      relaxation
          .reliefs()
          .forEach(relief -> lines.item(RelaxWords.relief(relief) + ": "
              + BuildWords.of(relief.build()) + RelaxWords.notBest(relief.isBest())));
    } else if (!relaxation.conflict().isEmpty()) {
      lines.blank().say(RelaxWords.nothingAlone(relaxation));
    }
    relaxation
        .together()
        .forEach(one -> lines.item(RelaxWords.together(one) + ": " + BuildWords.of(one.build())
            + RelaxWords.notBest(one.isBest())));
    if (!relaxation.clashes().isEmpty()) {
      lines.blank().say("Fit rules that set apart the parts this scenario leaves open:");
      relaxation.clashes().stream()
          .limit(SHOWN_CLASHES)
          .forEach(count -> lines.item(RelaxWords.clashes(count)));
      var more = relaxation.clashes().size() - SHOWN_CLASHES;
      if (more > 0) {
        lines.item("and %s kinds of pairs more.".formatted(more));
      }
    }
    return lines
        .blank()
        .say(RelaxWords.standing(relaxation))
        .blank()
        .caution(
            "A mass cap that is law (%s) is not yours to raise, and thrust in hand is what gets a quad out of trouble."
                .formatted(scenario.massCap().rule()))
        .caution(Cautions.brief())
        .text();
  }

  /** With every digit. */
  public String json(Run run) {
    var best = relaxation.best();
    var answer = new AnswerJson(
        scenario,
        run,
        best.build().isPresent() ? "feasible" : relaxation.helps() ? "relaxed" : "infeasible");
    var standing = new LinkedHashMap<String, Object>();
    standing.put("proven", best.build().isPresent() ? best.isProof() : relaxation.isProof());
    standing.put(
        "text",
        best.build()
            .map(build -> new Against(scenario).of(build, best))
            .orElseGet(() -> RelaxWords.standing(relaxation)));
    standing.put("endedEarly", relaxation.isCutShort());
    standing.put("searches", relaxation.searches());
    answer.put("standing", standing);
    best.build().ifPresent(build -> answer.put("best", answer.brief(build)));
    answer.put("conflict", relaxation.conflict().stream().map(this::demand).toList());
    var reliefs = new ArrayList<Object>();
    for (var relief : relaxation.reliefs()) {
      var content = demand(relief.demand());
      if (!relief.from().isEmpty()) {
        content.put("from", relief.from());
        content.put("to", relief.to());
      }
      content.put("leastProven", relief.isLeast());
      content.put("bestProven", relief.isBest());
      content.put("text", RelaxWords.relief(relief));
      content.put("build", answer.brief(relief.build()));
      reliefs.add(content);
    }
    answer.put("reliefs", reliefs);
    var together = new ArrayList<Object>();
    for (var one : relaxation.together()) {
      var content = new LinkedHashMap<String, Object>();
      content.put("demands", one.demands().stream().map(this::demand).toList());
      content.put("bestProven", one.isBest());
      content.put("text", RelaxWords.together(one));
      content.put("build", answer.brief(one.build()));
      together.add(content);
    }
    return answer.put("together", together).put("clashes", relaxation.clashes()).text();
  }

  private Map<String, Object> demand(Demand demand) {
    var content = new LinkedHashMap<String, Object>();
    content.put("demand", demand.id());
    content.put("asks", demand.text());
    return content;
  }
}
