package pappus.evidence;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import pappus.quantity.Require;

/**
 * One uncertain figure of a record.
 *
 * <p>Why: src/site/markdown/decisions.md#a-figure-counts-by-what-two-normal-sources-say-together
 *
 * @param name in words, as "resistance"
 * @param unit as in the catalogue; empty for a pure number
 * @param stated the record's own, without the known bias of labels; empty if the prior stands in
 * @param prior median of what parts of its class have
 * @param priorDeviation one standard deviation of ln of the prior, as the catalogue leaves it
 * @param doubt one standard deviation of ln of the record's own figure, as the catalogue leaves it
 * @param posterior median of what prior and record say together, which counts
 * @param deviation one standard deviation of ln of the posterior
 * @param blunder probability that the record's figure is a blunder, 0 to 1
 * @param drawnBy what makes it count otherwise than stated, in the order of {@link Reason}
 */
public record Figure(
    String name,
    String unit,
    Optional<Double> stated,
    double prior,
    double priorDeviation,
    double doubt,
    double posterior,
    double deviation,
    double blunder,
    List<Reason> drawnBy) {
  /** What moves ln of a figure by less is no reason. */
  private static final double LEAST_REASON = 0.003;

  static final double NO_CEILING = Double.POSITIVE_INFINITY;

  public Figure {
    Require.text("name", name);
    Require.positive("prior", prior);
    Require.positive("posterior", posterior);
    drawnBy = List.copyOf(drawnBy);
  }

  /**
   * What counts of a reading among those of its catalogue.
   *
   * @param most above it hardly any part is known; infinite without such a limit
   */
  static Figure weighed(Reading reading, Population population, double most) {
    Require.positive("stated", reading.stated());
    Require.notNegative("doubt", reading.doubt());
    var trait = reading.trait();
    var away = reading.away();
    var ceiling = StrictMath.log(most / reading.prior());
    if (reading.isOnItsLaw()) {
      var known = Posterior.ofClass(away, trait.classSpread(), ceiling);
      return new Figure(
          reading.name(),
          trait.unit(),
          Optional.of(reading.stated()),
          reading.prior(),
          trait.classSpread(),
          reading.doubt(),
          reading.prior() * StrictMath.exp(known.mean()),
          known.deviation(),
          0,
          away - known.mean() > LEAST_REASON ? List.of(Reason.CEILING) : List.of());
    }
    var doubt = population.doubt(reading);
    var lean =
        reading.doubt() == 0 ? new Population.Lean(0, 0, 0) : population.lean(reading.maker());
    var spread = population.spread();
    var known = Posterior.of(away - lean.by(), spread, doubt, ceiling);
    // What is not known of a maker's lean is taken over in the share in which the record counts.
    var share = spread * spread / (spread * spread + doubt * doubt);
    return new Figure(
        reading.name(),
        trait.unit(),
        Optional.of(reading.stated()),
        reading.prior(),
        spread,
        doubt,
        reading.prior() * StrictMath.exp(known.mean()),
        StrictMath.hypot(known.deviation(), share * lean.deviation()),
        known.blunder(),
        reasons(reading, population, lean.by(), known.mean()));
  }

  /** Each that moves it, taken one after the other. */
  private static List<Reason> reasons(
      Reading reading, Population population, double lean, double counted) {
    var away = reading.away();
    var spread = population.spread();
    var doubt = population.doubt(reading);
    var steps = new EnumMap<Reason, Double>(Reason.class);
    steps.put(Reason.CLASS, normal(away, reading.trait().classSpread(), reading.doubt()));
    steps.put(Reason.NARROW_CATALOGUE, normal(away, spread, reading.doubt()));
    steps.put(Reason.SCATTER, normal(away, spread, doubt));
    steps.put(Reason.MAKER, normal(away - lean, spread, doubt));
    steps.put(
        Reason.BLUNDER, Posterior.of(away - lean, spread, doubt, NO_CEILING).mean());
    steps.put(Reason.CEILING, counted);
    var reasons = new ArrayList<Reason>();
    var before = away;
    for (var step : steps.entrySet()) {
      if (Math.abs(step.getValue() - before) > LEAST_REASON) {
        reasons.add(step.getKey());
      }
      before = step.getValue();
    }
    return reasons;
  }

  private static double normal(double away, double spread, double doubt) {
    return spread * spread / (spread * spread + doubt * doubt) * away;
  }

  /** A figure that the record does not have. */
  static Figure ofPrior(String name, String unit, double prior, double priorDeviation) {
    return new Figure(
        name,
        unit,
        Optional.empty(),
        prior,
        priorDeviation,
        priorDeviation,
        prior,
        priorDeviation,
        0,
        List.of());
  }

  /**
   * A figure that the record does not have and that its class filled: half a spread the harmful way.
   *
   * @param filled as it counts
   * @param spread one standard deviation of ln within the class
   */
  static Figure filled(String name, String unit, double filled, double prior, double spread) {
    return new Figure(
        name, unit, Optional.empty(), prior, spread, spread, filled, spread, 0, List.of());
  }

  /**
   * The figure to compute with.
   *
   * @param harm 1 if a larger figure shortens flights, -1 if a smaller one does, 0 if it depends
   */
  public double by(Weighing weighing, int harm) {
    return switch (weighing) {
      case STATED -> stated.orElse(prior);
      case EXPECTED -> posterior;
      case CAUTIOUS -> posterior * StrictMath.exp(0.5 * harm * deviation);
    };
  }

  /** Posterior over stated; 1 without a figure of the record's own. */
  public double change() {
    return posterior / stated.orElse(posterior);
  }
}
