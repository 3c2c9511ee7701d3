package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Plugs of antennas. Some look alike and do not mate. */
public enum AntennaConnector {
  @JsonProperty("u.fl")
  U_FL("u.FL"),
  /** A smaller size that looks like u.FL. */
  @JsonProperty("small-u.fl")
  SMALL_U_FL("small u.FL"),
  @JsonProperty("mmcx")
  MMCX("MMCX"),
  @JsonProperty("sma")
  SMA("SMA"),
  @JsonProperty("rp-sma")
  RP_SMA("RP-SMA"),
  @JsonProperty("soldered")
  SOLDERED("soldered");

  private final String label;

  AntennaConnector(String label) {
    this.label = label;
  }

  /** As written on data sheets. */
  public String label() {
    return label;
  }

  /** Whether the two are easily taken for each other. */
  public boolean looksLike(AntennaConnector other) {
    return this != other
        && ((isCoaxSnap() && other.isCoaxSnap()) || (isThreaded() && other.isThreaded()));
  }

  private boolean isCoaxSnap() {
    return this == U_FL || this == SMALL_U_FL;
  }

  private boolean isThreaded() {
    return this == SMA || this == RP_SMA;
  }
}
