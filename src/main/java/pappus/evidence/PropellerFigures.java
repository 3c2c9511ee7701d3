package pappus.evidence;

import java.util.List;
import pappus.evidence.prior.ClassPriors;
import pappus.part.Propeller;
import pappus.physics.propeller.BladeElements;
import pappus.quantity.Units;

/**
 * What counts of a propeller: C_T, and the figure of merit rather than C_P, because the errors of C_T and C_P go
 * together.
 *
 * @param thrust C_T at the middle row of its test
 * @param merit figure of merit there
 */
public record PropellerFigures(Figure thrust, Figure merit) {
  /** How far above blade elements the figure of merit of measured blades goes (engineering estimate). */
  private static final double CEILING_OVER_ELEMENTS = 1.10;

  static PropellerFigures of(Propeller propeller, Evidence evidence) {
    var test = propeller.test();
    if (test == null) {
      // What flies is the blade elements' curve, which stands in for a prior and has doubts of its
      // own.
      var diameterM = Units.inchesToMetres(propeller.diameterInches());
      var typical = BladeElements.typical(
          diameterM, Units.inchesToMetres(propeller.pitchInches()), propeller.blades());
      return new PropellerFigures(
          Figure.ofPrior(
              "thrust coefficient",
              "",
              typical.thrustCoefficient(),
              BladeElements.doubtLnThrust(diameterM)),
          untested(typical.figureOfMerit(), BladeElements.doubtLnFigureOfMerit(diameterM)));
    }
    var readings = readings(propeller);
    return new PropellerFigures(
        evidence.weigh(propeller, readings.get(0)),
        evidence.weigh(propeller, readings.get(1), ceiling(propeller, test)));
  }

  /** Half a spread the harmful way, as all that a record leaves out; more thrust may help or harm. */
  private static Figure untested(double merit, double spread) {
    return Figure.filled(
        "figure of merit", "", merit * StrictMath.exp(-0.5 * spread), merit, spread);
  }

  /** Thrust coefficient, then figure of merit; none of a propeller without a test. */
  static List<Reading> readings(Propeller propeller) {
    var test = propeller.test();
    if (test == null) {
      return List.of();
    }
    var own = propeller.figuresDoubt();
    var doubt = own == null ? propeller.figures().figureDoubt() : own;
    var row = ClassPriors.middleRow(test);
    return List.of(
        new Reading(
            Trait.THRUST,
            propeller.maker(),
            propeller.figures(),
            row.thrustCoefficient(),
            ClassPriors.thrustCoefficient(propeller),
            doubt,
            own != null),
        new Reading(
            Trait.MERIT,
            propeller.maker(),
            propeller.figures(),
            ClassPriors.figureOfMerit(row),
            ClassPriors.figureOfMerit(propeller),
            doubt,
            own != null));
  }

  private static double ceiling(Propeller propeller, Propeller.StaticTest test) {
    var diameterM = Units.inchesToMetres(propeller.diameterInches());
    var pitchM = Units.inchesToMetres(propeller.pitchInches());
    return BladeElements.holdFor(diameterM, pitchM, propeller.blades())
        ? CEILING_OVER_ELEMENTS
            * BladeElements.at(
                    diameterM,
                    pitchM,
                    propeller.blades(),
                    Units.rpmToRadPerS(propeller.rpm(ClassPriors.middleRow(test))))
                .figureOfMerit()
        : Double.POSITIVE_INFINITY;
  }
}
