package pappus.answers.calibration;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import pappus.calibration.BenchRow;
import pappus.calibration.Calibration;
import pappus.calibration.Calibration.Figure;
import pappus.catalog.Catalog;
import pappus.evidence.MotorFigures;
import pappus.part.Assumed;
import pappus.part.Kind;
import pappus.part.Known;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.physics.motor.PartLoadLaw;
import pappus.quantity.Units;

/**
 * Fitted coefficients as records of parts that a catalogue knows: a stand tells neither mass nor price nor
 * size, so only what it measured is replaced.
 *
 * @param parts measured
 * @param remarks on what could not become one, for the user
 */
public record CalibrationRecords(List<Part> parts, List<String> remarks) {
  /**
   * The law of part load that every board is flown with. Loss, resistance and no-load current stand in for
   * each other, so records are only right if they were fitted under the law they are flown with.
   */
  public static final Calibration.ControllerLaw FLOWN = new Calibration.ControllerLaw(
      firm(PartLoadLaw.BENCH.ripple()),
      firm(PartLoadLaw.BENCH.idleA()),
      firm(PartLoadLaw.BENCH.noLoadExponent()));

  private static final int SPEEDS = 5;

  /** Labels sit 2 to 9 % above the loaded Kv: farther off, it is another winding. */
  private static final double LIKE_KV = 0.08;

  private static final double LIKE_DIAMETER = 0.03;
  private static final String REST = " All else as before: ";

  public CalibrationRecords {
    parts = List.copyOf(parts);
    remarks = List.copyOf(remarks);
  }

  /** The rows with the stators of the motors that they are of, where the catalogue has them. */
  public static List<BenchRow> withStators(
      List<BenchRow> rows, Map<String, String> ids, Catalog catalog) {
    return rows.stream()
        .map(row -> catalog
            .part(ids.getOrDefault(row.motorKey(), row.motorKey()), Motor.class)
            .map(motor -> row.ofStator(motor.statorDiameterMillimetres()))
            .orElse(row))
        .toList();
  }

  /**
   * The records.
   *
   * @param flown fitted under {@link #FLOWN} to rows {@link #withStators with the catalogue's stators}
   * @param ids of parts by the key of a motor or propeller; a key without one is its own id
   * @param catalog what the parts are otherwise
   * @param files that were fitted, for the records' source
   */
  public static CalibrationRecords of(
      Calibration flown, Map<String, String> ids, Catalog catalog, String files) {
    var parts = new ArrayList<Part>();
    var remarks = new ArrayList<String>();
    flown.motors().forEach((key, fit) -> {
      var id = ids.getOrDefault(key, key);
      catalog
          .part(id, Motor.class)
          .ifPresentOrElse(
              motor -> {
                unlike(motor, fit).ifPresent(remarks::add);
                add(parts, remarks, "motor " + key, () -> measured(motor, fit, files));
              },
              () -> remarks.add(unknown(Kind.MOTOR, key, id)));
    });
    flown.propellers().forEach((key, fit) -> {
      var id = ids.getOrDefault(key, key);
      catalog
          .part(id, Propeller.class)
          .ifPresentOrElse(
              propeller -> {
                unlike(propeller, fit).ifPresent(remarks::add);
                add(parts, remarks, "propeller " + key, () -> measured(propeller, fit, files));
              },
              () -> remarks.add(unknown(Kind.PROPELLER, key, id)));
    });
    return new CalibrationRecords(parts, remarks);
  }

  /** Whether the rows can be of this motor at all. */
  private static Optional<String> unlike(Motor motor, Calibration.MotorFit fit) {
    var usual = MotorFigures.loadedKv(motor);
    var found = fit.kvRpmPerVolt().value();
    return Math.abs(found / usual - 1) < LIKE_KV
        ? Optional.empty()
        : Optional.of(String.format(
            Locale.ROOT,
            "motor %s: turns %.0f rpm/V under load in these rows, where its record leads to expect %.0f: maybe they are another motor's.",
            motor.id(),
            found,
            usual));
  }

  private static Optional<String> unlike(Propeller propeller, Calibration.PropellerFit fit) {
    var stated = Units.inchesToMillimetres(propeller.diameterInches());
    return Math.abs(fit.diameterMillimetres() / stated - 1) < LIKE_DIAMETER
        ? Optional.empty()
        : Optional.of(String.format(
            Locale.ROOT,
            "propeller %s: is %.1f mm wide, but its rows are of one of %.1f mm: maybe they are another propeller's, or lack the column diameter_mm.",
            propeller.id(),
            stated,
            fit.diameterMillimetres()));
  }

  private static void add(
      List<Part> parts, List<String> remarks, String what, Supplier<Part> record) {
    try {
      var part = record.get();
      if (parts.stream().anyMatch(other -> other.id().equals(part.id()))) {
        remarks.add(
            "%s: another key became %s already; no record is written.".formatted(what, part.id()));
      } else {
        parts.add(part);
      }
    } catch (IllegalArgumentException refused) {
      remarks.add("%s: no record is written: %s".formatted(what, refused.getMessage()));
    }
  }

  private static String unknown(Kind kind, String key, String id) {
    return "%s %s: no record is written, for the catalogue has no %s with the id %s. Give --part %s=ID, or write the id into the CSV."
        .formatted(kind.key(), key, kind.key(), id, key);
  }

