package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** A camera in the box, the mass and the watts of its transmitter. */
public record BundledCamera(
    @JsonPropertyDescription("Analogue, or the digital family it belongs to.")
    String family,

    @JsonPropertyDescription("Width between its side screws, mm, 8 to 40.")
    double widthMillimetres,

    @JsonPropertyDescription("Height between plates it needs when tilted, mm.")
    double leastInnerHeightMillimetres,

    @JsonPropertyDescription("Length of its cable, mm; 0: plain wires, any length.")
    double cableMillimetres,

    @JsonPropertyDescription("What it sees; absent: not known.") @Nullable
    CameraView view)
    implements CameraUnit {
  public BundledCamera {
    Require.name("family", family);
    Require.inRange("widthMillimetres", widthMillimetres, 8, 40);
    Require.inRange("leastInnerHeightMillimetres", leastInnerHeightMillimetres, 8, 50);
    Require.inRange("cableMillimetres", cableMillimetres, 0, 400);
  }
}
