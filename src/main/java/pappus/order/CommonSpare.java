package pappus.order;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.SmallThing;
import pappus.quantity.Require;
import pappus.scenario.Spare;

/** What is bought beyond what flies of one role or of one kind of small hardware, common to all builds that use it. */
public record CommonSpare(
    @JsonPropertyDescription("What of, such as propeller; absent: small hardware.") @Nullable
    Role role,

    @JsonPropertyDescription("What small hardware of, such as battery-strap; absent: a role.")
    @Nullable
    SmallThing hardware,

    @JsonPropertyDescription("Pieces more, 1 to 200; absent: units.") @Nullable
    Integer pieces,

    @JsonPropertyDescription("Selling units more, 1 to 200; absent: pieces.") @Nullable
    Integer units,

    @JsonPropertyDescription(
        "So many for each such number of builds that use the part, begun ones too, 1 to 200; absent: once for each part that is used.")
    @Nullable
    Integer perBuilds) {
  public CommonSpare {
    new Spare(role, hardware, pieces, units);
    if (perBuilds != null) {
      Require.inRange("perBuilds", perBuilds, 1, 200);
    }
  }

  /** What it is of, as a build's parts are labelled. */
  public String label() {
    return spare().label();
  }

  private Spare spare() {
    return new Spare(role, hardware, pieces, units);
  }

  /** Pieces of a part each time. */
  public int each(Part part) {
    return spare().piecesOf(part);
  }

  /** How often that is for so many builds that use a part. */
  public int times(int builds) {
    return builds == 0 ? 0 : perBuilds == null ? 1 : (builds + perBuilds - 1) / perBuilds;
  }
}
