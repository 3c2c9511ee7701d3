package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** Air and pack temperature at the place of flight. */
public record Air(
    @JsonPropertyDescription("Geopotential altitude, m, -430 to 6000.")
    double altitudeMetres,

    @JsonPropertyDescription(
        "Temperature of the air, °C, -30 to 50; absent: that of a standard day there.")
    @Nullable
    Double temperatureCelsius,

    @JsonPropertyDescription(
        "Temperature of the pack at take-off, °C, -10 to 50; absent: 25, kept warm.")
    @Nullable
    Double packTemperatureCelsius,

    @JsonPropertyDescription(
        "Mean wind while it hovers or loiters, m/s, 0 to 15; absent: 0. The wind of a cruise or a leg is its own.")
    @Nullable
    Double windMetresPerSecond,

    @JsonPropertyDescription(
        "How much the wind comes and goes, one standard deviation over its mean, 0 to 0.5; absent: 0.17 as over grass.")
    @Nullable
    Double gusts) {
  private static final double KEPT_WARM_CELSIUS = 25;

  /** At 10 m over grass, from memory; among trees some .3. */
  private static final double OVER_GRASS = 0.17;

  /** The Dead Sea's shore. */
  private static final double LOWEST_METRES = -430;

  public Air {
    Require.inRange(
        "altitudeMetres", altitudeMetres, LOWEST_METRES, 6000, "Maybe it was written in feet.");
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
    if (windMetresPerSecond != null) {
      Require.inRange(
          "windMetresPerSecond", windMetresPerSecond, 0, 15, "Maybe it was written in km/h.");
    }
    if (gusts != null) {
      Require.inRange("gusts", gusts, 0, 0.5, "Maybe it was written in percent.");
      if (windMetresPerSecond == null) {
        Require.refuse("gusts must come with windMetresPerSecond, but that is left out.");
      }
    }
  }

  /** Mean wind, m/s. */
  public double windOrCalm() {
    return windMetresPerSecond == null ? 0 : windMetresPerSecond;
  }

  /** One standard deviation of the wind over its mean. */
  public double gustsOrUsual() {
    return gusts == null ? OVER_GRASS : gusts;
  }

  /** Temperature of the pack at take-off, °C. */
  public double packTemperatureOrWarm() {
    return packTemperatureCelsius == null ? KEPT_WARM_CELSIUS : packTemperatureCelsius;
  }
}
