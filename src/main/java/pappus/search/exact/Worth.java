package pappus.search.exact;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What builds fly at most with accessories, with each gram counted as the watts that it costs at least: sums of such watts are
 * nearer to the truth than the least mass and the least draw of any, and cost no flight. Not safe for several threads.
 *
 * <p>Why: src/site/markdown/decisions.md#a-gram-of-accessories-is-counted-as-the-watts-that-it-is-worth
 */
final class Worth {
  private static final double STEP_WATTS = 0.001;
  private static final double STEP_GRAMS = 0.002;
  private static final double STEP_OHM = 0.00002;
  private static final double STEP_LOSS = 0.0001;

  private final Target target;
  private final Map<Numbered, Long> known = new HashMap<>();
  private final Map<ByMass, Long> byMass = new HashMap<>();

  /** A step of mass with what is decided. */
  private record ByMass(long steps, double watts, double ohm, OptionalDouble loss) {}

  /** Steps of watts, resistance and loss. */
  private record Numbered(long watts, long ohm, long loss) {}

  Worth(Target target) {
    this.target = target;
  }

  /** What is aimed at. */
  Aim aim() {
    return target.aim();
  }

  /**
   * No build with at least these numbers flies longer or farther: microseconds or micrometres.
   *
   * @param loss least ripple of the controllers over that of the law; absent: as the law says
   */
  long atMost(Adds least, OptionalDouble loss) {
    var trade = target.trade(loss);
    if (!trade.isKnown()) {
      return exactly(least, loss);
    }
    if (target.aim().isHopeless(least)) {
      return Aim.HOPELESS;
    }
    var rate = trade.wattsPerGram();
    var watts = Math.max(
            least.support().tradedWithin(rate, target.aim().mostGrams(least.variance())),
            rate * least.grams() + target.aim().leastWatts(least.grams()))
        - rate * trade.atGrams();
    var wattSteps = (long) Math.floor(watts / STEP_WATTS);
    var ohmSteps = (long) Math.floor(least.ohm() / STEP_OHM);
    var lossSteps = loss.isEmpty() ? -1 : (long) Math.floor(loss.getAsDouble() / STEP_LOSS);
    return known.computeIfAbsent(
        new Numbered(wattSteps, ohmSteps, lossSteps),
        fresh -> target
            .aim()
            .atMost(
                trade,
                wattSteps * STEP_WATTS,
                ohmSteps * STEP_OHM,
                lossSteps < 0 ? loss : OptionalDouble.of(lossSteps * STEP_LOSS)));
  }

  /**
   * The same for builds of which all that draws and resists is decided, so that only mass is left: then flights are
   * told apart that a trade takes for equal, and thousands of accessories of almost equal mass need not be tried.
   */
  long atMostByMass(Adds least, OptionalDouble loss) {
    if (target.aim().isHopeless(least)) {
      return Aim.HOPELESS;
    }
    var steps = (long) Math.floor(least.grams() / STEP_GRAMS);
    return byMass.computeIfAbsent(
        new ByMass(steps, least.watts(), least.ohm(), loss),
        fresh -> exactly(new Adds(steps * STEP_GRAMS, 0, least.watts(), 0, least.ohm()), loss));
  }

  /** The same of builds that are whole with these accessories. */
  long exactly(Adds whole, OptionalDouble loss) {
    return target.aim().atMost(whole, loss);
  }
}
