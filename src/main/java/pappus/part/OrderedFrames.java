package pappus.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/**
 * A frame in every way that it can be ordered: with each choice of its options, and with heights of each price. Every
 * way is a frame of its own, so that whoever chooses frames chooses among them, and by id one of them can be asked for.
 *
 * <p>Why: src/site/markdown/decisions.md#each-way-to-order-a-frame-is-a-frame
 */
public final class OrderedFrames {
  private OrderedFrames() {}

  /** All of them, that as listed first, which has its id and none but the heights of least price. */
  public static List<Frame> of(Frame frame) {
    var heights = byPrice(frame);
    if (frame.optionsOrNone().isEmpty() && heights.size() < 2 && !isPriced(heights)) {
      return List.of(frame);
    }
    var all = new ArrayList<Frame>();
    for (var group : heights.isEmpty() ? List.of(frame.heights()) : List.copyOf(heights.values())) {
      var isListed = all.isEmpty();
      for (var chosen : choices(frame.optionsOrNone())) {
        all.add(ordered(frame, chosen, group, isListed));
      }
    }
    return all;
  }

  private static boolean isPriced(SortedMap<Long, List<Frame.PlateHeight>> heights) {
    return heights.keySet().stream().anyMatch(cents -> cents > 0);
  }

  /** Heights of one price together, the least first. */
  private static SortedMap<Long, List<Frame.PlateHeight>> byPrice(Frame frame) {
    var byPrice = new TreeMap<Long, List<Frame.PlateHeight>>();
    for (var height : frame.heights()) {
      byPrice.computeIfAbsent(cents(height.price()), fresh -> new ArrayList<>()).add(height);
    }
    return byPrice;
  }

  private static long cents(@Nullable Money price) {
    return price == null ? 0 : price.cents();
  }

  /** None, each, and all together. */
  private static List<List<FrameOption>> choices(List<FrameOption> options) {
    List<List<FrameOption>> choices = List.of(List.of());
    for (var option : options) {
      var more = new ArrayList<List<FrameOption>>(choices);
      for (var chosen : choices) {
        var with = new ArrayList<>(chosen);
        with.add(option);
        more.add(with);
      }
      choices = more;
    }
    return choices;
  }

  /** @param isListed whether the heights go with the frame as listed, and need no word of their own */
  private static Frame ordered(
      Frame frame, List<FrameOption> chosen, List<Frame.PlateHeight> heights, boolean isListed) {
    var id = new StringBuilder(frame.id());
    var name = new StringBuilder(frame.name());
    var cents = frame.price().cents();
    var grams = 0.0;
    for (var option : chosen) {
      id.append('.').append(option.id());
      name.append(name.length() == frame.name().length() ? " with " : " and ")
          .append(option.name());
      cents += cents(option.price());
      grams += option.addedGrams();
    }
    if (!heights.isEmpty()) {
      cents += cents(heights.get(0).price());
      if (!isListed) {
        var least = heights.stream()
            .min(Comparator.comparingDouble(Frame.PlateHeight::millimetres))
            .orElseThrow()
            .millimetres();
        id.append('.').append(Require.plain(least)).append("mm");
        name.append(name.length() == frame.name().length() ? " with " : " and ")
            .append(Require.plain(least))
            .append(" mm standoffs");
      }
    }
    var values = new HashMap<String, Object>();
    values.put("id", id.toString());
    values.put("name", name.toString());
    values.put("price", Money.ofCents(cents, frame.price().currency()));
    if (grams != 0) {
      values.put(
          "mass",
          new Mass(
              frame.mass().grams() + grams,
              frame.mass().known(),
              frame.mass().standardDeviationGrams()));
    }
    values.put(
        "heights",
        heights.stream()
            .map(height -> new Frame.PlateHeight(height.millimetres(), height.addedGrams()))
            .toList());
    values.put("options", null);
    values.put("listedAs", frame.id());
    return PartCopy.with(frame, values);
  }
}
