package pappus.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import pappus.assessment.Assessment;
import pappus.fitting.Hardware;
import pappus.part.Part;

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
    return between(items(before), items(after), after.fitting()::serves);
  }

  /**
   * @param before items that are there
   * @param after items that are needed
   * @param serves whether what is there serves as well
   */
  static List<HardwareChange> between(
      List<Hardware.Item> before, List<Hardware.Item> after, Predicate<Part> serves) {
    var old = new ArrayList<>(before);
    var now = new ArrayList<>(after);
    var changes = new ArrayList<HardwareChange>();
    // Of the same thing as many as are there serve on.
    now.removeIf(item ->
        old.removeIf(earlier -> isSame(earlier, item) && earlier.pieces() >= item.pieces()));
    for (var item : now) {
      var earlier = old.stream()
          .filter(one -> one.label().equals(item.label()))
          // More of the same thing, rather than another in its place.
          .min(Comparator.comparingInt(one -> isSame(one, item) ? 0 : 1));
      earlier.ifPresent(old::remove);
      var there = earlier.flatMap(Hardware.Item::part);
      var stillServes = earlier.filter(one -> !isSame(one, item)).isPresent()
          && there.filter(serves).isPresent();
      if (!stillServes) {
        changes.add(new HardwareChange(item.label(), there, item.part()));
      }
    }
    old.forEach(
        item -> changes.add(new HardwareChange(item.label(), item.part(), Optional.empty())));
    return changes;
  }

  private static boolean isSame(Hardware.Item one, Hardware.Item other) {
    return one.label().equals(other.label())
        && one.part().map(Part::id).equals(other.part().map(Part::id));
  }

  /** What has no record of its own, such as wire cut off, follows by itself. */
  private static List<Hardware.Item> items(Assessment assessment) {
    return assessment.fitting().hardware().items().stream()
        .filter(item -> item.part().isPresent())
        .toList();
  }
}
