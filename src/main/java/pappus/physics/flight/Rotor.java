package pappus.physics.flight;

import pappus.physics.motor.Motor;
import pappus.physics.motor.SpeedController;
import pappus.physics.propeller.PropellerInAir;

/** One propeller on one motor behind one controller; an aircraft's rotors are all alike. */
public record Rotor(PropellerInAir propeller, Motor motor, SpeedController controller) {}
