package pappus.physics.flight;

import pappus.physics.motor.MotorModel;
import pappus.physics.motor.SpeedController;
import pappus.physics.propeller.PropellerInAir;

/** One propeller on one motor behind one controller; an aircraft's rotors are all alike. */
public record Rotor(PropellerInAir propeller, MotorModel motor, SpeedController controller) {}
