package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.build;
import static pappus.part.Parts.euros;
import static pappus.part.Parts.hardware;
import static pappus.part.Parts.propeller;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.catalog.ShelfEntry;
import pappus.part.Sale;
import pappus.scenario.Choice;
import pappus.scenario.Scenarios;

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

  @Test
  void keepsABudgetToTheCent() {
    var enough = with(Scenarios.plain(), "budget", euros(24_900));
    var short1 = with(Scenarios.plain(), "budget", euros(24_899));

    assertThat(Desk.limit(Desk.assess(build(), enough), "budget").met()).isTrue();
    assertThat(Desk.limit(Desk.assess(build(), short1), "budget").met()).isFalse();
    assertThat(Desk.assess(build(), enough, hardware()).isFeasible()).isTrue();
  }
}
