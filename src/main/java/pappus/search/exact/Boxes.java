package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import pappus.assessment.flight.FlightModels;
import pappus.assessment.flight.Ratings;
import pappus.compatibility.Sizes;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.physics.battery.Pack;
import pappus.physics.flight.ForwardFlight;
import pappus.physics.motor.PartLoadLaw;
import pappus.physics.motor.WindingHeat;
import pappus.quantity.Units;
import pappus.scenario.Flight.Style;

/**
 * Motors, propellers and batteries of a question as trees of boxes.
 *
 * <p>Why: src/site/markdown/decisions.md#bounds-reach-down-to-375-g-whatever-the-cap
 */
final class Boxes {
  private static final int LEAST_SPANS = 100;

  /** Of a span, its end over its beginning less one: what spans are worth hardly changes within so much thrust. */
  private static final double SPAN = 0.035;

  /** Below so small a share of the cap, and below so many grams, no build is worth a bound. */
  private static final double LEAST_OF_CAP = 0.15;

  private static final double LEAST_GRAMS = 37.5;

  /** About what a small quad draws in hover, W/g, and what a gram costs, W: only where to halve depends on them. */
  private static final double WATTS_PER_GRAM = 0.1;

  private static final double MORE_WATTS_PER_GRAM = 0.125;

  private final Goods goods;
  private final Frames frames;
  private final FlightModels models;
  private final PropellerRelaxation.Spans spans;
  private final double share;
  private final double usualWatts;
  private final double usualThrustN;
  private final double usualTorqueNm;
  private final double usualSpeed;
  private final Box<MotorRelaxation> motors;
  private final Box<PropellerRelaxation> propellers;
  private final List<Box<BatteryRelaxation>> batteries;

  Boxes(Goods goods, Frames frames, KitRelaxations kits) {
    this.goods = goods;
    this.frames = frames;
    this.models = goods.assessor().prospects().models();
    var scenario = goods.assessor().scenario();
    var capGrams = scenario.massCap().largestMilligrams() / 1000.0;
    var newtons = capGrams / 1000 * Units.GRAVITY_M_PER_S2 / (1 - mostLost()) / Frame.ROTORS;
    var least = Math.min(LEAST_OF_CAP, LEAST_GRAMS / capGrams) * newtons;
    var most = 1.01 * Math.max(1, scenario.leastThrustToWeight()) * newtons;
    this.spans = PropellerRelaxation.Spans.between(least, most, Math.max(LEAST_SPANS, (int)
        Math.ceil(Math.log(most / least) / SPAN)));
    this.share = scenario.flight().style() == Style.HOVER ? 1 : ForwardFlight.LEAST_OF_HOVER;
    this.usualWatts = WATTS_PER_GRAM * capGrams;
    this.usualThrustN = newtons;
    var middle = parts(Role.PROPELLER).get(parts(Role.PROPELLER).size() / 2);
    var usual = models.propeller((Propeller) middle);
    this.usualSpeed = usual.speedForThrustRadPerS(newtons);
    this.usualTorqueNm = usual.torqueNm(usualSpeed);
    // The three know nothing of each other.
    var motors = CompletableFuture.supplyAsync(this::ofMotors);
    var batteries = CompletableFuture.supplyAsync(() -> ofBatteries(kits));
    this.propellers = ofPropellers();
    this.motors = motors.join();
    this.batteries = batteries.join();
  }

  /** Largest share of thrust lost to any frame. */
  private double mostLost() {
    return frames
        .air()
        .mostLost(parts(Role.PROPELLER).stream()
            .mapToDouble(part -> ((Propeller) part).diameterMillimetres())
            .min()
            .orElseThrow());
  }

  private List<Part> parts(Role role) {
    return goods.options(role);
  }

  Box<MotorRelaxation> motors() {
    return motors;
  }

  Box<PropellerRelaxation> propellers() {
    return propellers;
  }

  /** One tree a kind of battery; none of kinds that no accessories go with. */
  List<Box<BatteryRelaxation>> batteries() {
    return batteries;
  }

