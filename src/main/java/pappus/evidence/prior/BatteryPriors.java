package pappus.evidence.prior;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Battery;
import pappus.part.Battery.Resistance;
import pappus.part.Chemistry;
import pappus.part.Wire;

/** Packs: energy, mass, density, resistance, and what the label promises. */
final class BatteryPriors {
  /** A 1 kHz reading is about 1/1.8 of the direct-current one. */
  private static final double DIRECT_OVER_CHARGER = 1.8;

  /** Sag of a cell at the honest continuous current, mV (engineering estimate). */
  private static final double HONEST_SAG_MILLIVOLTS = 300;

  /** Labels of pouches say 2 to 5 times the honest rating, or honestly less (engineering estimate). */
  private static final Bounds POUCH_LABEL = new Bounds(0.5, 6, 0.5, 8);

  /** Labels of cylindrical packs say what the cell's sheet does (engineering estimate). */
  private static final Bounds CYLINDER_LABEL = new Bounds(0.5, 1.35, 0.5, 8);

  private BatteryPriors() {}

  static List<String> remarks(Battery pack) {
    var remarks = new ArrayList<String>();
    var grams = gramsWithLeads(pack);
    var ampHours = pack.capacityMilliampHours() / 1000;
    var wattHours = ampHours * pack.cellsInSeries() * pack.chemistry().nominalVolts();
    energyBounds(pack.chemistry())
        .remark("energy for a kilogram with leads", 1000 * wattHours / grams, " Wh")
        .ifPresent(remarks::add);
    if (!pack.chemistry().isLithiumIon()) {
      addPouch(pack, grams, ampHours, 1000 * wattHours / grams, remarks);
    }
    var resistance = stated(pack);
    if (resistance != null) {
      resistanceBounds(pack.chemistry(), ampHours)
          .remark("resistance times capacity of a cell", product(resistance, ampHours), " mΩ·Ah")
          .ifPresent(remarks::add);
    }
    addLabel(pack, ampHours, remarks);
    return List.copyOf(remarks);
  }

  /** Weighed packs and data sheets (common practice, no published source). */
  private static Bounds energyBounds(Chemistry chemistry) {
    return switch (chemistry) {
      case LIPO -> Bounds.hard(90, 175);
      case LIHV -> Bounds.hard(90, 220);
      case LI_ION_POWER, LI_ION_ENERGY -> Bounds.hard(165, 270);
    };
  }

  /**
   * mΩ·Ah, direct current after 10 s at 25 °C: 10 to 14 in multicopter packs, Bauersfeld and
   * Scaramuzza, IEEE RA-L 7(2) 2022; 22.5 in one hobby cell, Kollmeyer and Skells 2020. Li-ion after
   * data sheets (common practice, no published source).
   */
  private static Bounds resistanceBounds(Chemistry chemistry, double ampHours) {
    return switch (chemistry) {
      case LIPO, LIHV -> Bounds.about(ampHours < 0.5 ? 18 : 14, 0.30, 6, 40);
      case LI_ION_POWER -> Bounds.about(60, 0.30, 30, 260);
      case LI_ION_ENERGY -> Bounds.about(140, 0.30, 30, 260);
    };
  }

  private static void addPouch(
      Battery pack,
      double grams,
      double ampHours,
      double wattHoursPerKilogram,
      List<String> remarks) {
    // Packs of a low rating hold 170 Wh/kg and more and follow a law of their own.
    if (wattHoursPerKilogram < 170) {
      // Thirteen weighed packs (common practice, no published source).
      var cells = pack.cellsInSeries();
      var law = (28.3 * cells * ampHours + 0.63 * cells - 0.9) * (ampHours < 0.5 ? 1.08 : 1);
      Bounds.about(law, 0.12, 0.5 * law, 2 * law)
          .remark("mass with leads", grams, " g")
          .ifPresent(remarks::add);
    }
    // Sides filled by class say nothing of the pack.
    if (Stream.of("lengthMillimetres", "widthMillimetres", "heightMillimetres")
        .anyMatch(side -> pack.assumed(side).isPresent())) {
      return;
    }
    var cubicCentimetres =
        pack.lengthMillimetres() * pack.widthMillimetres() * pack.heightMillimetres() / 1000;
    // 2.2 g/cm³, ±7 % (common practice, no published source).
    Bounds.about(2.2, 0.07, 1.7, 2.7)
        .remark("density", (grams - leadGrams(pack)) / cubicCentimetres, " g/cm³")
        .ifPresent(remarks::add);
  }

  /** Nothing is to be said of what was filled by class. */
  private static @Nullable Resistance stated(Battery pack) {
    return pack.assumed("resistance").isPresent() ? null : pack.resistance();
  }

  private static void addLabel(Battery pack, double ampHours, List<String> remarks) {
    var label = pack.labelRating();
    var resistance = stated(pack);
    var amps = pack.continuousAmps();
    if (label == null) {
      return;
    }
    if (amps != null) {
      CYLINDER_LABEL
          .remark("label rating over what the cell's sheet allows", label * ampHours / amps, "")
          .ifPresent(remarks::add);
    } else if (resistance != null && !pack.chemistry().isLithiumIon()) {
      POUCH_LABEL
          .remark(
              "label rating over the honest one",
              label * product(resistance, ampHours) / HONEST_SAG_MILLIVOLTS,
              "")
          .ifPresent(remarks::add);
    }
  }

  /** Of a cell, mΩ·Ah. */
  private static double product(Resistance resistance, double ampHours) {
    var direct = resistance.reading() == Resistance.Reading.CHARGER ? DIRECT_OVER_CHARGER : 1;
    return resistance.milliohmsPerCell() * direct * ampHours;
  }

  private static double gramsWithLeads(Battery pack) {
    return pack.mass().grams() + (pack.massIncludesLeads() ? 0 : leadGrams(pack));
  }

  private static double leadGrams(Battery pack) {
    return 2 * pack.leadMillimetres() / 1000 * Wire.ofGauge(pack.leadGauge()).gramsPerMetre()
        + pack.connector().halfGrams();
  }
}
