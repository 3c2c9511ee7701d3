package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** Four holes in a square. */
public record MountingHoles(
    @JsonPropertyDescription("Side of the square.") StackPattern pattern,

    @JsonPropertyDescription("Diameter of a hole, mm, 1 to 6.") @ByClass
    double holeMillimetres,

    @JsonPropertyDescription(
        "True if the square stands on its corner, its holes on the centre lines.")
    @ByClass
    boolean turned) {
  public MountingHoles {
    Require.present("pattern", pattern);
    Require.inRange("holeMillimetres", holeMillimetres, 1, 6);
  }
}
