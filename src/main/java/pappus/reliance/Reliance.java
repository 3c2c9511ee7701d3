package pappus.reliance;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import pappus.assessment.flight.Factors;
import pappus.assessment.flight.FlightEstimate;
import pappus.assessment.flight.Flights;
import pappus.evidence.BuildFigures;
import pappus.evidence.Weighing;
import pappus.links.Links;
import pappus.part.Build;
import pappus.part.Role;
import pappus.physics.airframe.MassChance;
import pappus.scenario.Scenario;

/**
 * How much of an estimate can be relied on, worked out once for frame, motor, propeller, battery and where the
 * controllers' loss is known from. They fly in one state that is the same for all builds with them, and all that
 * differs from kit to kit is how doubtful its mass and its draw are, two variances.
 *
 * <p>Why: src/site/markdown/decisions.md#the-figure-to-plan-with-is-a-share-of-the-estimate
 *
 * @param ofMain variance of what the doubts of the main parts take, share of the flight
 * @param perGram what a gram costs, share of the flight
 * @param perWatt what a watt costs, share of the flight
 */
public record Reliance(double ofMain, double perGram, double perWatt) {
  /** Standard deviations of a normal distribution at its 10 and 90 % points. */
  public static final double TENTH = 1.2815515655446004;

  /** Of what the electronics draw, of which records do not say how it is known (engineering estimate). */
  public static final double AVIONICS = 0.25;

  /** Mass of everything but the main parts and the payload in that state, g (engineering estimate). */
  private static final double OTHER_GRAMS = 24;

  private static final double DIGITAL_GRAMS = 16;
  private static final double GPS_GRAMS = 8;

  /** What it draws, W (engineering estimate). */
  private static final double OTHER_WATTS = 2.7;

  private static final double DIGITAL_WATTS = 3.5;

  /** One standard deviation of the mass there, share of it (engineering estimate). */
  private static final double MASS_DOUBT = 0.016;

  /** A doubt of the figure of merit costs so much of itself at least (engineering estimate). */
  private static final double LEAST_OF_MERIT = 0.6;

  /** One of the charge (engineering estimate). */
  private static final double LEAST_OF_CHARGE = 0.8;

  /** Flights drawn, a multiple of forty, and the seed of what is left to chance. */
  private static final int FLIGHTS = 240;

  /** Of these so many at least, the most harmful first, and more while more of them matter. */
  private static final int FIRST = 60;

  private static final int MORE = 20;

  private static final long SEED = 20_261;

  /** One choice of main parts. */
  private record Main(
      Flights flights, Build build, OptionalDouble loss, double grams, double watts) {
    FlightEstimate flown() {
      return flights.fly(build, loss, grams, watts, Factors.NONE);
    }

    double figure(Factors factors) {
      return flights.figure(build, loss, grams, watts, factors);
    }
  }

  /**
   * What one doubt does.
   *
   * @param harmful one standard deviation of it, with the sign that shortens the flight
   * @param harmless the same the other way
   * @param loss what is lost there, share of the flight
   */
  private record Share(Doubt doubt, double harmful, double harmless, double loss) {
    static Share of(Source source, Main main, double estimate) {
      var more = main.figure(source.doubt().moved(Factors.NONE, source.more()));
      var less = main.figure(source.doubt().moved(Factors.NONE, -source.deviation()));
      return new Share(
          source.doubt(),
          more < less ? source.more() : -source.deviation(),
          more < less ? -source.deviation() : source.more(),
          Math.max(0, 1 - Math.min(more, less) / estimate));
    }

    /** With so many standard deviations toward harm. */
    Factors moved(Factors factors, double deviations) {
      return doubt.moved(factors, deviations > 0 ? deviations * harmful : -deviations * harmless);
    }
  }

  /**
   * Of the main parts of a build.
   *
   * @param flights by the likeliest figures
   * @param build has main parts, and a board unless its figures say that nothing is known of it
   * @param figures what counts of its parts
   */
  public static Reliance of(Scenario scenario, Flights flights, Build build, BuildFigures figures) {
    var parts = Build.empty()
        .with(Role.FRAME, build.frame().orElseThrow())
        .with(Role.MOTOR, build.motor().orElseThrow())
        .with(Role.PROPELLER, build.propeller().orElseThrow())
        .with(Role.BATTERY, build.battery().orElseThrow());
    var grams = otherGrams(scenario);
    var watts = otherWatts(scenario);
    for (var entry : parts.parts().entrySet()) {
      grams += parts.count(entry.getKey()) * entry.getValue().mass().grams();
    }
    var main =
        new Main(flights, parts, figures.board().rippleShare(Weighing.EXPECTED), grams, watts);
    var flown = main.flown();
    var estimate = flown.figure();
    var least = leastVariance(
        figures.propeller().merit().deviation(), figures.battery().delivered().deviation());
    if (estimate <= 0) {
      return new Reliance(least, 0, 0);
    }
    var sources =
        Sources.of(build, figures, flown, flights.asksForDrag(), scenario.air().windOrCalm() > 0);
    sources.add(new Source(Doubt.AVIONICS, "electronics", AVIONICS));
    sources.add(new Source(Doubt.MASS, "mass", MASS_DOUBT * grams));
    var shares =
        sources.stream().map(source -> Share.of(source, main, estimate)).toList();
    var lost = Math.max(0, 1 - tenth(main, shares) / estimate) / TENTH;
    var ofMass = shares.get(shares.size() - 1).loss;
    var ofDraw = shares.get(shares.size() - 2).loss;
    return new Reliance(
        Math.max(least, lost * lost - ofMass * ofMass - ofDraw * ofDraw),
        ofMass / MASS_DOUBT / grams,
        ofDraw / AVIONICS / watts);
  }

