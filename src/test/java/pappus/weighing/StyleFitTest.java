package pappus.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class StyleFitTest {
  private static StyleFit of(double... factors) {
    var none = OptionalDouble.empty();
    return StyleFit.of(
        "hover",
        DoubleStream.of(factors)
            .mapToObj(factor -> new FlightFit(
                new FlightRow(
                    "f.csv",
                    2,
                    "hover",
                    10,
                    600 * factor,
                    Optional.empty(),
                    Optional.of("new"),
                    none,
                    none,
                    none,
                    none),
                600,
                factor,
                none,
                2))
            .toList());
  }

  /** The usual scatter of 0.05, and 3 % of 1.1 for the charger. */
  @Test
  void takesTheUsualScatterForOneFlight() {
    var fit = of(1.1);
    assertThat(fit.factor()).isEqualTo(1.1);
    assertThat(fit.doubt()).isCloseTo(Math.sqrt(0.0025 + 0.001089), within(1e-12));
  }

  /** Squares of 0.02 and twice 0.0025 over four, over three flights; and 3 % of 1.1. */
  @Test
  void drawsTheScatterOfSeveralTowardTheUsualOne() {
    var fit = of(1, 1.1, 1.2);
    assertThat(fit.factor()).isCloseTo(1.1, within(1e-12));
    assertThat(fit.doubt()).isCloseTo(Math.sqrt(0.00625 / 3 + 0.001089), within(1e-12));
    assertThat(fit.doubt()).isCloseTo(0.05632, within(1e-5));
  }

  /** Many alike flights leave the charger's own error. */
  @Test
  void neverFallsBelowTheErrorOfTheCharger() {
    var alike = DoubleStream.generate(() -> 1).limit(1000).toArray();
    assertThat(of(alike).doubt()).isBetween(0.03, 0.0301);
  }
}
