package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import pappus.answers.build.BuildLines;
import pappus.answers.build.GoalWords;
import pappus.answers.build.Hints;
import pappus.answers.build.Journey;
import pappus.answers.build.LinkWords;
import pappus.answers.build.OutlayWords;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.document.Spoken;
import pappus.ranking.Candidate;
import pappus.scenario.Scenario;

/** What is said of a candidate: why it stands where it stands, what binds it, what to know before building it. */
public final class CandidateWords {
  private static final int SHOWN_VARIANTS = 3;

  private final Scenario scenario;

  public CandidateWords(Scenario scenario) {
    this.scenario = scenario;
  }

  /**
   * One sentence or a few.
   *
   * @param isNote whether it is one of a list of things to know
   * @param isFirst whether it is read even in a hurry
   */
  public record Said(String text, boolean isNote, boolean isFirst) {}

  /**
   * In the order in which it is read.
   *
   * @param index of the candidate, from 0
   */
  public List<Said> of(int index, List<Candidate> candidates) {
    var candidate = candidates.get(index);
    var assessment = candidate.assessment();
    var flight = assessment.flight().orElseThrow();
    var said = new ArrayList<Said>();
    if (index + 1 < candidates.size()) {
      sayFirst(
          said, Reasons.standing(candidate, candidates.get(index + 1), new GoalWords(scenario)));
    }
    Journey.of(assessment, candidate.band().planWith()).forEach(line -> say(said, line));
    if (LinkWords.matter(scenario)) {
      LinkWords.of(assessment).forEach(line -> say(said, line));
    }
    sayFirst(said, Reasons.binding(assessment));
    BuildLines.atHand(assessment).ifPresent(line -> say(said, line));
    OutlayWords.of(assessment, scenario, candidate.band().planWith())
        .forEach(line -> say(said, line));
    sayFirst(said, Reasons.ending(flight) + " " + Reasons.doubt(candidate.band()));
    Reasons.countedBriefly(assessment.build(), flight.figures()).ifPresent(line -> say(said, line));
    Reasons.cap(flight).ifPresent(line -> say(said, line));
    sayFirst(
        said,
        "Chance under the mass cap: " + BuildLines.chance(assessment, scenario)
            + "; electronics take "
            + Spoken.number(100 * flight.split().avionicsW() / flight.split().totalW(), 0)
            + " % of the power in hover.");
    say(said, "With " + BuildLines.accessories(assessment) + ".");
    candidate.twins().forEach((part, others) -> say(said, Reasons.twins(part, others)));
    BuildLines.places(assessment).forEach(line -> say(said, line));
    Reasons.findings(assessment).forEach(finding -> said.add(new Said(finding, true, false)));
    Hints.of(assessment).forEach(hint -> said.add(new Said(hint, true, false)));
    var variants = candidate.variants();
    if (!variants.isEmpty()) {
      var isOrdered = variants.stream()
          .limit(SHOWN_VARIANTS)
          .anyMatch(other -> other.build().differences(assessment.build()) == 0);
      say(
          said,
          "Also, with one part changed%s: ".formatted(isOrdered ? " or ordered otherwise" : "")
              + variant(assessment, variants));
    }
    if (candidate.areVariantsCutShort() && variants.size() < SHOWN_VARIANTS) {
      say(
          said,
          "More builds with one part changed were not looked for to the end: too many accessories nearly fit.");
    }
    return said;
  }

  private static void say(List<Said> said, String text) {
    said.add(new Said(text, false, false));
  }

  private static void sayFirst(List<Said> said, String text) {
    said.add(new Said(text, false, true));
  }

  private String variant(Assessment row, List<Assessment> variants) {
    var isForRange = scenario.isForRange();
    var texts = new ArrayList<String>();
    for (var other : variants.subList(0, Math.min(SHOWN_VARIANTS, variants.size()))) {
      texts.add(String.join(" and ", BuildLines.otherwise(other, row))
          + " ("
          + Journey.figure(isForRange, Assessment.figure(other.flown()))
          + ", "
          + Spoken.price(other.cost().cents(), BuildLines.currency(other))
          + ")");
    }
    return String.join("; ", texts) + ".";
  }
}
