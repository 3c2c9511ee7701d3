package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** Air and pack temperature at the place of flight. */
public record Air(
    @JsonPropertyDescription("Geopotential altitude, m, 0 to 6000.")
    double altitudeMetres,

    @JsonPropertyDescription(
        "Temperature of the air, °C, -30 to 50; absent: that of a standard day there.")
    @Nullable
    Double temperatureCelsius,

    @JsonPropertyDescription(
        "Temperature of the pack at take-off, °C, -10 to 50; absent: 25, kept warm.")
    @Nullable
    Double packTemperatureCelsius) {
  private static final double KEPT_WARM_CELSIUS = 25;

  public Air {
    Require.inRange("altitudeMetres", altitudeMetres, 0, 6000, "Maybe it was written in feet.");
    if (temperatureCelsius != null) {
      Require.inRange(
          "temperatureCelsius", temperatureCelsius, -30, 50, "Maybe it was written in kelvin.");
    }
    if (packTemperatureCelsius != null) {
      Require.inRange(
          "packTemperatureCelsius",
          packTemperatureCelsius,
          -10,
          50,
          "Below -10 °C nothing is predicted.");
    }
  }

  /** Temperature of the pack at take-off, °C. */
  public double packTemperatureOrWarm() {
    return packTemperatureCelsius == null ? KEPT_WARM_CELSIUS : packTemperatureCelsius;
  }
}
