package pappus.assessment.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What builds draw beside their motors at least to be believed, by their mass. */
public final class BelievedDraw {
  /** Whatever they draw. */
  static final BelievedDraw ANY = new BelievedDraw(new double[0], new double[0]);

  /** Rising, g, and the least of that mass and every larger one, W. */
  private final double[] grams;

  private final double[] watts;

  private BelievedDraw(double[] grams, double[] watts) {
    this.grams = grams;
    this.watts = watts;
  }

  /** No build that weighs at least so much and is believed draws less, W. */
  public double leastWatts(double leastGrams) {
    if (grams.length == 0) {
      return 0;
    }
    var at = Arrays.binarySearch(grams, leastGrams);
    return watts[Math.max(0, at >= 0 ? at : -at - 2)];
  }

  /** Takes masses as they rise. */
  static final class Builder {
    private final List<Double> grams = new ArrayList<>();
    private final List<Double> watts = new ArrayList<>();

    /** From this mass to the next one. */
    void from(double mass, double leastWatts) {
      grams.add(mass);
      watts.add(Math.max(0, leastWatts));
    }

    BelievedDraw build() {
      var least = watts.stream().mapToDouble(one -> one).toArray();
      for (var i = least.length - 2; i >= 0; i--) {
        least[i] = Math.min(least[i], least[i + 1]);
      }
      return new BelievedDraw(grams.stream().mapToDouble(one -> one).toArray(), least);
    }
  }
}
