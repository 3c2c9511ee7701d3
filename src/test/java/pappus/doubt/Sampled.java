package pappus.doubt;

import java.util.Arrays;
import java.util.Random;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.flight.Factors;

/** The band by drawing: what first-order propagation is held to. */
public record Sampled(double lowSeconds, double medianSeconds, double highSeconds) {

  /** With every uncertain number drawn from its normal distribution, seeded. */
  public static Sampled of(Assessor assessor, Assessment assessment, int samples) {
    var random = new Random(20_261);
    var flown = assessor.likeliest().whatIf(assessment);
    var sources = new Doubts(assessor).sources(assessment);
    var seconds = new double[samples];
    for (var i = 0; i < samples; i++) {
      var factors = Factors.NONE;
      for (var source : sources) {
        var normal = random.nextGaussian();
        factors = source
            .doubt()
            .moved(factors, normal * (normal > 0 ? source.more() : source.deviation()));
      }
      seconds[i] = flown.applyAsDouble(factors);
    }
    Arrays.sort(seconds);
    // Ratings end a flight short where a little more current would still fly: doubts are free of
    // them.
    var rated = assessor.likeliest().figure(assessment) - flown.applyAsDouble(Factors.NONE);
    return new Sampled(
        rated + seconds[samples / 10],
        rated + seconds[samples / 2],
        rated + seconds[samples - 1 - samples / 10]);
  }
}
