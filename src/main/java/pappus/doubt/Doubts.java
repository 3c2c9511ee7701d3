package pappus.doubt;

import java.util.ArrayList;
import java.util.List;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;
import pappus.reliance.Doubt;
import pappus.reliance.Reliance;
import pappus.reliance.Source;
import pappus.reliance.Sources;

/**
 * First-order propagation to what builds are ranked by, seconds or metres: each uncertain number is moved by one
 * standard deviation either way, and the build is flown again; losses make the low end, gains the high one. C_T is
 * moved at a kept figure of merit, and the other way round, because the errors of C_T and C_P go together.
 *
 * <p>Why: src/site/markdown/decisions.md#the-band-is-first-order-with-losses-and-gains-apart
 */
public final class Doubts {
  private final Assessor assessor;

  public Doubts(Assessor assessor) {
    this.assessor = assessor;
  }

  /** The band of a build that flies. */
  public Band band(Assessment assessment) {
    var flown = assessor.likeliest().whatIf(assessment);
    var unrated = flown.applyAsDouble(Factors.NONE);
    var contributions = new ArrayList<Contribution>();
    for (var source : sources(assessment)) {
      contributions.add(Contribution.of(
          source.doubt(),
          source.name(),
          source.deviation(),
          unrated,
          flown.applyAsDouble(source.doubt().moved(Factors.NONE, source.more())),
          flown.applyAsDouble(source.doubt().moved(Factors.NONE, -source.deviation()))));
    }
    return new Band(
        assessor.likeliest().figure(assessment), contributions, assessor.planWith(assessment));
  }

  /** Every number of a build that flies. */
  List<Source> sources(Assessment assessment) {
    var build = assessment.build();
    var flight = assessment.flight().orElseThrow();
    var sources = Sources.of(
        build,
        flight.figures(),
        flight,
        assessor.prospects().asksForDrag(),
        assessor.prospects().isWindy());
    sources.add(new Source(Doubt.AVIONICS, "electronics of " + build, Reliance.AVIONICS));
    sources.add(new Source(Doubt.MASS, "mass of " + build, assessment.mass().doubtGrams()));
    return sources;
  }
}
