package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.Shelf;
import pappus.files.json.Altered;
import pappus.part.Antenna;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Connector;
import pappus.part.Lead;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Question;
import pappus.shop.SmallShop;

class SavingsTest {
  private static final Question QUESTION = Quads.QUESTION;
  private static final Assessor ASSESSOR = QUESTION.assessor();
  private static final Assessment WHOLE = Quads.WHOLE;
  private static final Assessment SINGLE = Quads.SINGLE;

  private static List<Saving> of(Assessment base, Swap... swaps) {
    return Savings.of(ASSESSOR, base, List.of(swaps));
  }

  private static List<Saving> of(Assessment base, Saving.Way way) {
    return of(base).stream().filter(saving -> saving.way() == way).toList();
  }

  private static <P extends Part> Build changed(
      Build build, Role role, Class<P> kind, Map<String, ?> changes) {
    return build.with(
        role, Altered.record(kind, kind.cast(build.part(role).orElseThrow()), changes));
  }

  private static Assessment assess(Build build) {
    return ASSESSOR.assess(build);
  }

  /** Two wires, each 10 mm shorter: AWG 20 weighs 7 g a metre, AWG 16 weighs 18 g. */
  @Test
  void cutsTheHeaviestWiresShorter() {
    var wires = of(WHOLE, Saving.Way.SHORTER_WIRES);
    assertThat(wires).hasSize(1);
    assertThat(wires.get(0).what()).isEqualTo("pack's wires");
    assertThat(wires.get(0).grams()).isCloseTo(0.14, within(1e-9));
    assertThat(wires.get(0).cents()).isEqualTo(OptionalLong.of(0));
    assertThat(wires.get(0).swap()).isEmpty();

    var thick = assess(changed(SINGLE.build(), Role.LEAD, Lead.class, Map.of("gauge", 16)));
    var lead = of(thick, Saving.Way.SHORTER_WIRES).get(0);
    assertThat(lead.what()).isEqualTo("battery lead");
    assertThat(lead.grams()).isCloseTo(0.36, within(1e-9));
  }

  @Test
  void whatIsGainedIsFlownWithThatMuchLess() {
    var wires = of(WHOLE, Saving.Way.SHORTER_WIRES).get(0);
    var rate = Rates.of(WHOLE, ASSESSOR).orElseThrow().perGram();

    assertThat(wires.gained()).isCloseTo(rate * wires.grams(), withinPercentage(3));
  }

  /** Wires of 20 mm or less have nothing to give, nor do such that weigh next to nothing. */
  @Test
  void leavesShortAndThinWiresAlone() {
    var shortLeads = changed(
        changed(SINGLE.build(), Role.BATTERY, Battery.class, Map.of("leadMillimetres", 20)),
        Role.LEAD,
        Lead.class,
        Map.of("millimetres", 20));
    assertThat(of(assess(shortLeads), Saving.Way.SHORTER_WIRES)).isEmpty();

    // Two wires of AWG 24 and 10 mm weigh 0.08 g, two of AWG 22 0.104 g.
    assertThat(of(assess(thin(24)), Saving.Way.SHORTER_WIRES)).isEmpty();
    assertThat(of(assess(thin(22)), Saving.Way.SHORTER_WIRES)).hasSize(1);
  }

  private static Build thin(int gauge) {
    return changed(
        changed(SINGLE.build(), Role.BATTERY, Battery.class, Map.of("leadGauge", gauge)),
        Role.LEAD,
        Lead.class,
        Map.of("gauge", gauge));
  }

  /** The plug of 15 A for long and 30 A for some seconds in place of that of 30 A and 60 A. */
  @Test
  void takesTheNextSmallerPlugThatStandsTheCurrents() {
    var plug = of(large(SINGLE.build()), Saving.Way.SMALLER_PLUG);

    assertThat(plug).hasSize(1);
    assertThat(plug.get(0).what()).isEqualTo("XT30 in place of XT60");
    assertThat(plug.get(0).cents()).isEmpty();
    // Half a plug of 1.25 g in place of 3.5 g, on pack and lead.
    assertThat(plug.get(0).grams()).isCloseTo(2 * (3.5 - 1.25), within(1e-6));
    var smaller = changed(SINGLE.build(), Role.LEAD, Lead.class, Map.of("mass.grams", 4 - 2.25));
    assertThat(plug.get(0).gained())
        .isCloseTo(
            Assessment.figure(
                assess(smaller).objective() - large(SINGLE.build()).objective()),
            within(0.01));
  }

  private static Assessment large(Build build) {
    return assess(changed(
        changed(build, Role.BATTERY, Battery.class, Map.of("connector", Connector.XT60)),
        Role.LEAD,
        Lead.class,
        Map.of("batterySide", Connector.XT60, "mass.grams", 4)));
  }

  /** Smaller ones stand 3 A for long, which is too little here. */
  @Test
  void doesNotTakeAPlugThatTheFlightWouldBurn() {
    var flight = SINGLE.flight().orElseThrow();
    assertThat(flight.endurance().discharge().startA()).isLessThan(8).isGreaterThan(3);

    assertThat(of(SINGLE, Saving.Way.SMALLER_PLUG)).isEmpty();
  }

  /** Its 8 A for long and 15 A for some seconds would do: but a one-cell charger would take the pack. */
  @Test
  void givesNoPackOfTwoCellsThePlugOfOne() {
    var flight = SINGLE.flight().orElseThrow();
    assertThat(flight.full().busCurrentA()).isLessThan(Connector.ONE_CELL.burstAmps());
    assertThat(flight.endurance().discharge().startA())
        .isLessThan(Connector.ONE_CELL.continuousAmps());
    assertThat(SINGLE.build().battery().orElseThrow().cellsInSeries()).isEqualTo(2);

    assertThat(of(SINGLE, Saving.Way.SMALLER_PLUG)).isEmpty();
  }

