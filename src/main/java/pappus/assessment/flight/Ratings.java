package pappus.assessment.flight;

import org.jspecify.annotations.Nullable;
import pappus.evidence.BatteryFigures;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Lead;
import pappus.part.Motor;
import pappus.part.Wire;
import pappus.physics.battery.CopperWire;
import pappus.physics.flight.Limits;

/** What lies between pack and motors: the resistance of wires and plugs, and the currents that all of it carries. */
public final class Ratings {
  /** Throttle in hover at half charge. */
  public static final double MOST_DUTY = 0.999;

  private static final double BURST_OVER_CONTINUOUS = 1.3;

  /** LiPo labels are optimistic; half of one is flown (common practice, no published source). */
  private static final double HONEST_SHARE_OF_LABEL = 0.5;

  /** A sag of so many volts a cell is what a pack stands all flight long (engineering estimate). */
  private static final double HONEST_SAG_VOLTS = 0.30;

  private Ratings() {}

  /** Both ways, with plugs, Ω. */
  public static double wiringOhm(Build build) {
    var battery = build.battery().orElseThrow();
    return wire(battery.leadGauge(), battery.leadMillimetres())
        + battery.connector().milliohms() / 1000
        + build.lead().map(Ratings::ohm).orElse(0.0)
        + build.board().map(Ratings::ohm).orElse(0.0);
  }

  /** What a lead between board and battery adds to that, Ω. */
  public static double ohm(Lead lead) {
    var given = lead.milliohms();
    return given != null
        ? given / 1000
        : wire(lead.gauge(), lead.millimetres())
            + (lead.boardSide() == null ? 0 : lead.boardSide().milliohms() / 1000);
  }

  /** What the wires of a board's own plug add to that, Ω; 0 where it has none. */
  public static double ohm(Board board) {
    var plug = board.plug();
    return plug == null ? 0 : wire(plug.gauge(), plug.millimetres());
  }

  private static double wire(int gauge, double millimetres) {
    return 2 * millimetres / 1000 * CopperWire.ohmPerM(gauge);
  }

  /**
   * Currents that hold without end, for hover; a board not chosen yet bounds none.
   *
   * @param pack what counts of its battery
   */
  public static Limits continuous(Build build, BatteryFigures pack) {
    var motor = build.motor().orElseThrow().continuousAmps();
    var thinnest = thinnestWire(build);
    return new Limits(
        motor == null ? Double.POSITIVE_INFINITY : motor,
        build.board().map(Board::continuousAmpsPerMotor).orElse(Double.POSITIVE_INFINITY),
        packContinuousAmps(build.battery().orElseThrow(), pack),
        build.battery().orElseThrow().connector().continuousAmps(),
        thinnest.continuousAmps());
  }

  /**
   * Currents that hold for some seconds, for full throttle; a board not chosen yet bounds none.
   *
   * @param pack what counts of its battery
   */
  public static Limits burst(Build build, BatteryFigures pack) {
    var battery = build.battery().orElseThrow();
    return new Limits(
        burstAmps(build.motor().orElseThrow()),
        build
            .board()
            .map(board -> burst(board.burstAmpsPerMotor(), board.continuousAmpsPerMotor()))
            .orElse(Double.POSITIVE_INFINITY),
        packBurstAmps(battery, pack),
        battery.connector().burstAmps(),
        thinnestWire(build).burstAmps());
  }

  /** Current that a motor stands for some seconds, A. */
  public static double burstAmps(Motor motor) {
    return burst(motor.burstAmps(), motor.continuousAmps());
  }

  /** Current that a pack, its plug and its leads stand for some seconds, A. */
  static double burstAmps(Battery battery, BatteryFigures pack) {
    return Math.min(
        Math.min(packBurstAmps(battery, pack), battery.connector().burstAmps()),
        Wire.ofGauge(battery.leadGauge()).burstAmps());
  }

  private static double burst(@Nullable Double burst, @Nullable Double continuous) {
    if (burst != null) {
      return burst;
    }
    return continuous == null ? Double.POSITIVE_INFINITY : BURST_OVER_CONTINUOUS * continuous;
  }

  /** The smaller of half the label and what the cells' resistance honestly allows. */
  private static double packContinuousAmps(Battery battery, BatteryFigures pack) {
    if (battery.continuousAmps() != null) {
      return battery.continuousAmps();
    }
    var honest = 1000 * HONEST_SAG_VOLTS / pack.cellResistance().posterior();
    return battery.labelRating() == null
        ? honest
        : Math.min(
            honest,
            HONEST_SHARE_OF_LABEL * battery.labelRating() * battery.capacityMilliampHours() / 1000);
  }

  /** Pouches are bounded by their floor volts; of cylinders no burst is known. */
  private static double packBurstAmps(Battery battery, BatteryFigures pack) {
    if (battery.chemistry().isLithiumIon()) {
      return BURST_OVER_CONTINUOUS * packContinuousAmps(battery, pack);
    }
    return battery.labelRating() == null
        ? Double.POSITIVE_INFINITY
        : battery.labelRating() * battery.capacityMilliampHours() / 1000;
  }

  private static Wire thinnestWire(Build build) {
    var gauge = build.battery().orElseThrow().leadGauge();
    if (build.lead().isPresent()) {
      gauge = Math.max(gauge, build.lead().get().gauge());
    }
    var plug = build.board().map(Board::plug);
    if (plug.isPresent()) {
      gauge = Math.max(gauge, plug.get().gauge());
    }
    return Wire.ofGauge(gauge);
  }
}
