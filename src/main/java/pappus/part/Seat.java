package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How a propeller is held on a motor. */
public enum Seat {
  @JsonProperty("press-1mm")
  PRESS_1("press fit on a 1 mm shaft"),
  @JsonProperty("press-1.5mm")
  PRESS_1_5("press fit on a 1.5 mm shaft"),
  @JsonProperty("press-2mm")
  PRESS_2("press fit on a 2 mm shaft"),
  @JsonProperty("screws-1.5mm")
  SCREWS_1_5("two M2 screws round a 1.5 mm shaft"),
  @JsonProperty("screws-2mm")
  SCREWS_2("two M2 screws round a 2 mm shaft"),
  @JsonProperty("nut-m5")
  NUT_M5("5 mm shaft with an M5 nut");

  private final String label;

  Seat(String label) {
    this.label = label;
  }

  /** In words. */
  public String label() {
    return label;
  }

  /** Whether only friction holds the propeller. */
  public boolean isPressFit() {
    return this == PRESS_1 || this == PRESS_1_5 || this == PRESS_2;
  }

  /** Whether two screws hold the propeller. */
  public boolean isScrewed() {
    return this == SCREWS_1_5 || this == SCREWS_2;
  }
}
