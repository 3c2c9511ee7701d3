package pappus.compatibility;

import org.jspecify.annotations.Nullable;
import pappus.fitting.PowerPlanner;
import pappus.quantity.Sentence;

/** Every consumer must have a source inside its volts, from the full pack down to its floor. */
public final class InputWindowRule extends PowerRule {
  @Override
  public String id() {
    return "input-window";
  }

  @Override
  public boolean mayBeWaived() {
    return false;
  }

  @Override
  @Nullable
  Sentence obstacle(PowerPlanner.Outcome power) {
    return power.window();
  }
}
