package pappus.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Motors whose speeds belong to another number of poles: with the thrust of the same propeller they disagree by one
 * ratio of whole numbers with what other motors turn, or at full throttle by far with what their label's Kv allows.
 */
final class PoleCounts {
  /** Pole pairs of motors of drones; a controller's electrical speed counts as one. */
  private static final int MOST_PAIRS = 8;

  /** Speeds at equal thrust agree within 0.5 % between the motors of published rows. */
  private static final double AGREE = 0.06;

  private static final double NEAR_RATIO = 0.03;

  /** Half of the rows lie within this of one ratio, or they are glitches. */
  private static final double STEADY = 0.05;

  private static final int FEWEST_ROWS = 3;

  /** At full throttle motors turn at 0.65 to 0.95 of the label's Kv times the volts; an engineering estimate. */
  private static final double USUAL_OF_LABEL = 0.8;

  private static final double LEAST_OF_LABEL = 0.44;
  private static final double MOST_OF_LABEL = 1.05;

  private final Map<String, List<BenchRow>> byMotor = new TreeMap<>();

  private PoleCounts(List<BenchRow> rows) {
    rows.stream()
        .filter(row -> row.speedRpm() > 0)
        .forEach(row ->
            byMotor.computeIfAbsent(row.motorKey(), key -> new ArrayList<>()).add(row));
  }

  /** What is wrong with a motor's speeds, by its key; only those motors of which it can be told. */
  static Map<String, String> wrong(List<BenchRow> rows) {
    return new PoleCounts(rows).wrong();
  }

  private Map<String, String> wrong() {
    var wrong = new LinkedHashMap<String, String>();
    byMotor.forEach((key, rows) -> {
      var ratio = ofLabel(rows);
      if (ratio < LEAST_OF_LABEL || ratio > MOST_OF_LABEL) {
        wrong.put(
            key,
            "turns %s times as fast at full throttle as the Kv on its label leads to expect"
                .formatted(shown(ratio / USUAL_OF_LABEL)));
      }
    });
    var sound = byMotor.keySet().stream().filter(key -> !wrong.containsKey(key)).toList();
    sound.stream()
        .min(Comparator.<String>comparingLong(key -> -agreeing(key, sound))
            .thenComparingDouble(key -> Math.abs(Math.log(ofLabel(rows(key)) / USUAL_OF_LABEL)))
            .thenComparing(Comparator.naturalOrder()))
        .ifPresent(reference -> sound.forEach(key -> {
          var ratio = ratio(rows(key), rows(reference));
          if (ratio.isPresent() && Math.abs(ratio.getAsDouble()) > AGREE) {
            wholeNumbers(ratio.getAsDouble())
                .ifPresent(whole -> wrong.put(
                    key,
                    "turns %s times as fast as motor %s at equal thrust, as %s"
                        .formatted(shown(StrictMath.exp(ratio.getAsDouble())), reference, whole)));
          }
        }));
    return wrong;
  }

  private List<BenchRow> rows(String key) {
    return byMotor.getOrDefault(key, List.of());
  }

  private long agreeing(String key, List<String> others) {
    return others.stream()
        .filter(other -> !other.equals(key))
        .map(other -> ratio(rows(key), rows(other)))
        .filter(ratio -> ratio.isPresent() && Math.abs(ratio.getAsDouble()) <= AGREE)
        .count();
  }

  /** Speed over the label's Kv times the volts at the highest pulse, the median; as usual if it cannot be told. */
  private static double ofLabel(List<BenchRow> rows) {
    var highest = rows.stream().mapToDouble(BenchRow::pulseMicroseconds).max().orElse(0);
    return highest < RowResiduals.LOWEST_FULL_MICROSECONDS
        ? USUAL_OF_LABEL
        : median(rows.stream()
            .filter(row -> row.pulseMicroseconds() == highest)
            .map(row -> row.speedRpm() / (row.labelKvRpmPerVolt() * row.volts()))
            .toList());
  }

  /** ln of how many times as fast one motor turns as another at equal thrust of the same propellers. */
  private static OptionalDouble ratio(List<BenchRow> rows, List<BenchRow> others) {
    var ratios = new ArrayList<Double>();
    for (var row : rows) {
      others.stream()
          .filter(other -> other.propellerKey().equals(row.propellerKey()))
          .min(Comparator.comparingDouble(other -> Math.abs(push(other) - push(row))))
          // Speed goes with the root of the thrust.
          .ifPresent(other -> ratios.add(
              StrictMath.log(row.speedRpm() / other.speedRpm()) - 0.5 * (push(row) - push(other))));
    }
    if (ratios.size() < FEWEST_ROWS) {
      return OptionalDouble.empty();
    }
    var middle = median(ratios);
    var apart = median(ratios.stream().map(one -> Math.abs(one - middle)).toList());
    return apart < STEADY ? OptionalDouble.of(middle) : OptionalDouble.empty();
  }

  /** ln of T/(ρ D⁴), which for one propeller goes with the square of its speed. */
  private static double push(BenchRow row) {
    return StrictMath.log(row.thrustGrams() / row.airDensityKgPerCubicMetre())
        - 4 * StrictMath.log(row.diameterMillimetres());
  }

  /** The numbers of pole pairs whose ratio is nearest; none if even that is too far. */
  private static Optional<String> wholeNumbers(double lnRatio) {
    var nearest = Optional.<String>empty();
    var least = NEAR_RATIO;
    for (var sum = 3; sum <= 2 * MOST_PAIRS; sum++) {
      for (var over = Math.max(1, sum - MOST_PAIRS);
          over <= Math.min(MOST_PAIRS, sum - 1);
          over++) {
        var away = Math.abs(lnRatio - StrictMath.log((double) over / (sum - over)));
        // A ratio in larger numbers of the same value differs by rounding at most.
        if (over != sum - over && away < least - 1e-9) {
          least = away;
          nearest = Optional.of(over + " to " + (sum - over));
        }
      }
    }
    return nearest;
  }

  private static double median(List<Double> values) {
    var sorted = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted[sorted.length / 2];
  }

  private static String shown(double ratio) {
    return String.format(Locale.ROOT, "%.2f", ratio);
  }
}
