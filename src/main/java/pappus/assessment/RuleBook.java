package pappus.assessment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.RolesRule;
import pappus.compatibility.SizeRule;
import pappus.compatibility.Verdict;
import pappus.fitting.Fitter;
import pappus.fitting.Fitting;
import pappus.part.Build;
import pappus.part.Part;
import pappus.scenario.Scenario;
import pappus.scenario.Waiver;

/**
 * The fit rules as one scenario holds builds to them: what it waives, and what a quad that is there breaks already, sets no
 * build apart. Safe for use by several threads.
 */
public final class RuleBook {
  private static final String AS_ABOARD = "it is so aboard already";

  private final Scenario scenario;
  private final List<CompatibilityRule> rules;
  private final Fitter fitter;
  private final Optional<Aboard> aboard;
  private final Set<String> brokenAboard;

  /**
   * @param rules in the order of reports
   * @param aboard the quad that is there, if one is to be changed
   */
  RuleBook(
      Scenario scenario, List<CompatibilityRule> rules, Fitter fitter, Optional<Aboard> aboard) {
    this.scenario = scenario;
    this.rules = List.copyOf(rules);
    this.fitter = fitter;
    this.aboard = aboard;
    this.brokenAboard = aboard
        .map(there -> fitter.fit(there.build()))
        .map(fitting -> this.rules.stream()
            .filter(rule -> find(rule, fitting, Optional.empty()).breaks())
            .map(CompatibilityRule::id)
            .collect(Collectors.toUnmodifiableSet()))
        .orElse(Set.of());
  }

  /** What each rule says of a build. */
  List<Finding> findings(Fitting fitting) {
    return rules.stream().map(rule -> find(rule, fitting)).toList();
  }

  /** The fit rules, in the order of reports. */
  public List<CompatibilityRule> all() {
    return rules;
  }

  /**
   * Whether no fit rule but the one on missing roles sets the parts of a build only begun apart. A hint
   * for searches that try changes, not a proof: a rule on the balance judges without the masses that are
   * still missing.
   */
  public boolean goesTogether(Build begun) {
    var fitting = fitter.fit(begun);
    return rules.stream()
        .filter(rule -> !(rule instanceof RolesRule)
            && begun.parts().keySet().stream().anyMatch(rule.reads()::contains))
        .noneMatch(rule -> find(rule, fitting).breaks());
  }

  /** Whether a rule all of whose roles are decided sets a build apart, as the assessment will find. */
  public boolean isBroken(CompatibilityRule rule, Build build) {
    return find(rule, fitter.fit(build)).breaks();
  }

  /**
   * Whether no rule is sure already that nothing can be added to make a build of these parts, and its links may reach as
   * far as is asked for.
   */
  public boolean mayStillFit(Build begun) {
    return mayStillFit(begun, rules) && fitter.links().mayReach(begun);
  }

  /** Whether none of some rules is sure already that nothing can be added to make a build of these parts. */
  public boolean mayStillFit(Build begun, List<CompatibilityRule> some) {
    var fitting = fitter.fit(begun);
    for (var rule : some) {
      if (rule.foresees(begun.parts().keySet())
          && !isWaivedSomewhere(rule)
          && !mayBeAsAboard(rule, begun)
          && !rule.mayStillFit(fitting)) {
        return false;
      }
    }
    return true;
  }

  /** Rules that sizes alone decide, of those that are set aside for no part, and a limit that they decide. */
  public List<SizeRule> rulesOfSizes() {
    var clearView = scenario.clearViewDegrees();
    return Stream.concat(
            rules.stream()
                .filter(rule -> rule instanceof SizeRule
                    && !isWaivedSomewhere(rule)
                    && !brokenAboard.contains(rule.id()))
                .map(SizeRule.class::cast),
            clearView == null ? Stream.empty() : Stream.of(new ClearViewRoom(clearView)))
        .toList();
  }

  /** Whether a rule that the quad breaks already may see nothing else of a build of these parts. */
  private boolean mayBeAsAboard(CompatibilityRule rule, Build begun) {
    return brokenAboard.contains(rule.id())
        && aboard.filter(there -> there.hasAll(begun, rule.reads())).isPresent();
  }

  private boolean isWaivedSomewhere(CompatibilityRule rule) {
    return scenario.waived().stream().anyMatch(waiver -> waiver.rule().equals(rule.id()));
  }

  /** All that a rule's verdict on a pair of parts depends on, and whether it is set aside for a part. */
  public Object signature(CompatibilityRule rule, Part part) {
    return scenario.waived().stream().anyMatch(waiver -> waiver.parts().contains(part.id()))
            || (brokenAboard.contains(rule.id())
                && aboard.filter(there -> there.has(part)).isPresent())
        ? part.id()
        : rule.signature(part);
  }

  private Finding find(CompatibilityRule rule, Fitting fitting) {
    return find(rule, fitting, aboard);
  }

  private Finding find(CompatibilityRule rule, Fitting fitting, Optional<Aboard> there) {
    var verdict = rule.check(fitting);
    if (verdict instanceof Verdict.Fits
        || (verdict instanceof Verdict.Unknown && scenario.keepsUnknown())) {
      return new Finding(rule.id(), verdict, Optional.empty(), false);
    }
    var waiver = rule.mayBeWaived() ? waiver(rule, fitting.build()) : Optional.<Waiver>empty();
    if (waiver.isEmpty()) {
      waiver = there.flatMap(quad -> asAboard(rule, verdict, fitting.build(), quad));
    }
    return new Finding(rule.id(), verdict, waiver, waiver.isEmpty());
  }

  /** What parts that are aboard break among themselves is a remark, and so is what the quad lacks already. */
  private Optional<Waiver> asAboard(
      CompatibilityRule rule, Verdict verdict, Build build, Aboard quad) {
    if (!brokenAboard.contains(rule.id())) {
      return Optional.empty();
    }
    var isAsItIs = rule instanceof RolesRule
        ? rule.check(fitter.fit(quad.build())).equals(verdict)
        : quad.isAsItIs(build, rule.reads());
    return isAsItIs
        ? Optional.of(new Waiver(
            rule.id(), quad.build().parts().values().stream().map(Part::id).toList(), AS_ABOARD))
        : Optional.empty();
  }

  private Optional<Waiver> waiver(CompatibilityRule rule, Build build) {
    return scenario.waived().stream()
        .filter(waiver -> waiver.rule().equals(rule.id())
            && build.parts().entrySet().stream()
                .anyMatch(entry -> rule.reads().contains(entry.getKey())
                    && waiver.parts().contains(entry.getValue().id())))
        .findFirst();
  }
}
