package pappus.search.exact;

import java.util.OptionalDouble;
import pappus.assessment.flight.FrameAir;
import pappus.assessment.flight.Trade;

/** What a search among accessories makes as large as it can, for parts that are decided. */
interface Aim {
  /** Of builds that cannot be feasible. */
  long HOPELESS = -1;

  /** Of parts that nothing can come of. */
  Aim NOTHING = new Aim() {
    @Override
    public long atMost(Adds least, OptionalDouble loss) {
      return HOPELESS;
    }

    @Override
    public boolean isOfFlight() {
      return true;
    }

    @Override
    public double leastWatts(double grams) {
      return 0;
    }

    @Override
    public boolean mayCount(Adds whole, OptionalDouble loss) {
      return false;
    }

    @Override
    public long objective(long flown, Adds least, OptionalDouble loss) {
      return HOPELESS;
    }

    @Override
    public long again(long objective, long flown, Adds least) {
      return HOPELESS;
    }

    @Override
    public boolean isFor(FrameAir air) {
      return true;
    }

    @Override
    public boolean isHopeless(Adds least) {
      return true;
    }

    @Override
    public Trade trade(Adds usual, OptionalDouble loss, OptionalDouble mostLoss, double fromGrams) {
      return Trade.NONE;
    }

    @Override
    public double mostGrams(double variance) {
      return 0;
    }

    @Override
    public long atMost(Trade trade, double watts, double ohm, OptionalDouble loss) {
      return HOPELESS;
    }
  };

  /**
   * No build with at least these numbers flies longer or farther: microseconds or micrometres.
   *
   * @param least of the whole build, but for the battery's own resistance
   * @param loss least ripple of the controllers over that of the law; absent: as the law says
   */
  long atMost(Adds least, OptionalDouble loss);

  /** Whether builds are ranked by more of a flight, so that what flies less far is worth less. */
  boolean isOfFlight();

  /** No build that weighs so much or more, and counts, draws less beside the motors, W. */
  double leastWatts(double grams);

  /**
   * Whether a build of which all is decided is one that counts: not so if only those do that are believed, and nobody would
   * believe it.
   *
   * @param whole the numbers that it has
   */
  boolean mayCount(Adds whole, OptionalDouble loss);

  /**
   * The objective that no build with at least these numbers surpasses.
   *
   * @param flown microseconds or micrometres that none of them surpasses
   * @param loss least ripple of the controllers over that of the law; absent: as the law says
   */
  long objective(long flown, Adds least, OptionalDouble loss);

  /**
   * The same once more, with all that is known now of how far these builds can be relied on: what is dear to find out is
   * not asked before it matters.
   *
   * @param objective that was worked out before
   * @param least of the whole builds
   */
  long again(long objective, long flown, Adds least);

  /** Whether it says of frames that do this to the air all that can be said. */
  boolean isFor(FrameAir air);

  /** Whether mass or price alone keep builds with at least these numbers from being feasible. */
  boolean isHopeless(Adds least);

  /**
   * What a gram costs in watts.
   *
   * @param usual where builds are likely to be
   * @param loss least ripple of the controllers over that of the law; absent: as the law says
   * @param mostLoss up to which it is to hold
   * @param fromGrams none is lighter
   */
  Trade trade(Adds usual, OptionalDouble loss, OptionalDouble mostLoss, double fromGrams);

  /** No build whose mass is in so much doubt is heavier, g. */
  double mostGrams(double variance);

  /**
   * No build that draws at least so much flies longer or farther: microseconds or micrometres.
   *
   * @param watts beside the motors, with each gram from the mass of the trade counted as what it costs
   * @param ohm least resistance of board and lead, Ω
   */
  long atMost(Trade trade, double watts, double ohm, OptionalDouble loss);
}
