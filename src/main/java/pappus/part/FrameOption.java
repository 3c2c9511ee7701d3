package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** A plate or a mount that a frame can be ordered with. */
public record FrameOption(
    @JsonPropertyDescription(
        "What ids of frames ordered with it end in: as catalogue keys, up to 20 letters.")
    String id,

    @JsonPropertyDescription("What it is called.") String name,

    @JsonPropertyDescription(
        "Mass above that of the frame as listed, g, -30 to 30; below 0 where it is lighter than what it replaces.")
    double addedGrams,

    @JsonPropertyDescription("Price above that of the frame as listed; absent: none.") @Nullable
    Money price) {
  private static final int LONGEST_ID = 20;

  public FrameOption {
    Require.id("id", id);
    if (id.length() > LONGEST_ID) {
      Require.refuse(
          "id must have at most %s characters, but has %s.".formatted(LONGEST_ID, id.length()));
    }
    Require.name("name", name);
    Require.inRange("addedGrams", addedGrams, -30, 30);
  }
}
