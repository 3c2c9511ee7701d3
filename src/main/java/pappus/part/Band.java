package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Radio bands. */
public enum Band {
  @JsonProperty("868-915-mhz")
  MHZ_900("868/915 MHz"),
  @JsonProperty("2.4-ghz")
  GHZ_2_4("2.4 GHz"),
  @JsonProperty("5.8-ghz")
  GHZ_5_8("5.8 GHz");

  private final String label;

  Band(String label) {
    this.label = label;
  }

  /** As written on data sheets. */
  public String label() {
    return label;
  }
}
