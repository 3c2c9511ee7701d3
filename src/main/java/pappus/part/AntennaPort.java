package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** Where antennas are plugged in. */
public record AntennaPort(
    @JsonPropertyDescription("The plug.") AntennaConnector connector,
    @JsonPropertyDescription("What it radiates or hears.") Band band,

    @JsonPropertyDescription("Ports, 1 to 4; every one must be filled.")
    int count) {
  public AntennaPort {
    Require.present("connector", connector);
    Require.present("band", band);
    Require.inRange("count", count, 1, 4);
  }
}
