package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.build;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.with;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.assessment.Desk;
import pappus.part.Frame;
import pappus.part.FrameDrawing;
import pappus.part.FrameDrawing.Screws;
import pappus.part.FrameDrawing.Standoffs;
import pappus.part.FrameOption;
import pappus.part.OrderedFrames;
import pappus.part.Role;
import pappus.quantity.Money;

class OrderWordsTest {
  private static Assessment on(Frame frame) {
    return Desk.assess(build().with(Role.FRAME, frame));
  }

  private static Assessment drawn(@Nullable Standoffs standoffs, @Nullable Screws screws) {
    return on(with(frame(), "drawing", new FrameDrawing(List.of(), List.of(), standoffs, screws)));
  }

  /** Heights of 20 and 25 mm at one price: the lower one takes the stack. */
  @Test
  void namesTheStandoffsThatTheStackNeeds() {
    assertThat(OrderWords.order(on(frame())))
        .contains("Order the frame, Frame, with 20 mm standoffs.");
    var high = with(frame(), "heights", List.of(new Frame.PlateHeight(27.5, 0)));
    assertThat(OrderWords.order(on(high)))
        .contains("Order the frame, Frame, with 27.5 mm standoffs.");
  }

  @Test
  void namesPlatesAndMountsAndSaysAPricedHeightOnce() {
    var money = Money.ofCents(600, "EUR");
    var ways = OrderedFrames.of(with(
        with(
            frame(),
            "options",
            List.of(
                new FrameOption("lite", "lite top plate", -3, money),
                new FrameOption("mount", "GPS mount", 1.5, null))),
        "heights",
        List.of(new Frame.PlateHeight(20, 0), new Frame.PlateHeight(28, 1, money))));

    assertThat(ways)
        .extracting(way -> OrderWords.order(on(way)).orElse(""))
        .containsExactly(
            "Order the frame, Frame, with 20 mm standoffs.",
            "Order the frame, Frame with lite top plate, with 20 mm standoffs.",
            "Order the frame, Frame with GPS mount, with 20 mm standoffs.",
            "Order the frame, Frame with lite top plate and GPS mount, with 20 mm standoffs.",
            "Order the frame, Frame, with 28 mm standoffs.",
            "Order the frame, Frame with lite top plate, with 28 mm standoffs.",
            "Order the frame, Frame with GPS mount, with 28 mm standoffs.",
            "Order the frame, Frame with lite top plate and GPS mount, with 28 mm standoffs.");
  }

  /** Without an upper plate there is no height to name, but what it is ordered with is. */
  @Test
  void namesWhatAnOpenFrameIsOrderedWith() {
    var open = with(
        with(
            frame(),
            "positions",
            frame().positions().stream()
                .map(position -> new Frame.Position(
                    position.name(), position.xMillimetres(), position.patterns(), true))
                .toList()),
        "heights",
        List.of());
    assertThat(OrderWords.order(on(open))).isEmpty();

    var lite = OrderedFrames.of(
            with(open, "options", List.of(new FrameOption("lite", "lite plate", -3, null))))
        .get(1);
    assertThat(OrderWords.order(on(lite))).contains("Order the frame, Frame with lite plate.");
  }

  @Test
  void countsWhatTheKitHoldsOnceAndTellsWhatIsSpare() {
    assertThat(OrderWords.kit(on(frame()))).isEmpty();
    assertThat(OrderWords.kit(drawn(null, null))).isEmpty();
    assertThat(OrderWords.kit(drawn(new Standoffs(6, 0.02), null)))
        .contains(
            "The frame's kit holds it together by 6 standoffs, which its mass counts: buy none beside.");
    assertThat(OrderWords.kit(drawn(new Standoffs(6, 0.02, 1), new Screws(20, 0.3, 4))))
        .contains(
            "The frame's kit holds it together by 6 standoffs and 20 screws, which its mass counts: buy none beside. Spare in its bag, not flown: 1 standoff, 4 screws.");
    assertThat(OrderWords.kit(drawn(null, new Screws(0, 0.3, 4))).orElseThrow())
        .isEqualTo("Spare in its bag, not flown: 4 screws.");
  }
}
