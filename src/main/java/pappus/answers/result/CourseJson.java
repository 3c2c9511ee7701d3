package pappus.answers.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import pappus.assessment.Heat;
import pappus.assessment.flight.Course;
import pappus.assessment.flight.FlightEstimate;
import pappus.scenario.Flight;

/** What is flown where it is not hover, and how warm the motors get, as JSON. */
final class CourseJson {
  private CourseJson() {}

  /**
   * Adds the course to what is said of a flight.
   *
   * @param planWith share of the kilometres to plan with
   */
  static void put(
      Map<String, Object> content, FlightEstimate flight, Course course, double planWith) {
    course
        .endsOn()
        .ifPresent(turn -> content.put("endsWhere", course.stretches().get(turn).where()));
    if (course.coversGround()) {
      content.put("rangeMetres", course.rangeMetres());
      if (course.style() == Flight.Style.CRUISE) {
        content.put("turnRoundAfterMetres", planWith * course.rangeMetres() / 2);
      }
    }
    var stretches = new ArrayList<Object>();
    for (var stretch : course.stretches()) {
      var one = new LinkedHashMap<String, Object>();
      one.put("where", stretch.where());
      one.put("airspeedMetresPerSecond", stretch.cruise().airspeedMPerS());
      one.put("groundSpeedMetresPerSecond", stretch.groundSpeedMPerS());
      one.put("coversGround", stretch.coversGround());
      one.put("seconds", stretch.seconds());
      one.put("metres", stretch.metres());
      one.put("tiltDegrees", StrictMath.toDegrees(stretch.cruise().tiltRad()));
      one.put("motorAmps", stretch.cruise().steady().point().currentA());
      if (flight.volts() > 0) {
        one.put("wattsAtHoverVolts", stretch.cruise().steady().busPowerW(flight.volts()));
      }
      one.put("countedAtLeastOfHover", stretch.cruise().isClamped());
      stretches.add(one);
    }
    content.put("stretches", stretches);
    flight.speeds().ifPresent(speeds -> {
      var one = new LinkedHashMap<String, Object>();
      one.put("bestEnduranceMetresPerSecond", speeds.bestEnduranceMPerS());
      one.put("bestEnduranceWatts", speeds.bestEnduranceW());
      one.put("bestRangeMetresPerSecond", speeds.bestRangeMPerS());
      one.put("bestRangeWatts", speeds.bestRangeW());
      one.put("bestRangeOfHover", speeds.bestRangeOfHover());
      one.put("topMetresPerSecondAtMost", speeds.topMPerS());
      one.put(
          "powerAgainstAirspeed",
          speeds.curve().stream()
              .map(step -> {
                var point = new LinkedHashMap<String, Object>();
                point.put("metresPerSecond", step.airspeedMPerS());
                point.put("watts", step.watts());
                return point;
              })
              .toList());
      content.put("speedsInCalmAir", one);
    });
  }

  static Map<String, Object> heat(Heat heat) {
    var content = new LinkedHashMap<String, Object>();
    content.put("steadyWindingCelsius", heat.steadyCelsius());
    content.put("burstWindingCelsius", heat.burstCelsius());
    content.put("burstSeconds", heat.burstSeconds());
    content.put("assumption", Heat.ASSUMPTION);
    return content;
  }
}
