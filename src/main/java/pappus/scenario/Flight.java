package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** How the aircraft is flown and when it lands. */
public record Flight(
    @JsonPropertyDescription("How it is flown.") Style style,

    @JsonPropertyDescription(
        "Share of the charge kept at landing, 0 to 0.9; absent: LiPo 0.20, Li-ion 0.10.")
    @Nullable
    Double reserve,

    @JsonPropertyDescription(
        "Volts of a cell in steady flight at which to land, 2.5 to 4.1; absent: LiPo 3.5, Li-ion 3.0.")
    @Nullable
    Double landingVoltsPerCell,

    @JsonPropertyDescription(
        "Volts of a cell at full throttle not to be passed, 2 to 4; absent: LiPo 3.0, Li-ion 2.5.")
    @Nullable
    Double floorVoltsPerCell,

    @JsonPropertyDescription(
        "State of charge at which thrust-to-weight is judged, 0.2 to 1; absent: 0.5, mid-flight.")
    @Nullable
    Double thrustAtCharge,

    @JsonPropertyDescription(
        "Share of thrust lost to arms and body under the discs, 0 to 0.3; absent: 0.05, an engineering estimate.")
    @Nullable
    Double thrustLost) {
  private static final double MID_FLIGHT = 0.5;
  private static final double USUAL_THRUST_LOST = 0.05;

  /** Ways of flying. */
  public enum Style {
    /** Standing in calm air. */
    @JsonProperty("hover")
    HOVER,
    @JsonProperty("loiter")
    LOITER,
    @JsonProperty("cruise")
    CRUISE
  }

  public Flight {
    Require.present("style", style);
    if (style != Style.HOVER) {
      throw new IllegalArgumentException(
          "style must be hover, but is loiter or cruise: forward flight is not computed yet.");
    }
    if (reserve != null) {
      Require.inRange("reserve", reserve, 0, 0.9, "Maybe it was written in percent.");
    }
    if (landingVoltsPerCell != null) {
      Require.inRange(
          "landingVoltsPerCell", landingVoltsPerCell, 2.5, 4.1, "Maybe it is that of the pack.");
    }
    if (floorVoltsPerCell != null) {
      Require.inRange(
          "floorVoltsPerCell", floorVoltsPerCell, 2, 4, "Maybe it is that of the pack.");
    }
    if (thrustAtCharge != null) {
      Require.inRange("thrustAtCharge", thrustAtCharge, 0.2, 1);
    }
    if (thrustLost != null) {
      Require.inRange("thrustLost", thrustLost, 0, 0.3);
    }
  }

  /** State of charge at which thrust-to-weight is judged. */
  public double thrustAtChargeOrMidFlight() {
    return thrustAtCharge == null ? MID_FLIGHT : thrustAtCharge;
  }

  /** Share of thrust lost to arms and body. */
  public double thrustLostOrUsual() {
    return thrustLost == null ? USUAL_THRUST_LOST : thrustLost;
  }
}
