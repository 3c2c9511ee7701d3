package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.part.Polarisation;
import pappus.quantity.Require;

/** What the pilot has on the ground, which the aircraft must match. */
public record Pilot(
    @JsonPropertyDescription(
        "Video family of the goggles: analogue, a digital family, a list of them, or digital for any of those; absent: any.")
    @Nullable
    Families video,

    @JsonPropertyDescription(
        "Radio link family of the radio, a list of them, or digital for any but analogue; absent: any.")
    @Nullable
    Families radio,

    @JsonPropertyDescription("Polarisation of the antennas on the ground; absent: any.") @Nullable
    Polarisation polarisation,

    @JsonPropertyDescription(
        "Gain of the video antenna on the ground where it hears best, dBi, -10 to 20; absent: 1.5, that of a small one to all sides.")
    @Nullable
    Double antennaGainDbi,

    @JsonPropertyDescription(
        "Height of the antennas on the ground over it, m, 0.2 to 100; absent: 1.5, held in a hand.")
    @Nullable
    Double antennaHeightMetres,

    @JsonPropertyDescription(
        "Weakest signal of which the video receiver on the ground makes a picture, dBm, -120 to -50; absent: as usual, -85 for analogue, -82 for digital families.")
    @Nullable
    Double videoSensitivityDbm,

    @JsonPropertyDescription("Power that the radio sends, mW, 0.1 to 5000; absent: 100.") @Nullable
    Double radioMilliwatts,

    @JsonPropertyDescription(
        "Gain of the radio's antenna, dBi, -10 to 20; absent: 2, that of a whip.")
    @Nullable
    Double radioGainDbi) {
  /** A pilot who would buy whatever fits. */
  public static final Pilot ANY = new Pilot(null, null, null, null, null, null, null, null);

  public Pilot {
    if (video != null) {
      video.check("video");
    }
    if (radio != null) {
      radio.check("radio");
    }
    if (antennaGainDbi != null) {
      Require.inRange("antennaGainDbi", antennaGainDbi, -10, 20);
    }
    if (antennaHeightMetres != null) {
      Require.inRange("antennaHeightMetres", antennaHeightMetres, 0.2, 100);
    }
    if (videoSensitivityDbm != null) {
      Require.inRange("videoSensitivityDbm", videoSensitivityDbm, -120, -50);
    }
    if (radioMilliwatts != null) {
      Require.inRange(
          "radioMilliwatts", radioMilliwatts, 0.1, 5000, "Maybe it was written in watts.");
    }
    if (radioGainDbi != null) {
      Require.inRange("radioGainDbi", radioGainDbi, -10, 20);
    }
  }
}
