package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessor;
import pappus.catalog.Catalog;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** What the proof takes from rules before all of a build is decided. */
class SignaturesTest {
  private static final int TRIES = 4000;

  private static final Catalog ALL = SmallShop.all();
  private static final Assessor ASSESSOR = SmallShop.assessor(ALL, "");
  private static final Question QUESTION = Question.of(ALL, ASSESSOR);

  /** Parts with equal signatures are asked about once: a rule must find the same of both. */
  @Test
  void partsOfEqualTraitsAreJudgedAlike() {
    var random = new Random(1);
    var compared = 0;
    for (var rule : ASSESSOR.ruleBook().all()) {
      for (var one : rule.reads()) {
        for (var other : rule.reads()) {
          if (one != other
              && (rule.reads().equals(Set.of(one, other)) || rule.foresees(Set.of(one, other)))) {
            compared += compare(rule, one, other, random);
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  private static int compare(CompatibilityRule rule, Role one, Role other, Random random) {
    var alike = new HashMap<Object, List<Part>>();
    for (var part : QUESTION.options(one)) {
      alike
          .computeIfAbsent(ASSESSOR.ruleBook().signature(rule, part), fresh -> new ArrayList<>())
          .add(part);
    }
    var groups = alike.values().stream().filter(group -> group.size() > 1).toList();
    var others = QUESTION.options(other);
    if (groups.isEmpty() || others.isEmpty()) {
      return 0;
    }
    for (var i = 0; i < 200; i++) {
      var group = groups.get(random.nextInt(groups.size()));
      var with = others.get(random.nextInt(others.size()));
      var first =
          Build.empty().with(one, group.get(random.nextInt(group.size()))).with(other, with);
      var second =
          Build.empty().with(one, group.get(random.nextInt(group.size()))).with(other, with);
      if (rule.reads().size() == 2) {
        assertThat(ASSESSOR.ruleBook().isBroken(rule, first))
            .as("%s: %s and %s", rule.id(), first, second)
            .isEqualTo(ASSESSOR.ruleBook().isBroken(rule, second));
      }
      assertThat(ASSESSOR.ruleBook().mayStillFit(first, List.of(rule)))
          .as("%s may still fit: %s and %s", rule.id(), first, second)
          .isEqualTo(ASSESSOR.ruleBook().mayStillFit(second, List.of(rule)));
    }
    return 200;
  }

  /** What a rule has refused of some parts, it refuses with more of them. */
  @Test
  void whatMayNoLongerFitNeverFitsAgain() {
    var random = new Random(2);
    var refused = 0;
    for (var i = 0; i < TRIES; i++) {
      var whole = build(random);
      var roles = new ArrayList<>(whole.parts().keySet());
      var some = Build.empty();
      for (var role : roles) {
        if (random.nextInt(3) > 0) {
          some = some.with(role, whole.part(role).orElseThrow());
        }
      }
      for (var rule : ASSESSOR.ruleBook().all()) {
        if (rule.foresees(some.parts().keySet())
            && !ASSESSOR.ruleBook().mayStillFit(some, List.of(rule))) {
          refused++;
          assertThat(ASSESSOR.ruleBook().isBroken(rule, whole))
              .as("%s refused %s, but not %s", rule.id(), some, whole)
              .isTrue();
        }
      }
    }
    assertThat(refused).isGreaterThan(TRIES / 10);
  }

  private static Build build(Random random) {
    var build = Build.empty();
    for (var role : Role.values()) {
      var options = QUESTION.options(role);
      if (!options.isEmpty()) {
        build = build.with(role, options.get(random.nextInt(options.size())));
      }
    }
    return Question.tidy(build.parts());
  }
}
