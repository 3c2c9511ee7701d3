package pappus.evidence;

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
  /** Standard deviations of ln within a class (engineering estimates). */
  private static final double THRUST_PRIOR_DEVIATION = 0.08;

  private static final double MERIT_PRIOR_DEVIATION = 0.07;

  public static PropellerFigures of(Propeller propeller) {
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
          Figure.ofPrior(
              "figure of merit",
              "",
              typical.figureOfMerit(),
              BladeElements.doubtLnFigureOfMerit(diameterM)));
    }
    var own = propeller.figuresDoubt();
    var doubt = own == null ? propeller.figures().figureDoubt() : own;
    var row = ClassPriors.middleRow(test);
    return new PropellerFigures(
        Figure.weighed(
            "thrust coefficient",
            "",
            row.thrustCoefficient(),
            ClassPriors.thrustCoefficient(propeller),
            THRUST_PRIOR_DEVIATION,
            doubt,
            propeller.figures()),
        Figure.weighed(
            "figure of merit",
            "",
            ClassPriors.figureOfMerit(row),
            ClassPriors.figureOfMerit(propeller),
            MERIT_PRIOR_DEVIATION,
            doubt,
            propeller.figures()));
  }
}
