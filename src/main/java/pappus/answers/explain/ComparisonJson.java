package pappus.answers.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import pappus.answers.result.AnswerJson;
import pappus.answers.result.DoubtJson;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** Builds beside each other, with every digit. */
public final class ComparisonJson {
  private ComparisonJson() {}

  /**
   * The whole answer.
   *
   * @param bands of those that fly
   */
  public static String of(
      Scenario scenario,
      Run run,
      List<Assessment> builds,
      List<Optional<Band>> bands,
      Best best,
      String standing) {
    var answer = new AnswerJson(scenario, run, "compared");
    var contents = new ArrayList<Object>();
    for (var i = 0; i < builds.size(); i++) {
      var content = answer.whole(builds.get(i));
      bands
          .get(i)
          .ifPresent(band -> content.put("band", DoubtJson.band(band, scenario.goalOrEndurance())));
      contents.add(content);
    }
    var rows = new ArrayList<Object>();
    for (var row : new SideBySide(scenario, builds, bands).rows()) {
      var content = new LinkedHashMap<String, Object>();
      content.put("what", row.label());
      content.put("differs", row.differs());
      content.put("values", row.values());
      rows.add(content);
    }
    return answer
        .standing(best, standing)
        .put("builds", contents)
        .put("rows", rows)
        .text();
  }
}
