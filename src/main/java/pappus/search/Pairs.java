package pappus.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pappus.compatibility.CompatibilityRule;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Which parts of one role go with a part of another, by every rule that can tell from the two alone, asked when it is
 * wanted and once for parts that look the same to the rule. Parts of a role are numbered by their mass, so that near
 * numbers are near parts. Not safe for several threads.
 */
public final class Pairs {
  /** Of so few pairs of two roles each can be asked of every rule, also those that read more roles. */
  private static final int FEW = 20_000;

  private static final int FEW_PARTS = 24;

  private final Question question;
  private final Map<String, Boolean> byAll = new HashMap<>();
  private final Map<Role, List<Part>> byMass = new EnumMap<>(Role.class);
  private final Map<Role, Map<String, Integer>> places = new EnumMap<>(Role.class);
  private final Map<Role, Map<Role, List<Told>>> told = new EnumMap<>(Role.class);

  public Pairs(Question question) {
    this.question = question;
    for (var role : Role.values()) {
      var parts = new ArrayList<>(question.options(role));
      parts.sort(
          Comparator.comparingDouble((Part part) -> part.mass().grams()).thenComparing(Part::id));
      byMass.put(role, List.copyOf(parts));
      var known = new HashMap<String, Integer>();
      for (var place = 0; place < parts.size(); place++) {
        known.put(parts.get(place).id(), place);
      }
      places.put(role, known);
    }
    for (var one : Role.values()) {
      var others = new EnumMap<Role, List<Told>>(Role.class);
      for (var other : Role.values()) {
        if (one.compareTo(other) < 0) {
          others.put(other, told(one, other));
        }
      }
      told.put(one, others);
    }
  }

  private List<Told> told(Role one, Role other) {
    var pair = Set.of(one, other);
    return question.assessor().ruleBook().all().stream()
        .filter(rule ->
            rule.reads().equals(pair) || (rule.reads().containsAll(pair) && rule.foresees(pair)))
        .map(rule -> new Told(rule, one, other))
        .toList();
  }

  /** What one rule says of two roles. */
  private final class Told {
    private final CompatibilityRule rule;
    private final Role one;
    private final Role other;
    private final Looks ones = new Looks();
    private final Looks others = new Looks();
    private final Map<Long, Boolean> verdicts = new HashMap<>();

    Told(CompatibilityRule rule, Role one, Role other) {
      this.rule = rule;
      this.one = one;
      this.other = other;
    }

    boolean fits(Part part, Part with) {
      var key = ((long) ones.of(rule, part) << Integer.SIZE) + others.of(rule, with);
      return verdicts.computeIfAbsent(key, fresh -> asked(part, with));
    }

    private boolean asked(Part part, Part with) {
      var two = Build.empty().with(one, part).with(other, with);
      return rule.reads().size() == 2
          ? !question.assessor().ruleBook().isBroken(rule, two)
          : question.assessor().ruleBook().mayStillFit(two, List.of(rule));
    }
  }

  /** Parts by their signature to a rule, numbered as they are met. */
  private final class Looks {
    private final Map<Object, Integer> bySignature = new HashMap<>();
    private final Map<String, Integer> byId = new HashMap<>();

    int of(CompatibilityRule rule, Part part) {
      return byId.computeIfAbsent(
          part.id(),
          fresh -> bySignature.computeIfAbsent(
              question.assessor().ruleBook().signature(rule, part), sort -> bySignature.size()));
    }
  }

  /** Parts that may fill a role, the lightest first. */
  public List<Part> byMass(Role role) {
    return byMass.getOrDefault(role, List.of());
  }

  /** Place of a part among those of its role, the lightest at 0; below 0 for a part that may not fill it. */
  public int place(Role role, Part part) {
    return places.getOrDefault(role, Map.of()).getOrDefault(part.id(), -1);
  }

  /** Whether no rule sets two parts against each other. */
  public boolean fit(Role role, Part part, Role other, Part with) {
    return role.compareTo(other) < 0
        ? fitInTurn(role, part, other, with)
        : fitInTurn(other, with, role, part);
  }

  private boolean fitInTurn(Role one, Part part, Role other, Part with) {
    if ((long) byMass(one).size() * byMass(other).size() <= FEW) {
      return byAll.computeIfAbsent(
          part.id() + ' ' + one.key() + ' ' + other.key() + ' ' + with.id(),
          fresh -> question
              .assessor()
              .ruleBook()
              .goesTogether(Build.empty().with(one, part).with(other, with)));
    }
    for (var rule : told.getOrDefault(one, Map.of()).getOrDefault(other, List.of())) {
      if (!rule.fits(part, with)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a part of a role goes with others, by each of them alone. */
  public boolean fitsAll(Role role, Part part, Map<Role, Part> others) {
    for (var other : others.entrySet()) {
      if (other.getKey() != role && !fit(role, part, other.getKey(), other.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** Whether there are so few parts of each role that all can be looked at for each change. */
  public boolean areFew() {
    return byMass.values().stream().allMatch(parts -> parts.size() <= FEW_PARTS);
  }

  /** Parts of a role that go with as many of others as can be, in the order of ids. */
  public List<Part> going(Map<Role, Part> others, Role role) {
    var options = question.options(role);
    for (var other : others.entrySet()) {
      var both = options.stream()
          .filter(option -> fit(other.getKey(), other.getValue(), role, option))
          .toList();
      options = both.isEmpty() ? options : both;
    }
    return options;
  }

  /** Parts of a role that no rule sets against the given part; in the order of ids. */
  public List<Part> with(Role role, Part part, Role other) {
    return question.options(other).stream()
        .filter(option -> fit(role, part, other, option))
        .toList();
  }
}
