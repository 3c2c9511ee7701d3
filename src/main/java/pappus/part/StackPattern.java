package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Side of the square of holes of a board, mm. */
public enum StackPattern {
  @JsonProperty("16x16")
  P16("16x16", 16),
  @JsonProperty("20x20")
  P20("20x20", 20),
  @JsonProperty("25x25")
  P25("25x25", 25),
  @JsonProperty("25.5x25.5")
  P25_5("25.5x25.5", 25.5),
  /** Counts as 25.5: 0.35 mm a hole, which a grommet takes (common practice, no published source). */
  @JsonProperty("26x26")
  P26("26x26", 26),
  @JsonProperty("30.5x30.5")
  P30_5("30.5x30.5", 30.5);

  private final String label;
  private final double sideMillimetres;

  StackPattern(String label, double sideMillimetres) {
    this.label = label;
    this.sideMillimetres = sideMillimetres;
  }

  /** As written on data sheets. */
  public String label() {
    return label;
  }

  /** Side of the square, mm. */
  public double sideMillimetres() {
    return sideMillimetres;
  }

  /** Whether parts of the two patterns take the same screws. */
  public boolean takes(StackPattern other) {
    return this == other || (isAbout25Half() && other.isAbout25Half());
  }

  private boolean isAbout25Half() {
    return this == P25_5 || this == P26;
  }
}
