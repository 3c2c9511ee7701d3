package pappus.fitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pappus.part.Adapter;
import pappus.part.Battery;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Screw;
import pappus.part.Seat;
import pappus.part.SmallThing;
import pappus.part.Strap;
import pappus.part.Sundry;
import pappus.part.Wire;

/**
 * Chooses screws, strap, pad, spacers, wire, solder and ties. Where the stock has none, the middle of
 * the usual range counts (common practice, no published source); only motor screws and strap must
 * be in stock, since a wrong length is worse than none.
 *
 * <p>Why: src/site/markdown/decisions.md#small-hardware-is-not-searched
 */
public final class HardwarePlanner {
  /** Widths of cameras are rounded on data sheets: 21 and 22 mm are one class. */
  public static final double CAMERA_TOLERANCE_MM = 1.0;

  private static final double PAD_GRAMS = 1.75;
  private static final double SOLDER_GRAMS = 2.75;
  private static final double STACK_GRAMS = 1.6;
  private static final double PROPELLER_SCREW_GRAMS = 0.5;
  private static final double PROPELLER_NUT_GRAMS = 0.95;

  /** Strap that overlaps itself, mm. */
  private static final double OVERLAP_MM = 30;

  /** The strap also goes round the plate, mm. */
  private static final double PLATE_MM = 3;

  /** From the middle of an arm's length to the pads, and slack, mm. */
  private static final double WIRE_SLACK_MM = 15;

  private final Stock stock;

  HardwarePlanner(Stock stock) {
    this.stock = stock;
  }

  Hardware plan(Build build, Optional<StackPlan> stack) {
    var items = new ArrayList<Hardware.Item>();
    var screw = motorScrew(build);
    screw.ifPresent(found -> items.add(Hardware.Item.of(
        SmallThing.MOTOR_SCREWS.label(),
        found,
        build.frame().map(Frame::rotors).orElse(4)
            * build.motor().map(Motor::screwCount).orElse(4))));
    addPropellerHardware(build, items);
    var columns = stack.map(plan -> plan.columns().size()).orElse(1);
    items.add(sundry(
        SmallThing.STACK_HARDWARE.label(), Sundry.Purpose.STACK_HARDWARE, columns, STACK_GRAMS));
    stack.ifPresent(plan -> plan.adapters()
        .forEach(
            adapter -> items.add(Hardware.Item.of(SmallThing.STACK_ADAPTER.label(), adapter, 1))));
    cameraShims(build)
        .ifPresent(shims -> items.add(Hardware.Item.of(SmallThing.CAMERA_SHIMS.label(), shims, 1)));
    var strap = strap(build);
    strap.ifPresent(
        found -> items.add(Hardware.Item.of(SmallThing.BATTERY_STRAP.label(), found, 1)));
    items.add(sundry(SmallThing.BATTERY_PAD.label(), Sundry.Purpose.BATTERY_PAD, 1, PAD_GRAMS));
    items.add(sundry(
        SmallThing.SOLDER_AND_TIES.label(), Sundry.Purpose.SOLDER_AND_TIES, 1, SOLDER_GRAMS));
    var wire = motorWire(build);
    wire.ifPresent(found -> addMotorWire(found, items));
    build.battery().ifPresent(battery -> addPackLeads(battery, items));
    return new Hardware(items, screw, strap, wire);
  }

  /** The lightest screw in stock that holds without touching the winding; never aluminium. */
  private Optional<Screw> motorScrew(Build build) {
    if (build.frame().isEmpty() || build.motor().isEmpty()) {
      return Optional.empty();
    }
    var frame = build.frame().get();
    var motor = build.motor().get();
    return stock.screw(screw -> serves(screw, frame, motor));
  }

  public static boolean serves(Screw screw, Frame frame, Motor motor) {
    var arm = frame.armThicknessMillimetres();
    return screw.thread() == motor.screw()
        && screw.material() != Screw.Material.ALUMINIUM
        && screw.material() != Screw.Material.NYLON
        && screw.lengthMillimetres() - arm >= motor.screw().leastMillimetres() - 1e-9
        && screw.lengthMillimetres() - arm <= deepest(motor) + 1e-9;
  }

  private static boolean serves(Strap strap, Frame frame, Battery battery) {
    return strap.widthMillimetres() <= frame.bay().strapWidthMillimetres()
        && strap.lengthMillimetres() >= girth(battery);
  }

  /** Whether motor screws or a strap that are there would do, even if lighter ones did too. */
  public static boolean serves(Part hardware, Build build) {
    if (build.frame().isEmpty()) {
      return false;
    }
    var frame = build.frame().get();
    if (hardware instanceof Screw screw) {
      return build.motor().filter(motor -> serves(screw, frame, motor)).isPresent();
    }
    return hardware instanceof Strap strap
        && build.battery().filter(battery -> serves(strap, frame, battery)).isPresent();
  }

