package pappus.evidence.prior;

import java.util.ArrayList;
import java.util.List;
import pappus.part.Camera;
import pappus.part.PayloadCamera;
import pappus.part.Transmitter;
import pappus.part.VideoSender;
import pappus.quantity.Require;

/** Cameras and transmitters: what they draw for what they radiate, and must cool. */
final class VideoPriors {
  private static final double DEVIATION = 0.25;

  /** Below this multiple of what it radiates a transmitter draws implausibly little. */
  private static final double LEAST_DRAWN = 3.3;

  /** A digital camera is fed by its transmitter, W (engineering estimate). */
  private static final double CAMERA_WATTS = 0.5;

  private VideoPriors() {}

  static List<String> remarks(Transmitter part) {
    var remarks = new ArrayList<>(powers(part, part.camera() == null ? CAMERA_WATTS : 0));
    var strongest = part.powers().get(part.powers().size() - 1);
    // 1.5 g and a gram for a watt of heat; half to double of it (engineering estimate).
    var law = 1.5 + strongest.watts() - strongest.milliwatts() / 1000;
    var extras = (part.camera() == null ? 0 : 10) + (part.antennaIncluded() ? 3 : 0);
    Bounds.hard(0.5 * law, 2 * law + extras)
        .remark("mass against the heat it must shed", part.mass().grams(), " g")
        .ifPresent(remarks::add);
    return List.copyOf(remarks);
  }

  /**
   * Analogue .57 W + P/.14; digital with its camera 4.0 W + P/.20, 2 to 14 W; ±25 % (common practice,
   * no published source).
   */
  static List<String> powers(VideoSender sender, double cameraWatts) {
    var analogue = sender.family().equals(VideoSender.ANALOGUE);
    var remarks = new ArrayList<String>();
    for (var power : sender.powers()) {
      var radiated = power.milliwatts() / 1000;
      var at = " at " + Require.plain(power.milliwatts()) + " mW";
      if (power.watts() < LEAST_DRAWN * radiated) {
        remarks.add("%s W drawn%s is implausibly little: less than 3.3 times what it radiates."
            .formatted(Bounds.shown(power.watts()), at));
        continue;
      }
      var bounds = analogue
          ? Bounds.about(usualWatts(true, radiated), DEVIATION, 0, 40)
          : Bounds.about(usualWatts(false, radiated), DEVIATION, 2, 14);
      bounds
          .remark("power drawn" + at, power.watts() + (analogue ? 0 : cameraWatts), " W")
          .ifPresent(remarks::add);
    }
    return List.copyOf(remarks);
  }

  static double usualWatts(boolean isAnalogue, double radiated) {
    return isAnalogue ? 0.57 + radiated / 0.14 : 4.0 + radiated / 0.20;
  }

  static List<String> remarks(Camera camera) {
    var remarks = new ArrayList<String>();
    var small = camera.widthMillimetres() < 15;
    // 14 mm 1.5 to 4 g, 19 to 22 mm 4.5 to 10 g (common practice, no published source).
    Bounds.hard(small ? 1.5 : 4.5, small ? 4 : 10)
        .remark("mass", camera.mass().grams(), " g")
        .ifPresent(remarks::add);
    if (camera.family().equals(VideoSender.ANALOGUE)) {
      // .4 to .8 W (common practice, no published source).
      Bounds.hard(0.4, 0.8).remark("power drawn", camera.watts(), " W").ifPresent(remarks::add);
    }
    return List.copyOf(remarks);
  }

  static List<String> remarks(PayloadCamera camera) {
    var cubicCentimetres =
        camera.lengthMillimetres() * camera.widthMillimetres() * camera.heightMillimetres() / 1000;
    var remarks = new ArrayList<String>();
    // Glass, board and air .5 to 1.6 g/cm³, with a cell up to 2.0 (engineering estimate).
    Bounds.hard(0.5, camera.input() == null ? 2.0 : 1.6)
        .remark("density", camera.mass().grams() / cubicCentimetres, " g/cm³")
        .ifPresent(remarks::add);
    if (camera.input() != null) {
      // A sensor and an encoder draw 1.5 to 6 W (common practice, no published source).
      Bounds.hard(1.5, 6).remark("power drawn", camera.watts(), " W").ifPresent(remarks::add);
    }
    return List.copyOf(remarks);
  }
}
