package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.with;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pappus.scenario.Payload;
import pappus.scenario.Scenarios;

final class PayloadPlaceRuleTest {
  private final PayloadPlaceRule rule = new PayloadPlaceRule();

  @Test
  void fitsWithoutPayload() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void fitsWhereTheSizeIsNotSaid() {
    assertThat(carrying(null, null).says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void fitsBetweenTheDiscs() {
    assertThat(carrying(30.0, 20.0).says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesWhereItReachesIntoTheDiscs() {
    assertThat(carrying(300.0, 300.0).says(rule, build()))
        .startsWith("clashes: The payload reaches ")
        .endsWith(" but must stay 3 mm clear.");
  }

  /** It sits where the pilot's camera does, 60 mm ahead, 50 mm from the axes on either side. */
  @Test
  void holdsAPayloadCameraToTheSame() {
    assertThat(Bench.plain().says(rule, build(with(payloadCamera(), "widthMillimetres", 5))))
        .isEqualTo(FITS);
    assertThat(Bench.plain().says(rule, build(with(payloadCamera(), "widthMillimetres", 80))))
        .startsWith("clashes: The payload camera reaches ")
        .endsWith(" but must stay 3 mm clear.");
  }

  private static Bench carrying(@Nullable Double length, @Nullable Double width) {
    var payload = new Payload("box", 20, 0, 0, length, width);
    return Bench.with(with(Scenarios.plain(), "payload", payload));
  }

  /** One size said is enough to be held to it: a bar across the front discs. */
  @Test
  void oneSizeIsEnoughToBeInTheWay() {
    var bar =
        Bench.with(with(Scenarios.plain(), "payload", new Payload("box", 20, 0, 60, null, 300.0)));

    assertThat(bar.says(rule, build())).startsWith("clashes: The payload reaches ");
  }

  /** The wider the nearer: clear, then within so much of the discs, then so far into them. */
  @Test
  void saysHowNearItComes() {
    var pattern = Pattern.compile(
        "clashes: The payload (comes within|reaches) ([0-9.]+) mm (?:of the propellers|into the propeller discs) on frame frame, but must stay 3 mm clear[.]");
    var last = Double.POSITIVE_INFINITY;
    var near = 0;
    for (var width = 20.0; width < 200; width += 0.5) {
      var said = carrying(30.0, width).says(rule, build());
      var clearance = 3.0;
      if (!said.equals(FITS)) {
        var found = pattern.matcher(said);
        assertThat(found.matches()).as(said).isTrue();
        var millimetres = Double.parseDouble(found.group(2));
        clearance = found.group(1).equals("reaches") ? -millimetres : millimetres;
        assertThat(clearance).isLessThan(3);
        near += clearance >= 0 ? 1 : 0;
      }
      assertThat(clearance).isLessThanOrEqualTo(last);
      last = clearance;
    }
    assertThat(near).isPositive();
    assertThat(last).isNegative();
  }
}
