package pappus.luck;

import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import pappus.part.Battery;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.shop.SmallShop;

/**
 * A catalogue of which the truth is known: motors, propellers and batteries of a few sizes as they are, and records of
 * them as people write them, a fifth measured, two fifths makers', two fifths estimated. It is made without any code of
 * what counts of a record: laws, spreads and ceilings are numbers of its own.
 */
public final class World {
  /** Kinds of worlds. */
  public enum Kind {
    /** Spreads, doubts and ceilings are those that are assumed. */
    AS_ASSUMED,
    HALF_THE_SPREAD,
    TWICE_THE_DOUBT,
    BLUNDERS_1,
    BLUNDERS_5,
    /** All figures of a maker are flattered alike. */
    BIASED_MAKERS,
    /** Hard ones that nothing passes, of motors and packs as well. */
    CEILINGS
  }

  /** Pitch of a four-inch propeller of two blades, what its figure of merit usually is, and its blade elements'. */
  private static final double[][] BLADES = {
    {1.9, 0.6205, 0.542}, {2.3, 0.6098, 0.568}, {2.7, 0.5955, 0.582}
  };

  private static final double[] WINDINGS = {3000, 3400, 3800};
  private static final double MAKER_BIAS = 0.07;
  private static final double BLUNDER = 0.25;
  private static final int MAKERS = 7;

  /**
   * One figure of a part.
   *
   * @param law what such parts usually have
   * @param spread one standard deviation of ln of the truth about it
   * @param limits what no truth passes
   * @param truth as the part is
   * @param stated as its record says
   * @param error one standard deviation of ln of the record, bias aside
   * @param bias of its maker, ln
   */
  record Trait(
      double law,
      double spread,
      Limits limits,
      double truth,
      double stated,
      double error,
      double bias) {}

  /**
   * What no truth passes.
   *
   * @param softness one standard deviation of ln of the upper one; 0 where it is hard
   */
  record Limits(double least, double most, double softness) {
    static final Limits NONE = new Limits(0, Double.POSITIVE_INFINITY, 0);

    /** How likely a figure is to be, 0 to 1. */
    double admit(double figure) {
      if (figure < least) {
        return 0;
      }
      if (softness == 0 || Double.isInfinite(most)) {
        return figure <= most ? 1 : 0;
      }
      return Normal.below(StrictMath.log(most / figure) / softness);
    }
  }

  /** A part of the world: its record, and every figure with its truth. */
  record Thing(Part record, List<Trait> traits) {
    /** The part with figures that are beyond doubt. */
    Part sure(ToDoubleFunction<Trait> figure) {
      var first = figure.applyAsDouble(traits.get(0));
      var second = figure.applyAsDouble(traits.get(1));
      if (record instanceof Motor motor) {
        return with(motor(motor, first, second), "figuresDoubt", 0.0);
      }
      return record instanceof Propeller propeller
          ? with(propeller(propeller, first, second), "figuresDoubt", 0.0)
          : with(battery((Battery) record, first, second), "figuresDoubt", 0.0);
    }
  }

  private final Kind kind;
  private final Random random;
  private final double spreads;
  private final double doubts;
  private final double blunders;
  private final List<Thing> things = new ArrayList<>();

  /**
   * @param ofEach how many motors, propellers and batteries
   */
  World(Kind kind, int ofEach, long seed) {
    this.kind = kind;
    this.random = new Random(31 * seed + ofEach);
    this.spreads = kind == Kind.HALF_THE_SPREAD ? 0.5 : 1;
    this.doubts = kind == Kind.TWICE_THE_DOUBT ? 2 : 1;
    this.blunders = kind == Kind.BLUNDERS_1 ? 0.01 : kind == Kind.BLUNDERS_5 ? 0.05 : 0;
    var kinds = new ArrayList<Flattery>();
    for (var maker = 0; maker < 3 * MAKERS; maker++) {
      kinds.add(new Flattery(kind == Kind.BIASED_MAKERS ? MAKER_BIAS * random.nextGaussian() : 0));
    }
    for (var i = 0; i < ofEach; i++) {
      var known = i % 5 == 0 ? Known.MEASURED : i % 5 <= 2 ? Known.MAKER : Known.ESTIMATED;
      var error = known == Known.MEASURED ? 0.02 : known == Known.MAKER ? 0.05 : 0.10;
      var maker = i / 5 % MAKERS;
      addMotor(i, known, error, maker, kinds.get(maker));
      addPropeller(i, known, error, maker, kinds.get(MAKERS + maker));
      addBattery(i, known, error, maker, kinds.get(2 * MAKERS + maker));
    }
  }

  /** How far a maker's figures are better than the truth, ln. */
  private record Flattery(double by) {}

  /** Every part. */
  List<Thing> things() {
    return things;
  }

  /** Everything that is the same in each build. */
  static List<Part> rest() {
    return SmallShop.catalog(SmallShop.ONE_BUILD).parts().stream()
        .filter(part ->
            !(part instanceof Motor || part instanceof Propeller || part instanceof Battery))
        .toList();
  }

  private static <P extends Part> P shape(Class<P> record) {
    return SmallShop.catalog(SmallShop.ONE_BUILD).ofKind(record).get(0);
  }

