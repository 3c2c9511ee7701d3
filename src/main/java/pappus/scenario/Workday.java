package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** A day of flying one pack after the other; reported only. */
public record Workday(
    @JsonPropertyDescription("From the first take-off to the last landing, min, 10 to 1440.")
    double minutesOnSite,

    @JsonPropertyDescription("From a landing to the next take-off, min, 0 to 60; absent: 3.")
    @Nullable
    Double swapMinutes) {
  private static final double USUAL_SWAP = 3;

  public Workday {
    Require.inRange("minutesOnSite", minutesOnSite, 10, 1440, "Maybe it was written in hours.");
    if (swapMinutes != null) {
      Require.inRange("swapMinutes", swapMinutes, 0, 60, "Maybe it was written in seconds.");
    }
  }

  /** Minutes from a landing to the next take-off (common practice, no published source). */
  public double swapOrUsual() {
    return swapMinutes == null ? USUAL_SWAP : swapMinutes;
  }
}
