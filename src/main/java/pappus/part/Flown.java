package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/**
 * What a builder's own flights say of the power that is really needed: one factor a way of flying, on all that is
 * computed for it.
 */
public record Flown(
    @JsonPropertyDescription("Way of flying: hover, loiter, cruise or profile.")
    String style,

    @JsonPropertyDescription(
        "Power that the propellers were found to need over what is computed, 0.5 to 2; what would make one better than an ideal propeller does not count.")
    double powerFactor,

    @JsonPropertyDescription("One standard deviation of it, 0 to 0.5.")
    double doubt,

    @JsonPropertyDescription("Flights that it rests on, 1 to 10000.")
    int flights,

    @JsonPropertyDescription("Where it comes from.") String source) {
  /** Name of its list, its schema and, with .json, its file in a catalogue folder. */
  public static final String NAME = "flown";

  public static final String FILE_NAME = NAME + ".json";

  public Flown {
    Require.text("style", style);
    if (!style.matches("hover|loiter|cruise|profile")) {
      Require.refuse("style must be hover, loiter, cruise or profile, but is %s.".formatted(style));
    }
    Require.inRange("powerFactor", powerFactor, 0.5, 2, "Maybe it was written in percent.");
    Require.inRange("doubt", doubt, 0, 0.5);
    Require.inRange("flights", flights, 1, 10_000);
    Require.text("source", source);
  }
}
