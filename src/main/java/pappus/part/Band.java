package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Radio bands. */
public enum Band {
  @JsonProperty("868-915-mhz")
  MHZ_900("868/915 MHz", 8.92e8),
  @JsonProperty("2.4-ghz")
  GHZ_2_4("2.4 GHz", 2.44e9),
  @JsonProperty("5.8-ghz")
  GHZ_5_8("5.8 GHz", 5.8e9);

  private final String label;
  private final double hertz;

  Band(String label, double hertz) {
    this.label = label;
    this.hertz = hertz;
  }

  /** About its middle, Hz. */
  public double hertz() {
    return hertz;
  }

  /** As written on data sheets. */
  public String label() {
    return label;
  }
}
