package pappus.compatibility;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.fitting.PowerPlanner;
import pappus.part.Role;
import pappus.quantity.Sentence;

/** No rail may carry more than it delivers, with a fifth to spare. */
public final class RegulatorLoadRule extends PowerRule {
  private static final Set<Role> WITH_ANTENNA = Stream.concat(
          PowerPlanner.READS.stream(), Stream.of(Role.VIDEO_ANTENNA))
      .collect(Collectors.toUnmodifiableSet());

  private final boolean dependsOnAntenna;

  RegulatorLoadRule() {
    this(false);
  }

  /** @param dependsOnAntenna whether what video draws depends on its antenna */
  RegulatorLoadRule(boolean dependsOnAntenna) {
    this.dependsOnAntenna = dependsOnAntenna;
  }

  @Override
  public Set<Role> reads() {
    return dependsOnAntenna ? WITH_ANTENNA : super.reads();
  }

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
