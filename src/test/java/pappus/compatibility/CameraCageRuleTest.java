package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.camera;
import static pappus.part.Parts.frame;
import static pappus.part.Parts.transmitter;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import pappus.part.BundledCamera;
import pappus.part.Parts;
import pappus.part.Role;

final class CameraCageRuleTest {
  private final CameraCageRule rule = new CameraCageRule();

  @Test
  void fitsAtTheWidthOfTheCage() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void fitsWithinOneMillimetre() {
    assertThat(Bench.plain().says(rule, build(with(camera(), "widthMillimetres", 20))))
        .isEqualTo(FITS);
  }

  @Test
  void takesANarrowerCameraWithShims() {
    assertThat(Bench.with(Parts.cameraShims(19, 14))
            .says(rule, build(with(camera(), "widthMillimetres", 14))))
        .isEqualTo("fits, but: The 14 mm camera goes into frame frame with shims shims (1 g).");
  }

  @Test
  void clashesWithoutShims() {
    assertThat(Bench.plain().says(rule, build(with(camera(), "widthMillimetres", 14))))
        .isEqualTo(
            "clashes: The camera is 14 mm wide, but frame frame takes 19 mm and no shims are in stock for it.");
  }

  @Test
  void neverTakesAWiderCamera() {
    assertThat(Bench.with(Parts.cameraShims(28, 19))
            .says(rule, build(with(camera(), "widthMillimetres", 28))))
        .isEqualTo(
            "clashes: The camera is 28 mm wide, but frame frame takes 19 mm and no shims are in stock for it.");
  }

  @Test
  void fitsWhenTheCableReaches() {
    assertThat(Bench.plain().says(rule, build(with(camera(), "cableMillimetres", 80))))
        .isEqualTo(FITS);
  }

  @Test
  void clashesWhenTheCableIsTooShort() {
    assertThat(Bench.plain().says(rule, build(with(camera(), "cableMillimetres", 79))))
        .isEqualTo("clashes: The camera cable is 79 mm long, but needs 80 mm on frame frame.");
  }

  @Test
  void asksForTheCableBehindShimsToo() {
    var camera = with(with(camera(), "widthMillimetres", 14), "cableMillimetres", 79);

    assertThat(Bench.with(Parts.cameraShims(19, 14)).says(rule, build(camera)))
        .isEqualTo("clashes: The camera cable is 79 mm long, but needs 80 mm on frame frame.");
  }

  @Test
  void isUnknownWhenTheFrameDoesNotSay() {
    assertThat(Bench.plain().says(rule, build(with(frame(), "cameraWidthsMillimetres", List.of()))))
        .isEqualTo("unknown: camera widths of frame frame");
  }

  @Test
  void judgesTheCameraSoldWithTheTransmitter() {
    var bundled = new BundledCamera("analogue", 28, 20, 0, null);

    assertThat(Bench.plain()
            .says(rule, build(with(transmitter(), "camera", bundled)).without(Role.CAMERA)))
        .isEqualTo(
            "clashes: The camera is 28 mm wide, but frame frame takes 19 mm and no shims are in stock for it.");
  }
}
