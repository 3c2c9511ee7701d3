package pappus.whatif.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.circle;
import static pappus.part.Parts.drilled;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.MotorMountRule;
import pappus.compatibility.PropellerRoom;
import pappus.compatibility.StackPlacesRule;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Motor.CirclesNeeded;
import pappus.part.MountingHoles;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.part.Span;
import pappus.part.StackPattern;
import pappus.ranking.Finder;
import pappus.scenario.Scenario;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;

class FrameAdvisorTest {
  /** Boards of several patterns, adapters of all kinds, and motors of several circles. */
  private static final Catalog SHOP = Catalog.of(SmallShop.all().parts().stream()
      .filter(part -> SmallShop.few().part(part.id()).isPresent()
          || List.of(
                  "weir-stack-20", "weir-stack-35", "lockkeeper-12-link", "sluice-13", "culvert-8")
              .contains(part.id())
          || (part instanceof Motor motor && !motor.boltCirclesMillimetres().contains(9.0)))
      .toList());

  private static final Scenario PLAIN = SmallShop.scenario("");

  /** Drawn for one pattern and one circle that no motor of the best build has. */
  private static final Frame DRAFT = with(
      with(
          with((Frame) SHOP.part("cottongrass-4").orElseThrow(), "id", "draft"),
          "positions",
          List.of(new Frame.Position(
              "middle", 0, List.of(new MountingHoles(StackPattern.P25_5, 2.2, false)), false))),
      "motorBoltCirclesMillimetres",
      List.of(circle(12)));