  /** The box of one motor. */
  Box<MotorRelaxation> motor(Part part) {
    return one(motors, parts(Role.MOTOR).indexOf(part));
  }

  /** The box of one propeller. */
  Box<PropellerRelaxation> propeller(Part part) {
    return one(propellers, parts(Role.PROPELLER).indexOf(part));
  }

  /** The box of one battery. */
  Box<BatteryRelaxation> battery(Part part) {
    var index = parts(Role.BATTERY).indexOf(part);
    return batteries.stream()
        .flatMap(box -> find(box, index).stream())
        .findFirst()
        .orElseThrow();
  }

  private static <F> Box<F> one(Box<F> box, int part) {
    return find(box, part).orElseThrow();
  }

  private static <F> Optional<Box<F>> find(Box<F> box, int part) {
    if (box.isOne()) {
      return box.part() == part ? Optional.of(box) : Optional.empty();
    }
    return box.halves().stream().flatMap(half -> find(half, part).stream()).findFirst();
  }

  /** Share of the hover's shaft power that flight takes at least. */
  double share() {
    return share;
  }

  PropellerRelaxation.Spans spans() {
    return spans;
  }

  private Box<MotorRelaxation> ofMotors() {
    var leaves = new ArrayList<Box.Leaf<MotorRelaxation>>();
    for (var index = 0; index < parts(Role.MOTOR).size(); index++) {
      var floor = motor((Motor) parts(Role.MOTOR).get(index));
      var sort = List.of(floor.byPropeller(), floor.byBattery(), floor.frames());
      leaves.add(new Box.Leaf<>(
          index,
          floor,
          sort,
          List.of(
              MORE_WATTS_PER_GRAM * floor.adds().grams(),
              Frame.ROTORS * heatW(floor),
              Frame.ROTORS * usualSpeed * floor.dragNm(usualSpeed),
              0.05 * usualWatts * Math.log(floor.kvLow()))));
    }
    return Box.of(leaves, MotorRelaxation::least, this::dear);
  }

  private double heatW(MotorRelaxation floor) {
    var torque = usualTorqueNm + floor.dragNm(usualSpeed);
    return floor.heat() * torque * torque;
  }

  private double dear(MotorRelaxation floor) {
    return MORE_WATTS_PER_GRAM * floor.adds().grams()
        + Frame.ROTORS * heatW(floor)
        + Frame.ROTORS * usualSpeed * floor.dragNm(usualSpeed);
  }

  private MotorRelaxation motor(Motor part) {
    var own = goods.own(Role.MOTOR, part);
    var motor = models.motor(part);
    var kv = motor.kvRadPerSPerV();
    var heat = motor.resistanceOhm() * kv * kv;
    var ripple = PartLoadLaw.BENCH.rippleOf(part.statorDiameterMillimetres());
    var drag = MotorRelaxation.dragNm(motor);
    var amps = part.continuousAmps() == null ? Double.POSITIVE_INFINITY : part.continuousAmps();
    return new MotorRelaxation(
        own,
        frames.fastening(part),
        kv,
        kv,
        heat,
        motor.resistanceOhm() * kv,
        ripple,
        ripple,
        models.lossOhm(part) * kv * kv,
        motor.withWindingAt(WindingHeat.LIMIT_K).resistanceOhm() * kv * kv,
        PartLoadLaw.BENCH.idleA(),
        drag,
        drag,
        amps,
        Ratings.burstAmps(part),
        frames.under(Role.MOTOR, part),
        sort(Role.PROPELLER, part),
        sort(Role.BATTERY, part));
  }

  /** The sort of a motor against another role; empty where that has to be asked later. */
  private BitSet sort(Role other, Part motor) {
    var pairing = goods.pairings().of(Role.MOTOR, other);
    var sort = new BitSet();
    sort.set(pairing.hasFewSorts() ? pairing.sort(motor) : 0);
    return sort;
  }

