package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** How a part is sold. What flies is not what is bought: purchases round up to whole units. */
public record Sale(
    @JsonPropertyDescription("The selling unit.") Unit unit,

    @JsonPropertyDescription("Pieces in one unit, 1 to 1000.")
    int pieces) {
  /** One piece at a time. */
  public static final Sale EACH = new Sale(Unit.EACH, 1);

  /** Names of selling units. */
  public enum Unit {
    @JsonProperty("each")
    EACH,
    @JsonProperty("set")
    SET,
    @JsonProperty("bag")
    BAG,
    @JsonProperty("kit")
    KIT
  }

  public Sale {
    Require.present("unit", unit);
    Require.inRange("pieces", pieces, 1, 1000);
  }

  /** Units to buy for so many pieces. */
  public int unitsFor(int needed) {
    return (needed + pieces - 1) / pieces;
  }
}
