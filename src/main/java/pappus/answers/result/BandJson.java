package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.doubt.Band;
import pappus.doubt.Contribution;
import pappus.doubt.Measurement;
import pappus.scenario.Goal;

/** How sure an estimate is: metres where the goal is range, else seconds; what makes it wide, and what would narrow it. */
public record BandJson(
    @JsonPropertyDescription("Flight to plan with, s.") Optional<Double> planWithSeconds,

    @JsonPropertyDescription("Range to plan with, m.") Optional<Double> planWithMetres,

    @JsonPropertyDescription("Nine of ten such builds fly longer, s.")
    Optional<Double> lowSeconds,

    @JsonPropertyDescription("Nine of ten such builds get farther, m.")
    Optional<Double> lowMetres,

    @JsonPropertyDescription("One of ten such builds flies longer, s.")
    Optional<Double> highSeconds,

    @JsonPropertyDescription("One of ten such builds gets farther, m.")
    Optional<Double> highMetres,

    @JsonPropertyDescription("One standard deviation, s.") Optional<Double> deviationSeconds,
    @JsonPropertyDescription("One standard deviation, m.") Optional<Double> deviationMetres,

    @JsonPropertyDescription("Half of the band over the estimate, %.")
    double halfWidthPercent,

    @JsonPropertyDescription("What makes it wide, largest first.")
    List<Share> contributions,

    @JsonPropertyDescription("Measurements that would narrow it, best first.")
    List<Narrowed> worthMeasuring) {
  /** What one uncertain number does. */
  record Share(
      @JsonPropertyDescription("The number.") String what,
      @JsonPropertyDescription("What it belongs to.") String source,

      @JsonPropertyDescription("Change at one standard deviation more, s.")
      Optional<Double> seconds,

      @JsonPropertyDescription("Change at one standard deviation more, m.")
      Optional<Double> metres) {
    static Share of(Contribution one, Goal goal) {
      return new Share(
          one.doubt().label(),
          one.source(),
          BandJson.seconds(one.effect(), goal),
          BandJson.metres(one.effect(), goal));
    }
  }

  /** What one measurement would do. */
  record Narrowed(
      @JsonPropertyDescription("What to measure.") String what,

      @JsonPropertyDescription("Half of the band after it, %.")
      double halfWidthPercent) {
    static Narrowed of(Measurement measurement, Band band) {
      return new Narrowed(measurement.label(), 100 * band.halfWidthAfter(measurement));
    }
  }

  /** A band in the unit of the goal. */
  public static BandJson of(Band band, Goal goal) {
    return new BandJson(
        seconds(band.low(), goal),
        metres(band.low(), goal),
        seconds(band.low(), goal),
        metres(band.low(), goal),
        seconds(band.high(), goal),
        metres(band.high(), goal),
        seconds(band.deviation(), goal),
        metres(band.deviation(), goal),
        100 * band.halfWidth(),
        band.largestFirst().stream().map(one -> Share.of(one, goal)).toList(),
        band.worthMeasuring().stream().map(one -> Narrowed.of(one, band)).toList());
  }

  /** A figure where builds are ranked by endurance. */
  public static Optional<Double> seconds(double figure, Goal goal) {
    return Optional.of(figure).filter(seconds -> goal != Goal.RANGE);
  }

  /** A figure where builds are ranked by range. */
  public static Optional<Double> metres(double figure, Goal goal) {
    return Optional.of(figure).filter(metres -> goal == Goal.RANGE);
  }
}
