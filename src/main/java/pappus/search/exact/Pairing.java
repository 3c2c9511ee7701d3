package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pappus.assessment.Assessor;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Which parts of one role go with which of another, by every rule that can tell from the two alone. Rules are asked
 * once for parts that they cannot tell apart.
 */
final class Pairing {
  /** With more pairs of different parts than this, rules are asked when a pair is met. */
  private static final int MOST_ASKED = 100_000;

  private final Assessor assessor;
  private final Role one;
  private final Role other;
  private final List<CompatibilityRule> rules;
  private final List<CompatibilityRule> foreseeing;
  private final Sorts ones;
  private final Sorts others;
  private final boolean asked;
  private final List<BitSet> fitting = new ArrayList<>();

  /** Parts sorted by what the rules see of them. */
  private record Sorts(List<Part> first, Map<String, Integer> byId) {
    static Sorts of(List<Part> parts, List<CompatibilityRule> rules, Assessor assessor) {
      var numbers = new HashMap<List<Object>, Integer>();
      var first = new ArrayList<Part>();
      var byId = new HashMap<String, Integer>();
      for (var part : parts) {
        var signatures =
            rules.stream().map(rule -> assessor.signature(rule, part)).toList();
        var number = numbers.computeIfAbsent(signatures, fresh -> {
          first.add(part);
          return first.size() - 1;
        });
        byId.put(part.id(), number);
      }
      return new Sorts(first, byId);
    }

    int of(Part part) {
      return byId.getOrDefault(part.id(), -1);
    }
  }

  Pairing(Assessor assessor, Role one, List<Part> ones, Role other, List<Part> others) {
    this.assessor = assessor;
    this.one = one;
    this.other = other;
    var pair = Set.of(one, other);
    this.rules =
        assessor.rules().stream().filter(rule -> rule.reads().equals(pair)).toList();
    this.foreseeing = assessor.rules().stream()
        .filter(rule -> rule.reads().containsAll(pair) && rule.foresees(pair))
        .toList();
    var all = new ArrayList<>(rules);
    all.addAll(foreseeing);
    this.ones = Sorts.of(ones, all, assessor);
    this.others = Sorts.of(others, all, assessor);
    this.asked = (long) this.ones.first.size() * this.others.first.size() <= MOST_ASKED;
    if (asked) {
      for (var part : this.ones.first) {
        var with = new BitSet();
        for (var i = 0; i < this.others.first.size(); i++) {
          with.set(i, ask(part, this.others.first.get(i)));
        }
        fitting.add(with);
      }
    }
  }

  /** Whether no rule tells any pair of these roles apart. */
  boolean isOpen() {
    return rules.isEmpty() && foreseeing.isEmpty();
  }

  /** Whether all pairs were asked about, so that {@link #sort} says all about a part. */
  boolean isAsked() {
    return asked;
  }

  /** Which sort of part of the first role this is. */
  int sort(Part part) {
    return ones.of(part);
  }

  /** Which sort of part of the second role this is. */
  int otherSort(Part part) {
    return others.of(part);
  }

  /** Sorts of parts of the first role. */
  int sorts() {
    return ones.first.size();
  }

  /** Sorts of the second role that go with a sort of the first. */
  BitSet with(int sort) {
    return fitting.get(sort);
  }

  /** Whether a part of the first role goes with one of the second. */
  boolean fit(Part part, Part with) {
    return asked ? fitting.get(ones.of(part)).get(others.of(with)) : ask(part, with);
  }

  private boolean ask(Part part, Part with) {
    var pair = Build.empty().with(one, part).with(other, with);
    for (var rule : rules) {
      if (assessor.isBroken(rule, pair)) {
        return false;
      }
    }
    return foreseeing.isEmpty() || assessor.mayStillFit(pair, foreseeing);
  }
}
