package pappus.search.exact;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import pappus.assessment.flight.Trade;

/** An aim, and what a gram is worth to it. Not safe for several threads. */
final class Target {
  /** One trade is for losses that differ by less. */
  private static final double LOSSES = 0.0025;

  /** One trade is for masses that differ by less. */
  private static final double STEP_GRAMS = 0.5;

  private final Aim aim;
  private final Adds usual;
  private final double fromGrams;
  private final Map<Known, Trade> trades;
  private @Nullable Trade anyOwn;

  /**
   * What a trade depends on most.
   *
   * @param grams where it is taken
   * @param band of losses; −1 by the law
   */
  private record Known(double grams, long band) {}

  /**
   * One target.
   *
   * @param usual where builds are likely to be
   * @param fromGrams least mass of any build, g
   * @param trades by bands of losses, as far as they are known
   */
  private Target(Aim aim, Adds usual, double fromGrams, Map<Known, Trade> trades) {
    this.aim = aim;
    this.usual = usual;
    this.fromGrams = fromGrams;
    this.trades = trades;
  }

  /** For builds whose main parts add at least so much, with any of some accessories. */
  static Target of(Aim aim, Adds mains, List<KitRelaxation> kits) {
    var from = mains.grams()
        + kits.stream().mapToDouble(KitRelaxation::leastGrams).min().orElse(0);
    var usual = kits.stream().map(KitRelaxation::usual).findFirst().orElse(Adds.NOTHING);
    var at = Math.max(from, mains.grams() + usual.grams());
    return new Target(aim, usual.weighing(at), from, new HashMap<>());
  }

  /**
   * Some of the same builds, with another aim, since more of them is decided.
   *
   * @param least of them
   */
  Target of(Aim other, Adds least) {
    var grams = STEP_GRAMS * Math.floor(least.grams() / STEP_GRAMS);
    // What a gram is worth was looked up within the limits of the aim that it was looked up for.
    return new Target(other, least.weighing(grams), grams, other == aim ? trades : new HashMap<>());
  }

  Aim aim() {
    return aim;
  }

  /** What a gram is worth with controllers that lose so much. */
  Trade trade(OptionalDouble loss) {
    var band = loss.isEmpty() ? -1 : (long) Math.floor(loss.getAsDouble() / LOSSES);
    return trades.computeIfAbsent(
        new Known(usual.grams(), band),
        fresh -> band < 0
            ? aim.trade(usual, loss, loss, fromGrams)
            : aim.trade(
                usual,
                OptionalDouble.of(band * LOSSES),
                OptionalDouble.of((band + 1) * LOSSES),
                fromGrams));
  }

  /** The objective that builds reach at most whose main parts add at least so much, with any of some accessories. */
  long most(Adds mains, List<KitRelaxation> kits) {
    var most = Aim.HOPELESS;
    var leastWatts = Double.POSITIVE_INFINITY;
    var itsOhm = 0.0;
    for (var kit : kits) {
      var trade = kit.loss().isEmpty() ? trade(kit.loss()) : anyOwn(kits);
      var lightest = with(mains, kit, kit.leastGrams(), 0);
      if (!trade.isKnown()) {
        most = Math.max(most, aim.objective(inSteps(mains, kit), lightest, kit.loss()));
        continue;
      }
      var watts = watts(mains, kit, trade);
      // By rising loss: what takes more watts through as much resistance as one before reaches
      // less.
      if (kit.loss().isPresent()
          && aim.isOfFlight()
          && watts >= leastWatts
          && kit.ohm() >= itsOhm) {
        continue;
      }
      var flown =
          aim.isHopeless(lightest) ? Aim.HOPELESS : aim.atMost(trade, watts, kit.ohm(), kit.loss());
      most = Math.max(most, aim.objective(flown, lightest, kit.loss()));
      if (flown >= 0 && kit.loss().isPresent()) {
        leastWatts = watts;
        itsOhm = kit.ohm();
      }
    }
    return most;
  }

  /** One trade for all controllers with a loss of their own. */
  private Trade anyOwn(List<KitRelaxation> kits) {
    if (anyOwn == null) {
      var own = kits.stream()
          .map(KitRelaxation::loss)
          .filter(OptionalDouble::isPresent)
          .toList();
      anyOwn = aim.trade(
          usual,
          own.get(0),
          OptionalDouble.of(own.get(own.size() - 1).getAsDouble() + Goods.LOSSES),
          fromGrams);
    }
    return anyOwn;
  }

  /** Where a flight has but to be good enough, the lightest of accessories with the draw of the thriftiest tells as much. */
  private long inSteps(Adds mains, KitRelaxation kit) {
    if (!aim.isOfFlight()) {
      return aim.atMost(with(mains, kit, kit.leastGrams(), kit.leastWatts()), kit.loss());
    }
    return (long)
        kit.most((grams, watts) -> aim.atMost(with(mains, kit, grams, watts), kit.loss()));
  }

  /** Least watts beside the motors, at the mass of a trade. */
  private double watts(Adds mains, KitRelaxation kit, Trade trade) {
    var left = aim.mostGrams(mains.variance() + kit.variance()) - mains.grams();
    var rate = trade.wattsPerGram();
    var leastGrams = kit.leastGrams();
    return Math.max(
            kit.support().tradedWithin(rate, left),
            rate * leastGrams + aim.leastWatts(mains.grams() + leastGrams))
        + trade.wattsPerGram() * (mains.grams() - trade.atGrams());
  }

  private static Adds with(Adds mains, KitRelaxation kit, double grams, double watts) {
    return new Adds(
        mains.grams() + grams,
        mains.variance() + kit.variance(),
        watts,
        mains.cents() + kit.cents(),
        mains.pieces() + kit.pieces(),
        kit.ohm());
  }
}
