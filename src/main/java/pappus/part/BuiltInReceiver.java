package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/**
 * A radio receiver on a flight board; it takes no serial port, and its watts are the board's.
 */
public record BuiltInReceiver(
    @JsonPropertyDescription("Radio link family it speaks.") String link,
    @JsonPropertyDescription("Its antenna ports.") @ByClass AntennaPort antenna,

    @JsonPropertyDescription("Whether its antennas are fixed to it.") @ByClass
    boolean antennaFixed,

    @JsonPropertyDescription("The weakest signal that it follows.") @ByClass
    Sensitivity sensitivity)
    implements RadioReceiver {
  public BuiltInReceiver {
    Require.name("link", link);
    Require.present("antenna", antenna);
    Require.present("sensitivity", sensitivity);
  }
}
