package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** The weakest signal that a receiver follows: the more packets a second, the stronger it has to be. */
public record Sensitivity(
    @JsonPropertyDescription("The signal, dBm, -140 to -60.")
    double dbm,

    @JsonPropertyDescription("Packets a second at which it is so, 1 to 2000.")
    double packetsPerSecond) {
  public Sensitivity {
    Require.inRange("dbm", dbm, -140, -60);
    Require.inRange("packetsPerSecond", packetsPerSecond, 1, 2000);
  }
}
