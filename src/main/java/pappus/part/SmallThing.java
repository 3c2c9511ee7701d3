package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Small hardware of a build, which follows from its parts, by what it does. */
public enum SmallThing {
  @JsonProperty("motor-screws")
  MOTOR_SCREWS("motor screws"),
  @JsonProperty("propeller-screws")
  PROPELLER_SCREWS("propeller screws"),
  @JsonProperty("propeller-nuts")
  PROPELLER_NUTS("propeller nuts"),
  @JsonProperty("reducing-rings")
  REDUCING_RINGS("reducing rings"),
  @JsonProperty("stack-hardware")
  STACK_HARDWARE("stack screws and spacers"),
  @JsonProperty("stack-adapter")
  STACK_ADAPTER("stack adapter"),
  @JsonProperty("camera-shims")
  CAMERA_SHIMS("camera shims"),
  @JsonProperty("battery-strap")
  BATTERY_STRAP("battery strap"),
  @JsonProperty("battery-pad")
  BATTERY_PAD("battery pad"),
  @JsonProperty("solder-and-ties")
  SOLDER_AND_TIES("solder, heat-shrink, ties");

  private final String label;

  SmallThing(String label) {
    this.label = label;
  }

  /** The words a person uses. */
  public String label() {
    return label;
  }
}
