package pappus.physics.flight;

import java.util.Random;
import pappus.physics.airframe.Airframe;
import pappus.physics.atmosphere.StandardAtmosphere;
import pappus.physics.battery.Cell;
import pappus.physics.battery.Chemistry;
import pappus.physics.battery.Condition;
import pappus.physics.battery.Pack;
import pappus.physics.motor.MotorModel;
import pappus.physics.motor.PartLoadLaw;
import pappus.physics.propeller.BladeElements;
import pappus.physics.propeller.PropellerInAir;
import pappus.physics.propeller.PropellerModel;

/** Invented aircraft. */
final class Examples {
  static final double RPM_PER_V = Math.PI / 30;

  private Examples() {}

  static PropellerInAir atSeaLevel(PropellerModel propeller) {
    var air = StandardAtmosphere.at(0);
    return propeller.in(air.densityKgPerM3(), air.viscosityPaS());
  }

  static Rotor rotor(PropellerInAir propeller, double kvRpmPerV, double windingOhm) {
    var law = PartLoadLaw.BENCH;
    var motor = MotorModel.of(
        kvRpmPerV * RPM_PER_V,
        windingOhm,
        MotorModel.DEFAULT_SERIES_OHM,
        0.5,
        10,
        law.noLoadExponent());
    return new Rotor(propeller, motor, law.controllerFor(22, motor.referenceResistanceOhm(), 1));
  }

  /** A five-inch quad on four cells. */
  static Aircraft fiveInch(double massKg) {
    var propeller = atSeaLevel(BladeElements.propeller(0.127, 0.09, 2));
    return new Aircraft(new Airframe(massKg, 0.05, 0.008), 4, rotor(propeller, 1750, 0.15), 3);
  }

  static Pack lipo(int series, double capacityAh) {
    var coulomb = capacityAh * 3600;
    var cell = Cell.of(
        Chemistry.LIPO, coulomb, Chemistry.LIPO.classResistanceOhm(coulomb), 1, Condition.STANDARD);
    return Pack.of(cell, series, 1, 0.006);
  }

  /** Any quad of 2.5 to 5.5 inch that is not absurd. */
  static Aircraft random(Random random) {
    var diameterM = 0.0254 * (2.5 + 3 * random.nextDouble());
    var propeller = atSeaLevel(BladeElements.propeller(
        diameterM, diameterM * (0.5 + 0.7 * random.nextDouble()), 2 + random.nextInt(3)));
    var massKg =
        3.5 * diameterM * diameterM * diameterM / 0.002 * (0.15 + 0.3 * random.nextDouble());
    var kv = 1750 * Math.pow(0.127 / diameterM, 1.5) * (0.7 + 0.8 * random.nextDouble());
    return new Aircraft(
        new Airframe(massKg, 0.1 * random.nextDouble(), 0.012 * random.nextDouble()),
        4,
        rotor(propeller, kv, 0.05 + 0.35 * random.nextDouble()),
        6 * random.nextDouble());
  }

  static Aircraft heavier(Aircraft aircraft, double factor) {
    var airframe = aircraft.airframe();
    return new Aircraft(
        new Airframe(airframe.massKg() * factor, airframe.thrustLost(), airframe.dragAreaM2()),
        aircraft.rotorCount(),
        aircraft.rotor(),
        aircraft.avionicsW());
  }
}
