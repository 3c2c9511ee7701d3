package pappus.answers.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.answers.build.Cautions;
import pappus.assessment.Assessment;
import pappus.change.Changed;
import pappus.files.json.JsonText;
import pappus.part.Part;
import pappus.scenario.Scenario;

/** What the documents of answers that follow a ranking have in common. */
public final class AnswerJson {
  private final Scenario scenario;
  private final Map<String, Object> document = new LinkedHashMap<>();
  private final NamedParts parts = new NamedParts();

  /**
   * @param status what the answer is, in a word
   */
  public AnswerJson(Scenario scenario, Run run, String status) {
    this.scenario = scenario;
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

  /** A build in a few fields. */
  public BriefJson brief(Assessment assessment) {
    return BriefJson.of(assessment, scenario, parts);
  }

  /** One role that differs. */
  public SwapJson.Difference changed(Changed changed) {
    return SwapJson.Difference.of(changed, parts);
  }

  /** The id of a part, which the document then holds. */
  public String named(Part part) {
    return parts.id(part);
  }

  /** The document. */
  public String text() {
    document.put("cautions", List.of(Cautions.brief()));
    document.put("parts", parts.all());
    return JsonText.of(document);
  }
}
