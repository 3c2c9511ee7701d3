package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.payloadCameraWithCell;
import static pappus.part.Parts.with;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.assessment.flight.Avionics;
import pappus.assessment.flight.Draw;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.FlightEstimate;
import pappus.catalog.Catalog;
import pappus.catalog.Shipped;
import pappus.compatibility.Rules;
import pappus.compatibility.Verdict;
import pappus.fitting.Stock;
import pappus.part.Antenna;
import pappus.part.Build;
import pappus.part.CellRange;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Role;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Scenario.UnknownFacts;
import pappus.scenario.Scenarios;

final class AssessorTest {
  private static final List<Part> NOTHING = List.of();

  private static Assessor assessor(Scenario scenario) {
    return new Assessor(scenario, Stock.of(Parts.hardware()), Rules.ALL);
  }

  @Test
  void findsABuildInWhichEverythingFitsFeasible() {
    var assessment = Desk.assess(build());

    assertThat(assessment.broken()).isEmpty();
    assertThat(assessment.limits()).allMatch(Limit::met);
    assertThat(assessment.isFeasible()).isTrue();
    assertThat(assessment.shortfall()).isZero();
    assertThat(assessment.milliseconds()).isPositive();
  }

  @Test
  void asksEveryRuleInItsOrder() {
    assertThat(Desk.assess(build()).findings())
        .extracting(Finding::rule)
        .containsExactlyElementsOf(Rules.ALL.stream().map(rule -> rule.id()).toList());
  }

  @Test
  void hasNoShortfallIfAndOnlyIfNothingIsBrokenAndItFlies() {
    var catalog = Shipped.CATALOG;
    var scenario = with(
        with(Scenarios.plain(), "leastThrustToWeight", 1.5),
        "massCap",
        new MassCap(900, false, "an example", null));
    var assessor = new Assessor(scenario, Stock.of(List.copyOf(catalog.parts())), List.of());
    var random = new Random(19);
    var feasible = 0;

    for (var i = 0; i < 100; i++) {
      var assessment = assessor.assess(randomBuild(catalog, random));
      var sound = assessment.broken().isEmpty()
          && assessment.flight().isPresent()
          && assessment.limits().stream().allMatch(Limit::met);

      assertThat(assessment.shortfall() == 0).as("%s", assessment.build()).isEqualTo(sound);
      assertThat(assessment.shortfall()).isNotNegative();
      feasible += sound ? 1 : 0;
    }
    assertThat(feasible).as("both kinds are met").isBetween(1, 99);
  }

  private static Build randomBuild(Catalog catalog, Random random) {
    var parts = new EnumMap<Role, Part>(Role.class);
    for (var role : Role.values()) {
      var options = catalog.parts().stream().filter(part -> mayFill(part, role)).toList();
      parts.put(role, options.get(random.nextInt(options.size())));
    }
    return Build.of(parts);
  }

  private static boolean mayFill(Part part, Role role) {
    return part instanceof Antenna
        ? role == Role.VIDEO_ANTENNA || role == Role.RADIO_ANTENNA
        : !part.fills().isEmpty() && part.fills().get(0) == role;
  }

  /** All limits there are, each as broken as counts, and no flight on top. */
  @Test
  void weighsOneBrokenRuleAboveEveryLimitTogether() {
    var scenario = with(Scenarios.plain(), "budget", Parts.euros(100_000));
    var real = Desk.assess(build(), scenario);
    var worst = Limit.atMost("worst", "worst", "", 1e12, 1);
    var limits = Collections.nCopies(real.limits().size(), worst);
    var broken = new Finding("motor-guard", Verdict.clashes("It clashes."), Optional.empty(), true);

    assertThat(real.limits()).hasSize(11);
    assertThat(like(real, List.of(broken), List.of(), real.flight()).shortfall())
        .isGreaterThan(like(real, List.of(), limits, Optional.empty()).shortfall());
  }

  private static Assessment like(
      Assessment real,
      List<Finding> findings,
      List<Limit> limits,
      Optional<FlightEstimate> flight) {
    return new Assessment(
        real.build(),
        real.fitting(),
        findings,
        real.mass(),
        real.cost(),
        real.outlay(),
        flight,
        Optional.empty(),
        limits,
        real.merit(),
        real.planning());
  }

  @Test
  void setsARuleAsideForAWaivedPart() {
    var tight = build(with(frame(), "guardInnerMillimetres", 15.0));
    var waiver = Scenarios.waiver("motor-guard", "motor");
    var waived = Desk.assess(tight, with(Scenarios.plain(), "waivers", List.of(waiver)));

    assertThat(Desk.finding(Desk.assess(tight), "motor-guard").breaks()).isTrue();
    assertThat(Desk.finding(waived, "motor-guard").breaks()).isFalse();
    assertThat(Desk.finding(waived, "motor-guard").waiver()).contains(waiver);
    assertThat(waived.isFeasible()).isTrue();
  }

