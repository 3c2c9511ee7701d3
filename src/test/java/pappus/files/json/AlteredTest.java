package pappus.files.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.part.Battery;
import pappus.part.Connector;
import pappus.part.Parts;
import pappus.quantity.Money;
import pappus.scenario.Choice;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

class AlteredTest {
  private static final Scenario PLAIN = Scenarios.plain();

  private static Scenario altered(String path, @Nullable Object value) {
    return Altered.record(Scenario.class, PLAIN, Collections.singletonMap(path, value));
  }

  @Test
  void nothingChangedIsTheSameRecord() {
    assertThat(Altered.record(Scenario.class, PLAIN, Map.of())).isEqualTo(PLAIN);
    assertThat(Altered.record(Battery.class, Parts.battery(), Map.of())).isEqualTo(Parts.battery());
  }

  @Test
  void changesAFieldAndNoOther() {
    assertThat(altered("leastThrustToWeight", 3))
        .isEqualTo(Parts.with(PLAIN, "leastThrustToWeight", 3.0));
    assertThat(altered("massCap.grams", 300))
        .isEqualTo(Parts.with(PLAIN, "massCap", Parts.with(PLAIN.massCap(), "grams", 300.0)));
    assertThat(PLAIN.massCap().grams()).isEqualTo(250);
  }

  @Test
  void changesSeveralAtOnce() {
    var battery = Altered.record(
        Battery.class,
        Parts.battery(),
        Map.of("connector", Connector.XT60, "mass.grams", 102.5, "leadGauge", 16));

    assertThat(battery.connector()).isEqualTo(Connector.XT60);
    assertThat(battery.mass().grams()).isEqualTo(102.5);
    assertThat(battery.mass().known()).isEqualTo(Parts.battery().mass().known());
    assertThat(battery.leadGauge()).isEqualTo(16);
    assertThat(battery.capacityMilliampHours()).isEqualTo(850);
  }

  @Test
  void takesAWholeRecord() {
    var choice = new Choice(List.of("a"), null, List.of("b"), null);

    assertThat(altered("parts", choice)).isEqualTo(Parts.with(PLAIN, "parts", choice));
    assertThat(altered("budget", Money.ofCents(12_345, "EUR")).budget())
        .isEqualTo(Money.ofCents(12_345, "EUR"));
  }

  @Test
  void makesWhatAPathLeadsThrough() {
    assertThat(altered("parts.excluded", List.of("b")))
        .isEqualTo(Parts.with(PLAIN, "parts", new Choice(null, null, List.of("b"), null)));
  }

  @Test
  void nullLeavesAFieldOut() {
    var rich = Parts.with(PLAIN, "budget", Money.ofCents(5_000, "EUR"));

    assertThat(Altered.record(Scenario.class, rich, Collections.singletonMap("budget", null)))
        .isEqualTo(PLAIN);
    assertThat(altered("budget", null)).isEqualTo(PLAIN);
    assertRefused(
        "massCap.strict",
        null,
        "massCap.strict: Missing required creator property 'strict' (index 1)");
  }

  @Test
  void aRefusedValueNamesThePathAndTheRange() {
    assertRefused(
        "massCap.grams",
        19,
        "massCap.grams must be from 20 to 25000, but is 19. Maybe it was written in kilograms.");
    assertRefused("leastThrustToWeight", 0, "leastThrustToWeight must be from 1 to 20, but is 0.");
    assertThatThrownBy(() -> Altered.record(
            Battery.class, Parts.battery(), Map.of("mass.grams", 500, "cellsInSeries", 4)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("mass.grams must give 40 to 350 Wh/kg, but is 500, which gives 25.");
  }

  @Test
  void anUnknownFieldAndAWrongTypeAreRefused() {
    assertRefused("massCap.gram", 250, "massCap.gram: is no field here.");
    assertRefused("weight", 250, "weight: is no field here.");
    assertRefused("mass.cap.grams", 250, "mass: is no field here.");
    assertRefused("parts", Map.of("owns", List.of("a")), "parts.owns: is no field here.");
    assertRefused(
        "parts.allowed",
        List.of(Map.of("role", "motor", "parts", List.of("a"), "part", "a")),
        "parts.allowed.0.part: is no field here.");
    assertRefused("name.first", "a", "name.first: must be text, but is an object.");
    assertRefused("candidates", 2.5, "candidates: must be a whole number, but is 2.5.");
    assertRefused(
        "massCap.grams", "much", "massCap.grams: must be a number, but is the text \"much\".");
  }

  @Test
  void ofSeveralChangesTheOneThatIsNoFieldIsNamed() {
    assertThatThrownBy(() -> Altered.record(
            Scenario.class, PLAIN, Map.of("massCap.grams", 249, "leastThrustToWeigth", 3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("leastThrustToWeigth: is no field here.");
  }

  private static void assertRefused(String path, @Nullable Object value, String message) {
    assertThatThrownBy(() -> altered(path, value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }
}
