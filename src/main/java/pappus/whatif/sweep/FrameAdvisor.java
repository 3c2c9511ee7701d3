package pappus.whatif.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.change.Asked;
import pappus.change.Rates;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.MotorMountRule;
import pappus.compatibility.PropellerRoom;
import pappus.compatibility.StackPlacesRule;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.part.Span;
import pappus.part.StackPattern;
import pappus.quantity.Require;
import pappus.ranking.Best;
import pappus.ranking.Finder;

/** Finds what a designer of a frame asks next. */
public final class FrameAdvisor {
  private final Asked asked;
  private final Frame frame;
  private final Finder finder;
  private final Best best;

  private FrameAdvisor(Asked asked, Frame frame, Finder finder) {
    this.asked = asked;
    this.frame = frame;
    this.finder = finder;
    this.best = finder.best(asked.question());
  }

  /**
   * Advice on the frame that is designed.
   *
   * @throws IllegalArgumentException if the scenario leaves more than one
   */
  public static FrameAdvice of(Asked asked, Finder finder) {
    var frame = FrameAxes.frame(asked);
    return new FrameAdvisor(asked, frame, finder).advice();
  }

  private FrameAdvice advice() {
    var additions = new ArrayList<FrameAdvice.Addition>();
    for (var pattern : patterns()) {
      if (!finder.isStopped()) {
        additions.add(pattern(pattern));
      }
    }
    for (var circle : circles()) {
      if (!finder.isStopped()) {
        additions.add(circle(circle));
      }
    }
    additions.sort(Comparator.comparingDouble(FrameAdvice.Addition::gained)
        .reversed()
        .thenComparing(
            Comparator.comparingInt((FrameAdvice.Addition one) -> one.fitAfter() - one.fitBefore())
                .reversed()));
    var assessor = asked.supply().assessor(asked.scenario());
    return new FrameAdvice(
        frame, best, best.build().flatMap(build -> Rates.of(build, assessor)), rooms(), additions);
  }

  /** One a tenth of an inch, the largest of it. */
  private List<PropellerRoom> rooms() {
    var largest = new TreeMap<Long, Double>();
    asked.supply().catalog().ofKind(Propeller.class).stream()
        .map(Propeller::diameterInches)
        .filter(inches -> inches <= frame.largestPropellerInches() + 1)
        .forEach(inches -> largest.merge(Math.round(inches * 10), inches, Math::max));
    return largest.values().stream().map(PropellerRoom::of).toList();
  }

  /** Such as take nothing that is there; one of those that take each other. */
  private List<StackPattern> patterns() {
    var patterns = new ArrayList<StackPattern>();
    for (var pattern : StackPattern.values()) {
      var isThere = frame.positions().stream()
          .flatMap(position -> position.patterns().stream())
          .anyMatch(holes -> holes.pattern().takes(pattern));
      if (!isThere && patterns.stream().noneMatch(other -> other.takes(pattern))) {
        patterns.add(pattern);
      }
    }
    return patterns;
  }

  private FrameAdvice.Addition pattern(StackPattern pattern) {
    var positions = new ArrayList<>(frame.positions());
    var first = positions.get(0);
    var holes = new ArrayList<>(first.patterns());
    holes.add(FrameAxes.holes(pattern));
    positions.set(0, new Frame.Position(first.name(), first.xMillimetres(), holes, first.open()));
    return addition(
        "holes " + pattern.label() + " at the " + first.name() + " position",
        "flight boards",
        Map.of("positions", positions),
        new StackPlacesRule(),
        Role.BOARD,
        asked.supply().catalog().ofKind(Board.class));
  }

  /** Of motors that do not go on it; none where it is not known what does. */
  private List<Double> circles() {
    if (frame.motorBoltCirclesMillimetres().isEmpty()) {
      return List.of();
    }
    return asked.supply().catalog().ofKind(Motor.class).stream()
        .map(motor -> motor.boltPatterns().stream()
            .map(pattern -> pattern.stream().filter(this::lacks).toList())
            .toList())
        .filter(lacking -> lacking.stream().noneMatch(List::isEmpty))
        .flatMap(lacking -> lacking.stream().flatMap(List::stream))
        .distinct()
        .sorted()
        .toList();
  }

  private boolean lacks(double circleMillimetres) {
    return !MotorMountRule.isDrilled(frame, circleMillimetres);
  }

  private FrameAdvice.Addition circle(double millimetres) {
    var circles = new ArrayList<>(frame.motorBoltCirclesMillimetres());
    circles.add(new Span(millimetres, millimetres));
    return addition(
        "bolt circle of " + Require.plain(millimetres) + " mm",
        "motors",
        Map.of("motorBoltCirclesMillimetres", circles),
        new MotorMountRule(),
        Role.MOTOR,
        asked.supply().catalog().ofKind(Motor.class));
  }

  private FrameAdvice.Addition addition(
      String what,
      String parts,
      Map<String, Object> fields,
      CompatibilityRule rule,
      Role role,
      List<? extends Part> catalogue) {
    var changed = FrameAxes.with(asked, frame, fields);
    var after = (Frame) changed.supply().catalog().part(frame.id()).orElseThrow();
    var assessor = changed.supply().assessor(changed.scenario());
    var found = finder.best(changed.question());
    return new FrameAdvice.Addition(
        what,
        parts,
        fit(frame, rule, role, catalogue, asked.supply().assessor(asked.scenario())),
        fit(after, rule, role, catalogue, assessor),
        catalogue.size(),
        found,
        found
            .build()
            .map(build -> Assessment.figure(
                build.flown() - best.build().map(Assessment::flown).orElse(0L)))
            .orElse(0.0));
  }

  private static int fit(
      Frame frame,
      CompatibilityRule rule,
      Role role,
      List<? extends Part> catalogue,
      Assessor assessor) {
    var begun = Build.empty().with(Role.FRAME, frame);
    return (int) catalogue.stream()
        .filter(part -> !assessor.ruleBook().isBroken(rule, begun.with(role, part)))
        .count();
  }
}
