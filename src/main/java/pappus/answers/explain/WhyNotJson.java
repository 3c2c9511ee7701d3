package pappus.answers.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import pappus.answers.result.AnswerJson;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.change.WhyNot;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** Why a part is not in a build, with every digit. */
public final class WhyNotJson {
  private WhyNotJson() {}

  /** The whole answer. */
  public static String of(Scenario scenario, Run run, WhyNot why) {
    var answer =
        new AnswerJson(scenario, run, why.best().build().isPresent() ? "found" : "infeasible");
    var sentences = new WhyNots(scenario, why).all();
    answer
        .standing(why.best(), why.best().isProof() ? "Proven." : "Not proven.")
        .put("part", answer.named(why.part()))
        .put("role", why.role())
        .put("leftOutByTheScenario", why.isLeftOut())
        .put("outOfStock", why.isOutOfStock())
        .put("inBuild", answer.brief(why.swap().base()))
        .put("putIn", answer.swap(why.swap()));
    why.best().build().ifPresent(best -> {
      answer.put("bestWithIt", answer.whole(best));
      answer.put("difference", difference(why.swap().base(), best));
    });
    var cures = new ArrayList<Object>();
    for (var cure : why.cures()) {
      var content = new LinkedHashMap<String, Object>();
      content.put("rule", cure.rule());
      content.put("role", cure.role());
      content.put("parts", cure.parts().stream().map(answer::named).toList());
      cures.add(content);
    }
    answer.put("cures", cures);
    var looser = new ArrayList<Object>();
    for (var one : why.loosened()) {
      var content = new LinkedHashMap<String, Object>();
      content.put("limit", one.limit().id());
      content.put("at", one.at());
      content.put("keepsDown", one.keepsDown());
      content.put("proven", one.isProof());
      one.with().build().ifPresent(build -> content.put("bestWithIt", answer.brief(build)));
      one.any()
          .flatMap(Best::build)
          .ifPresent(build -> content.put("bestOfAll", answer.brief(build)));
      looser.add(content);
    }
    return answer.put("looser", looser).put("text", sentences).text();
  }

  private static Object difference(Assessment winner, Assessment other) {
    var content = new LinkedHashMap<String, Object>();
    content.put("gained", Assessment.figure(other.objective() - winner.objective()));
    content.put("gramsMore", other.mass().grams() - winner.mass().grams());
    content.put("centsMore", other.cost().cents() - winner.cost().cents());
    if (winner.flight().isPresent() && other.flight().isPresent()) {
      content.put(
          "wattsMore", other.flight().get().flownW() - winner.flight().get().flownW());
    }
    return content;
  }
}
