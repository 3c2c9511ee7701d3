package pappus.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.CellRange;
import pappus.part.Known;
import pappus.part.Motor;
import pappus.part.Motor.CirclesNeeded;
import pappus.part.Motor.KvReading;
import pappus.part.Motor.ResistanceReading;
import pappus.part.Sale;
import pappus.part.ScrewThread;
import pappus.part.Seat;
import pappus.part.Wire;

/** Motors in families of one stator and several windings. */
final class Motors {
  /** Maker, line, stator, windings, seat, bolt circles (with a stroke: drilled twice), deviations of mass and of motor constant, note. */
  private static final String FAMILIES = """
      Vossquill | Achene    | 1103 | 7000 8000 10000 11000 | SCREWS_1_5 | 6.6   |      |      |
      Tharnmoss | Bogbean   | 1103 | 8000 11000 15000      | PRESS_1_5  | 6.6   |      |      |
      Havrekel  | Cypsela   | 1103 | 7000 8500 11000       | SCREWS_1_5 | 9     | -1.2 | 0.8  |
      Ollerwick | Spikerush | 1106 | 4500 6000 7500        | SCREWS_1_5 | 9     |      |      |
      Dunverrow | Marram    | 1106 | 5000 6500 8500        | SCREWS_1_5 | 9     | 1.1  |      |
      Vossquill | Achene    | 1202 | 6500 8000 10000       | SCREWS_1_5 | 9     |      |      |
      Brissimer | Quillwort | 1202 | 6000 7500 8700        | SCREWS_1_5 | 9     |      |      |
      Tharnmoss | Bogbean   | 1203 | 4800 5500 6900        | SCREWS_1_5 | 9     |      |      |
      Pellowan  | Lull      | 1203 | 5000 6000 8000        | PRESS_1_5  | 9     |      |      |
      Vossquill | Achene    | 1204 | 4500 5000 6500 8000   | SCREWS_1_5 | 9     |      |      |
      Havrekel  | Cypsela   | 1204 | 4500 5500 6500        | SCREWS_1_5 | 9     | -1   | 0.9  |
      Brissimer | Quillwort | 1303 | 3600 4200 4800        | SCREWS_1_5 | 9     |      |      |
      Ollerwick | Spikerush | 1303 | 3400 4000 4700        | SCREWS_1_5 | 9     |      |      |
      Vossquill | Achene    | 1404 | 2750 3000 3800 4600   | SCREWS_1_5 | 9     |      |      |
      Tharnmoss | Bogbean   | 1404 | 2750 3800 4500        | SCREWS_1_5 | 9     |      |      |
      Brissimer | Quillwort | 1404 | 3000 3800 4600        | SCREWS_2   | 9     |      |      |
      Pellowan  | Lull      | 1404 | 2800 3600 4500        | SCREWS_1_5 | 9     | -2   | -2.1 | Seven grams lighter a set than most, and it pays for that: a thin winding that runs hot.
      Havrekel  | Cypsela   | 1404 | 2800 3300 3900 4600   | SCREWS_2   | 9     | -0.8 | 1.1  |
      Dunverrow | Marram    | 1407 | 2800 3500 4100        | SCREWS_2   | 12    | 0.8  |      |
      Ollerwick | Spikerush | 1407 | 2500 3200 3900        | SCREWS_1_5 | 9     |      |      |
      Brissimer | Quillwort | 1504 | 2400 3000 3800        | SCREWS_1_5 | 12    |      |      |
      Tharnmoss | Bogbean   | 1505 | 2600 3100 3800        | SCREWS_2   | 12    |      |      |
      Vossquill | Achene    | 1507 | 2700 3600 4200        | NUT_M5     | 12    |      |      |
      Dunverrow | Marram    | 1507 | 2600 3500 4100        | NUT_M5     | 12    |      |      |
      Pellowan  | Lull      | 1804 | 1900 2450 3000 3150   | SCREWS_2   | 12    |      |      |
      Brissimer | Quillwort | 1804 | 2000 2500 3100        | SCREWS_1_5 | 12    |      |      |
      Vossquill | Achene    | 2004 | 1700 2000 2400 2900   | SCREWS_1_5 | 12    |      |      |
      Tharnmoss | Bogbean   | 2004 | 1750 2100 2700 3100   | SCREWS_2   | 12    |      |      |
      Havrekel  | Cypsela   | 2004 | 1750 2000 2500 3000   | SCREWS_2   | 12    | -0.7 | 1    |
      Dunverrow | Marram    | 2004 | 1750 2300 2900        | NUT_M5     | 12    | 2.2  | 2.2  | The heaviest of its size here and the one that wastes least: more copper than its neighbours.
      Ollerwick | Spikerush | 2006 | 1750 1950 2400        | NUT_M5     | 16    |      |      |
      Brissimer | Quillwort | 2006 | 1700 1950 2500        | NUT_M5     | 12    |      |      |
      Vossquill | Achene    | 2105 | 1700 2100 2650        | NUT_M5     | 16    |      |      |
      Ollerwick | Spikerush | 2203 | 1900 2300 2700        | NUT_M5     | 16    |      |      |
      Vossquill | Achene    | 2207 | 1750 1950 2450 2750   | NUT_M5     | 16 19 |      |      |
      Dunverrow | Marram    | 2207 | 1700 1950 2550        | NUT_M5     | 16    |      |      |
      Pellowan  | Lull      | 2205 | 1750 2300 2550        | NUT_M5     | 16 19 |      |      |
      Quernholm | Tansy     | 1404 | 2800 3600 4500        | SCREWS_1_5 | 9/12  | 0.2  | -0.2 |
      Quernholm | Tansy     | 1504 | 2500 3100 3800        | SCREWS_1_5 | 9/12  | -0.3 | 0.1  | Drilled twice through a thin base: the threads are 1.6 mm deep, so few arms take a screw that holds and does not touch the winding.
      Quernholm | Tansy     | 1804 | 2000 2500 3100        | SCREWS_2   | 9/12  | 0.3  | 0.1  |
      """;

