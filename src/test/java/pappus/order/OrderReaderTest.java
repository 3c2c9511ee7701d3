package pappus.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.files.InputException;
import pappus.quantity.Money;

/** An order's file, and what is wrong with it: one line a problem, with its place. */
class OrderReaderTest {
  private static final String GOOD = """
      {"name": "fens", "budget": 900,
       "groups": [{"name": "one", "scenario": "marsh.json", "pieces": 2}]}""";

  @TempDir
  private Path folder;

  @Test
  void readsAnOrder() {
    var inputs = SmallOrders.read(folder, GOOD);

    assertThat(inputs.learners()).isEqualTo(2);
    assertThat(inputs.budgetCents()).isEqualTo(90_000);
    assertThat(inputs.groups().get(0).isCapped()).isFalse();
    // Alone each may cost an equal share of what there is for all.
    assertThat(inputs.groups().get(0).alone().scenario().budget())
        .isEqualTo(Money.ofCents(45_000, "EUR"));
    assertThat(inputs.groups().get(0).scenario().budget()).isNull();
    assertThat(inputs.files()).hasSizeGreaterThan(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "\"budget\": 900|\"budget\": 900.123|order.json:1: budget must have at most two decimals, but is 900.123.",
        "\"budget\": 900|\"budget\": -1|order.json:1: budget must be from 0 to 1000000, but is -1.",
        "\"pieces\": 2|\"pieces\": 0|pieces must be from 1 to 200, but is 0.",
        "\"name\": \"one\"|\"name\": \"One\"|name must be 1 to 64 small letters, digits and hyphens, a letter first, but is One.",
        "marsh.json|nowhere.json|nowhere.json: must be a file, but is missing.",
        "\"budget\": 900|\"budget\": 900, \"aim\": \"thrift\"|groups must each have a leastShare where the aim is thrift, but one has none.",
        "\"budget\": 900|\"budget\": 900, \"leftovers\": [{\"part\": \"cottongrass-5\", \"pieces\": 1}]|leftovers[0].part must name a part of the catalogue, but there is none of the id cottongrass-5. Maybe cottongrass-4 was meant.",
        "\"budget\": 900|\"budget\": 900, \"same\": [{\"what\": \"motor\", \"groups\": [\"ones\"]}]|same[0].groups[0] must name a group of the order, but is ones. Maybe one was meant.",
        "\"budget\": 900|\"budget\": 900, \"bugdet\": 2|bugdet"
      })
  void saysWhatIsWrong(String instead, String with, String told) {
    assertThatThrownBy(() -> SmallOrders.read(folder, GOOD.replace(instead, with)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(told);
  }
}
