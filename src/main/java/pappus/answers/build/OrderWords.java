package pappus.answers.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.fitting.StackPlan;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.quantity.Require;

/** How the frame of a build is ordered, and what comes in its bag. */
public final class OrderWords {
  private OrderWords() {}

  /** With which plates, mounts and standoffs to order it; empty where it is as listed, and has no upper plate. */
  public static Optional<String> order(Assessment assessment) {
    return assessment.build().frame().flatMap(frame -> {
      var name = frame.name().replaceFirst(" (with|and) [0-9.]+ mm standoffs$", "");
      return assessment
          .fitting()
          .stackPlan()
          .flatMap(StackPlan::height)
          .map(height -> "Order the frame, %s, with %s mm standoffs."
              .formatted(name, Require.plain(height.millimetres())))
          .or(() -> frame.listedId().equals(frame.id())
              ? Optional.empty()
              : Optional.of("Order the frame, %s.".formatted(name)));
    });
  }

  /** What its kit holds it together by: counted once, in its mass; spare ones are told, and do not fly. */
  public static Optional<String> kit(Assessment assessment) {
    return assessment
        .build()
        .frame()
        .map(Frame::drawing)
        .map(drawing -> kit(drawing))
        .filter(words -> !words.isEmpty());
  }

  private static String kit(FrameDrawing drawing) {
    var own = new ArrayList<String>();
    var spare = new ArrayList<String>();
    var standoffs = drawing.standoffs();
    if (standoffs != null) {
      add(own, standoffs.pieces(), "standoffs");
      add(spare, standoffs.spare(), "standoffs");
    }
    var screws = drawing.screws();
    if (screws != null) {
      add(own, screws.pieces(), "screws");
      add(spare, screws.spare(), "screws");
    }
    if (own.isEmpty() && spare.isEmpty()) {
      return "";
    }
    return ((own.isEmpty()
                ? ""
                : "The frame's kit holds it together by %s, which its mass counts: buy none beside."
                    .formatted(String.join(" and ", own)))
            + (spare.isEmpty()
                ? ""
                : " Spare in its bag, not flown: %s.".formatted(String.join(", ", spare))))
        .strip();
  }

  private static void add(List<String> words, @Nullable Integer pieces, String what) {
    if (pieces != null && pieces > 0) {
      words.add(pieces + " " + (pieces == 1 ? what.replaceFirst("s$", "") : what));
    }
  }
}
