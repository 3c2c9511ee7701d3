package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Polarisation of an antenna. */
public enum Polarisation {
  @JsonProperty("left")
  LEFT("left-hand circular"),
  @JsonProperty("right")
  RIGHT("right-hand circular"),
  @JsonProperty("linear")
  LINEAR("linear");

  private final String label;

  Polarisation(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Whether the two are circular and of opposite hands, which costs about 20 dB. */
  public boolean opposes(Polarisation other) {
    return (this == LEFT && other == RIGHT) || (this == RIGHT && other == LEFT);
  }
}
