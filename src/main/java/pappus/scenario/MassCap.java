package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** The heaviest the aircraft may be at take-off, payload and all. */
public record MassCap(
    @JsonPropertyDescription("Cap, g, 20 to 25000.") double grams,

    @JsonPropertyDescription("Whether the mass must stay below the cap; else it may equal it.")
    boolean strict,

    @JsonPropertyDescription(
        "The rule behind the cap, in the builder's words; absent: none is told.")
    @Nullable
    String rule,

    @JsonPropertyDescription(
        "Probability of staying under it that the builder asks for, 0.5 to 0.9999; absent: 0.95.")
    @Nullable
    Double confidence) {
  /** Heavier than any quad of the trade, g. */
  public static final double MOST_GRAMS = 25_000;

  private static final double USUAL_CONFIDENCE = 0.95;

  public MassCap {
    Require.inRange("grams", grams, 20, MOST_GRAMS, "Maybe it was written in kilograms.");
    if (rule != null) {
      Require.text("rule", rule);
    }
    if (confidence != null) {
      Require.inRange("confidence", confidence, 0.5, 0.9999, "Maybe it was written in percent.");
    }
  }

  /** The rule in brackets behind what it caps, with a blank before; empty where none is told. */
  public String because() {
    return rule == null ? "" : " (" + rule + ")";
  }

  /** The confidence asked for, or the usual one. */
  public double confidenceOrUsual() {
    return confidence == null ? USUAL_CONFIDENCE : confidence;
  }

  /** Greatest whole number of milligrams that keeps the cap. */
  public long largestMilligrams() {
    var milligrams = Math.round(grams * 1000);
    return strict ? milligrams - 1 : milligrams;
  }
}
