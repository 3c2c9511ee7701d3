package pappus.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.catalog.Part;
import pappus.compatibility.Hardware;

/**
 * A small thing that two builds do not have alike.
 *
 * @param label what it is
 * @param before absent where there was none
 * @param after absent where it is not needed any more
 */
public record HardwareChange(String label, Optional<Part> before, Optional<Part> after) {

  /**
   * Every small thing from the stock that has to change, in the order of the second build: a longer strap that is
   * there still goes round.
   */
  static List<HardwareChange> between(Assessment before, Assessment after) {
    var old = byLabel(before);
    var now = byLabel(after);
    var changes = new ArrayList<HardwareChange>();
    now.forEach((label, item) -> {
      var earlier = Optional.ofNullable(old.get(label)).flatMap(Hardware.Item::part);
      if (!earlier.map(Part::id).equals(item.part().map(Part::id))
          && earlier.filter(after.fitting()::serves).isEmpty()) {
        changes.add(new HardwareChange(label, earlier, item.part()));
      }
    });
    old.forEach((label, item) -> {
      if (!now.containsKey(label)) {
        changes.add(new HardwareChange(label, item.part(), Optional.empty()));
      }
    });
    return changes;
  }

  /** What has no record of its own, such as wire cut off, follows by itself. */
  private static LinkedHashMap<String, Hardware.Item> byLabel(Assessment assessment) {
    var items = new LinkedHashMap<String, Hardware.Item>();
    assessment.fitting().hardware().items().stream()
        .filter(item -> item.part().isPresent())
        .forEach(item -> items.put(item.label(), item));
    return items;
  }
}
