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
    int count,

    @JsonPropertyDescription(
        "Gain of the antenna that comes with it, dBi, -10 to 20; absent: none does, or as usual of its plug and band.")
    @Nullable
    Double gainDbi,

    @JsonPropertyDescription(
        "Polarisation of the antenna that comes with it; absent: none does, or as usual of its plug and band.")
    @Nullable
    Polarisation polarisation) {
  public AntennaPort {
    Require.present("band", band);
    Require.inRange("count", count, 1, 4);
    if (gainDbi != null) {
      Require.inRange("gainDbi", gainDbi, Antenna.LEAST_GAIN_DBI, Antenna.MOST_GAIN_DBI);
    }
  }
}