  private static Finder finder() {
    return new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, done -> {});
  }

  private static Asked asked(Catalog catalog, Frame draft) {
    var scenario = with(PLAIN, "draftFrame", draft);
    return new Asked(scenario, new Supply(catalog, Shelf.EMPTY).drafting(scenario));
  }

  private static Optional<Assessment> best(Catalog catalog, Frame draft) {
    return Enumeration.best(asked(catalog, draft).question());
  }

  private static FrameAdvice.Addition addition(FrameAdvice advice, String what) {
    return advice.additions().stream()
        .filter(one -> one.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  /** How many parts a rule lets on a frame, by asking it of each. */
  private static int fit(
      Frame frame, CompatibilityRule rule, Role role, List<? extends Part> parts) {
    var assessor = asked(SHOP, frame).supply().assessor(asked(SHOP, frame).scenario());
    var count = 0;
    for (var part : parts) {
      var findings = assessor
          .assess(Build.empty().with(Role.FRAME, frame).with(role, part))
          .findings();
      count +=
          findings.stream().noneMatch(one -> one.rule().equals(rule.id()) && one.breaks()) ? 1 : 0;
    }
    return count;
  }

  @Test
  void countsWhatGoesOnEachHolePattern() {
    var advice = FrameAdvisor.of(asked(SHOP, DRAFT), finder());

    // 26 by 26 takes the same screws as 25.5 by 25.5: that is no addition.
    assertThat(advice.additions())
        .extracting(FrameAdvice.Addition::what)
        .filteredOn(what -> what.startsWith("holes"))
        .containsExactlyInAnyOrder(
            "holes 16x16 at the middle position",
            "holes 20x20 at the middle position",
            "holes 25x25 at the middle position",
            "holes 30.5x30.5 at the middle position");
    var boards = SHOP.ofKind(Board.class);
    for (var pattern :
        List.of(StackPattern.P16, StackPattern.P20, StackPattern.P25, StackPattern.P30_5)) {
      var hole = pattern == StackPattern.P30_5 ? 3.2 : 2.2;
      var after = with(
          DRAFT,
          "positions",
          List.of(new Frame.Position(
              "middle",
              0,
              List.of(
                  new MountingHoles(StackPattern.P25_5, 2.2, false),
                  new MountingHoles(pattern, hole, false)),
              false)));
      var told = addition(advice, "holes " + pattern.label() + " at the middle position");

      assertThat(told.parts()).isEqualTo("flight boards");
      assertThat(told.of()).isEqualTo(boards.size());
      assertThat(told.fitBefore()).isEqualTo(fit(DRAFT, new StackPlacesRule(), Role.BOARD, boards));
      assertThat(told.fitAfter())
          .as(told.what())
          .isEqualTo(fit(after, new StackPlacesRule(), Role.BOARD, boards));
    }
    var big = addition(advice, "holes 30.5x30.5 at the middle position");
    assertThat(big.fitAfter()).isGreaterThan(big.fitBefore());
  }

  @Test
  void countsWhatGoesOnEachBoltCircle() {
    var advice = FrameAdvisor.of(asked(SHOP, DRAFT), finder());
    var motors = SHOP.ofKind(Motor.class);

    var missing = motors.stream()
        .flatMap(motor -> motor.boltCirclesMillimetres().stream())
        .distinct()
        .filter(circle -> Math.abs(circle - 12) > 0.2)
        .toList();
    assertThat(missing).hasSizeGreaterThan(1).contains(9.0);
    assertThat(advice.additions())
        .extracting(FrameAdvice.Addition::what)
        .filteredOn(what -> what.startsWith("bolt"))
        .containsExactlyInAnyOrderElementsOf(missing.stream()
            .map(circle -> "bolt circle of " + circle.toString().replaceAll("\\.0$", "") + " mm")
            .toList());
    var nine = addition(advice, "bolt circle of 9 mm");
    var after = with(DRAFT, "motorBoltCirclesMillimetres", List.of(circle(12), new Span(9, 9)));
    assertThat(nine.parts()).isEqualTo("motors");
    assertThat(nine.of()).isEqualTo(motors.size());
    assertThat(nine.fitBefore())
        .isEqualTo(fit(DRAFT, new MotorMountRule(), Role.MOTOR, motors))
        .isPositive();
    assertThat(nine.fitAfter())
        .isEqualTo(fit(after, new MotorMountRule(), Role.MOTOR, motors))
        .isGreaterThan(nine.fitBefore());
  }

  @Test
  void noCircleIsMissedByAMotorThatGoesOnByAnother() {
    var spikerush = (Motor) SmallShop.few().part("spikerush-1303-3400").orElseThrow();
    var parts = SmallShop.few().parts().stream()
        .filter(part -> !(part instanceof Motor))
        .collect(Collectors.toCollection(ArrayList::new));
    parts.add(drilled(spikerush, CirclesNeeded.EITHER, 9.0, 12.0));
    parts.add(with(drilled(spikerush, CirclesNeeded.EITHER, 14.0, 16.0), "id", "twice"));
    parts.add(with(drilled(spikerush, CirclesNeeded.BOTH, 12.0, 15.0), "id", "pair"));

    var advice = FrameAdvisor.of(asked(Catalog.of(parts), DRAFT), finder());

    assertThat(advice.additions())
        .filteredOn(one -> one.what().startsWith("bolt"))
        .allSatisfy(one -> assertThat(one.fitAfter()).isEqualTo(one.fitBefore() + 1))
        .extracting(FrameAdvice.Addition::what)
        .containsExactlyInAnyOrder(
            "bolt circle of 14 mm", "bolt circle of 15 mm", "bolt circle of 16 mm");
  }

  @Test
  void whatIsGainedIsThatOfTryingEveryBuild() {
    var few = SmallShop.few();
    var spikerush = (Motor) few.part("spikerush-1303-3400").orElseThrow();
    List<Part> parts = new ArrayList<>(few.parts());
    parts.add(with(
        with(with(spikerush, "id", "heavy"), "boltCirclesMillimetres", List.of(12.0)),
        "mass",
        with(spikerush.mass(), "grams", 7.0)));
    var catalog = Catalog.of(parts);

    var advice = FrameAdvisor.of(asked(catalog, DRAFT), finder());

    var before = best(catalog, DRAFT).orElseThrow();
    var after = best(
            catalog, with(DRAFT, "motorBoltCirclesMillimetres", List.of(circle(12), circle(9))))
        .orElseThrow();
    var nine = addition(advice, "bolt circle of 9 mm");
    assertThat(advice.best().build().orElseThrow().build()).isEqualTo(before.build());
    assertThat(nine.best().build().orElseThrow().objective()).isEqualTo(after.objective());
    assertThat(nine.gained())
        .isEqualTo((after.objective() - before.objective()) / 1e6)
        .isGreaterThan(100);
    // What gains most comes first; holes gain nothing here.
    assertThat(advice.additions().get(0)).isEqualTo(nine);
    assertThat(advice.additions())
        .isSortedAccordingTo(Comparator.comparingDouble(FrameAdvice.Addition::gained)
            .reversed()
            .thenComparingInt(one -> one.fitBefore() - one.fitAfter()));
    assertThat(addition(advice, "holes 20x20 at the middle position").gained()).isZero();
  }

  @Test
  void withoutABuildAllOfTheFlightIsGained() {
    var few = SmallShop.few();

    var advice = FrameAdvisor.of(asked(few, DRAFT), finder());

    var after = best(
            few, with(DRAFT, "motorBoltCirclesMillimetres", List.of(circle(12), circle(9))))
        .orElseThrow();
    assertThat(advice.best().build()).isEmpty();
    assertThat(advice.best().isProof()).isTrue();
    assertThat(advice.rates()).isEmpty();
    assertThat(addition(advice, "bolt circle of 9 mm").gained()).isEqualTo(after.objective() / 1e6);
    assertThat(addition(advice, "holes 16x16 at the middle position").gained()).isZero();
  }

  @Test
  void aGramIsWorthWhatALighterFrameFlies() {
    var few = SmallShop.few();
    var drawn = with(DRAFT, "motorBoltCirclesMillimetres", List.of(circle(9)));

    var rates = FrameAdvisor.of(asked(few, drawn), finder()).rates().orElseThrow();

    var grams = drawn.mass().grams();
    var light = best(few, with(drawn, "mass", with(drawn.mass(), "grams", grams - 1)));
    var heavy = best(few, with(drawn, "mass", with(drawn.mass(), "grams", grams + 1)));
    assertThat(light.orElseThrow().build().motor())
        .isEqualTo(heavy.orElseThrow().build().motor());
    assertThat(rates.perGram())
        .isEqualTo((light.get().objective() - heavy.get().objective()) / 2e6, within(0.05))
        .isGreaterThan(5);
  }

  /** By hand: 4 inches are 101.6 mm, with 2 mm at least and 3 mm as usual. */
  @Test
  void propellersNeedTheirDiameterAndAGap() {
    var room = PropellerRoom.of(4);

    assertThat(room.leastMillimetres()).isEqualTo(103.6, within(1e-9));
    assertThat(room.usualMillimetres()).isEqualTo(104.6, within(1e-9));
    assertThat(room.clearanceMillimetres(DRAFT)).isEqualTo(108 - 101.6, within(1e-9));
    assertThat(PropellerRoom.of(5).clearanceMillimetres(DRAFT)).isEqualTo(-19, within(1e-9));
  }

  @Test
  void tellsOneSizeATenthUpToAnInchMoreThanTheFrameTakes() {
    List<Part> parts = new ArrayList<>(SmallShop.few().parts());
    var ligule = (Propeller) SmallShop.few().part("ligule-4x1.9x2").orElseThrow();
    for (var inches : List.of(4.04, 4.96, 5.0, 5.01, 2.0)) {
      parts.add(with(with(ligule, "id", "p-" + inches), "diameterInches", inches));
    }

    var advice = FrameAdvisor.of(asked(Catalog.of(parts), DRAFT), finder());

    assertThat(DRAFT.largestPropellerInches()).isEqualTo(4);
    assertThat(advice.rooms())
        .extracting(PropellerRoom::inches)
        .containsExactly(2.0, 4.04, 4.5, 5.0);
  }

  @Test
  void whereSeveralFramesAreOpenThereIsNothingToAdvise() {
    var asked = new Asked(PLAIN, new Supply(SmallShop.few(), Shelf.EMPTY));

    assertThatThrownBy(() -> FrameAdvisor.of(asked, finder()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "must be over a limit where the scenario has no draftFrame and leaves 2 frames open.");
  }
}
