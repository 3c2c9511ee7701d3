package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.fitting.Hardware;
import pappus.part.Part;
import pappus.part.Parts;

class HardwareChangeTest {
  private static final Part PLATE = Parts.with(Parts.reducingRings(), "id", "plate");
  private static final Part OTHER_PLATE = Parts.with(Parts.reducingRings(), "id", "other-plate");
  private static final Part GROMMETS = Parts.with(Parts.reducingRings(), "id", "grommets");

  private static Hardware.Item item(String label, Part part, int pieces) {
    return new Hardware.Item(label, Optional.of(part), pieces, part.mass(), false);
  }

  private static List<HardwareChange> between(
      List<Hardware.Item> before, List<Hardware.Item> after) {
    return HardwareChange.between(before, after, part -> false);
  }

  /** Both are stack adapters: one must not hide the other. */
  @Test
  void severalThingsOfOneLabelAreToldApart() {
    assertThat(between(
            List.of(item("adapter", PLATE, 1), item("adapter", GROMMETS, 4)),
            List.of(item("adapter", OTHER_PLATE, 1), item("adapter", GROMMETS, 4))))
        .containsExactly(
            new HardwareChange("adapter", Optional.of(PLATE), Optional.of(OTHER_PLATE)));
    assertThat(between(
            List.of(item("adapter", PLATE, 1), item("adapter", GROMMETS, 4)),
            List.of(item("adapter", GROMMETS, 4))))
        .containsExactly(new HardwareChange("adapter", Optional.of(PLATE), Optional.empty()));
  }

  @Test
  void moreOfTheSameIsAChangeAndLessIsNone() {
    assertThat(between(List.of(item("screws", GROMMETS, 8)), List.of(item("screws", GROMMETS, 16))))
        .containsExactly(
            new HardwareChange("screws", Optional.of(GROMMETS), Optional.of(GROMMETS)));
    assertThat(between(List.of(item("screws", GROMMETS, 16)), List.of(item("screws", GROMMETS, 8))))
        .isEmpty();
  }

  @Test
  void whatIsThereAndStillServesStays() {
    assertThat(HardwareChange.between(
            List.of(item("strap", PLATE, 1)),
            List.of(item("strap", OTHER_PLATE, 1)),
            PLATE::equals))
        .isEmpty();
  }
}
