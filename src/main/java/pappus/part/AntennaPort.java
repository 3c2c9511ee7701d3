package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** Where antennas are plugged in. */
public record AntennaPort(
    @JsonPropertyDescription("The plug; absent: not known.") @Nullable
    AntennaConnector connector,

    @JsonPropertyDescription("What it radiates or hears.") @ByClass
    Band band,

    @JsonPropertyDescription("Ports, 1 to 4; every one must be filled.") @ByClass
    int count) {
  public AntennaPort {
    Require.present("band", band);
    Require.inRange("count", count, 1, 4);
  }
}