  private static final Motor MOTOR = shape(Motor.class);
  private static final Propeller PROPELLER = shape(Propeller.class);
  private static final Battery BATTERY = shape(Battery.class);

  private static <R extends Record> R named(R shape, int i, Known known, int maker) {
    var part = (Part) shape;
    var id = String.format(Locale.ROOT, "%s-%d-%04d", part.kind().key(), maker, i);
    return with(
        with(with(with(shape, "figures", known), "maker", "Maker " + maker), "id", id), "name", id);
  }

  private void addMotor(int i, Known known, double error, int maker, Flattery flattery) {
    var kv = WINDINGS[i % WINDINGS.length];
    Motor shape = with(
        with(named(MOTOR, i, known, maker), "speedConstantRpmPerVolt", kv),
        "mass",
        weighed(MOTOR, 0.10));
    // Kt/√R is 1.30e-5 D²√H, and 0.11 mN·m a gram turn it without load at 10 000 rpm, to the power
    // of 0.4.
    var constant = 30 / Math.PI / kv;
    var root = constant / (1.30e-5 * 13 * 13 * Math.sqrt(3));
    var amps = 0.11e-3
        * shape.mass().grams()
        / constant
        * StrictMath.pow(kv * shape.noLoadVolts() / 10_000, 0.4);
    var limits = kind == Kind.CEILINGS
        ? new Limits(0.85 * 1000 * root * root, Double.POSITIVE_INFINITY, 0)
        : Limits.NONE;
    var winding = trait(1000 * root * root, 0.15, limits, error, -flattery.by);
    var noLoad = trait(amps, 0.20, Limits.NONE, 2 * error, -flattery.by);
    things.add(new Thing(motor(shape, winding.stated, noLoad.stated), List.of(winding, noLoad)));
  }

  private Mass weighed(Part shape, double spread) {
    return new Mass(
        shape.mass().grams() * StrictMath.exp(spread * random.nextGaussian()),
        Known.MEASURED,
        null);
  }

  private static Motor motor(Motor shape, double milliohms, double amps) {
    // Less than fifty milliamperes no record may state.
    return with(
        with(shape, "resistanceMilliohms", milliohms), "noLoadCurrentAmps", Math.max(0.05, amps));
  }

  private void addPropeller(int i, Known known, double error, int maker, Flattery flattery) {
    var blades = BLADES[i % BLADES.length];
    Propeller shape = with(
        with(named(PROPELLER, i, known, maker), "pitchInches", blades[0]),
        "mass",
        weighed(PROPELLER, 0.10));
    // .1054 B^.451 (p/D)^.484
    var thrust = 0.1054 * StrictMath.pow(2, 0.451) * StrictMath.pow(blades[0] / 4, 0.484);
    var limits = kind == Kind.CEILINGS
        ? new Limits(0, 1.10 * blades[2], 0)
        : new Limits(0, 1.10 * blades[2], 0.05);
    var coefficient = trait(thrust, 0.08, Limits.NONE, error, 0);
    var merit = trait(blades[1], 0.07, limits, error, flattery.by);
    things.add(
        new Thing(propeller(shape, coefficient.stated, merit.stated), List.of(coefficient, merit)));
  }

  /** Nobody writes a better figure of merit than records may have. */
  private static Propeller propeller(Propeller shape, double thrust, double merit) {
    var power = StrictMath.pow(thrust, 1.5) / (Math.min(merit, 0.745) * Math.sqrt(Math.PI / 2));
    return with(
        shape,
        "test",
        new Propeller.StaticTest(List.of(new Propeller.Row(18_750.0, thrust, power)), null, null));
  }

  private void addBattery(int i, Known known, double error, int maker, Flattery flattery) {
    Battery shape = with(named(BATTERY, i, known, maker), "mass", weighed(BATTERY, 0.05));
    var label = shape.capacityMilliampHours();
    var limits = kind == Kind.CEILINGS ? new Limits(0, label, 0) : Limits.NONE;
    // 140 mΩ·Ah a cell.
    var resistance = trait(140_000 / label, 0.30, Limits.NONE, error, -flattery.by);
    var delivered = trait(0.95 * label, 0.03, limits, error, flattery.by);
    things.add(new Thing(
        battery(shape, resistance.stated, delivered.stated), List.of(resistance, delivered)));
  }

  private static Battery battery(Battery shape, double milliohms, double delivered) {
    // More than half above the label no record may state.
    return with(
        with(
            shape,
            "resistance",
            new Battery.Resistance(milliohms, Battery.Resistance.Reading.DIRECT_CURRENT)),
        "deliveredMilliampHours",
        Math.min(delivered, 1.5 * shape.capacityMilliampHours()));
  }

  private Trait trait(double law, double spread, Limits limits, double doubt, double bias) {
    double truth;
    do {
      truth = law * StrictMath.exp(spreads * spread * random.nextGaussian());
    } while (random.nextDouble() >= limits.admit(truth));
    var isBlunder = random.nextDouble() < blunders;
    var error = StrictMath.hypot(doubts * doubt, isBlunder ? BLUNDER : 0);
    var stated = truth * StrictMath.exp(bias + error * random.nextGaussian());
    return new Trait(law, spreads * spread, limits, truth, stated, error, bias);
  }
}
