package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pappus.answers.build.Reasons;
import pappus.answers.result.AssessmentJson;
import pappus.answers.result.DoubtJson;
import pappus.answers.result.FlightJson;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.files.json.JsonText;
import pappus.part.Part;
import pappus.ranking.Candidate;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;
import pappus.search.Ending;

/** Results as JSON with every digit; later commands work from it. */
public final class RankingJson {
  private final Scenario scenario;
  private final Run run;
  private final AssessmentJson assessments;

  public RankingJson(Scenario scenario, Run run) {
    this.scenario = scenario;
    this.run = run;
    this.assessments = new AssessmentJson(scenario);
  }

  /**
   * The whole answer.
   *
   * @param wanted candidates asked for: with fewer, it claims that there are no more
   */
  public String of(Ranking ranking, int wanted) {
    var document = head(status(ranking));
    var coverage = ranking.coverage();
    var standing = new LinkedHashMap<String, Object>();
    standing.put("proven", coverage.isProof());
    standing.put("text", Standing.text(ranking, scenario.goalOrEndurance()));
    standing.put("wanted", wanted);
    standing.put("assessed", coverage.assessed());
    standing.put("feasible", coverage.feasible());
    standing.put("combinations", coverage.combinations());
    standing.put("endedBy", FlightJson.key(coverage.reach().ending()));
    coverage.reach().atMost().ifPresent(most -> standing.put("atMost", Assessment.figure(most)));
    Standing.gap(ranking).ifPresent(gap -> standing.put("gap", gap));
    coverage.reach().obstacle().ifPresent(why -> standing.put("obstacle", why));
    document.put("standing", standing);
    var parts = new TreeMap<String, Part>();
    var candidates = new ArrayList<Object>();
    var rows = ranking.candidates();
    for (var i = 0; i < rows.size(); i++) {
      candidates.add(candidate(i, rows, parts));
    }
    document.put("candidates", candidates);
    ranking
        .closest()
        .ifPresent(closest -> document.put("closest", assessments.content(closest, 1, parts)));
    return finish(document, parts);
  }

  /** One build. */
  public String of(Assessment assessment, Optional<Band> band) {
    var document = head(assessment.isFeasible() ? "feasible" : "infeasible");
    var parts = new TreeMap<String, Part>();
    var content = assessments.content(assessment, band.map(Band::planWith).orElse(1.0), parts);
    band.ifPresent(found -> content.put("band", band(found)));
    document.put("build", content);
    return finish(document, parts);
  }

  /** What a machine reads where the input was refused. */
  public static String refusal(List<String> problems) {
    var document = new LinkedHashMap<String, Object>();
    document.put("status", "bad-data");
    document.put("problems", problems);
    return JsonText.of(document);
  }

  private static String status(Ranking ranking) {
    if (ranking.coverage().reach().ending() == Ending.INTERRUPTED) {
      return "interrupted";
    }
    return ranking.candidates().isEmpty() ? "infeasible" : "found";
  }

  private Map<String, Object> head(String status) {
    var document = new LinkedHashMap<String, Object>();
    document.put("status", status);
    document.put("tool", run.version());
    document.put("seed", run.seed());
    document.put("moves", run.moves());
    document.put("catalogs", run.catalogs());
    document.put("inputs", run.inputs());
    document.put("scenario", scenario);
    return document;
  }

  private String finish(Map<String, Object> document, Map<String, Part> parts) {
    document.put("parts", parts);
    return JsonText.of(document);
  }

  private Object candidate(int index, List<Candidate> rows, Map<String, Part> parts) {
    var row = rows.get(index);
    var content = new LinkedHashMap<String, Object>();
    content.put("rank", index + 1);
    if (!row.twins().isEmpty()) {
      var twins = new TreeMap<String, Object>();
      row.twins().forEach((part, others) -> {
        twins.put(part.id(), others.stream().map(Part::id).toList());
        others.forEach(other -> parts.put(other.id(), other));
      });
      content.put("twins", twins);
    }
    row.equalTo().ifPresent(head -> content.put("equalTo", head));
    content.put("cheapestOfGroup", row.cheapestOfGroup());
    content.putAll(assessments.content(row.assessment(), row.band().planWith(), parts));
    content.put("band", band(row.band()));
    if (index + 1 < rows.size()) {
      content.put("standsBecause", Reasons.standing(row, rows.get(index + 1)));
    }
    var variants = new ArrayList<Object>();
    for (var variant : row.variants()) {
      var one = new LinkedHashMap<String, Object>();
      one.put("build", variant.build().toString());
      one.put("milliseconds", variant.milliseconds());
      AssessmentJson.range(variant).ifPresent(metres -> one.put("rangeMetres", metres));
      one.put("grams", variant.mass().grams());
      one.put("cents", variant.cost().cents());
      one.put("roles", AssessmentJson.roles(variant, parts));
      variants.add(one);
    }
    content.put("variants", variants);
    content.put("variantsCutShort", row.areVariantsCutShort());
    return content;
  }

  private Map<String, Object> band(Band band) {
    return DoubtJson.band(band, scenario.goalOrEndurance());
  }
}