  private static Motor measured(Motor motor, Calibration.MotorFit fit, String files) {
    var source = String.format(
        Locale.ROOT,
        "Fitted to %d rows of %s: Kv %.0f ± %.0f rpm/V under load, %.1f ± %.1f mΩ with controller and leads, %.2f ± %.2f A without load at 9549 rpm.",
        fit.rows(),
        files,
        fit.kvRpmPerVolt().value(),
        fit.kvRpmPerVolt().standardError(),
        1000 * fit.resistanceOhm().value(),
        1000 * fit.resistanceOhm().standardError(),
        fit.noLoadCurrentA().value(),
        fit.noLoadCurrentA().standardError());
    return new Motor(
        motor.id(),
        motor.maker(),
        motor.name(),
        motor.price(),
        motor.sold(),
        motor.mass(),
        motor.statorDiameterMillimetres(),
        motor.statorHeightMillimetres(),
        rounded(fit.kvRpmPerVolt().value(), 1),
        Motor.KvReading.LOADED,
        rounded(1000 * fit.resistanceOhm().value(), 2),
        Motor.ResistanceReading.FITTED,
        rounded(noLoadCurrentA(fit, motor.noLoadVolts()), 4),
        motor.noLoadVolts(),
        null,
        motor.continuousAmps(),
        motor.burstAmps(),
        motor.cells(),
        motor.boltCirclesMillimetres(),
        motor.boltCirclesNeeded(),
        motor.screwCount(),
        motor.screw(),
        motor.threadDepthMillimetres(),
        motor.propellerSeat(),
        motor.bellDiameterMillimetres(),
        motor.heightMillimetres(),
        motor.leadsIncludedMillimetres(),
        motor.leadGauge(),
        Known.MEASURED,
        doubt(
            relative(fit.resistanceOhm()),
            // A record's no-load current is taken to be twice as doubtful as its resistance.
            relative(fit.noLoadCurrentA()) / 2),
        source + rest(motor.source()),
        Assumed.without(
            motor.assumed(),
            Set.of(
                "speedConstantReading",
                "resistanceMilliohms",
                "resistanceReading",
                "noLoadCurrentAmps",
                "figures",
                "source")));
  }

  /** At volts instead of at a speed; the speed depends a little on the current itself. */
  private static double noLoadCurrentA(Calibration.MotorFit fit, double volts) {
    var kv = Units.rpmToRadPerS(fit.kvRpmPerVolt().value());
    var current = 0.0;
    for (var i = 0; i < 50; i++) {
      var speed =
          kv * Math.max(0.1 * volts, volts - current * fit.resistanceOhm().value());
      current = fit.noLoadCurrentA().value()
          * StrictMath.pow(speed / 1000, FLOWN.growth().value());
    }
    return current;
  }

  private static Propeller measured(
      Propeller propeller, Calibration.PropellerFit fit, String files) {
    // Coefficients hold for the diameter they were worked out with; thrust and torque are what was
    // measured.
    var size = fit.diameterMillimetres() / Units.inchesToMillimetres(propeller.diameterInches());
    var ofThrust = size * size * size * size;
    var rows = new ArrayList<Propeller.Row>();
    var steps = fit.highestRpm() - fit.lowestRpm() < 10 * SPEEDS ? 1 : SPEEDS;
    for (var i = 0; i < steps; i++) {
      var rpm = rounded(
          fit.lowestRpm() + (fit.highestRpm() - fit.lowestRpm()) * i / Math.max(1, steps - 1), 0);
      rows.add(new Propeller.Row(
          rpm,
          rounded(fit.thrustCoefficient(rpm) * ofThrust, 5),
          rounded(fit.powerCoefficient(rpm) * ofThrust * size, 5)));
    }
    var source = String.format(
        Locale.ROOT,
        "Fitted to %d rows of %s: thrust coefficient ± %.1f %%, figure of merit ± %.1f %%.",
        fit.rows(),
        files,
        100 * fit.thrustDoubt(),
        100 * fit.meritDoubt());
    return new Propeller(
        propeller.id(),
        propeller.maker(),
        propeller.name(),
        propeller.price(),
        propeller.sold(),
        propeller.mass(),
        propeller.diameterInches(),
        propeller.pitchInches(),
        propeller.blades(),
        propeller.seats(),
        propeller.hubThicknessMillimetres(),
        new Propeller.StaticTest(rows, rounded(fit.airDensityKgPerCubicMetre(), 4), null),
        Known.MEASURED,
        doubt(fit.thrustDoubt(), fit.meritDoubt()),
        source + rest(propeller.source()),
        Assumed.without(propeller.assumed(), Set.of("figures", "source")));
  }

  /** Never surer than a bench is, whatever the fit says of its own errors. */
  private static double doubt(double first, double second) {
    return rounded(
        Math.min(0.5, Math.max(Known.MEASURED.figureDoubt(), Math.max(first, second))), 3);
  }

  private static double relative(Figure figure) {
    return figure.standardError() / figure.value();
  }

  /** A record calibrated again does not quote itself. */
  private static String rest(String before) {
    var at = before.indexOf(REST);
    return REST + (at < 0 ? before : before.substring(at + REST.length()));
  }

  private static double rounded(double value, int digits) {
    return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN).doubleValue();
  }

  /** Held as good as fixed. */
  private static Figure firm(double value) {
    return new Figure(value, value / 1000);
  }
}
