package pappus.shop;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.Adapter;
import pappus.part.Buzzer;
import pappus.part.Capacitor;
import pappus.part.Connector;
import pappus.part.Lead;
import pappus.part.Sale;
import pappus.part.StackPattern;
import pappus.part.Strap;
import pappus.part.Sundry;
import pappus.part.Wire;

/** Buzzers, capacitors, leads, straps, adapters and what every build takes along. */
final class SmallParts {
  /** Maker, name, own cell, watts, grams, price. */
  private static final String BUZZERS = """
      Thrumbel   | Bittern 5         | n | 0.15 | 0.9 | 2   |
      Thrumbel   | Bittern 9         | n | 0.2  | 1.6 | 2.5 |
      Thrumbel   | Bittern Lost      | y | 0.05 | 3.6 | 10  |
      Molinquay  | Corncrake         | n | 0.12 | 0.7 | 3   |
      Molinquay  | Corncrake Keeper  | y | 0.08 | 4.4 | 13  |
      Gannelweed | Croaker           | n | 0.25 | 2   | 1.5 |
      Gannelweed | Croaker Night     | y | 0.1  | 5.6 | 8   |
      Plimmery   | Chirp             | n | 0.1  | 0.8 | 4   |
      """;

  /** Maker, name, µF, volts, grams, price. */
  private static final String CAPACITORS = """
      Krummhag | Cistern 220-25  | 220  | 25 | 1.1 | 1   |
      Krummhag | Cistern 330-25  | 330  | 25 | 1.5 | 1   |
      Krummhag | Cistern 470-25  | 470  | 25 | 2   | 1.5 |
      Krummhag | Cistern 220-35  | 220  | 35 | 1.4 | 1   |
      Krummhag | Cistern 330-35  | 330  | 35 | 1.9 | 1.5 |
      Krummhag | Cistern 470-35  | 470  | 35 | 2.6 | 1.5 |
      Krummhag | Cistern 1000-35 | 1000 | 35 | 4   | 2   |
      Thrumbel | Dewpond 220-16  | 220  | 16 | 0.8 | 0.5 |
      Thrumbel | Dewpond 330-25  | 330  | 25 | 1.8 | 0.5 |
      Thrumbel | Dewpond 680-50  | 680  | 50 | 3.9 | 2.5 |
      """;

  /** Maker, name, board plug (none: pads), battery plug, gauge, mm, price, note. */
  private static final String LEADS = """
      Thrumbel  | Tether PH 24         |      | PH2  | 24 | 50  | 1.5 |
      Thrumbel  | Tether PH 26         |      | PH2  | 26 | 40  | 1   |
      Thrumbel  | Tether RCY 22        |      | RCY  | 22 | 60  | 1.5 |
      Thrumbel  | Tether RCY 24        |      | RCY  | 24 | 50  | 1   |
      Thrumbel  | Tether One 22        |      | ONE_CELL | 22 | 45 | 1.5 |
      Thrumbel  | Tether One 24        |      | ONE_CELL | 24 | 35 | 1.5 |
      Thrumbel  | Tether 30-20 Long    |      | XT30 | 20 | 90  | 2   |
      Thrumbel  | Tether 30-22         |      | XT30 | 22 | 50  | 1.5 |
      Thrumbel  | Tether 30-20         |      | XT30 | 20 | 60  | 2   |
      Thrumbel  | Tether 30-20 Short   |      | XT30 | 20 | 40  | 2   |
      Thrumbel  | Tether 30-18         |      | XT30 | 18 | 70  | 2   |
      Thrumbel  | Tether 30-18 Short   |      | XT30 | 18 | 45  | 2   |
      Thrumbel  | Tether 30-16         |      | XT30 | 16 | 80  | 2.5 |
      Dunverrow | Dray 60-14           |      | XT60 | 14 | 90  | 3   |
      Dunverrow | Dray 60-16           |      | XT60 | 16 | 90  | 2.5 |
      Dunverrow | Dray 60-22           |      | XT60 | 22 | 60  | 1   | A big plug on thin wire: the wire gives out long before the plug does.
      Dunverrow | Dray 60-14 Short     |      | XT60 | 14 | 60  | 3   |
      Plimmery  | Isthmus 30 to 60     | XT30 | XT60 | 16 | 40  | 4   |
      Plimmery  | Isthmus 60 to 30     | XT60 | XT30 | 16 | 40  | 4   |
      Plimmery  | Isthmus 30 to RCY    | XT30 | RCY  | 20 | 40  | 3   |
      Plimmery  | Isthmus 30 to PH     | XT30 | PH2  | 22 | 40  | 3   |
      Plimmery  | Isthmus 30 to One    | XT30 | ONE_CELL | 20 | 40  | 3   |
      Plimmery  | Isthmus One to PH    | ONE_CELL | PH2 | 24 | 40 | 2.5 |
      Plimmery  | Isthmus One to 30    | ONE_CELL | XT30 | 20 | 40 | 3   |
      Plimmery  | Isthmus 60 to 30 Long | XT60 | XT30 | 18 | 120 | 4.5 |
      """;