  /** Mass of everything but the main parts in the state in which they fly, g. */
  static double otherGrams(Scenario scenario) {
    return scenario.payloadGrams()
        + OTHER_GRAMS
        + (isDigital(scenario) ? DIGITAL_GRAMS : 0)
        + (scenario.wants(Role.GPS) ? GPS_GRAMS : 0);
  }

  /** What it draws, W. */
  static double otherWatts(Scenario scenario) {
    return OTHER_WATTS
        + (isDigital(scenario) ? DIGITAL_WATTS : 0)
        + new Links(scenario).usualWattsOfReach();
  }

  private static boolean isDigital(Scenario scenario) {
    var family = scenario.pilotOrAny().video();
    return family != null && family.areDigital();
  }

  /**
   * What nine of ten flights reach. Where a flight may end by one limit or another, doubts that are harmless one by one
   * do harm together, so they are drawn together: evenly in the direction in which they do most, which is nearly all
   * there is to them, and by chance across it.
   */
  private static double tenth(Main main, List<Share> shares) {
    var variance = shares.stream().mapToDouble(share -> share.loss * share.loss).sum();
    var random = new Random(SEED);
    var figures = new double[FLIGHTS];
    var flown = 0;
    var least = Double.POSITIVE_INFINITY;
    var isSettled = false;
    while (flown < FLIGHTS && !isSettled) {
      // Those that are drawn first do most harm: where more of them change nothing, the rest would
      // not either.
      var more = Math.min(FLIGHTS, flown + (flown == 0 ? FIRST : MORE));
      isSettled = flown > 0;
      for (; flown < more; flown++) {
        var drawn = shares.stream().mapToDouble(share -> random.nextGaussian()).toArray();
        var along = -MassChance.deviations((flown + 0.5) / FLIGHTS);
        for (var j = 0; j < drawn.length; j++) {
          along -= drawn[j] * shares.get(j).loss / Math.sqrt(variance);
        }
        var factors = Factors.NONE;
        for (var j = 0; j < drawn.length; j++) {
          var share = shares.get(j);
          factors = share.moved(factors, drawn[j] + along * share.loss / Math.sqrt(variance));
        }
        figures[flown] = main.figure(factors);
        isSettled &= figures[flown] >= least;
      }
      Arrays.sort(figures, 0, flown);
      least = figures[FLIGHTS * 5 / 40 - 1];
    }
    // The mean of those about the tenth: a single one is more chance.
    return Arrays.stream(figures, FLIGHTS * 3 / 40, FLIGHTS * 5 / 40).average().orElseThrow();
  }

  /**
   * No build with a propeller and a battery of such doubts has a larger share to plan with.
   *
   * @param merit one standard deviation of ln of the figure of merit
   * @param charge of the charge delivered
   */
  static double most(double merit, double charge) {
    return ofLosses(leastVariance(merit, charge));
  }

  /** Nearly all power goes through the propellers, and nearly all charge is flown: nobody is surer than these are. */
  private static double leastVariance(double merit, double charge) {
    var ofMerit = LEAST_OF_MERIT * merit;
    var ofCharge = LEAST_OF_CHARGE * charge;
    return ofMerit * ofMerit + ofCharge * ofCharge;
  }

  /**
   * Share of the estimate to plan with, 0 to 1.
   *
   * @param doubtGrams one standard deviation of the mass, g
   * @param watts draw of everything but the motors, W
   */
  public double planWith(double doubtGrams, double watts) {
    var ofGrams = perGram * doubtGrams;
    var ofWatts = perWatt * AVIONICS * watts;
    return ofLosses(ofMain + ofGrams * ofGrams + ofWatts * ofWatts);
  }

  /** What is relied on of an estimate, 0 to 1, whose losses at one standard deviation are independent shares of it. */
  public static double ofLosses(double variance) {
    return Math.max(0, 1 - TENTH * Math.sqrt(variance));
  }

  /** What nine of ten stay below of something with such a standard deviation, over its expectation. */
  public static double tenth(double deviation) {
    return TENTH * deviation;
  }
}
