package pappus.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.files.InputException;
import pappus.files.json.JsonText;
import pappus.quantity.Money;
import pappus.shop.SmallShop;

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

  private static final String BUILD =
      "cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,"
          + "culvert-6-whole,newteye-14-feather,stipule-wire,dewpond-220-16";

  private static Stream<Arguments> wishes() {
    var frame = JsonText.compact(SmallShop.all().part("cottongrass-4").orElseThrow())
        .replace("cottongrass-4", "draft");
    return Stream.of(
        Arguments.of(
            "\"prefer\": \"owned\"",
            "prefer must be left out in an order, which shares what is there."),
        Arguments.of(
            "\"goal\": \"price\", \"leastMinutes\": 5",
            "goal must be endurance or range in an order, but is another."),
        Arguments.of(
            "\"draftFrame\": " + frame,
            "draftFrame must be left out in an order: put it in a catalogue."),
        Arguments.of(
            "\"aircraft\": {\"build\": \"%s\", \"mayChange\": [\"motor\"]}".formatted(BUILD),
            "aircraft must be left out in an order: all is built anew."));
  }

  /** What one who buys alone may ask for means nothing where several share: named with its file and place. */
  @ParameterizedTest
  @MethodSource("wishes")
  void refusesWhatOnlyOneAloneMayAsk(String field, String told) throws IOException {
    Files.writeString(folder.resolve("alone.json"), SmallShop.scenarioText(",\n  " + field));

    assertThatThrownBy(() -> SmallOrders.read(folder, GOOD.replace("marsh", "alone")))
        .isInstanceOfSatisfying(
            InputException.class,
            refused -> assertThat(String.valueOf(refused.getMessage()).lines())
                .singleElement()
                .asString()
                .endsWith("alone.json:8: " + told));
  }
}
