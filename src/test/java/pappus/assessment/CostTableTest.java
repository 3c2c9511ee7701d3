package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.build;
import static pappus.part.Parts.euros;
import static pappus.part.Parts.hardware;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.part.Role;
import pappus.part.Sale;
import pappus.part.SmallThing;
import pappus.scenario.AlsoBuy;
import pappus.scenario.Choice;
import pappus.scenario.OwnLine;
import pappus.scenario.Scenarios;
import pappus.scenario.Spare;

final class CostTableTest {
  private static CostTable.Line line(CostTable table, String label) {
    return table.lines().stream()
        .filter(line -> line.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + label + " in " + table.lines()));
  }

  @Test
  void buysEveryPieceThatFlies() {
    var motors = line(Desk.assess(build()).cost(), "motor");

    assertThat(motors.pieces()).isEqualTo(4);
    assertThat(motors.units()).isEqualTo(4);
    assertThat(motors.cents()).isEqualTo(6000);
  }

  /** Sixteen screws from a bag of twenty; four propellers from a set of four, then from pairs. */
  @Test
  void roundsUpToWholeSellingUnits() {
    var cost = Desk.assess(build()).cost();
    var pairs = with(propeller(), "sold", new Sale(Sale.Unit.SET, 2));
    var threes = with(propeller(), "sold", new Sale(Sale.Unit.SET, 3));

    assertThat(line(cost, "motor screws").units()).isEqualTo(1);
    assertThat(line(cost, "motor screws").cents()).isEqualTo(400);
    assertThat(line(cost, "propeller").units()).isEqualTo(1);
    assertThat(line(Desk.assess(build(pairs)).cost(), "propeller").cents()).isEqualTo(600);
    assertThat(line(Desk.assess(build(threes)).cost(), "propeller").cents()).isEqualTo(600);
  }

  @Test
  void paysNothingForWhatIsOwned() {
    var choice = new Choice(null, null, null, List.of("motor"));
    var owning = Desk.assess(build(), with(Scenarios.plain(), "parts", choice)).cost();

    assertThat(line(owning, "motor").owned()).isTrue();
    assertThat(line(owning, "motor").cents()).isZero();
    assertThat(owning.cents()).isEqualTo(Desk.assess(build()).cost().cents() - 6000);
  }

  /** Three motors at hand leave one to buy; two propellers of a set leave a whole set. */
  @Test
  void buysOnlyWhatIsNotAtHand() {
    var cost = Desk.assess(build(), owned("motor", 3), owned("propeller", 2)).cost();

    assertThat(line(cost, "motor").fromHand()).isEqualTo(3);
    assertThat(line(cost, "motor").units()).isEqualTo(1);
    assertThat(line(cost, "motor").cents()).isEqualTo(1500);
    assertThat(line(cost, "motor").owned()).isFalse();
    assertThat(line(cost, "propeller").units()).isEqualTo(1);
    assertThat(line(cost, "propeller").cents()).isEqualTo(300);
  }

  @Test
  void buysNothingOfWhatIsAllAtHand() {
    var cost = Desk.assess(build(), owned("motor", 5)).cost();

    assertThat(line(cost, "motor").owned()).isTrue();
    assertThat(line(cost, "motor").units()).isZero();
    assertThat(cost.cents()).isEqualTo(24_900 - 6000);
  }

  private static ShelfEntry owned(String id, int pieces) {
    return new ShelfEntry(id, pieces, null, null, null);
  }

  /** 30 + 4 × 15 + 3 + 20 + 60 + 25 + 20 + 15 + 5 + 4 + 1 and 4 for screws, 2 for the strap. */
  @Test
  void addsUp() {
    assertThat(Desk.assess(build()).cost().cents()).isEqualTo(24_900);
  }

  private static final AlsoBuy BESIDE = new AlsoBuy(
      3,
      List.of(
          Spare.pieces(Role.MOTOR, 1),
          Spare.pieces(Role.PROPELLER, 5),
          new Spare(null, SmallThing.MOTOR_SCREWS, 4, null)),
      List.of(new OwnLine("charger", euros(3500))),
      null);

  /** Two packs and a motor more, nine propellers in sets of four, twenty screws in one bag, the charger. */
  @Test
  void buysWhatIsWantedBesideTheBuildInWholeUnits() {
    var beside = Desk.assess(build(), with(Scenarios.plain(), "alsoBuy", BESIDE));
    var outlay = beside.outlay().orElseThrow();

    assertThat(beside.cost()).isEqualTo(Desk.assess(build()).cost());
    assertThat(line(outlay, "battery").units()).isEqualTo(3);
    assertThat(line(outlay, "motor").units()).isEqualTo(5);
    assertThat(line(outlay, "propeller").units()).isEqualTo(3);
    assertThat(line(outlay, "propeller").spareUnits()).isEqualTo(2);
    assertThat(line(outlay, "motor screws").units()).isEqualTo(1);
    assertThat(line(outlay, "motor screws").spareCents()).isZero();
    assertThat(outlay.cents()).isEqualTo(24_900 + 2 * 2000 + 1500 + 600 + 3500);
    assertThat(Desk.assess(build()).outlay()).isEmpty();
  }

  @Test
  void countsAgainstTheBudgetWhereTheScenarioSaysSo() {
    var all = 24_900 + 2 * 2000 + 1500 + 600 + 3500;
    var counting = with(
        Scenarios.plain(),
        "alsoBuy",
        new AlsoBuy(BESIDE.packs(), BESIDE.spares(), BESIDE.lines(), true));

    assertThat(Desk.assess(build(), counting).cost().cents()).isEqualTo(all);
    assertThat(Desk.limit(Desk.assess(build(), with(counting, "budget", euros(all))), "budget")
            .met())
        .isTrue();
    assertThat(Desk.limit(Desk.assess(build(), with(counting, "budget", euros(all - 1))), "budget")
            .met())
        .isFalse();
  }

  /** What is owned serves one build: the spare motor is bought, and so are the two packs more. */
  @Test
  void whatIsOwnedServesOneBuild() {
    var owning = with(
        with(Scenarios.plain(), "alsoBuy", BESIDE),
        "parts",
        new Choice(null, null, null, List.of("motor", "battery")));
    var outlay = Desk.assess(build(), owning).outlay().orElseThrow();

    assertThat(line(outlay, "motor").units()).isEqualTo(1);
    assertThat(line(outlay, "motor").owned()).isFalse();
    assertThat(line(outlay, "battery").cents()).isEqualTo(2 * 2000);
  }

  /** Six motors on the shelf: four fly, one is the spare. */
  @Test
  void takesSparesFromTheShelf() {
    var shelf = Shelf.of(List.of(owned("motor", 6), owned("battery", 2)));
    var outlay = new Assessor(
            with(Scenarios.plain(), "alsoBuy", BESIDE), Stock.of(hardware()), shelf, Rules.ALL)
        .assess(build())
        .outlay()
        .orElseThrow();

    assertThat(line(outlay, "motor").fromHand()).isEqualTo(5);
    assertThat(line(outlay, "motor").owned()).isTrue();
    assertThat(line(outlay, "battery").units()).isEqualTo(1);
    assertThat(line(outlay, "battery").spareUnits()).isEqualTo(1);
  }

  /** A pair more of what is sold in fours is a set more; as a unit it is one more. */
  @Test
  void sparesArePiecesOrUnits() {
    var units = new AlsoBuy(null, List.of(new Spare(Role.PROPELLER, null, null, 2)), null, null);
    var outlay =
        Desk.assess(build(), with(Scenarios.plain(), "alsoBuy", units)).outlay().orElseThrow();

    assertThat(line(outlay, "propeller").units()).isEqualTo(3);
    assertThat(line(outlay, "propeller").spares()).isEqualTo(8);
  }

  @Test
  void keepsABudgetToTheCent() {
    var enough = with(Scenarios.plain(), "budget", euros(24_900));
    var short1 = with(Scenarios.plain(), "budget", euros(24_899));

    assertThat(Desk.limit(Desk.assess(build(), enough), "budget").met()).isTrue();
    assertThat(Desk.limit(Desk.assess(build(), short1), "budget").met()).isFalse();
    assertThat(Desk.assess(build(), enough, hardware()).isFeasible()).isTrue();
  }
}