  /** Its threads are shallow. */
  private static final String SHALLOW = "1504";

  private static final double MASS_SIGMA = 0.13;
  private static final double CONSTANT_SIGMA = 0.17;
  private static final double FRICTION_SIGMA = 0.32;

  /** Two deviations of .05 to either side of the class, less what rounding to print takes. */
  private static final double EFFICIENCY_BAND = 0.09;

  private Motors() {}

  static List<Motor> all() {
    return Shelf.rows(FAMILIES).flatMap(Motors::family).toList();
  }

  private static Stream<Motor> family(String[] row) {
    var family = new Family(row);
    return Stream.of(row[3].split(" +", -1)).map(kv -> family.winding(Integer.parseInt(kv)));
  }

  /** What the windings of one stator share. */
  private static final class Family {
    private final String maker;
    private final String line;
    private final String stator;
    private final double diameter;
    private final double height;
    private final Seat seat;
    private final List<Double> circles = new ArrayList<>();
    private final boolean drilledTwice;
    private final double bareGrams;
    private final double constant;
    private final double massDeviations;
    private final double constantDeviations;
    private final Known figures;
    private final boolean fitted;
    private final boolean bare;
    private final boolean depthStated;
    private final double friction;
    private final String note;

    Family(String[] row) {
      maker = row[0];
      line = row[1];
      stator = row[2];
      note = row[8];
      var draw = Draw.of(line + stator);
      diameter = Double.parseDouble(stator.substring(0, 2));
      height = Double.parseDouble(stator.substring(2));
      seat = Seat.valueOf(row[4]);
      drilledTwice = row[5].contains("/");
      for (var circle : row[5].split("[ /]", -1)) {
        circles.add(Double.parseDouble(circle));
      }
      var at = draw.between(0, 1);
      figures = at < 0.25 ? Known.MEASURED : at < 0.85 ? Known.MAKER : Known.ESTIMATED;
      // What is worked out from the class lies near its law.
      var spread = figures == Known.ESTIMATED ? 0.3 : 1;
      var drawnMass = draw.normal();
      var drawnConstant = spread * draw.normal();
      friction = StrictMath.exp(FRICTION_SIGMA * spread * draw.normal());
      massDeviations = row[6].isEmpty() ? drawnMass : Double.parseDouble(row[6]);
      constantDeviations = row[7].isEmpty() ? drawnConstant : Double.parseDouble(row[7]);
      bareGrams =
          0.010 * diameter * diameter * height * StrictMath.exp(MASS_SIGMA * massDeviations);
      constant = 1.30e-5
          * diameter
          * diameter
          * Math.sqrt(height)
          * StrictMath.exp(CONSTANT_SIGMA * constantDeviations);
      fitted = figures == Known.MEASURED && diameter <= 15 && draw.chance(0.5);
      bare = draw.chance(0.2);
      depthStated = draw.chance(0.55);
    }

