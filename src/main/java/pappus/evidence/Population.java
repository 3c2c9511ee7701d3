package pappus.evidence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * What the records of a catalogue together say of one trait. Of the scatter about their class laws some is real, some
 * is doubt, and some is what a maker's figures share.
 *
 * <p>Why: src/site/markdown/decisions.md#a-catalogue-narrows-spreads-and-widens-doubts
 *
 * @param spread one standard deviation of ln of the real differences; at most the class's
 * @param widening factor on the stated doubts, from 1
 * @param makerSpread one standard deviation of ln of what makers' figures share; 0 if nothing of the kind shows
 * @param leans of makers
 */
record Population(double spread, double widening, double makerSpread, Map<String, Lean> leans) {
  /**
   * How a maker's figures lie together.
   *
   * @param by likeliest ln of stated over true that they share
   * @param deviation one standard deviation of that
   * @param records it rests on
   */
  record Lean(double by, double deviation, int records) {}

  /** Fewer tell nothing of their spread (engineering estimate). */
  static final int FEWEST = 12;

  /** Fewer makers tell nothing of what sets them apart (engineering estimate). */
  private static final int FEWEST_MAKERS = 3;

  /** Beyond it, parts differ more than their class law knows, and doubt is no reason (engineering estimate). */
  static final double MOST_WIDENING = 3;

  /** The least share of a class's spread: nothing that is made is all alike (engineering estimate). */
  private static final double LEAST_SPREAD = 0.1;

  private static final double MOST_MAKER_SPREAD = 0.3;
  private static final int ROUNDS = 3;
  private static final int STEPS = 24;

  Population {
    leans = Map.copyOf(leans);
  }

  /** The class alone. */
  static Population ofClass(Trait trait) {
    return new Population(trait.classSpread(), 1, 0, Map.of());
  }

  /** As much as the readings of a trait show. */
  static Population of(Trait trait, List<Reading> readings) {
    var told = readings.stream().filter(reading -> !reading.isOnItsLaw()).toList();
    return told.size() < FEWEST ? ofClass(trait) : new Sample(trait, told).population();
  }

  /** One standard deviation of ln of a reading's error, a lean of its maker left aside. */
  double doubt(Reading reading) {
    return doubt(reading, widening);
  }

  private static double doubt(Reading reading, double widening) {
    return reading.isBenched() ? reading.doubt() : widening * reading.doubt();
  }

  /** What a maker's figures share; what makers may, for one of whom nothing is known. */
  Lean lean(String maker) {
    return leans.getOrDefault(maker, new Lean(0, makerSpread, 0));
  }

  /** Greatest likelihood of one number after the other, records that look like blunders hardly counting. */
  private static final class Sample {
    private final Trait trait;
    private final List<Reading> readings;
    private final double[] away;
    private final double[] sound;
    private final Map<String, int[]> byMaker = new LinkedHashMap<>();
    private double spread;
    private double widening = 1;
    private double makerSpread;

    Sample(Trait trait, List<Reading> readings) {
      this.trait = trait;
      this.readings = readings;
      this.spread = trait.classSpread();
      this.away = readings.stream().mapToDouble(Reading::away).toArray();
      this.sound = new double[away.length];
      var places = new TreeMap<String, List<Integer>>();
      for (var i = 0; i < away.length; i++) {
        places
            .computeIfAbsent(readings.get(i).maker(), maker -> new ArrayList<>())
            .add(i);
      }
      places.forEach(
          (maker, at) -> byMaker.put(maker, at.stream().mapToInt(i -> i).toArray()));
    }

    Population population() {
      var most = trait.classSpread();
      var leans = new TreeMap<String, Lean>();
      for (var round = 0; round < ROUNDS; round++) {
        weigh(leans);
        if (byMaker.size() >= FEWEST_MAKERS) {
          makerSpread =
              likeliest(share -> likelihood(spread, widening, share), 0, MOST_MAKER_SPREAD);
        }
        // Noise is taken out as it is stated: with doubts widened first, all variety would be
        // doubt.
        spread = likeliest(share -> likelihood(share, 1, makerSpread), LEAST_SPREAD * most, most);
        widening = likeliest(factor -> likelihood(spread, factor, makerSpread), 1, MOST_WIDENING);
        leans.clear();
        byMaker.forEach((maker, at) -> leans.put(maker, lean(at)));
      }
      return new Population(spread, widening, makerSpread, leans);
    }

    /** How likely each record is no blunder. */
    private void weigh(Map<String, Lean> leans) {
      byMaker.forEach((maker, at) -> {
        var lean = leans.getOrDefault(maker, new Lean(0, 0, 0)).by();
        for (var i : at) {
          var error = doubt(readings.get(i), widening);
          sound[i] = 1
              - Posterior.of(away[i] - lean, spread, error, Double.POSITIVE_INFINITY)
                  .blunder();
        }
      });
    }

    private Lean lean(int[] at) {
      var precision = 0.0;
      var sum = 0.0;
      for (var i : at) {
        var weight = sound[i] / variance(i, spread, widening);
        precision += weight;
        sum += weight * away[i];
      }
      var own = makerSpread * makerSpread;
      return new Lean(
          own * sum / (1 + own * precision),
          makerSpread / Math.sqrt(1 + own * precision),
          at.length);
    }

    private double variance(int i, double spread, double widening) {
      var error = doubt(readings.get(i), widening);
      return spread * spread + error * error;
    }

    /** ln of it, of normal figures whose makers' shares are normal, too. */
    private double likelihood(double spread, double widening, double makerSpread) {
      var own = makerSpread * makerSpread;
      var sum = 0.0;
      for (var at : byMaker.values()) {
        var precision = 0.0;
        var first = 0.0;
        var second = 0.0;
        for (var i : at) {
          var variance = variance(i, spread, widening);
          var weight = sound[i] / variance;
          precision += weight;
          first += weight * away[i];
          second += weight * away[i] * away[i];
          sum -= sound[i] * StrictMath.log(variance) / 2;
        }
        var free = 1 + own * precision;
        sum -= (StrictMath.log(free) + second - own * first * first / free) / 2;
      }
      return sum;
    }

    /** Where a function with one peak is largest, by golden sections; an end, where that is best. */
    private static double likeliest(DoubleUnaryOperator f, double low, double high) {
      var golden = (Math.sqrt(5) - 1) / 2;
      var a = low;
      var b = high;
      var left = b - golden * (b - a);
      var right = a + golden * (b - a);
      var atLeft = f.applyAsDouble(left);
      var atRight = f.applyAsDouble(right);
      for (var step = 0; step < STEPS; step++) {
        if (atLeft >= atRight) {
          b = right;
          right = left;
          atRight = atLeft;
          left = b - golden * (b - a);
          atLeft = f.applyAsDouble(left);
        } else {
          a = left;
          left = right;
          atLeft = atRight;
          right = a + golden * (b - a);
          atRight = f.applyAsDouble(right);
        }
      }
      var best = (a + b) / 2;
      var atBest = f.applyAsDouble(best);
      if (f.applyAsDouble(low) >= atBest) {
        return low;
      }
      return f.applyAsDouble(high) >= atBest ? high : best;
    }
  }
}
