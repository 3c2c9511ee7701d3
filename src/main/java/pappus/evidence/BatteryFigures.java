package pappus.evidence;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.part.Battery;
import pappus.physics.battery.Chemistry;

/**
 * What counts of a pack.
 *
 * @param cellResistance of one cell of the pack, parallel cells counted as one, mΩ, direct current after ten
 *     seconds
 * @param delivered charge from full to empty when new and warm, mAh
 */
public record BatteryFigures(Figure cellResistance, Figure delivered) {
  /** A charger's or 1 kHz reading is 1.3 to 2.5 times too low (engineering estimate). */
  private static final double CHARGER_DOUBT = 0.30;

  private static final String RESISTANCE_FIELD = "resistance";

  static BatteryFigures of(Battery battery, Evidence evidence) {
    var chemistry = chemistry(battery);
    var resistance = cellResistance(battery);
    var delivered = delivered(battery);
    return new BatteryFigures(
        resistance
            .map(reading -> battery
                .assumed(RESISTANCE_FIELD)
                .map(one -> Figure.filled(
                    reading.name(),
                    reading.trait().unit(),
                    reading.stated(),
                    reading.prior(),
                    one.spread()))
                .orElseGet(() -> evidence.weigh(battery, reading)))
            .orElseGet(() -> Figure.ofPrior(
                Trait.CELL_RESISTANCE.words(),
                Trait.CELL_RESISTANCE.unit(),
                usualCellMilliohms(battery),
                chemistry.classResistanceDoubt())),
        delivered
            .map(reading -> evidence.weigh(battery, reading))
            .orElseGet(() -> Figure.ofPrior(
                Trait.DELIVERED.words(),
                Trait.DELIVERED.unit(),
                usualMilliampHours(battery),
                Chemistry.DELIVERED_SHARE_DOUBT)));
  }

  /** What a record has of cell resistance and charge delivered. */
  static List<Reading> readings(Battery battery) {
    var resistance = battery.assumed(RESISTANCE_FIELD).isEmpty()
        ? cellResistance(battery)
        : Optional.<Reading>empty();
    return Stream.of(resistance, delivered(battery)).flatMap(Optional::stream).toList();
  }

  /** One standard deviation of ln of what minutes of current add to the cells' resistance. */
  public static double slowDoubt(Battery battery) {
    return chemistry(battery).slowDoubt();
  }

  /** The physics' name of the battery's chemistry. */
  public static Chemistry chemistry(Battery battery) {
    return switch (battery.chemistry()) {
      case LIPO -> Chemistry.LIPO;
      case LIHV -> Chemistry.LIHV;
      case LI_ION_POWER -> Chemistry.LI_ION_POWER;
      case LI_ION_ENERGY -> Chemistry.LI_ION_ENERGY;
    };
  }

  /** Resistance that a cell of such a pack usually has, mΩ, parallel cells counted as one. */
  public static double usualCellMilliohms(Battery battery) {
    var cellCoulomb = battery.capacityMilliampHours() * 3.6 / battery.cellsInParallel();
    return 1000 * chemistry(battery).classResistanceOhm(cellCoulomb) / battery.cellsInParallel();
  }

  /** Labels promise more than packs deliver. */
  private static double usualMilliampHours(Battery battery) {
    return Chemistry.DELIVERED_SHARE * battery.capacityMilliampHours();
  }

  private static double doubt(Battery battery) {
    var own = battery.figuresDoubt();
    return own == null ? battery.figures().figureDoubt() : own;
  }

  private static Optional<Reading> cellResistance(Battery battery) {
    var resistance = battery.resistance();
    if (resistance == null) {
      return Optional.empty();
    }
    var byCharger = resistance.reading() == Battery.Resistance.Reading.CHARGER;
    var doubt = doubt(battery);
    return Optional.of(new Reading(
        Trait.CELL_RESISTANCE,
        byCharger ? "cell resistance (1.8 × a charger's reading)" : Trait.CELL_RESISTANCE.words(),
        battery.maker(),
        battery.figures(),
        resistance.milliohmsPerCell() * (byCharger ? Chemistry.METER_READING_FACTOR : 1),
        usualCellMilliohms(battery),
        byCharger ? StrictMath.hypot(CHARGER_DOUBT, doubt) : doubt,
        battery.figuresDoubt() != null));
  }

  /** What a pack was seen to deliver. */
  private static Optional<Reading> delivered(Battery battery) {
    var seen = battery.deliveredMilliampHours();
    return seen == null
        ? Optional.empty()
        : Optional.of(new Reading(
            Trait.DELIVERED,
            battery.maker(),
            battery.figures(),
            seen,
            usualMilliampHours(battery),
            doubt(battery),
            battery.figuresDoubt() != null));
  }
}
