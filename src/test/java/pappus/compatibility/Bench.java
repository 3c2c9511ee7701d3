package pappus.compatibility;

import java.util.List;
import java.util.stream.Collectors;
import pappus.fitting.Fitter;
import pappus.fitting.Fitting;
import pappus.fitting.Stock;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.quantity.Sentence;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;

/**
 * Where tests put parts together and ask one rule.
 *
 * @param stock small hardware at hand
 */
public record Bench(Scenario scenario, List<? extends Part> stock) {
  /** What {@link #says} gives where there is nothing to note. */
  static final String FITS = "fits";

  /** A plain scenario, with motor screws and a strap at hand. */
  public static Bench plain() {
    return new Bench(Scenarios.plain(), Parts.hardware());
  }

  public static Bench with(Scenario scenario) {
    return new Bench(scenario, Parts.hardware());
  }

  public static Bench with(Part... stock) {
    return new Bench(Scenarios.plain(), List.of(stock));
  }

  public Fitting fit(Build build) {
    return new Fitter(scenario, Stock.of(stock)).fit(build);
  }

  /** The verdict in words: fits, fits but, clashes, or unknown. */
  public String says(CompatibilityRule rule, Build build) {
    return rule.check(fit(build))
        .match(
            fits -> fits.notes().isEmpty() ? FITS : "fits, but: " + texts(fits.notes()),
            clashes -> "clashes: " + clashes.reason().text(),
            unknown -> "unknown: " + unknown.missingFact().text());
  }

  private static String texts(List<Sentence> notes) {
    return notes.stream().map(Sentence::text).collect(Collectors.joining(" "));
  }
}
