package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.part.Polarisation;

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
    Polarisation polarisation) {
  /** A pilot who would buy whatever fits. */
  public static final Pilot ANY = new Pilot(null, null, null);

  public Pilot {
    if (video != null) {
      video.check("video");
    }
    if (radio != null) {
      radio.check("radio");
    }
  }
}
