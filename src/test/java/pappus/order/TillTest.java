package pappus.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What parts bought together cost. */
class TillTest {
  @TempDir
  private Path folder;

  private OrderInputs inputs(String shops, String more) throws Exception {
    Files.writeString(folder.resolve("near.csv"), "id,stock,price\nligule-4x1.9x2,3,3.00\n");
    Files.writeString(folder.resolve("far.csv"), "id,stock,price\nligule-4x1.9x2,9,2.00\n");
    return SmallOrders.read(folder, """
        {"name": "fens", "budget": 900,
         "groups": [{"name": "one", "scenario": "marsh.json", "pieces": 2}],
         "shops": [%s]%s}""".formatted(shops, more));
  }

  private static Ware ware(OrderInputs inputs) {
    return inputs.wares().all().stream()
        .filter(ware -> ware.part().id().equals("ligule-4x1.9x2"))
        .findFirst()
        .orElseThrow();
  }

  private static int[] units(OrderInputs inputs, int number) {
    var units = new int[inputs.wares().all().size()];
    units[ware(inputs).index()] = number;
    return units;
  }

  @Test
  void leastIsTakenOfTheCheapestShopsAndPostage() throws Exception {
    var inputs = inputs(
        "{\"name\": \"near\", \"stock\": \"near.csv\"}, "
            + "{\"name\": \"far\", \"stock\": \"far.csv\", \"postage\": 5, \"freeFrom\": 14}",
        "");

    // Three for 9.00 nearby; from far they would be 6.00 and postage.
    assertThat(inputs.till().cents(units(inputs, 3))).isEqualTo(900);
    assertThat(inputs.till().bill(units(inputs, 3)).buys())
        .extracting(buy -> buy.lot().shop())
        .containsExactly(0);
    // Six from far with postage are 17.00; three nearby and three from far 20.00.
    assertThat(inputs.till().cents(units(inputs, 6))).isEqualTo(1700);
    // Seven are sent for nothing.
    assertThat(inputs.till().bill(units(inputs, 7)).cents()).isEqualTo(1400);
    assertThat(inputs.till().bill(units(inputs, 7)).postage()).containsExactly(0L, 0L);
  }

  @Test
  void billIsWhatIsPaid() throws Exception {
    var inputs = inputs(
        "{\"name\": \"near\", \"stock\": \"near.csv\", \"postage\": 2}, "
            + "{\"name\": \"far\", \"stock\": \"far.csv\", \"postage\": 5, \"freeFrom\": 14}",
        "");
    for (var number = 0; number <= 12; number++) {
      var bill = inputs.till().bill(units(inputs, number));

      assertThat(bill.cents()).isEqualTo(inputs.till().cents(units(inputs, number)));
      assertThat(bill.buys().stream().mapToInt(Lot.Buy::units).sum()).isEqualTo(number);
    }
  }

  @Test
  void moreIsBoughtWhereItCostsLess() throws Exception {
    var inputs = inputs(
        "{\"name\": \"far\", \"stock\": \"far.csv\"}",
        ", \"priceSteps\": [{\"part\": \"ligule-4x1.9x2\", \"fromUnits\": 5, \"price\": 1.00}]");

    assertThat(inputs.till().cents(units(inputs, 2))).isEqualTo(400);
    var bill = inputs.till().bill(units(inputs, 3));
    assertThat(bill.cents()).isEqualTo(500);
    assertThat(bill.buys()).extracting(Lot.Buy::units).containsExactly(5);
    assertThat(inputs.till().cents(units(inputs, 9))).isEqualTo(900);
  }

  @Test
  void whatNoShopListsOfAListedKindCannotBeHad() throws Exception {
    var inputs = inputs("{\"name\": \"far\", \"stock\": \"far.csv\"}", "");

    assertThat(inputs.wares().priced().stream().map(part -> part.id()))
        .contains("ligule-4x1.9x2", "cottongrass-4")
        .doesNotContain("frond-4.5x3.2x3");
    assertThat(ware(inputs).stock()).isEqualTo(9);
  }

  @Test
  void leftoversAreTakenBeforeAnythingIsBought() throws Exception {
    var inputs = inputs(
        "{\"name\": \"far\", \"stock\": \"far.csv\"}",
        ", \"leftovers\": [{\"part\": \"ligule-4x1.9x2\", \"pieces\": 5}]");
    var ware = ware(inputs);

    assertThat(ware.unitsFor(5)).isZero();
    assertThat(ware.unitsFor(6)).isEqualTo(1);
    assertThat(ware.pieces()).isEqualTo(5L + 9L * ware.unit());
  }

  @Test
  void sparesAreOnceForAPartOrForSoManyBuilds() throws Exception {
    var inputs = inputs(
        "{\"name\": \"far\", \"stock\": \"far.csv\"}",
        ", \"spares\": [{\"role\": \"propeller\", \"units\": 1}, "
            + "{\"role\": \"propeller\", \"pieces\": 2, \"perBuilds\": 3}]");
    var ware = ware(inputs);

    assertThat(List.of(0, 1, 3, 4).stream()
            .map(builds -> inputs.spares("propeller", ware, builds))
            .toList())
        .containsExactly(0, ware.unit() + 2, ware.unit() + 2, ware.unit() + 4);
    assertThat(inputs.spares("motor", ware, 4)).isZero();
  }
}