  /** Sorts of motors that a part goes with. */
  private BitSet motorsWith(Role role, Part part) {
    var pairing = goods.pairings().of(Role.MOTOR, role);
    var sorts = new BitSet();
    if (!pairing.hasFewSorts()) {
      sorts.set(0);
      return sorts;
    }
    var mine = pairing.otherSort(part);
    for (var sort = 0; sort < pairing.sorts(); sort++) {
      sorts.set(sort, pairing.fit(sort, mine));
    }
    return sorts;
  }

  private Box<PropellerRelaxation> ofPropellers() {
    // A propeller off its rows is blade elements: most of the work before a search.
    var leaves = IntStream.range(0, parts(Role.PROPELLER).size())
        .parallel()
        .mapToObj(this::propellerLeaf)
        .toList();
    var usual = spans.of(usualThrustN);
    return Box.of(
        leaves,
        PropellerRelaxation::least,
        floor -> MORE_WATTS_PER_GRAM * floor.adds().grams() + shaftW(floor, usual));
  }

  private Box.Leaf<PropellerRelaxation> propellerLeaf(int index) {
    var usual = spans.of(usualThrustN);
    var part = (Propeller) parts(Role.PROPELLER).get(index);
    var floor = PropellerRelaxation.of(
        models.propeller(part),
        spans,
        share,
        goods.own(Role.PROPELLER, part),
        Sizes.of(part),
        frames.under(Role.PROPELLER, part),
        motorsWith(Role.PROPELLER, part));
    return new Box.Leaf<>(
        index,
        floor,
        List.of(floor.frames(), floor.motors()),
        List.of(
            MORE_WATTS_PER_GRAM * floor.adds().grams(),
            shaftW(floor, usual),
            usualWatts / 8 * Math.log(floor.speed().at(usual))));
  }

  private double shaftW(PropellerRelaxation floor, int span) {
    return Frame.ROTORS * floor.shaft().at(span) * usualThrustN * Math.sqrt(usualThrustN);
  }

  private List<Box<BatteryRelaxation>> ofBatteries(KitRelaxations kits) {
    var byKind = new TreeMap<String, List<Box.Leaf<BatteryRelaxation>>>();
    for (var index = 0; index < parts(Role.BATTERY).size(); index++) {
      var part = (Battery) parts(Role.BATTERY).get(index);
      if (!kits.coarse(goods.with(part)).isEmpty()) {
        var floor = battery(part);
        var sort = floor.motors();
        byKind
            .computeIfAbsent(goods.kind(part), fresh -> new ArrayList<>())
            .add(new Box.Leaf<>(
                index,
                floor,
                sort,
                List.of(
                    MORE_WATTS_PER_GRAM * floor.adds().grams(),
                    -usualWatts * Math.log(floor.cell().capacityCoulomb()),
                    lostW(floor))));
      }
    }
    return byKind.values().stream()
        .map(leaves -> Box.of(
            leaves,
            BatteryRelaxation::least,
            floor -> MORE_WATTS_PER_GRAM * floor.adds().grams()
                - usualWatts * Math.log(floor.cell().capacityCoulomb())
                + lostW(floor)))
        .toList();
  }

  private double lostW(BatteryRelaxation floor) {
    var amps = usualWatts / floor.pack().openVolts(Pack.HALF_CHARGE);
    return amps * amps * floor.pack().steadyOhm(Pack.HALF_CHARGE);
  }

  private BatteryRelaxation battery(Battery part) {
    var single = models.cell(part).inParallel(part.cellsInParallel());
    var wiringOhm = Ratings.wiringOhm(Build.empty().with(Role.BATTERY, part));
    var series = part.cellsInSeries();
    var pack = Pack.of(single, series, 1, wiringOhm);
    var own = goods.own(Role.BATTERY, part);
    return new BatteryRelaxation(
        frames.leastStrap(part).on(own),
        series,
        single,
        wiringOhm,
        pack,
        Drain.of(pack, models.landing(part)),
        models.landing(part),
        models.floorVolts(part) * series,
        models.burstAmps(part),
        Sizes.of(part),
        frames.under(Role.BATTERY, part),
        motorsWith(Role.BATTERY, part));
  }
}
