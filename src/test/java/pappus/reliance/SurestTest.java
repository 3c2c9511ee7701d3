package pappus.reliance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pappus.assessment.flight.Flights;
import pappus.catalog.Shipped;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/** What three parts are relied on at most, against builds with them. */
class SurestTest {
  private static final Scenario SCENARIO = Scenarios.plain();
  private static final Flights FLIGHTS =
      new Flights(SCENARIO, Weighing.EXPECTED, 1, Evidence.of(Shipped.CATALOG.parts()));

  private final Random random = new Random(3);

  /** It is what a search may know early: it is not to change what is planned with. */
  @Test
  void hardlyEverCountsForABuild() {
    var reliances = new Reliances(SCENARIO, FLIGHTS);
    var builds = 0;
    var counted = 0;
    while (builds < 400) {
      var build = Build.empty()
          .with(Role.FRAME, any(Frame.class))
          .with(Role.MOTOR, any(Motor.class))
          .with(Role.PROPELLER, any(Propeller.class))
          .with(Role.BATTERY, any(Battery.class))
          .with(Role.BOARD, any(Board.class));
      Reliance own;
      try {
        own = reliances.of(build);
      } catch (IllegalArgumentException outsideTheModel) {
        continue;
      }
      if (own.perGram() == 0) {
        continue;
      }
      builds++;
      var figures = FLIGHTS.models().figures(build);
      var most = reliances
          .surest(build)
          .with(
              figures.board().rippleShare(Weighing.EXPECTED),
              reliances.doubt(build.board().orElseThrow()));
      if (most.planWith(1, 3) < own.planWith(1, 3)) {
        counted++;
      }
    }
    assertThat(counted).isLessThan(builds / 20);
  }

  @Test
  void isLessTheMoreIsLostAndDoubted() {
    var surest = new Surest(0.001, 0.4, 0.005, 0.1);

    var usual = surest.with(OptionalDouble.empty(), 0.35).planWith(1, 3);

    assertThat(surest.with(OptionalDouble.of(0.5), 0.35).planWith(1, 3)).isGreaterThan(usual);
    assertThat(surest.with(OptionalDouble.of(2), 0.35).planWith(1, 3)).isEqualTo(usual);
    assertThat(surest.with(OptionalDouble.empty(), 0.45).planWith(1, 3)).isLessThan(usual);
    assertThat(surest.with(OptionalDouble.empty(), 0.35).planWith(2, 3)).isLessThan(usual);
    assertThat(surest.with(OptionalDouble.empty(), 0.35).planWith(1, 4)).isLessThan(usual);
  }

  private <P extends Part> P any(Class<P> kind) {
    var parts = Shipped.CATALOG.parts().stream().filter(kind::isInstance).toList();
    return kind.cast(parts.get(random.nextInt(parts.size())));
  }
}
