package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.part.Mass;
import pappus.quantity.Require;

/** What is carried besides the aircraft itself. */
public record Payload(
    @JsonPropertyDescription("What it is.") String name,

    @JsonPropertyDescription("Its mass with mount, g, 0 or 0.01 to 5000.")
    double massGrams,

    @JsonPropertyDescription("What it draws from the pack, W, 0 to 50; 0 with a cell of its own.")
    double watts,

    @JsonPropertyDescription("Where its middle sits, mm forward of the motor centre, -200 to 200.")
    double xMillimetres,

    @JsonPropertyDescription(
        "Its length along the aircraft, mm, 0 to 300; absent: small, clear of the propellers.")
    @Nullable
    Double lengthMillimetres,

    @JsonPropertyDescription(
        "Its width across the aircraft, mm, 0 to 300; absent: small, clear of the propellers.")
    @Nullable
    Double widthMillimetres) {
  public Payload {
    Require.name("name", name);
    Require.inRange("massGrams", massGrams, 0, 5000);
    if (massGrams > 0 && massGrams < Mass.LEAST_GRAMS) {
      Require.refuse("massGrams must be 0 or at least %s, but is %s. Maybe it is not in grams."
          .formatted(Require.plain(Mass.LEAST_GRAMS), Require.plain(massGrams)));
    }
    Require.inRange("watts", watts, 0, 50);
    Require.inRange("xMillimetres", xMillimetres, -200, 200);
    if (lengthMillimetres != null) {
      Require.inRange("lengthMillimetres", lengthMillimetres, 0, 300);
    }
    if (widthMillimetres != null) {
      Require.inRange("widthMillimetres", widthMillimetres, 0, 300);
    }
  }
}
