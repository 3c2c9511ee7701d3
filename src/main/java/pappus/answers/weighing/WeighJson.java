package pappus.answers.weighing;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pappus.answers.result.BriefJson;
import pappus.answers.result.NamedParts;
import pappus.scenario.Scenario;
import pappus.weighing.FlightFit;
import pappus.weighing.StyleFit;
import pappus.weighing.WeighIn;
import pappus.weighing.Weighed;

/** Estimate against scale and flights, with every digit. */
public record WeighJson(
    @JsonPropertyDescription("The build as estimated.") BriefJson build,

    @JsonPropertyDescription("The build with what was measured.")
    BriefJson buildAfter,

    @JsonPropertyDescription("What was weighed.") List<Reading> masses,

    @JsonPropertyDescription("Where readings contradict each other.")
    Optional<String> contradiction,

    @JsonPropertyDescription("Where it is over the cap of the scenario.")
    Optional<String> overCap,

    @JsonPropertyDescription("What flights say of each style.")
    List<Style> styles,

    @JsonPropertyDescription("Scale of the current sensor, share.")
    Optional<Double> sensorScale,

    @JsonPropertyDescription("The same in words.") Optional<String> sensor,
    @JsonPropertyDescription("Files that were written.") List<String> written) {
  /** One thing that was weighed. */
  record Reading(
      @JsonPropertyDescription("What it is.") String what,

      @JsonPropertyDescription("Id of the part, where it is one.")
      Optional<String> part,

      @JsonPropertyDescription("By the records, g.") double estimatedGrams,
      @JsonPropertyDescription("One standard deviation, g.") double estimatedDoubt,
      @JsonPropertyDescription("By the scale, g.") double measuredGrams,
      @JsonPropertyDescription("One standard deviation, g.") double measuredDoubt,

      @JsonPropertyDescription("Measured less estimated, g.")
      double differenceGrams,

      @JsonPropertyDescription("Whether the two agree.") boolean agrees,

      @JsonPropertyDescription("Whether it is the difference of two readings.")
      boolean derived) {
    static Reading of(Weighed one, NamedParts parts) {
      return new Reading(
          one.what(),
          one.part().map(parts::id),
          one.estimatedGrams(),
          one.estimatedDoubt(),
          one.measuredGrams(),
          one.measuredDoubt(),
          one.differenceGrams(),
          one.agrees(),
          one.isDerived());
    }
  }

  /** What flights of one style say. */
  record Style(
      @JsonPropertyDescription("Which.") String style,

      @JsonPropertyDescription("By which the power of the propellers is to be corrected.")
      double powerFactor,

      @JsonPropertyDescription("One standard deviation of it.")
      double doubt,

      @JsonPropertyDescription("The flights.") List<Flown> flights,
      @JsonPropertyDescription("The same in words.") String text) {
    static Style of(StyleFit fit) {
      return new Style(
          fit.style(),
          fit.factor(),
          fit.doubt(),
          fit.flights().stream().map(Flown::of).toList(),
          WeighWords.fit(fit));
    }
  }

  /** One flight. */
  record Flown(
      @JsonPropertyDescription("Its line in the file.") int line,
      @JsonPropertyDescription("How long, min.") double minutes,
      @JsonPropertyDescription("Charged after it, mAh.") double chargedMilliampHours,
      @JsonPropertyDescription("Computed, mAh.") double computedMilliampHours,
      @JsonPropertyDescription("What it says of the power.") double factor,
      @JsonPropertyDescription("Read before landing, V.") Optional<Double> landingVolts,
      @JsonPropertyDescription("Computed, V.") Optional<Double> computedLandingVolts,
      @JsonPropertyDescription("The two in words.") Optional<String> landing) {
    static Flown of(FlightFit flight) {
      return new Flown(
          flight.row().line(),
          flight.row().minutes(),
          flight.row().chargedMilliampHours(),
          flight.computedMilliampHours(),
          flight.factor(),
          some(flight.row().landingVolts()),
          some(flight.computedLandingVolts()),
          WeighWords.landing(flight));
    }
  }

  /**
   * The answer.
   *
   * @param written files that were written
   * @param parts gains those that are named by id
   */
  static WeighJson of(WeighIn result, Scenario scenario, List<String> written, NamedParts parts) {
    var scale = some(result.sensorScale());
    return new WeighJson(
        BriefJson.of(result.assessment(), scenario, parts),
        BriefJson.of(result.after(), scenario, parts),
        result.weighed().stream().map(one -> Reading.of(one, parts)).toList(),
        WeighWords.contradiction(result),
        WeighWords.overCap(result, scenario.massCap()),
        result.fits().stream().map(Style::of).toList(),
        scale,
        scale.map(WeighWords::sensor),
        written);
  }

  private static Optional<Double> some(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
