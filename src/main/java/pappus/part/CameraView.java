package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** What a camera sees of what is before it. */
public record CameraView(
    @JsonPropertyDescription("View from side to side, degrees, 20 to 180.")
    double horizontalDegrees,

    @JsonPropertyDescription("View from top to bottom, degrees, 20 to 180.")
    double verticalDegrees,

    @JsonPropertyDescription(
        "How far it looks up as it is mounted, degrees, -10 to 70; absent: not known, and nothing is told of the horizon or of what discs cover.")
    @Nullable
    Double tiltDegrees,

    @JsonPropertyDescription("Middle of its lens above its side screws, mm, -20 to 20; absent: 0.")
    @Nullable
    Double heightMillimetres) {
  public CameraView {
    Require.inRange("horizontalDegrees", horizontalDegrees, 20, 180);
    Require.inRange("verticalDegrees", verticalDegrees, 20, 180);
    if (tiltDegrees != null) {
      Require.inRange("tiltDegrees", tiltDegrees, -10, 70);
    }
    if (heightMillimetres != null) {
      Require.inRange("heightMillimetres", heightMillimetres, -20, 20);
    }
  }
}
