package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.payloadCamera;
import static pappus.part.Parts.with;

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
}
