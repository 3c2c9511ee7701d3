package pappus.answers.result;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import pappus.assessment.Assessment;
import pappus.assessment.Heat;
import pappus.assessment.flight.FlightEstimate;
import pappus.physics.flight.Limits;
import pappus.scenario.Scenario;

/** How a build flies, with every digit. */
public final class FlightJson {
  private FlightJson() {}

  /**
   * Hover, course, full throttle and heat.
   *
   * @param planWith share of the estimate to plan with
   */
  static Map<String, Object> of(
      FlightEstimate flight, Assessment assessment, Scenario scenario, double planWith) {
    var content = new LinkedHashMap<String, Object>();
    var endurance = flight.endurance();
    content.put("seconds", endurance.seconds());
    content.put("endsBy", key(endurance.ending()));
    content.put("usedMilliampHours", endurance.discharge().usedCoulomb() / 3.6);
    content.put("meanWatts", endurance.meanPowerW());
    content.put("startVolts", endurance.discharge().startVolts());
    content.put("endVolts", endurance.discharge().endVolts());
    content.put("startAmps", endurance.discharge().startA());
    content.put("endAmps", endurance.discharge().endA());
    content.put("style", scenario.flight().style());
    flight.course().ifPresent(course -> CourseJson.put(content, flight, course, planWith));
    var hover = new LinkedHashMap<String, Object>();
    hover.put("volts", flight.volts());
    hover.put("amps", flight.amps());
    hover.put("watts", flight.split().totalW());
    hover.put("throttle", flight.duty());
    hover.put("motorAmps", flight.hover().steady().point().currentA());
    hover.put("rpm", flight.hover().steady().point().speedRadPerS() * 30 / Math.PI);
    hover.put("momentumWatts", flight.hover().idealPowerW());
    hover.put("efficiency", flight.efficiency());
    content.put("hover", hover);
    content.put("powerSplit", flight.split());
    content.put("draws", flight.draws());
    content.put("beyondBelief", assessment.isBeyondBelief());
    content.put("thrustToWeight", flight.thrustToWeight());
    content.put("freshThrustToWeight", flight.freshThrustToWeight());
    var full = new LinkedHashMap<String, Object>();
    full.put("thrustNewtons", flight.full().thrustN());
    full.put("throttle", flight.full().duty());
    full.put("cappedBy", key(flight.full().limit()));
    full.put("motorAmps", flight.full().point().currentA());
    full.put("amps", flight.full().busCurrentA());
    full.put("volts", flight.full().busVolts());
    content.put("fullThrottle", full);
    content.put("heat", CourseJson.heat(Heat.of(scenario, assessment)));
    content.put("continuousAmps", amps(flight.continuous()));
    content.put("burstAmps", amps(flight.burst()));
    return content;
  }

  /** Unknown ratings are left out: JSON has no infinity. */
  private static Map<String, Object> amps(Limits limits) {
    var content = new LinkedHashMap<String, Object>();
    put(content, "motor", limits.motorA());
    put(content, "controller", limits.controllerA());
    put(content, "pack", limits.packA());
    put(content, "plug", limits.connectorA());
    put(content, "lead", limits.leadA());
    return content;
  }

  private static void put(Map<String, Object> content, String name, double amps) {
    if (amps < Double.POSITIVE_INFINITY) {
      content.put(name, amps);
    }
  }

  /** A constant as it stands in JSON. */
  public static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
