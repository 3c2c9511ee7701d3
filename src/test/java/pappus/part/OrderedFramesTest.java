package pappus.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.quantity.Money;

class OrderedFramesTest {
  private static final FrameOption LITE = new FrameOption("lite", "lite top plate", -3, euros(600));
  private static final FrameOption MOUNT = new FrameOption("mount", "GPS mount", 1.5, null);

  private static Money euros(long cents) {
    return Money.ofCents(cents, "EUR");
  }

  /** 40 g and EUR 30 as listed. */
  private static Frame frame(List<FrameOption> options, Frame.PlateHeight... heights) {
    return with(with(Parts.frame(), "options", options), "heights", List.of(heights));
  }

  private static final Frame.PlateHeight LOW = new Frame.PlateHeight(20, 0);
  private static final Frame.PlateHeight MIDDLE = new Frame.PlateHeight(22, 0.4);
  private static final Frame.PlateHeight HIGH = new Frame.PlateHeight(28, 1, euros(250));

  @Test
  void aFrameWithNothingToChooseIsItself() {
    var plain = frame(List.of(), LOW, MIDDLE);

    assertThat(OrderedFrames.of(plain)).containsExactly(plain);
    assertThat(OrderedFrames.of(Parts.frame())).containsExactly(Parts.frame());
  }

  @Test
  void eachChoiceOfOptionsAndEachPriceOfHeightsIsAFrame() {
    var all = OrderedFrames.of(frame(List.of(LITE, MOUNT), LOW, MIDDLE, HIGH));

    assertThat(all)
        .extracting(
            one -> one.id() + ": " + one.mass().grams() + " g, " + one.price().cents())
        .containsExactly(
            "frame: 40.0 g, 3000",
            "frame.lite: 37.0 g, 3600",
            "frame.mount: 41.5 g, 3000",
            "frame.lite.mount: 38.5 g, 3600",
            "frame.28mm: 40.0 g, 3250",
            "frame.lite.28mm: 37.0 g, 3850",
            "frame.mount.28mm: 41.5 g, 3250",
            "frame.lite.mount.28mm: 38.5 g, 3850");
    assertThat(all.get(0).heights()).containsExactly(LOW, MIDDLE);
    assertThat(all.get(7).heights()).containsExactly(new Frame.PlateHeight(28, 1));
    assertThat(all.get(7).name())
        .isEqualTo("Frame with lite top plate and GPS mount and 28 mm standoffs");
    assertThat(all).extracting(Frame::listedId).containsOnly("frame");
  }

  @Test
  void whatIsImpossibleIsRefused() {
    assertThatThrownBy(() -> frame(List.of(LITE, LITE), LOW))
        .hasMessageContaining("options[1].id must be there once, but lite is there before.");
    assertThatThrownBy(() -> frame(
            List.of(
                new FrameOption("lite", "Lite", -30, null),
                new FrameOption("air", "Air", -15, null)),
            LOW))
        .hasMessageContaining(
            "options must leave the frame a mass above 0 g with the lightest height, but leave -5 g.");
    assertThatThrownBy(() ->
            frame(List.of(new FrameOption("lite", "Lite", 0, Money.ofCents(1, "USD"))), LOW))
        .hasMessageContaining(
            "options[0].price.currency must be that of the frame, EUR, but is USD.");
  }
}
