package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/**
 * One leg of a profile: so far over ground, or so long, or as long as the way home allows. A leg in seconds without an airspeed circles over a spot at
 * the airspeed of best endurance; with an airspeed of zero it stands over it; both fly as fast as the wind where that
 * is faster.
 */
public record Leg(
    @JsonPropertyDescription("Length over ground, m, 1 to 100000; absent: the leg is in seconds.")
    @Nullable
    Double metres,

    @JsonPropertyDescription(
        "How long it lasts, s, 1 to 36000; absent: the leg is in metres, or lasts as long as possible.")
    @Nullable
    Double seconds,

    @JsonPropertyDescription(
        "Speed through the air, m/s, 0 to 60, 0 standing over a spot for a leg in seconds; absent: that of best range, for a leg in seconds that of best endurance, circling.")
    @Nullable
    Double airspeedMetresPerSecond,

    @JsonPropertyDescription(
        "Wind against the leg, m/s, -30 to 30, below 0 from behind; absent: 0.")
    @Nullable
    Double headwindMetresPerSecond,

    @JsonPropertyDescription("Wind across the leg, m/s, -30 to 30; absent: 0.") @Nullable
    Double crosswindMetresPerSecond,

    @JsonPropertyDescription(
        "Whether it lasts as long as the legs after it allow, for which charge is kept back; then every leg is flown once. At most one leg of a profile; absent: false.")
    @Nullable
    Boolean asLongAsPossible,

    @JsonPropertyDescription(
        "Of a leg that lasts as long as possible: whether the legs before it are flown home after it, the last one first, with the wind the other way; absent: false.")
    @Nullable
    Boolean back) {
  private static final double MOST_WIND = 30;

  public Leg {
    if (metres != null && seconds != null) {
      Require.refuse("seconds must be left out where metres are given, but both are given.");
    }
    var stays = asLongAsPossible != null && asLongAsPossible;
    if (stays && metres != null) {
      Require.refuse("metres must be left out where a leg lasts as long as possible, but is %s."
          .formatted(Require.plain(metres)));
    } else if (stays && seconds != null) {
      Require.refuse("seconds must be left out where a leg lasts as long as possible, but is %s."
          .formatted(Require.plain(seconds)));
    }
    if (!stays && metres == null && seconds == null) {
      Require.refuse("metres must be given, or else seconds, but neither is given.");
    }
    if (!stays && back != null && back) {
      Require.refuse(
          "back must be left out unless asLongAsPossible is true. Maybe it belongs to another leg.");
    }
    if (metres != null) {
      Require.inRange("metres", metres, 1, 100_000);
    }
    if (seconds != null) {
      Require.inRange("seconds", seconds, 1, 36_000);
    }
    if (airspeedMetresPerSecond != null) {
      Require.inRange(
          "airspeedMetresPerSecond",
          airspeedMetresPerSecond,
          0,
          Flight.MOST_AIRSPEED,
          "Maybe it was written in km/h.");
      if (metres != null && airspeedMetresPerSecond == 0) {
        Require.refuse(
            "airspeedMetresPerSecond must be above 0 in a leg of metres, but is 0. Maybe the leg is one of seconds.");
      }
    }
    if (headwindMetresPerSecond != null) {
      Require.inRange(
          "headwindMetresPerSecond",
          headwindMetresPerSecond,
          -MOST_WIND,
          MOST_WIND,
          "Maybe it was written in km/h.");
    }
    if (crosswindMetresPerSecond != null) {
      Require.inRange(
          "crosswindMetresPerSecond",
          crosswindMetresPerSecond,
          -MOST_WIND,
          MOST_WIND,
          "Maybe it was written in km/h.");
    }
  }

  /** Whether it leads from one place to another, and does not stay over a spot. */
  public boolean coversGround() {
    return metres != null || (airspeedMetresPerSecond != null && airspeedMetresPerSecond > 0);
  }

  /** Whether it lasts as long as the legs after it allow. */
  public boolean stays() {
    return asLongAsPossible != null && asLongAsPossible;
  }

  /** Whether the legs before it are flown home after it. */
  public boolean leadsBack() {
    return back != null && back;
  }

  /** The same way home. */
  Leg reversed() {
    return new Leg(
        metres,
        seconds,
        airspeedMetresPerSecond,
        headwindMetresPerSecond == null ? null : 0 - headwindMetresPerSecond,
        crosswindMetresPerSecond == null ? null : 0 - crosswindMetresPerSecond,
        null,
        null);
  }

  /** Wind against it, m/s. */
  public double headwindOrNone() {
    return headwindMetresPerSecond == null ? 0 : headwindMetresPerSecond;
  }

  /** Wind across it, m/s. */
  public double crosswindOrNone() {
    return crosswindMetresPerSecond == null ? 0 : crosswindMetresPerSecond;
  }
}
