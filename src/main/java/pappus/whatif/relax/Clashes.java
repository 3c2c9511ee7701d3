package pappus.whatif.relax;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Build;
import pappus.part.Role;
import pappus.search.Question;

/**
 * Counts which rules set the parts of a question apart, pair by pair, whatever is added: what a third part can cure, as
 * a lead cures plugs that do not match, is no clash of the two.
 */
final class Clashes {
  private Clashes() {}

  /** One a rule and pair of roles in which parts clash, the largest share first. */
  static List<ClashCount> of(Question question) {
    var counts = new ArrayList<ClashCount>();
    var roles = Role.values();
    for (var rule : question.assessor().ruleBook().all()) {
      for (var one = 0; one < roles.length; one++) {
        for (var other = one + 1; other < roles.length; other++) {
          var pair = EnumSet.of(roles[one], roles[other]);
          if (rule.reads().equals(pair)
              || (rule.reads().containsAll(pair) && rule.foresees(pair))) {
            var count = count(rule, roles[one], roles[other], question);
            if (count.clashes() > 0) {
              counts.add(count);
            }
          }
        }
      }
    }
    counts.sort(Comparator.comparingDouble(ClashCount::share)
        .reversed()
        .thenComparing(ClashCount::rule)
        .thenComparing(ClashCount::one));
    return counts;
  }

  /** Parts of equal signatures stand for each other. */
  private static ClashCount count(CompatibilityRule rule, Role one, Role other, Question question) {
    var assessor = question.assessor();
    Map<List<Object>, Boolean> known = new HashMap<>();
    var clashes = 0;
    for (var first : question.options(one)) {
      var begun = Build.empty().with(one, first);
      var signature = assessor.ruleBook().signature(rule, first);
      for (var second : question.options(other)) {
        var isBroken = known.computeIfAbsent(
            List.of(signature, assessor.ruleBook().signature(rule, second)),
            fresh -> rule.reads().size() == 2
                ? assessor.ruleBook().isBroken(rule, begun.with(other, second))
                : !assessor.ruleBook().mayStillFit(begun.with(other, second), List.of(rule)));
        clashes += isBroken ? 1 : 0;
      }
    }
    return new ClashCount(
        rule.id(),
        one,
        other,
        clashes,
        Math.max(1, question.options(one).size() * question.options(other).size()));
  }
}
