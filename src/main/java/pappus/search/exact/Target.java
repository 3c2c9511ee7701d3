package pappus.search.exact;

import java.util.List;

/**
 * An aim, and what a gram is worth to it.
 *
 * @param fromGrams least mass of any build, g
 * @param wattsPerGram what a gram beyond that costs at least; 0: not known
 */
record Target(Aim aim, double fromGrams, double wattsPerGram) {

  /** For builds whose main parts add at least so much, with any of some accessories. */
  static Target of(Aim aim, Adds mains, List<KitFloor> kits) {
    var from =
        mains.grams() + kits.stream().mapToDouble(KitFloor::leastGrams).min().orElse(0);
    return new Target(aim, from, aim.wattsPerGram(from));
  }

  /** What builds reach at most whose main parts add at least so much, with any of some accessories. */
  long most(Adds mains, List<KitFloor> kits) {
    var most = Aim.HOPELESS;
    var leastWatts = Double.POSITIVE_INFINITY;
    var itsOhm = 0.0;
    for (var kit : kits) {
      var traded = kit.traded(wattsPerGram);
      // By rising loss: what takes more watts through as much resistance as one before reaches
      // less.
      if (wattsPerGram > 0
          && kit.loss().isPresent()
          && traded >= leastWatts
          && kit.ohm() >= itsOhm) {
        continue;
      }
      var reached = most(mains, kit, traded);
      most = Math.max(most, reached);
      if (reached >= 0 && kit.loss().isPresent() && traded < leastWatts) {
        leastWatts = traded;
        itsOhm = kit.ohm();
      }
    }
    return most;
  }

  private long most(Adds mains, KitFloor kit, double traded) {
    if (wattsPerGram == 0) {
      return (long)
          kit.most((grams, watts) -> aim.atMost(with(mains, kit, grams, watts), kit.loss()));
    }
    if (aim.isHopeless(with(mains, kit, kit.leastGrams(), 0))) {
      return Aim.HOPELESS;
    }
    var watts = traded + wattsPerGram * (mains.grams() - fromGrams);
    return aim.atMost(new Adds(fromGrams, 0, watts, 0, kit.ohm()), kit.loss());
  }

  private static Adds with(Adds mains, KitFloor kit, double grams, double watts) {
    return new Adds(
        mains.grams() + grams,
        mains.variance() + kit.variance(),
        watts,
        mains.cents() + kit.cents(),
        kit.ohm());
  }
}
