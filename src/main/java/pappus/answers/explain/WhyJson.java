package pappus.answers.explain;

import java.util.LinkedHashMap;
import java.util.Map;
import pappus.answers.build.Changes;
import pappus.answers.result.AnswerJson;
import pappus.answers.result.FlightJson;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.change.BestSwaps;
import pappus.change.Saving;
import pappus.change.Why;
import pappus.ranking.Best;
import pappus.scenario.Scenario;

/** Why a build is as it is, with every digit. Gains are in seconds, or metres where the goal is range. */
public final class WhyJson {
  private WhyJson() {}

  /** The whole answer. */
  public static String of(Scenario scenario, Run run, Assessment assessment, Why why, Best best) {
    var changes = new Changes(scenario, assessment);
    var answer = new AnswerJson(scenario, run, assessment.isFeasible() ? "feasible" : "infeasible");
    answer.standing(best, assessment).put("build", answer.whole(assessment));
    answer.put("margins", why.margins().stream().map(AnswerJson::limit).toList());
    why.rates().ifPresent(rates -> {
      answer.put("lostPerGram", rates.perGram()).put("lostPerWatt", rates.perWatt());
      answer.put("money", changes.money(why.forMoney(), why.toGiveUp()));
    });
    why.forMoney().ifPresent(swap -> answer.put("mostForTheMoney", answer.swap(swap)));
    why.toGiveUp().ifPresent(swap -> answer.put("cheapestToGiveUp", answer.swap(swap)));
    answer.put(
        "savings",
        why.savings().stream().map(saving -> saving(saving, answer, changes)).toList());
    answer.put(
        "swaps",
        why.swaps().stream().map(swaps -> swaps(swaps, answer, changes)).toList());
    return answer.text();
  }

  private static Map<String, Object> saving(Saving saving, AnswerJson answer, Changes changes) {
    var content = new LinkedHashMap<String, Object>();
    content.put("way", FlightJson.key(saving.way()));
    content.put("what", saving.what());
    content.put("grams", saving.grams());
    content.put("gained", saving.gained());
    saving.cents().ifPresent(cents -> content.put("cents", cents));
    saving.swap().ifPresent(swap -> content.put("swap", answer.swap(swap)));
    content.put("text", changes.saving(saving));
    return content;
  }

  private static Map<String, Object> swaps(BestSwaps swaps, AnswerJson answer, Changes changes) {
    var content = new LinkedHashMap<String, Object>();
    content.put("role", swaps.role());
    content.put("tried", swaps.tried());
    swaps.best().ifPresent(swap -> content.put("best", answer.swap(swap)));
    swaps.tempting().ifPresent(swap -> content.put("longerButBroken", answer.swap(swap)));
    content.put("text", changes.best(swaps));
    return content;
  }
}
