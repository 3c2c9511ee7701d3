package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Require;

/** The mass of one piece. */
public record Mass(
    @AlsoSaid("weight: 8.7 g, 8.7 g with 100 mm wire, 78 g without leads, 6.8 g / set of 8")
    @JsonPropertyDescription("Mass, g, from 0.01 to 5000.")
    double grams,

    @JsonPropertyDescription("How it is known.") @ByClass Known known,

    @JsonPropertyDescription(
        "One standard deviation, g; absent: measured 0.1 g, maker's 3 %, estimated 10 % (common practice, no published source).")
    @Nullable
    Double doubtGrams) {
  /** What weighs less has no mass of its own, g. */
  public static final double LEAST_GRAMS = 0.01;

  private static final double MEASURED_DOUBT_GRAMS = 0.1;
  private static final double MAKER_DOUBT = 0.03;
  private static final double ESTIMATED_DOUBT = 0.10;

  public Mass {
    Require.inRange("grams", grams, LEAST_GRAMS, 5000, "Maybe it is not in grams.");
    Require.present("known", known);
    if (doubtGrams != null) {
      Require.inRange("doubtGrams", doubtGrams, 0, grams);
    }
  }

  /** A mass without a doubt of its own. */
  public static Mass of(double grams, Known known) {
    return new Mass(grams, known, null);
  }

  /** One standard deviation of one piece, g. */
  public double standardDeviationGrams() {
    if (doubtGrams != null) {
      return doubtGrams;
    }
    return switch (known) {
      case MEASURED -> MEASURED_DOUBT_GRAMS;
      case MAKER -> MAKER_DOUBT * grams;
      case ESTIMATED -> ESTIMATED_DOUBT * grams;
    };
  }
}
