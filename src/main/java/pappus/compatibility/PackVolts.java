package pappus.compatibility;

import pappus.catalog.Battery;
import pappus.catalog.VoltWindow;
import pappus.scenario.Scenario;

/**
 * Between which volts a pack stands, from its floor at full throttle to full.
 *
 * <p>Why: src/site/markdown/decisions.md#the-volts-a-pack-is-charged-to-move-its-charge-not-the-fit-rules
 */
public final class PackVolts {
  private PackVolts() {}

  /** Whether something with that window may hang straight on the pack. */
  public static boolean within(VoltWindow input, Battery battery, Scenario scenario) {
    return input.holds(PowerPlanner.lowestVolts(battery, scenario))
        && input.holds(PowerPlanner.highestVolts(battery));
  }
}
