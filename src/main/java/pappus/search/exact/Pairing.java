package pappus.search.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import pappus.assessment.Assessor;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Which parts of one role go with which of another, by every rule that can tell from the two alone. A rule is asked once
 * for parts of equal signatures. Safe for several threads.
 */
final class Pairing {
  /** What is asked is remembered of at most so many pairs of signatures, a byte each. */
  private static final int MOST_REMEMBERED = 4_000_000;

  /** More pairs of sorts than this are not worth to be looked at all. */
  private static final int FEW_SORTS = 100_000;

  private final List<ByRule> rules;
  private final Sorts ones;
  private final Sorts others;

  /**
   * Parts of a role by what rules see of them.
   *
   * @param classes row: sort; for each rule the equivalence class of its signature
   * @param sortOf of a part, by its id
   */
  private record Sorts(List<int[]> classes, Map<String, Integer> sortOf) {
    int of(Part part) {
      return sortOf.getOrDefault(part.id(), -1);
    }
  }

  Pairing(Assessor assessor, Role one, List<Part> ones, Role other, List<Part> others) {
    this(assessor, one, ones, other, others, rule -> true);
  }

  /** @param which rules are to be asked */
  Pairing(
      Assessor assessor,
      Role one,
      List<Part> ones,
      Role other,
      List<Part> others,
      Predicate<CompatibilityRule> which) {
    var pair = Set.of(one, other);
    this.rules = new ArrayList<>();
    for (var rule : assessor.ruleBook().all()) {
      var tells = rule.reads().equals(pair);
      if (which.test(rule) && (tells || (rule.reads().containsAll(pair) && rule.foresees(pair)))) {
        rules.add(new ByRule(assessor, rule, tells, one, other));
      }
    }
    this.ones = sorts(ones, (rule, part) -> rule.ones.of(part));
    this.others = sorts(others, (rule, part) -> rule.others.of(part));
    rules.forEach(ByRule::freeze);
  }

  private interface ToClass {
    int of(ByRule rule, Part part);
  }

  private Sorts sorts(List<Part> parts, ToClass toClass) {
    var numbers = new HashMap<List<Integer>, Integer>();
    var classes = new ArrayList<int[]>();
    var sortOf = new HashMap<String, Integer>();
    for (var part : parts) {
      var key = rules.stream().map(rule -> toClass.of(rule, part)).toList();
      var sort = numbers.computeIfAbsent(key, fresh -> {
        classes.add(key.stream().mapToInt(Integer::intValue).toArray());
        return classes.size() - 1;
      });
      sortOf.put(part.id(), sort);
    }
    return new Sorts(classes, sortOf);
  }

  /** One rule's say. */
  private static final class ByRule {
    private final Assessor assessor;
    private final CompatibilityRule rule;
    private final boolean tells;
    private final Role one;
    private final Role other;
    private final Classes ones;
    private final Classes others;

    /** 1 fits, -1 does not, 0 not asked yet. Row: class of the first role, column: of the second. */
    private byte[] known = {};

    /** Parts by their signature, and the first of each. */
    private final class Classes {
      private final Map<Object, Integer> numbers = new HashMap<>();
      private final List<Part> first = new ArrayList<>();

      int of(Part part) {
        return numbers.computeIfAbsent(assessor.ruleBook().signature(rule, part), fresh -> {
          first.add(part);
          return first.size() - 1;
        });
      }
    }

    /** @param tells whether its verdict depends on the two alone; else it may only foresee */
    ByRule(Assessor assessor, CompatibilityRule rule, boolean tells, Role one, Role other) {
      this.assessor = assessor;
      this.rule = rule;
      this.tells = tells;
      this.one = one;
      this.other = other;
      this.ones = new Classes();
      this.others = new Classes();
    }

    void freeze() {
      var pairs = (long) ones.first.size() * others.first.size();
      if (pairs <= MOST_REMEMBERED) {
        known = new byte[(int) pairs];
      }
    }

    boolean fits(int oneClass, int otherClass) {
      if (known.length == 0) {
        return asked(oneClass, otherClass);
      }
      // Whoever comes second finds the same.
      var place = oneClass * others.first.size() + otherClass;
      if (known[place] == 0) {
        known[place] = (byte) (asked(oneClass, otherClass) ? 1 : -1);
      }
      return known[place] > 0;
    }

    private boolean asked(int oneClass, int otherClass) {
      var pair = Build.empty()
          .with(one, ones.first.get(oneClass))
          .with(other, others.first.get(otherClass));
      return tells
          ? !assessor.ruleBook().isBroken(rule, pair)
          : assessor.ruleBook().mayStillFit(pair, List.of(rule));
    }
  }

  /** Whether no rule tells any pair of these roles apart. */
  boolean isOpen() {
    return rules.isEmpty();
  }

  /** Whether there are few pairs of sorts. */
  boolean hasFewSorts() {
    return (long) ones.classes.size() * others.classes.size() <= FEW_SORTS;
  }

  /** Which sort of part of the first role this is; parts of a sort go with the same. */
  int sort(Part part) {
    return ones.of(part);
  }

  /** Which sort of part of the second role this is. */
  int otherSort(Part part) {
    return others.of(part);
  }

  /** Sorts of parts of the first role. */
  int sorts() {
    return ones.classes.size();
  }

  /** Whether a part of the first role goes with one of the second. */
  boolean fit(Part part, Part with) {
    return fit(ones.of(part), others.of(with));
  }

  /** Whether parts of a sort of the first role go with those of a sort of the second. */
  boolean fit(int sort, int otherSort) {
    var mine = ones.classes.get(sort);
    var its = others.classes.get(otherSort);
    for (var rule = 0; rule < mine.length; rule++) {
      if (!rules.get(rule).fits(mine[rule], its[rule])) {
        return false;
      }
    }
    return true;
  }
}
