package pappus.answers.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.answers.build.Against;
import pappus.answers.build.Cautions;
import pappus.assessment.Assessment;
import pappus.assessment.Limit;
import pappus.change.Changed;
import pappus.change.Swap;
import pappus.files.json.JsonText;
import pappus.part.Part;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** What the documents of answers that follow a ranking have in common. */
public final class AnswerJson {
  private final Scenario scenario;
  private final AssessmentJson assessments;
  private final Map<String, Object> document = new LinkedHashMap<>();
  private final TreeMap<String, Part> parts = new TreeMap<>();

  /**
   * @param status what the answer is, in a word
   */
  public AnswerJson(Scenario scenario, Run run, String status) {
    this.scenario = scenario;
    this.assessments = new AssessmentJson(scenario);
    document.put("status", status);
    document.put("tool", run.version());
    document.put("catalogs", run.catalogs());
    document.put("inputs", run.inputs());
    document.put("scenario", scenario);
  }

  /** Adds a field. */
  public AnswerJson put(String name, Object value) {
    document.put(name, value);
    return this;
  }

  /** Adds how far a search came. */
  public AnswerJson standing(Best best, String text) {
    var standing = new LinkedHashMap<String, Object>();
    standing.put("proven", best.isProof());
    standing.put("text", text);
    standing.put("endedBy", FlightJson.key(best.reach().ending()));
    best.reach().atMost().ifPresent(most -> standing.put("atMost", Assessment.figure(most)));
    best.reach().obstacle().ifPresent(why -> standing.put("obstacle", why));
    best.build().ifPresent(build -> standing.put("best", brief(build)));
    return put("standing", standing);
  }

  /** Where a build stands against the best. */
  public AnswerJson standing(Best best, Assessment assessment) {
    return standing(best, new Against(scenario).of(assessment, best));
  }

  /** A build with every digit. */
  public Map<String, Object> whole(Assessment assessment) {
    return assessments.content(assessment, 1, parts);
  }

  /** A build in a few fields. */
  public Map<String, Object> brief(Assessment assessment) {
    var content = new LinkedHashMap<String, Object>();
    content.put("build", assessment.build().toString());
    content.put("feasible", assessment.isFeasible());
    content.put("roles", AssessmentJson.roles(assessment, parts));
    content.put("milliseconds", assessment.milliseconds());
    AssessmentJson.range(assessment).ifPresent(metres -> content.put("rangeMetres", metres));
    content.put("grams", assessment.mass().grams());
    content.put("chanceUnderCap", assessment.mass().chanceUnder(scenario.massCap()));
    assessment.flight().ifPresent(flight -> {
      content.put("thrustToWeight", flight.thrustToWeight());
      content.put("watts", flight.flownW());
    });
    content.put("cents", assessment.cost().cents());
    content.put(
        "broken", assessment.broken().stream().map(finding -> finding.rule()).toList());
    content.put(
        "limitsBroken",
        assessment.limits().stream()
            .filter(limit -> !limit.met())
            .map(Limit::id)
            .toList());
    return content;
  }

  /** A swap and what it does. */
  public Map<String, Object> swap(Swap swap) {
    var content = new LinkedHashMap<String, Object>();
    parts.put(swap.part().id(), swap.part());
    content.put("role", swap.role());
    content.put("part", swap.part().id());
    content.put("gained", swap.gained());
    content.put("gramsMore", swap.gramsMore());
    content.put("centsMore", swap.centsMore());
    content.put("alongside", swap.alongside().stream().map(this::changed).toList());
    content.put("build", brief(swap.assessment()));
    return content;
  }

  /** One role that differs. */
  public Map<String, Object> changed(Changed changed) {
    var content = new LinkedHashMap<String, Object>();
    content.put("role", changed.role());
    changed.before().ifPresent(part -> content.put("before", named(part)));
    changed.after().ifPresent(part -> content.put("after", named(part)));
    return content;
  }

  /** The id of a part, which the document then holds. */
  public String named(Part part) {
    parts.put(part.id(), part);
    return part.id();
  }

  /** One margin. */
  public static Map<String, Object> limit(Limit limit) {
    return AssessmentJson.limit(limit);
  }

  /** The document. */
  public String text() {
    document.put("cautions", List.of(Cautions.brief()));
    document.put("parts", parts);
    return JsonText.of(document);
  }
}
