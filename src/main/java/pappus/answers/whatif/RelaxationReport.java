package pappus.answers.whatif;

import java.util.List;
import java.util.stream.Stream;
import pappus.answers.build.Against;
import pappus.answers.build.BuildWords;
import pappus.answers.build.Cautions;
import pappus.answers.build.Heading;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.shape.NamedParts;
import pappus.document.Lines;
import pappus.scenario.Scenario;
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
    lines.say(Heading.line(scenario));
    lines.blank();
    var best = relaxation.best();
    if (best.build().isPresent()) {
      return lines
          .say("Nothing is in the way: " + BuildWords.of(best.build().get()))
          .say(new Against(scenario).of(best.build().get(), best))
          .text();
    }
    lines.say(RelaxWords.conflict(relaxation.conflict(), relaxation.isProof()));
    if (!relaxation.reliefs().isEmpty()) {
      lines.blank().say("Smallest change of each that helps on its own, and the best build then:");
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
      lines.blank().say("Fit rules that keep apart the parts left open:");
      relaxation.clashes().stream()
          .limit(SHOWN_CLASHES)
          .forEach(count -> lines.item(RelaxWords.clashes(count)));
      var more = relaxation.clashes().size() - SHOWN_CLASHES;
      if (more > 0) {
        lines.item("and %s more kinds of pairs.".formatted(more));
      }
    }
    return lines
        .blank()
        .say(RelaxWords.standing(relaxation))
        .blank()
        .caution(
            "A mass cap that is law%s is not yours to raise, and thrust in hand is what gets a quad out of trouble."
                .formatted(scenario.massCap().because()))
        .caution(Cautions.brief())
        .text();
  }

  /** The smallest changes that help, each alone or together, in words. */
  public List<String> changes() {
    return Stream.concat(
            relaxation.reliefs().stream().map(RelaxWords::relief),
            relaxation.together().stream().map(RelaxWords::together))
        .toList();
  }

  /** With every digit. */
  public String json(Run run) {
    var parts = new NamedParts();
    var answer = RelaxationJson.of(relaxation, scenario, parts);
    return Document.of(
        scenario,
        run,
        answer.best().isPresent() ? "feasible" : relaxation.helps() ? "relaxed" : "infeasible",
        answer,
        parts);
  }
}