  /** Maker, name, width, length, grams, price, pieces. */
  private static final String STRAPS = """
      Brissimer | Bindweed 10x130 | 10 | 130 | 2.5  | 2.5 | 2 |
      Brissimer | Bindweed 10x150 | 10 | 150 | 2.8  | 2.5 | 2 |
      Brissimer | Bindweed 12x160 | 12 | 160 | 3.4  | 3   | 2 |
      Brissimer | Bindweed 12x180 | 12 | 180 | 3.9  | 3   | 2 |
      Brissimer | Bindweed 12x200 Grip | 12 | 200 | 4.7 | 3.5 | 1 |
      Marrowick | Bramble 16x200  | 16 | 200 | 6.2  | 2.5 | 1 |
      Marrowick | Bramble 16x220  | 16 | 220 | 6.8  | 2.5 | 1 |
      Marrowick | Bramble 20x220  | 20 | 220 | 8.6  | 3   | 1 |
      Marrowick | Bramble 20x250 Grip | 20 | 250 | 10.5 | 4 | 1 |
      Zandrille | Hopbine 10x140  | 10 | 140 | 2.5  | 5   | 1 |
      """;

  /** Maker, name, purpose, frame's (pattern or cage), part's, height, grams, price. */
  private static final String ADAPTERS = """
      Tidderlow | Stepstone 20 on 25.5    | STACK_PLATE | 25.5 | 20   | 2   | 1.1  | 4   |
      Tidderlow | Stepstone 25.5 on 20    | STACK_PLATE | 20   | 25.5 | 2   | 1.3  | 4   |
      Tidderlow | Stepstone 20 on 30.5    | STACK_PLATE | 30.5 | 20   | 2   | 1.9  | 4.5 |
      Tidderlow | Stepstone 25.5 on 30.5  | STACK_PLATE | 30.5 | 25.5 | 2   | 2.2  | 4.5 |
      Tidderlow | Stepstone 16 on 20      | STACK_PLATE | 20   | 16   | 1.5 | 0.8  | 3.5 |
      Tidderlow | Stepstone 16 on 25.5    | STACK_PLATE | 25.5 | 16   | 2   | 1.2  | 4   |
      Tidderlow | Stepstone 25 on 25.5    | STACK_PLATE | 25.5 | 25   | 1.5 | 1.0  | 3.5 |
      Gorsewain | Wattle 14 in 19         | CAMERA_SHIMS | 19  | 14   | 0   | 1.1  | 2.5 |
      Gorsewain | Wattle 19 in 21         | CAMERA_SHIMS | 21  | 19   | 0   | 0.6  | 2.5 |
      Gorsewain | Wattle 14 in 21         | CAMERA_SHIMS | 21  | 14   | 0   | 1.5  | 2.5 |
      Thrumbel  | Puddock grommets        | STEPPED_GROMMETS | |    | 0   | 0.3  | 2   |
      Thrumbel  | Puddock grommets soft   | STEPPED_GROMMETS | |    | 0.5 | 0.35 | 3   |
      Fennoquay | Frond rings 5 to 2      | REDUCING_RINGS | |      | 0   | 0.2  | 1.5 |
      Zandrille | Auricle rings           | REDUCING_RINGS | |      | 0   | 0.12 | 2.5 |
      """;

  /** Maker, name, purpose, grams, price, builds that one serves if more than one. */
  private static final String SUNDRIES = """
      Marrowick | Lichen pad            | BATTERY_PAD      | 1.6 | 2   |
      Orremund  | Lichgate sheet        | BATTERY_PAD      | 1.4 | 5   | 8
      Marrowick | Lichen pad thick      | BATTERY_PAD      | 2.4 | 2.5 |
      Zandrille | Duckweed pad          | BATTERY_PAD      | 1   | 4   |
      Thrumbel  | Puddock stack set     | STACK_HARDWARE   | 1.4 | 3   |
      Thrumbel  | Puddock stack set nylon | STACK_HARDWARE | 0.7 | 2.5 |
      Zandrille | Puddock stack set titanium | STACK_HARDWARE | 1 | 6.5 |
      Grimmelock | Awn screw pairs      | PROPELLER_SCREWS | 2   | 2   |
      Zandrille | Ligule screw pairs titanium | PROPELLER_SCREWS | 1.6 | 5.5 |
      Fennoquay | Frond nuts steel      | PROPELLER_NUTS   | 4.8 | 2   |
      Zandrille | Auricle nuts light    | PROPELLER_NUTS   | 2.6 | 4   |
      Thrumbel  | Bench roll            | SOLDER_AND_TIES  | 2.6 | 3.5 | 25
      Krummhag  | Tidy bench roll       | SOLDER_AND_TIES  | 1.8 | 5   | 12
      Orremund  | Workshop reel         | SOLDER_AND_TIES  | 2.2 | 9   | 40
      """;