  @Test
  void leavesThePlugThatComesWithTheBoard() {
    assertThat(WHOLE.build().lead()).isEmpty();
    assertThat(of(WHOLE, Saving.Way.SMALLER_PLUG)).isEmpty();
  }

  /** Sixteen steel screws of 0.14 g; titanium weighs 4.5 where steel weighs 7.9. */
  @Test
  void replacesSteelScrewsByTitanium() {
    var scenario =
        SmallShop.scenario(", \"parts\": {\"excluded\": [\"hawthorn-m2x4\", \"hawthorn-m2x5\"]}");
    var assessor = new Supply(Quads.WORKSHOP, Shelf.EMPTY).assessor(scenario);
    var base = assessor.assess(WHOLE.build());

    var screws = Savings.of(assessor, base, List.of()).stream()
        .filter(saving -> saving.way() == Saving.Way.TITANIUM_SCREWS)
        .toList();

    assertThat(base.fitting().hardware().motorScrew().orElseThrow().id()).isEqualTo("thorn-m2x4");
    assertThat(screws).hasSize(1);
    assertThat(screws.get(0).what()).isEqualTo("motor screws");
    assertThat(screws.get(0).grams()).isCloseTo(16 * 0.14 * (1 - 4.5 / 7.9), withinPercentage(1));
    assertThat(screws.get(0).cents()).isEmpty();
    // What the stock has in titanium is taken already.
    assertThat(of(WHOLE, Saving.Way.TITANIUM_SCREWS)).isEmpty();
  }

  @Test
  void tellsTheLeastToPayForAGramFirst() {
    assertThat(of(SINGLE, everySwap(SINGLE)))
        .extracting(Saving::what)
        .containsExactly(
            "receiver",
            "video transmitter",
            "flight board",
            "radio antenna",
            "battery lead",
            "battery lead");
    assertThat(of(SINGLE, everySwap(SINGLE)))
        .filteredOn(saving -> saving.cents().isPresent())
        .isSortedAccordingTo(
            Comparator.comparingDouble(saving -> saving.cents().orElseThrow() / saving.grams()));
  }

  /** Of each role the one with the least to pay for a gram, of all that lose a hundredth of the flight at most. */
  @Test
  void takesTheCheapestGramsOfEachRole() {
    for (var base : List.of(WHOLE, SINGLE)) {
      var savings = of(base, everySwap(base)).stream()
          .filter(saving -> saving.way() == Saving.Way.SWAP)
          .toList();
      for (var role : Role.values()) {
        var least = Stream.of(everySwap(base))
            .filter(swap -> swap.role() == role
                && swap.assessment().isFeasible()
                && swap.assessment().mass().grams() <= base.mass().grams() - 0.1
                && swap.assessment().objective() >= 0.99 * base.objective())
            .mapToDouble(swap -> swap.centsMore() / -swap.gramsMore())
            .min();
        var told = savings.stream()
            .filter(saving -> saving.swap().orElseThrow().role() == role)
            .mapToDouble(saving -> saving.cents().orElseThrow() / saving.grams())
            .toArray();
        assertThat(told)
            .as("%s of %s", role, base.build())
            .isEqualTo(least.stream().toArray());
      }
    }
  }

  @Test
  void aLighterPartThatCostsMoreThanAHundredthOfTheFlightIsNone() {
    var pack = new Swapper(QUESTION)
        .swap(WHOLE, Role.BATTERY, Quads.WORKSHOP.part("tidewell-2s-3400").orElseThrow());

    assertThat(pack.gramsMore()).isCloseTo(-2.8, within(1e-9));
    assertThat(pack.assessment().objective()).isLessThan((long) (0.99 * WHOLE.objective()));
    assertThat(of(WHOLE, pack)).extracting(Saving::way).containsExactly(Saving.Way.SHORTER_WIRES);
  }

  @Test
  void lessThanATenthOfAGramIsNotToldOf() {
    var antenna = new Swapper(QUESTION)
        .swap(SINGLE, Role.RADIO_ANTENNA, Quads.WORKSHOP.part("withy-24-thread").orElseThrow());
    var lighter = new Swap(
        antenna.role(),
        antenna.part(),
        antenna.assessment(),
        assess(changed(
            antenna.assessment().build(),
            Role.RADIO_ANTENNA,
            Antenna.class,
            Map.of("mass.grams", 0.21))),
        List.of());

    assertThat(of(SINGLE, antenna)).extracting(Saving::way).contains(Saving.Way.SWAP);
    assertThat(lighter.gramsMore()).isCloseTo(-0.09, within(1e-9));
    assertThat(of(antenna.assessment(), lighter))
        .extracting(Saving::way)
        .doesNotContain(Saving.Way.SWAP);
  }

  /** 25.2 Wh in 72 g are 350 Wh/kg: a record of less mass would be refused. */
  @Test
  void aPackAsDenseAsARecordMayBeKeepsItsPlug() {
    var dense = assess(changed(
        large(SINGLE.build()).build(),
        Role.BATTERY,
        Battery.class,
        Map.of("mass.grams", 72, "massIncludesLeads", true)));

    assertThat(of(dense, Saving.Way.SMALLER_PLUG)).isEmpty();
    assertThat(of(dense, Saving.Way.SHORTER_WIRES)).hasSize(1);
  }

  private static Swap[] everySwap(Assessment base) {
    var swapper = new Swapper(QUESTION);
    return swapper.roles(base.build()).stream()
        .flatMap(role -> swapper.all(base, role).stream())
        .toArray(Swap[]::new);
  }
}
