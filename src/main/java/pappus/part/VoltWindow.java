package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** Volts a part stands. */
public record VoltWindow(
    @JsonPropertyDescription("Below this it drops out, V.") double lowVolts,
    @JsonPropertyDescription("Above this it is damaged, V.") double highVolts) {
  public VoltWindow {
    Require.inRange("lowVolts", lowVolts, 1, 60);
    Require.inRange("highVolts", highVolts, lowVolts, 70);
  }

  /** Whether one voltage is inside. */
  public boolean holds(double volts) {
    return volts >= lowVolts && volts <= highVolts;
  }
}