  /** How deep a screw may go into a motor, mm. */
  public static double deepest(Motor motor) {
    return motor.threadDepthMillimetres() == null
        ? motor.screw().mostMillimetres()
        : motor.threadDepthMillimetres();
  }

  private void addPropellerHardware(Build build, List<Hardware.Item> items) {
    if (build.motor().isEmpty()) {
      return;
    }
    var seat = build.motor().get().propellerSeat();
    if (seat.isScrewed()) {
      items.add(sundry(
          SmallThing.PROPELLER_SCREWS.label(),
          Sundry.Purpose.PROPELLER_SCREWS,
          1,
          4 * PROPELLER_SCREW_GRAMS));
    } else if (seat == Seat.NUT_M5) {
      items.add(sundry(
          SmallThing.PROPELLER_NUTS.label(),
          Sundry.Purpose.PROPELLER_NUTS,
          1,
          4 * PROPELLER_NUT_GRAMS));
    }
    if (needsReducingRings(build)) {
      stock
          .adapter(Adapter.Purpose.REDUCING_RINGS, adapter -> true)
          .ifPresent(
              rings -> items.add(Hardware.Item.of(SmallThing.REDUCING_RINGS.label(), rings, 1)));
    }
  }

  /** Whether the propeller only has a 5 mm bore and the motor a thinner shaft. */
  public static boolean needsReducingRings(Build build) {
    if (build.motor().isEmpty() || build.propeller().isEmpty()) {
      return false;
    }
    var seats = build.propeller().get().seats();
    var seat = build.motor().get().propellerSeat();
    return !seats.contains(seat) && seats.contains(Seat.NUT_M5) && seat.isScrewed();
  }

  /** Shims for a camera narrower than every width of the cage. */
  public Optional<Adapter> cameraShims(Build build) {
    if (build.frame().isEmpty() || build.cameraUnit().isEmpty()) {
      return Optional.empty();
    }
    var widths = build.frame().get().cameraWidthsMillimetres();
    var width = build.cameraUnit().get().widthMillimetres();
    if (widths.stream().anyMatch(offered -> Math.abs(offered - width) <= CAMERA_TOLERANCE_MM)) {
      return Optional.empty();
    }
    return stock.adapter(
        Adapter.Purpose.CAMERA_SHIMS,
        adapter -> adapter.cameraMillimetres() != null
            && adapter.cageMillimetres() != null
            && Math.abs(adapter.cameraMillimetres() - width) <= CAMERA_TOLERANCE_MM
            && widths.stream()
                .anyMatch(offered ->
                    Math.abs(offered - adapter.cageMillimetres()) <= CAMERA_TOLERANCE_MM));
  }

  private Optional<Strap> strap(Build build) {
    if (build.frame().isEmpty() || build.battery().isEmpty()) {
      return Optional.empty();
    }
    var frame = build.frame().get();
    var battery = build.battery().get();
    return stock.strap(strap -> serves(strap, frame, battery));
  }

  /** Length a strap needs round a pack and its plate, mm. */
  public static double girth(Battery battery) {
    return 2 * (battery.widthMillimetres() + battery.heightMillimetres() + PLATE_MM) + OVERLAP_MM;
  }

  private Hardware.Item sundry(String label, Sundry.Purpose purpose, int sets, double usualGrams) {
    return stock
        .sundry(purpose)
        .map(found -> Hardware.Item.of(label, found, sets))
        .orElseGet(() -> Hardware.Item.usual(label, sets * usualGrams));
  }

  /** From the middle of the frame along half a diagonal, with slack. */
  private static Optional<Hardware.MotorWire> motorWire(Build build) {
    return build
        .frame()
        .flatMap(frame -> build
            .motor()
            .map(motor -> new Hardware.MotorWire(
                motor.leadGauge(),
                3 * frame.rotors(),
                frame.diagonal() / 2 + WIRE_SLACK_MM,
                motor.leadsIncludedMillimetres())));
  }

  /** Motors come with more wire than an arm takes, or with none. */
  private static void addMotorWire(Hardware.MotorWire wire, List<Hardware.Item> items) {
    var missing = wire.missingMillimetres();
    var grams =
        wire.wires() * Math.abs(missing) / 1000 * Wire.ofGauge(wire.gauge()).gramsPerMetre();
    if (grams < 0.05) {
      return;
    }
    items.add(
        missing > 0
            ? Hardware.Item.usual("motor wire added", grams)
            : Hardware.Item.cutOff("motor wire cut off", grams));
  }

  /** Makers quote packs without leads about half the time. */
  private static void addPackLeads(Battery battery, List<Hardware.Item> items) {
    if (!battery.massIncludesLeads()) {
      items.add(Hardware.Item.usual(
          Hardware.PACK_LEADS,
          2
                  * battery.leadMillimetres()
                  / 1000
                  * Wire.ofGauge(battery.leadGauge()).gramsPerMetre()
              + battery.connector().halfGrams()));
    }
  }
}
