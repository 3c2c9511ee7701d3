package pappus.assessment.flight;

import java.util.OptionalDouble;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Role;
import pappus.physics.airframe.Airframe;
import pappus.physics.battery.Pack;
import pappus.physics.flight.Aircraft;

/** Aircraft with the motor, propeller and battery of a build only begun, whatever else they have. */
final class BegunAircraft {
  private final FlightModels models;
  private final Build begun;
  private final Pack pack;

  /**
   * @param begun has motor, propeller and battery
   * @throws IllegalArgumentException if the physics refuses the pack
   */
  BegunAircraft(FlightModels models, Build begun) {
    this.models = models;
    this.begun = begun;
    this.pack = models.bare(battery());
  }

  Battery battery() {
    return begun.battery().orElseThrow();
  }

  /** Without what lies between it and the motors. */
  Pack pack() {
    return pack;
  }

  double diameterMm() {
    return begun.propeller().orElseThrow().diameterMillimetres();
  }

  /**
   * @param loss ripple of the controllers over that of the law; absent: by the law
   * @param watts draw of everything but the motors at the battery
   */
  Aircraft aircraft(Airframe airframe, OptionalDouble loss, double watts) {
    return new Aircraft(
        airframe,
        begun.count(Role.MOTOR),
        models.rotor(begun.motor().orElseThrow(), begun.propeller().orElseThrow(), loss),
        watts);
  }

  /** As it is flown for long. */
  Aircraft steadily(Aircraft aircraft) {
    return models.steadily(aircraft, begun);
  }
}
