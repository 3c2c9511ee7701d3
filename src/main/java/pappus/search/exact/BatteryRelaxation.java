package pappus.search.exact;

import java.util.BitSet;
import pappus.compatibility.Sizes;
import pappus.physics.battery.Cell;
import pappus.physics.battery.Pack;
import pappus.physics.flight.LandingRule;

/**
 * Numbers at least as good as those of some batteries of one kind: as many cells of one chemistry in series, and the
 * same accessories.
 *
 * @param adds mass and price
 * @param series cells
 * @param cell as one cell in parallel: most charge, least resistance
 * @param wiringOhm least resistance of leads and plug, Ω
 * @param pack of these
 * @param drain of it
 * @param landing when to land
 * @param floorVolts of the pack, that full throttle must not pass, V
 * @param burstAmps most current for some seconds through cells, plug and leads, A
 * @param sizes least
 * @param frames that one of them goes on whatever its size, in the order of {@link Frames}
 * @param motors sorts of motors that one of them goes with
 */
record BatteryRelaxation(
    Adds adds,
    int series,
    Cell cell,
    double wiringOhm,
    Pack pack,
    Drain drain,
    LandingRule landing,
    double floorVolts,
    double burstAmps,
    Sizes sizes,
    BitSet frames,
    BitSet motors) {
  static BatteryRelaxation least(BatteryRelaxation one, BatteryRelaxation other) {
    var cell = one.cell.best(other.cell);
    var wiringOhm = Math.min(one.wiringOhm, other.wiringOhm);
    var pack = Pack.of(cell, one.series, 1, wiringOhm);
    return new BatteryRelaxation(
        one.adds.least(other.adds),
        one.series,
        cell,
        wiringOhm,
        pack,
        Drain.of(pack, one.landing),
        one.landing,
        one.floorVolts,
        Math.max(one.burstAmps, other.burstAmps),
        one.sizes.least(other.sizes),
        MotorRelaxation.either(one.frames, other.frames),
        MotorRelaxation.either(one.motors, other.motors));
  }
}