    Motor winding(int label) {
      var name = line + " " + stator + "-" + label;
      var draw = Draw.of(name);
      var loaded = figures == Known.MEASURED;
      var kv = loaded ? Draw.round(label / draw.between(1.03, 1.08), 10) : label;
      var ownGrams = bareGrams * draw.scatter(0.01);
      var gauge = leadGauge();
      var leads = bare ? 0 : leadMillimetres();
      var grams = ownGrams + 3 * leads / 1000 * Wire.ofGauge(gauge).gramsPerMetre();
      // The law of the motor constant was fitted to data sheets, which print labels.
      var ohms =
          StrictMath.pow(9.5493 / label / constant, 2) * draw.scatter(0.015) + (fitted ? 0.012 : 0);
      var cells = cells(label);
      var volts = cells.to() <= 2 ? 5 : 10;
      var amps = noLoad(kv, volts, ownGrams, ohms, draw);
      var nominal = cells.to() * 3.7;
      var burst =
          Draw.clamp((13 + 0.1 * bareGrams) * draw.scatter(0.16), 8.5, 19.5) * ownGrams / nominal;
      // Power held without end is held at part throttle, about half of the pack's volts.
      var lasting = Draw.clamp(3.8 * draw.scatter(0.16), 2.7, 5.2) * ownGrams / (0.5 * nominal);
      var rated = draw.between(0, 1);
      var known = Sources.usual(draw);
      return new Motor(
          Shelf.id(name),
          maker,
          name,
          Shelf.price(euros(draw)),
          Sale.EACH,
          Shelf.mass(grams, known),
          diameter,
          height,
          kv,
          loaded ? KvReading.LOADED : KvReading.LABEL,
          Draw.round(ohms * 1000, 1),
          fitted ? ResistanceReading.FITTED : ResistanceReading.WINDING,
          Draw.round(amps, 0.01),
          volts,
          null,
          rated < 0.92 ? Draw.round(lasting, 0.1) : null,
          rated < 0.96 ? Draw.round(burst, 0.5) : null,
          cells,
          circles,
          drilledTwice ? CirclesNeeded.EITHER : circles.size() > 1 ? CirclesNeeded.BOTH : null,
          circles.get(0) < 7 ? 3 : 4,
          thread(),
          threadDepth(),
          seat,
          Draw.round(1.13 * diameter + 1.6, 0.1),
          Draw.round(height + 7 + 0.12 * diameter, 0.1),
          leads,
          gauge,
          figures,
          null,
          Sources.withNote(Sources.of(known, figuresText(label), draw), note),
          List.of());
    }

    private String figuresText(int label) {
      return switch (figures) {
        case MEASURED ->
          fitted
              ? "Kv, resistance and no-load current fitted to nine rows of our thrust stand, controller and leads in it"
              : "Kv read under load on our stand, resistance by four wires between two leads; the label says "
                  + label;
        case MAKER -> "Kv, resistance and no-load current from the maker's sheet of this family";
        case ESTIMATED -> "electrical figures worked out from other " + stator + " motors";
      };
    }

    /** From the no-load torque law, kept where the best efficiency is that of a real motor. */
    private double noLoad(double kv, double volts, double grams, double ohms, Draw draw) {
      var torque = 0.11e-3
          * friction
          * draw.scatter(0.06)
          * grams
          * StrictMath.pow(kv * volts / 10_000, 0.4);
      return Draw.clamp(
          torque * kv / 9.5493,
          amps(EFFICIENCY_BAND, volts, ohms),
          amps(-EFFICIENCY_BAND, volts, ohms));
    }

    /** Current without load at which the best efficiency lies so far above that of its class. */
    private double amps(double above, double volts, double ohms) {
      var lost = 1 - Math.sqrt(0.75 + 0.0085 * (diameter - 11) + above);
      return lost * lost * volts / ohms;
    }

    private CellRange cells(int kv) {
      var most = Math.min((int) Math.floor(noLoadRpm() / (kv * 3.7)), mostCells());
      // Nobody prints "up to 5": few fly five cells.
      most = most == 5 ? 4 : most;
      return new CellRange(Math.min(leastCells(), most), most);
    }

    /** What a winding of this size turns without load at the most cells its maker allows. */
    private double noLoadRpm() {
      if (diameter < 12) {
        return 112_000;
      }
      if (diameter < 13) {
        return 78_000;
      }
      if (diameter < 15 && height < 6) {
        return 72_000;
      }
      if (diameter < 18) {
        return 66_000;
      }
      return height < 5 && diameter < 22 ? 48_000 : 45_000;
    }

    private int mostCells() {
      return isTiny() ? 3 : diameter < 13 ? 4 : 6;
    }

    private int leastCells() {
      if (isTiny()) {
        return 1;
      }
      return (diameter < 15 || diameter >= 18) && bareGrams < 20 ? 2 : 3;
    }

    private boolean isTiny() {
      return diameter < 12 && height < 5;
    }

    private int leadGauge() {
      return bareGrams < 5
          ? 30
          : bareGrams < 8.5 ? 28 : bareGrams < 17.5 ? 26 : bareGrams < 25 ? 22 : 20;
    }

    private double leadMillimetres() {
      return bareGrams < 5 ? 70 : bareGrams < 8.5 ? 90 : bareGrams < 17.5 ? 110 : 140;
    }

    private ScrewThread thread() {
      return circles.get(0) < 7
          ? ScrewThread.M1_4
          : circles.get(0) < 16 ? ScrewThread.M2 : ScrewThread.M3;
    }

    private @Nullable Double threadDepth() {
      if (drilledTwice && stator.equals(SHALLOW)) {
        return 1.6;
      }
      if (!depthStated) {
        return null;
      }
      return switch (thread()) {
        case M1_4, M1_6 -> 2.0;
        case M2 -> diameter < 14 ? 2.5 : 3.0;
        case M2_5, M3 -> 4.0;
      };
    }

    private double euros(Draw draw) {
      var middle = 8.5 + 0.28 * bareGrams;
      var worth = 0.09 * constantDeviations - 0.05 * massDeviations;
      var lineLevel = switch (line) {
        case "Cypsela" -> 1.22;
        case "Marram" -> 0.82;
        default -> 1;
      };
      return middle * StrictMath.exp(worth) * lineLevel * draw.scatter(0.03);
    }
  }
}