  @Test
  void setsNothingAsideForPartsTheRuleDoesNotRead() {
    var tight = build(with(frame(), "guardInnerMillimetres", 15.0));
    var waiver = Scenarios.waiver("motor-guard", "camera");

    assertThat(Desk.finding(
                Desk.assess(tight, with(Scenarios.plain(), "waivers", List.of(waiver))),
                "motor-guard")
            .breaks())
        .isTrue();
  }

  @Test
  void neverSetsVoltsAside() {
    var few = build(with(motor(), "cells", new CellRange(2, 3)));
    var waiver = Scenarios.waiver("motor-cells", "motor");

    assertThat(Desk.finding(
                Desk.assess(few, with(Scenarios.plain(), "waivers", List.of(waiver))),
                "motor-cells")
            .breaks())
        .isTrue();
  }

  @Test
  void keepsUnknownFactsOrLeavesThemOut() {
    var unknown = build(with(frame(), "motorBoltCirclesMillimetres", List.of()));
    var strict = with(Scenarios.plain(), "unknownFacts", UnknownFacts.LEAVE_OUT);

    assertThat(Desk.finding(Desk.assess(unknown), "motor-mount").verdict())
        .isInstanceOf(Verdict.Unknown.class);
    assertThat(Desk.assess(unknown).isFeasible()).isTrue();
    assertThat(Desk.finding(Desk.assess(unknown, strict), "motor-mount").breaks())
        .isTrue();
  }

  @ParameterizedTest
  @EnumSource(names = {"FRAME", "MOTOR", "PROPELLER", "BATTERY", "BOARD"})
  void saysWhichMainPartIsMissing(Role role) {
    var assessment = Desk.assess(build().without(role));

    assertThat(assessment.flight()).isEmpty();
    assertThat(assessment.whyNoFlight()).contains("there is no " + role.label());
    assertThat(assessment.isFeasible()).isFalse();
    assertThat(assessment.milliseconds()).isZero();
    assertThat(assessment.mass().grams()).isPositive();
  }

  @Test
  void judgesABuildWithoutAnyPart() {
    assertThat(Desk.assess(Build.empty(), Scenarios.plain(), NOTHING).whyNoFlight())
        .contains("there is no frame");
  }

  @Test
  void tellsWhetherTwoPartsAloneGoTogether() {
    var assessor = assessor(Scenarios.plain());

    assertThat(assessor.ruleBook().goesTogether(Parts.of(frame(), motor()))).isTrue();
    assertThat(assessor
            .ruleBook()
            .goesTogether(
                Parts.of(frame(), with(motor(), "boltCirclesMillimetres", List.of(16.0)))))
        .isFalse();
  }

  @Test
  void changesTheTimeWithAFactorAndNotWithoutOne() {
    var assessor = assessor(Scenarios.plain());
    var seconds = Desk.assess(build()).flight().orElseThrow().endurance().seconds();
    var heavier = Factors.added(20, 0);

    var whatIf = assessor.likeliest().whatIf(assessor.assess(build()));

    assertThat(whatIf.applyAsDouble(Factors.NONE)).isEqualTo(seconds);
    assertThat(whatIf.applyAsDouble(heavier)).isLessThan(seconds);
  }

  /** The split is what the battery gives, counted twice. */
  @Test
  void splitsThePowerInHoverWithoutALeftover() {
    var flight = Desk.assess(build()).flight().orElseThrow();

    assertThat(flight.split().totalW())
        .isCloseTo(flight.volts() * flight.amps(), Percentage.withPercentage(0.01));
  }

  /** 20 g and 90 EUR more; 2 W behind a regulator of 0.85, or none with a cell of its own. */
  @Test
  void countsAPayloadCameraInMassPriceAndPower() {
    var without = Desk.assess(build());
    var fed = Desk.assess(build(payloadCamera()));
    var ownCell = Desk.assess(build(payloadCameraWithCell()));

    assertThat(fed.mass().grams() - without.mass().grams()).isCloseTo(20, within(1e-9));
    assertThat(fed.cost().cents() - without.cost().cents()).isEqualTo(9000);
    assertThat(drawn(fed) - drawn(without)).isCloseTo(2 / 0.85, within(1e-9));
    assertThat(drawn(ownCell)).isCloseTo(drawn(without), within(1e-9));
    assertThat(ownCell.objective()).isGreaterThan(fed.objective());
  }

  private static double drawn(Assessment assessment) {
    return Avionics.draws(assessment.fitting()).stream()
        .mapToDouble(Draw::watts)
        .sum();
  }
}
