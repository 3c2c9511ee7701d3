package pappus.assessment;

import java.util.ArrayList;
import java.util.List;
import pappus.assessment.flight.FlightEstimate;
import pappus.compatibility.Clearances;

/** How much room a build has to everything that bounds it, in the units that a builder thinks in. */
public final class Margins {
  private Margins() {}

  /**
   * The limits of an assessment, then thrust and volts in flight, then the room its parts leave each other.
   *
   * @param assessor who judged
   */
  public static List<Limit> of(Assessment assessment, Assessor assessor) {
    var margins = new ArrayList<>(
        assessment.limits().stream().filter(limit -> !limit.isPlain()).toList());
    assessment.flight().ifPresent(flight -> addFlight(assessment, flight, assessor, margins));
    for (var one : Clearances.of(assessment.fitting())) {
      margins.add(
          one.most()
              ? Limit.atMost(one.id(), one.label(), one.unit(), one.value(), one.bound())
              : Limit.atLeast(one.id(), one.label(), one.unit(), one.value(), one.bound()));
    }
    return margins;
  }

  private static void addFlight(
      Assessment assessment, FlightEstimate flight, Assessor assessor, List<Limit> margins) {
    var battery = assessment.build().battery().orElseThrow();
    var cells = battery.cellsInSeries();
    var grams = assessment.mass().grams();
    margins.add(Limit.atLeast(
        "thrust",
        "full thrust, mid-flight",
        "gf",
        flight.thrustToWeight() * grams,
        assessor.scenario().leastThrustToWeight() * grams));
    margins.add(Limit.atLeast(
        "landing-volts",
        "pack voltage at landing",
        "V",
        flight.endurance().discharge().endVolts(),
        cells * assessor.prospects().models().landing(battery).voltsPerCell()));
    margins.add(Limit.atLeast(
        "floor-volts",
        "pack voltage at full throttle, mid-flight",
        "V",
        flight.full().busVolts(),
        cells * assessor.prospects().models().floorVolts(battery)));
  }
}
