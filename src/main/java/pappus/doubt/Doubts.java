package pappus.doubt;

import java.util.ArrayList;
import java.util.List;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Factors;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Known;
import pappus.catalog.Motor;
import pappus.catalog.Propeller;
import pappus.physics.battery.Chemistry;
import pappus.physics.motor.PartLoadLaw;
import pappus.physics.propeller.BladeElements;
import pappus.quantity.Units;

/**
 * First-order propagation to what builds are ranked by, seconds or metres: each uncertain number is moved
 * by one standard deviation, and the build is assessed again. C_T is moved at a kept figure of merit, and the other way round, because the errors
 * of C_T and C_P go together.
 */
public final class Doubts {
  /** One standard deviation of a coefficient by how it is known (engineering estimates). */
  private static final double MEASURED = 0.02;

  private static final double MAKER = 0.05;
  private static final double ESTIMATED = 0.10;

  /** Thrust lost to arms and body: 5 % give or take 2 (engineering estimate). */
  private static final double THRUST_LOST = 0.02;

  /** Of a drag area that a record states, and of one that is assumed (engineering estimates). */
  private static final double DRAG_STATED = 0.20;

  private static final double DRAG_ASSUMED = 0.40;

  /** Below 14 mm stators the law of part-load loss was never measured: twice the doubt. */
  private static final double SMALL_STATOR_MM = 14;

  private final Assessor assessor;

  public Doubts(Assessor assessor) {
    this.assessor = assessor;
  }

  /** The band of a build that flies. */
  public EnduranceBand band(Assessment assessment) {
    var build = assessment.build();
    var seconds = assessment.flight().orElseThrow().figure();
    var contributions = new ArrayList<Contribution>();
    for (var change : changes(assessment)) {
      var moved = assessor.figure(build, change.factors());
      contributions.add(new Contribution(change.source(), change.label(), moved - seconds));
    }
    if (assessment.flight().orElseThrow().course().isPresent()) {
      var frame = build.frame().orElseThrow();
      var doubt = frame.dragAreaSquareMetres() == null ? DRAG_ASSUMED : DRAG_STATED;
      var moved = assessor.figure(build, Factors.NONE, 1 + doubt);
      contributions.add(new Contribution(
          "drag area of " + frame.id(), "the airframe's drag area", moved - seconds));
    }
    return new EnduranceBand(seconds, contributions);
  }

  private record Change(String source, String label, Factors factors) {}

  private static List<Change> changes(Assessment assessment) {
    var build = assessment.build();
    var propeller = build.propeller().orElseThrow();
    var motor = build.motor().orElseThrow();
    var battery = build.battery().orElseThrow();
    var board = build.board().orElseThrow();
    var figures = of(motor.figures());
    var none = Factors.NONE;
    return List.of(
        new Change(
            "thrust coefficient of " + propeller.id(),
            "the propeller's thrust coefficient",
            with(none, 0, thrust(propeller))),
        new Change(
            "figure of merit of " + propeller.id(),
            "the propeller's figure of merit",
            with(none, 1, merit(propeller))),
        new Change("resistance of " + motor.id(), "the motor's resistance", with(none, 2, figures)),
        new Change(
            "no-load current of " + motor.id(),
            "the motor's no-load current",
            with(none, 3, 2 * figures)),
        new Change(
            "cell resistance of " + battery.id(),
            "the cells' resistance",
            with(none, 4, cell(battery))),
        new Change(
            "capacity of " + battery.id(),
            "the charge the pack delivers",
            with(none, 5, -Chemistry.DELIVERED_SHARE_DOUBT)),
        new Change(
            board.controllerLoss() == null
                ? "law of part-load loss"
                : "part-load loss of " + board.id(),
            "the speed controllers' loss at part load",
            with(none, 6, loss(motor, board))),
        new Change("thrust lost", "the thrust lost to arms and body", with(none, 7, -THRUST_LOST)),
        new Change(
            "mass of " + build,
            "the mass",
            new Factors(1, 1, 1, 1, 1, 1, 1, 1, assessment.mass().doubtGrams())));
  }

  private static Factors with(Factors none, int which, double deviation) {
    var factor = 1 + deviation;
    return new Factors(
        which == 0 ? factor : none.thrust(),
        which == 1 ? factor : none.merit(),
        which == 2 ? factor : none.resistance(),
        which == 3 ? factor : none.noLoad(),
        which == 4 ? factor : none.cellResistance(),
        which == 5 ? factor : none.capacity(),
        which == 6 ? factor : none.loss(),
        which == 7 ? factor : none.thrustKept(),
        0);
  }

  private static double of(Known known) {
    return switch (known) {
      case MEASURED -> MEASURED;
      case MAKER -> MAKER;
      case ESTIMATED -> ESTIMATED;
    };
  }

  private static double thrust(Propeller propeller) {
    return propeller.test() == null
        ? BladeElements.doubtLnThrust(Units.inchesToMetres(propeller.diameterInches()))
        : of(propeller.figures());
  }

  /** A lower figure of merit, so that it cannot leave the possible. */
  private static double merit(Propeller propeller) {
    return -(propeller.test() == null
        ? BladeElements.doubtLnFigureOfMerit(Units.inchesToMetres(propeller.diameterInches()))
        : of(propeller.figures()));
  }

  private static double cell(Battery battery) {
    if (battery.resistance() == null) {
      return battery.chemistry().isLithiumIon() ? 0.25 : 0.35;
    }
    return battery.resistance().reading() == Battery.Resistance.Reading.CHARGER
        ? 0.30
        : 2 * of(battery.figures());
  }

  private static double loss(Motor motor, Board board) {
    return board.controllerLoss() == null && motor.statorDiameterMillimetres() < SMALL_STATOR_MM
        ? 2 * PartLoadLaw.DOUBT_LN_LOSS
        : PartLoadLaw.DOUBT_LN_LOSS;
  }
}
