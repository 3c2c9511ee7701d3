package pappus.luck;

/**
 * An estimator that knows a world: true spreads, limits and makers' biases, how doubtful each record is, and which are
 * blunders. It integrates what others must approximate, and shares no code with them.
 */
final class Knowing {
  private static final int STEPS = 400;
  private static final double SPREADS = 5;

  private Knowing() {}

  /** Expectation of ln of a figure given its record, as a figure. */
  static double of(World.Trait trait) {
    var away = StrictMath.log(trait.stated() / trait.law()) - trait.bias();
    var sum = 0.0;
    var weights = 0.0;
    for (var i = 0; i <= STEPS; i++) {
      var t = SPREADS * trait.spread() * (2.0 * i / STEPS - 1);
      var a = t / trait.spread();
      var b = (away - t) / trait.error();
      var weight = trait.limits().admit(trait.law() * StrictMath.exp(t))
          * StrictMath.exp(-(a * a + b * b) / 2);
      sum += weight * t;
      weights += weight;
    }
    return weights > 0 ? trait.law() * StrictMath.exp(sum / weights) : trait.law();
  }
}