  private SmallParts() {}

  static List<Buzzer> buzzers() {
    return Shelf.rows(BUZZERS)
        .map(row -> {
          var draw = Draw.of(row[1]);
          var known = Sources.usual(draw);
          return new Buzzer(
              Shelf.id(row[1]),
              row[0],
              row[1],
              Shelf.price(Double.parseDouble(row[5])),
              Sale.EACH,
              Shelf.mass(Double.parseDouble(row[4]), known),
              row[2].equals("y"),
              Double.parseDouble(row[3]),
              Sources.mass(known, draw),
              List.of());
        })
        .toList();
  }

  static List<Capacitor> capacitors() {
    return Shelf.rows(CAPACITORS)
        .map(row -> {
          var draw = Draw.of(row[1]);
          var known = Sources.usual(draw);
          return new Capacitor(
              Shelf.id(row[1]),
              row[0],
              row[1],
              Shelf.price(Double.parseDouble(row[5])),
              Shelf.bag(2),
              Shelf.mass(Double.parseDouble(row[4]), known),
              Double.parseDouble(row[2]),
              Double.parseDouble(row[3]),
              Sources.mass(known, draw),
              List.of());
        })
        .toList();
  }

  static List<Lead> leads() {
    return Shelf.rows(LEADS).map(SmallParts::lead).toList();
  }

  private static Lead lead(String[] row) {
    var draw = Draw.of(row[1]);
    var boardSide = row[2].isEmpty() ? null : Connector.valueOf(row[2]);
    var batterySide = Connector.valueOf(row[3]);
    var gauge = Integer.parseInt(row[4]);
    var millimetres = Double.parseDouble(row[5]);
    var grams = 2 * millimetres / 1000 * Wire.ofGauge(gauge).gramsPerMetre()
        + batterySide.halfGrams()
        + (boardSide == null ? 0 : boardSide.halfGrams());
    var known = Sources.usual(draw);
    return new Lead(
        Shelf.id(row[1]),
        row[0],
        row[1],
        Shelf.price(Double.parseDouble(row[6])),
        Sale.EACH,
        Shelf.mass(grams * draw.scatter(0.04), known),
        boardSide,
        batterySide,
        gauge,
        millimetres,
        null,
        Sources.withNote(Sources.mass(known, draw), row[7]),
        List.of());
  }

  static List<Strap> straps() {
    return Shelf.rows(STRAPS)
        .map(row -> {
          var draw = Draw.of(row[1]);
          var known = Sources.usual(draw);
          var pieces = Integer.parseInt(row[6]);
          return new Strap(
              Shelf.id(row[1]),
              row[0],
              row[1].replace("x", "×"),
              Shelf.price(Double.parseDouble(row[5])),
              pieces == 1 ? Sale.EACH : Shelf.bag(pieces),
              Shelf.mass(Double.parseDouble(row[4]), known),
              Double.parseDouble(row[2]),
              Double.parseDouble(row[3]),
              Sources.mass(known, draw),
              List.of());
        })
        .toList();
  }

  static List<Adapter> adapters() {
    return Shelf.rows(ADAPTERS)
        .map(row -> {
          var draw = Draw.of(row[1]);
          var known = Sources.usual(draw);
          var purpose = Adapter.Purpose.valueOf(row[2]);
          var shims = purpose == Adapter.Purpose.CAMERA_SHIMS;
          return new Adapter(
              Shelf.id(row[1]),
              row[0],
              row[1],
              Shelf.price(Double.parseDouble(row[7])),
              Sale.EACH,
              Shelf.mass(Double.parseDouble(row[6]), known),
              purpose,
              shims ? null : pattern(row[3]),
              shims ? null : pattern(row[4]),
              shims ? Double.valueOf(row[3]) : null,
              shims ? Double.valueOf(row[4]) : null,
              Double.parseDouble(row[5]),
              Sources.mass(known, draw),
              List.of());
        })
        .toList();
  }

  private static @Nullable StackPattern pattern(String text) {
    return text.isEmpty() ? null : Frames.pattern(text);
  }

  static List<Sundry> sundries() {
    return Stream.of(SUNDRIES)
        .flatMap(Shelf::rows)
        .map(row -> {
          var draw = Draw.of(row[1]);
          var known = Sources.usual(draw);
          return new Sundry(
              Shelf.id(row[1]),
              row[0],
              row[1],
              Shelf.price(Double.parseDouble(row[4])),
              Sale.EACH,
              Shelf.mass(Double.parseDouble(row[3]), known),
              Sundry.Purpose.valueOf(row[2]),
              row[5].isEmpty() ? null : Integer.valueOf(row[5]),
              Sources.mass(known, draw),
              List.of());
        })
        .toList();
  }
}
