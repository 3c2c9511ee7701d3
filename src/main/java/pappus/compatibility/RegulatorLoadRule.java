package pappus.compatibility;

import org.jspecify.annotations.Nullable;
import pappus.fitting.PowerPlanner;
import pappus.quantity.Sentence;

/** No rail may carry more than it delivers, with a fifth to spare. */
public final class RegulatorLoadRule extends PowerRule {
  @Override
  public String id() {
    return "regulator-load";
  }

  @Override
  @Nullable
  Sentence obstacle(PowerPlanner.Outcome power) {
    return power.overload();
  }
}
