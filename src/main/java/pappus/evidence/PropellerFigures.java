package pappus.evidence;

import pappus.catalog.Propeller;
import pappus.physics.propeller.BladeElements;
import pappus.plausibility.ClassLaws;
import pappus.quantity.Units;

/**
 * What counts of a propeller: C_T, and the figure of merit rather than C_P, because the errors of C_T and C_P go
 * together.
 *
 * @param thrust C_T at the middle row of its test
 * @param merit figure of merit there
 */
public record PropellerFigures(Figure thrust, Figure merit) {
  /** Spread within a class, of ln (engineering estimates). */
  private static final double THRUST_SPREAD = 0.08;

  private static final double MERIT_SPREAD = 0.07;

  public static PropellerFigures of(Propeller propeller) {
    var test = propeller.test();
    if (test == null) {
      // Blade elements stand in for the class law and bring doubts of their own.
      var diameterM = Units.inchesToMetres(propeller.diameterInches());
      return new PropellerFigures(
          Figure.ofLaw(
              "thrust coefficient",
              "",
              ClassLaws.thrustCoefficient(propeller),
              BladeElements.doubtLnThrust(diameterM)),
          Figure.ofLaw(
              "figure of merit",
              "",
              ClassLaws.figureOfMerit(propeller),
              BladeElements.doubtLnFigureOfMerit(diameterM)));
    }
    var own = propeller.figuresDoubt();
    var doubt = own == null ? propeller.figures().figureDoubt() : own;
    var row = ClassLaws.middleRow(test);
    return new PropellerFigures(
        Figure.weighed(
            "thrust coefficient",
            "",
            row.thrustCoefficient(),
            ClassLaws.thrustCoefficient(propeller),
            THRUST_SPREAD,
            doubt),
        Figure.weighed(
            "figure of merit",
            "",
            ClassLaws.figureOfMerit(row),
            ClassLaws.figureOfMerit(propeller),
            MERIT_SPREAD,
            doubt));
  }
}
