package pappus.evidence;

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
  /** Standard deviation of ln within a class (engineering estimate). */
  private static final double RESISTANCE_PRIOR_DEVIATION = 0.30;

  /** A charger's or 1 kHz reading is 1.3 to 2.5 times too low (engineering estimate). */
  private static final double CHARGER_DOUBT = 0.30;

  public static BatteryFigures of(Battery battery) {
    var chemistry = chemistry(battery);
    var own = battery.figuresDoubt();
    var doubt = own == null ? battery.figures().figureDoubt() : own;
    return new BatteryFigures(cellResistance(battery, chemistry, doubt), delivered(battery, doubt));
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

  private static Figure cellResistance(Battery battery, Chemistry chemistry, double doubt) {
    var prior = usualCellMilliohms(battery);
    var resistance = battery.resistance();
    if (resistance == null) {
      return Figure.ofPrior("cell resistance", "mΩ", prior, chemistry.classResistanceDoubt());
    }
    var filled = battery.assumed("resistance");
    if (filled.isPresent()) {
      return Figure.filled(
          "cell resistance",
          "mΩ",
          resistance.milliohmsPerCell(),
          prior,
          filled.get().spread());
    }
    var byCharger = resistance.reading() == Battery.Resistance.Reading.CHARGER;
    return Figure.weighed(
        byCharger ? "cell resistance (1.8 × a charger's reading)" : "cell resistance",
        "mΩ",
        resistance.milliohmsPerCell() * (byCharger ? Chemistry.METER_READING_FACTOR : 1),
        prior,
        RESISTANCE_PRIOR_DEVIATION,
        byCharger ? StrictMath.hypot(CHARGER_DOUBT, doubt) : doubt,
        battery.figures());
  }

  /** Labels promise more than packs deliver; what a pack was seen to deliver is weighed against that. */
  private static Figure delivered(Battery battery, double doubt) {
    var prior = Chemistry.DELIVERED_SHARE * battery.capacityMilliampHours();
    var seen = battery.deliveredMilliampHours();
    return seen == null
        ? Figure.ofPrior("charge delivered", "mAh", prior, Chemistry.DELIVERED_SHARE_DOUBT)
        : Figure.weighed(
            "charge delivered",
            "mAh",
            seen,
            prior,
            Chemistry.DELIVERED_SHARE_DOUBT,
            doubt,
            battery.figures());
  }
}
