package pappus.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import pappus.catalog.Catalog;
import pappus.evidence.prior.MotorPriors;
import pappus.part.Motor;

/**
 * Windings of one stator share R·Kv²: the copper in the slots is the same, in more or fewer turns.
 * Where they do not, a resistance or a speed constant is wrong.
 */
final class MotorFamilies {
  /** Spread of resistance in a family that two batches of wire explain (engineering estimate). */
  private static final double MOST_RATIO = 1.25;

  /** The number of a winding at the end of a name. */
  private static final Pattern WINDING = Pattern.compile("[-\\s]*[0-9]+\\s*([kK][vV])?$");

  private MotorFamilies() {}

  /** What makes the motors of one maker, stator and name. */
  private record Family(String maker, String name, double diameter, double height) {
    static Family of(Motor motor) {
      return new Family(
          motor.maker(),
          WINDING.matcher(motor.name()).replaceFirst(""),
          motor.statorDiameterMillimetres(),
          motor.statorHeightMillimetres());
    }
  }

  /** Of each family that disagrees, the motor furthest from its middle, and why. */
  static Map<Motor, String> disagreeing(Catalog catalog) {
    var families = new LinkedHashMap<Family, List<Motor>>();
    for (var motor : catalog.ofKind(Motor.class)) {
      families.computeIfAbsent(Family.of(motor), key -> new ArrayList<>()).add(motor);
    }
    var found = new LinkedHashMap<Motor, String>();
    for (var motors : families.values()) {
      motors.sort(Comparator.comparingDouble(MotorFamilies::product).thenComparing(Motor::id));
      var lowest = motors.get(0);
      var highest = motors.get(motors.size() - 1);
      if (product(highest) > MOST_RATIO * product(lowest)) {
        var middle = product(motors.get(motors.size() / 2));
        var isHigh = product(highest) / middle >= middle / product(lowest);
        var odd = isHigh ? highest : lowest;
        var other = isHigh ? lowest : highest;
        found.put(
            odd,
            "R·Kv² is %s %% %s that of %s, but windings of one stator share it within 25 %%."
                .formatted(
                    Math.round(100 * Math.abs(product(odd) / product(other) - 1)),
                    isHigh ? "above" : "below",
                    other.id()));
      }
    }
    return found;
  }

  /** Ω·rpm²/V². */
  private static double product(Motor motor) {
    return MotorPriors.windingOhms(motor)
        * motor.speedConstantRpmPerVolt()
        * motor.speedConstantRpmPerVolt();
  }
}
