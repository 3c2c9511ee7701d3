package pappus.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.files.json.Altered;
import pappus.files.json.JsonText;
import pappus.part.Part;
import pappus.part.Property.Said;
import pappus.part.Role;
import pappus.quantity.Require;
import pappus.shop.SmallShop;
import tools.jackson.databind.json.JsonMapper;

class WhereTest {
  /** The few lists of a record: one of its elements is enough, but none may be of what is not wanted. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      4                             | 4       | true
      4                             | 4.0     | true
      4                             | 3       | false
      [2, 3]                        | 3       | true
      [2, 3]                        | 4       | false
      {'atLeast': 3}                | 3       | true
      {'atLeast': 3}                | 2.99    | false
      {'atMost': 3}                 | 3       | true
      {'atMost': 3}                 | 3.01    | false
      {'atLeast': 2, 'atMost': 3}   | 1, 4    | false
      {'atLeast': 2, 'atMost': 3}   | 1, 2, 4 | true
      {'noneOf': [2, 3]}            | 4       | true
      {'noneOf': [2, 3]}            | 3.0     | false
      {'noneOf': [2, 3]}            | 1, 3    | false
      {'noneOf': [2], 'atLeast': 1} | 2       | false
      {'noneOf': [2], 'atLeast': 1} | 0.5     | false
      {'noneOf': [2], 'atLeast': 1} | 1.5     | true
      """)
  void aConditionIsMet(String written, String numbers, boolean isMet) {
    var values = List.<Object>copyOf(
        List.of(numbers.split(", ")).stream().map(BigDecimal::new).toList());

    assertThat(condition(written).isMetBy(new Said(values, true))).isEqualTo(isMet);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      4
      [4]
      {'atLeast': 0}
      {'atMost': 9}
      {'noneOf': [7]}
      """)
  void nothingIsMetByWhatIsNotKnown(String written) {
    assertThat(condition(written).isMetBy(new Said(List.of(), false))).isFalse();
    // Of a list of which one element is left out, another may do; but it may hold what is not
    // wanted.
    assertThat(condition(written).isMetBy(new Said(List.of(new BigDecimal(4)), false)))
        .isEqualTo(!written.contains("noneOf"));
  }

  @Test
  void wordsTextsAndTruthsAreTakenByTheLetter() {
    assertThat(condition("'lipo'").isMetBy(new Said(List.of("lipo"), true))).isTrue();
    assertThat(condition("'lipo'").isMetBy(new Said(List.of("Lipo"), true))).isFalse();
    assertThat(condition("true").isMetBy(new Said(List.of(true), true))).isTrue();
    assertThat(condition("true").isMetBy(new Said(List.of(false), true))).isFalse();
    assertThat(condition("{'noneOf': ['a']}").isMetBy(new Said(List.of("b"), true)))
        .isTrue();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      {'battery': {'cellsInSeries': 2}}                   | battery | tidewell-2s-3500 | true
      {'battery': {'cellsInSeries': 3}}                   | battery | tidewell-2s-3500 | false
      {'battery': {'mass.grams': {'atMost': 50}}}         | battery | tidewell-2s-3500 | false
      {'motor': {'cellsInSeries': 3}}                     | battery | tidewell-2s-3500 | refused
      {'receiver': {'link': 'thrennel'}}                  | board   | culvert-6-whole  | true
      {'receiver': {'link': {'noneOf': ['thrennel']}}}    | board   | culvert-6-whole  | false
      {'receiver': {'mass.grams': {'atMost': 5}}}         | board   | culvert-6-whole  | false
      {'receiver': {'link': {'noneOf': ['thrennel']}}}    | board   | culvert-12       | true
      {'transmitter': {'powers[].milliwatts': 100}}       | board   | culvert-12       | true
      {'camera': {'widthMillimetres': {'atMost': 10}}}    | transmitter | lumfret-sprig | false
      {'transmitter': {'powers.milliwatts': 100}}         | transmitter | glowmoss-100 | true
      """)
  void aWishIsMetByThePartAndByWhatIsBuiltIntoIt(
      String written, String role, String id, String isMet) {
    if (isMet.equals("refused")) {
      assertThatThrownBy(() -> where(written))
          .hasMessageContaining(
              "cellsInSeries must be a field of a motor that holds a value, but is none.");
      return;
    }
    var of = List.of(Role.values()).stream()
        .filter(each -> each.key().equals(role))
        .findFirst()
        .orElseThrow();

    assertThat(where(written).admits(of, part(id))).isEqualTo(Boolean.parseBoolean(isMet));
  }

  @Test
  void isReadAsItIsWritten() {
    var written = """
        {"battery":{"cellsInSeries":4,"mass.grams":{"atMost":90.5}},"payload-camera":{"maker":["a","b"]}}""";
    var scenario = Altered.record(
        Scenario.class, Scenarios.plain(), Map.of("where", JsonMapper.shared().readTree(written)));

    assertThat(JsonText.compact(scenario)).contains("\"where\":" + written);
    assertThat(Altered.record(Scenario.class, scenario, Map.of())).isEqualTo(scenario);
  }

  @Test
  void withAndWithoutAWish() {
    var where = where("{'battery': {'cellsInSeries': 2, 'mass.grams': {'atMost': 90}}}");
    var four = where.with(Role.BATTERY, "cellsInSeries", new Condition(4));

    assertThat(four.wishes())
        .extracting(Where.Wished::inWords)
        .containsExactlyInAnyOrder("battery.cellsInSeries 4", "battery.mass.grams at most 90");
    assertThat(four.without(four.wishes())).isNull();
    assertThat(four.without(four.wishes().subList(0, 1)))
        .isEqualTo(new Where(
            Map.of(Role.BATTERY, Map.of("mass.grams", new Condition(Map.of("atMost", 90))))));
  }

  @Test
  void everythingThatIsWrongIsSaid() {
    var said = Require.failuresOf(() -> where("{'motor': {'blades': 2, 'maker': {}, 'name': []},"
        + "'rotor': {'a': 1}, 'battery': {'chemistry': 'lipoo', 'mass': 3,"
        + " 'cellsInSeries': [2, '3', 2.5], 'name': {'atMost': 3}}}"));

    assertThat(said)
        .containsExactlyInAnyOrder(
            "rotor must be a role, but is none. Maybe motor was meant.",
            "motor.blades must be a field of a motor that holds a value, but is none.",
            "motor.maker must have atLeast, atMost or noneOf, but is empty.",
            "motor.name must list at least one, but is empty.",
            "battery.chemistry must be lipo, lihv, li-ion-power or li-ion-energy, but is the text \"lipoo\". Maybe lipo was meant.",
            "battery.mass must be a field of a battery that holds a value, but is an object. Maybe mass.grams was meant.",
            "battery.cellsInSeries[1] must be a whole number, but is the text \"3\".",
            "battery.cellsInSeries[2] must be a whole number, but is 2.5.",
            "battery.name.atMost must be left out where the field is no number, but name is text without hidden characters.");
  }

  @Test
  void digitalIsAllThatIsNotAnalogue() {
    assertThat(Families.of("digital").admit("vellimar")).isTrue();
    assertThat(Families.of("digital").admit("analogue")).isFalse();
    assertThat(Families.of("analogue", "vellimar").admit("lumfret")).isFalse();
    assertThat(Families.of("analogue", "vellimar").admit("vellimar")).isTrue();
    assertThat(Families.of("analogue", "vellimar").areDigital()).isFalse();
    assertThat(Families.of("lumfret", "vellimar").areDigital()).isTrue();
  }

  private static Condition condition(String written) {
    return new Condition(JsonMapper.shared().readValue(written.replace('\'', '"'), Object.class));
  }

  private static Where where(String written) {
    return JsonMapper.shared().readValue(written.replace('\'', '"'), Where.class);
  }

  private static Part part(String id) {
    return SmallShop.all().part(id).orElseThrow();
  }
}
