package pappus.doubt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;
import pappus.evidence.BuildFigures;
import pappus.evidence.Figure;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.physics.motor.PartLoadLaw;

/**
 * First-order propagation to what builds are ranked by, seconds or metres: each uncertain number is moved by one
 * standard deviation either way, and the build is flown again; losses make the low end, gains the high one. C_T is
 * moved at a kept figure of merit, and the other way round, because the errors of C_T and C_P go together.
 *
 * <p>Why: src/site/markdown/decisions.md#the-band-is-first-order-with-losses-and-gains-apart
 */
public final class Doubts {
  /** Thrust kept by arms and body: 95 % give or take 2 (engineering estimate). */
  private static final double THRUST_KEPT = 0.02;

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
  public Band band(Assessment assessment) {
    var flown = assessor.whatIf(assessment);
    var unrated = flown.applyAsDouble(Factors.NONE);
    var contributions = new ArrayList<Contribution>();
    for (var source : sources(assessment)) {
      contributions.add(Contribution.of(
          source.doubt(),
          source.name(),
          source.deviation(),
          unrated,
          flown.applyAsDouble(source.doubt().moved(Factors.NONE, source.deviation())),
          flown.applyAsDouble(source.doubt().moved(Factors.NONE, -source.deviation()))));
    }
    return new Band(assessor.likeliest(assessment), contributions);
  }

  /** One number and its deviation. */
  record Source(Doubt doubt, String name, double deviation) {}

  static List<Source> sources(Assessment assessment) {
    var build = assessment.build();
    var propeller = build.propeller().orElseThrow();
    var motor = build.motor().orElseThrow();
    var battery = build.battery().orElseThrow();
    var board = build.board().orElseThrow();
    var figures = BuildFigures.of(build);
    var sources = new ArrayList<>(List.of(
        of(Doubt.THRUST, "thrust coefficient", propeller, figures.propeller().thrust()),
        of(Doubt.MERIT, "figure of merit", propeller, figures.propeller().merit()),
        of(Doubt.RESISTANCE, "resistance", motor, figures.motor().winding()),
        of(Doubt.NO_LOAD, "no-load current", motor, figures.motor().noLoad()),
        of(Doubt.CELL_RESISTANCE, "cell resistance", battery, figures.battery().cellResistance()),
        of(Doubt.CAPACITY, "capacity", battery, figures.battery().delivered()),
        loss(motor, board, figures.board().controllerLoss()),
        new Source(Doubt.THRUST_LOST, "thrust lost", THRUST_KEPT),
        new Source(Doubt.MASS, "mass of " + build, assessment.mass().doubtGrams())));
    if (assessment.flight().orElseThrow().course().isPresent()) {
      var frame = build.frame().orElseThrow();
      sources.add(new Source(
          Doubt.DRAG,
          "drag area of " + frame.id(),
          frame.dragAreaSquareMetres() == null ? DRAG_ASSUMED : DRAG_STATED));
    }
    return sources;
  }

  private static Source of(Doubt doubt, String name, Part part, Figure figure) {
    return new Source(doubt, name + " of " + part.id(), figure.deviation());
  }

  private static Source loss(Motor motor, Part board, Optional<Figure> own) {
    return own.map(figure -> of(Doubt.LOSS, "part-load loss", board, figure))
        .orElseGet(() -> new Source(
            Doubt.LOSS,
            "law of part-load loss",
            motor.statorDiameterMillimetres() < SMALL_STATOR_MM
                ? 2 * PartLoadLaw.DOUBT_LN_LOSS
                : PartLoadLaw.DOUBT_LN_LOSS));
  }
}
