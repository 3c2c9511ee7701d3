package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.part.Polarisation;
import pappus.quantity.Require;

/** What the pilot has on the ground, which the aircraft must match. */
public record Pilot(
    @JsonPropertyDescription(
        "Video family of the goggles: analogue, or a digital family; absent: any.")
    @Nullable
    String video,

    @JsonPropertyDescription("Radio link family of the radio; absent: any.") @Nullable
    String radio,

    @JsonPropertyDescription("Polarisation of the antennas on the ground; absent: any.") @Nullable
    Polarisation polarisation) {
  /** A pilot who would buy whatever fits. */
  public static final Pilot ANY = new Pilot(null, null, null);

  public Pilot {
    if (video != null) {
      Require.name("video", video);
    }
    if (radio != null) {
      Require.name("radio", radio);
    }
  }
}
