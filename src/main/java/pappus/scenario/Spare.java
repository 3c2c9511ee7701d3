package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.SmallThing;
import pappus.quantity.Require;

/** What is bought beyond what flies, of one role or of one kind of small hardware. */
public record Spare(
    @JsonPropertyDescription("What of, such as propeller; absent: small hardware.") @Nullable
    Role role,

    @JsonPropertyDescription("What small hardware of, such as battery-strap; absent: a role.")
    @Nullable
    SmallThing hardware,

    @JsonPropertyDescription("Pieces more, bought in whole selling units, 1 to 200; absent: units.")
    @Nullable
    Integer pieces,

    @JsonPropertyDescription("Selling units more, 1 to 200; absent: pieces.") @Nullable
    Integer units) {
  /** The most of anything: more is a shop's order. */
  static final int MOST = 200;

  public Spare {
    if ((role == null) == (hardware == null)) {
      Require.refuse(
          role == null
              ? "role must be there where hardware is not, but neither is."
              : "role must be left out where hardware is stated, but both are.");
    }
    if ((pieces == null) == (units == null)) {
      Require.refuse(
          pieces == null
              ? "pieces must be there where units are not, but neither is."
              : "pieces must be left out where units are stated, but both are.");
    }
    if (pieces != null) {
      Require.inRange("pieces", pieces, 1, MOST);
    }
    if (units != null) {
      Require.inRange("units", units, 1, MOST);
    }
  }

  /** Pieces of a role's part. */
  public static Spare pieces(Role role, int pieces) {
    return new Spare(role, null, pieces, null);
  }

  /** What it is of, as a build's parts are labelled. */
  public String label() {
    return role != null ? role.label() : hardware != null ? hardware.label() : "";
  }

  /** Pieces of a part, the whole of each selling unit. */
  public int piecesOf(Part part) {
    return pieces != null ? pieces : units == null ? 0 : units * part.sold().pieces();
  }
}
