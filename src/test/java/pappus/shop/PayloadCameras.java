package pappus.shop;

import java.util.List;
import pappus.part.PayloadCamera;
import pappus.part.Sale;
import pappus.part.VoltWindow;

/** Cameras for footage: bare ones fed from the aircraft, and whole ones with a cell of their own. */
final class PayloadCameras {
  /** Maker, name, length, width, height, window (none: own cell), watts, grams, price, note. */
  private static final String ROWS = """
      Wherrymoss | Dabchick Lean   | 24 | 32 | 20 | 4.7-5.5  | 2.1 | 15.8 | 99  |
      Wherrymoss | Dabchick Bare   | 30 | 40 | 22 | 4.8-5.5  | 2.4 | 26.5 | 89  |
      Wherrymoss | Dabchick Lidded | 34 | 42 | 26 | 7-26.5   | 3.4 | 35   | 129 |
      Ollamead   | Coot Stripped   | 22 | 28 | 16 | 4.9-5.5  | 1.8 | 9.8  | 62  | Sold without its case and cheaper for it: as sharp as the others by day.
      Ollamead   | Coot Wide       | 28 | 36 | 24 | 6-26.5   | 3.8 | 24.5 | 119 |
      Ollamead   | Coot Sharp      | 30 | 38 | 24 | 7-17.6   | 4.6 | 29   | 149 |
      Ollamead   | Coot Cell       | 26 | 34 | 22 |          | 0   | 29.5 | 109 |
      Sallowrick | Bittern Half    | 28 | 40 | 24 |          | 0   | 38   | 139 |
      Sallowrick | Bittern Whole   | 36 | 54 | 28 |          | 0   | 62   | 199 |
      Sallowrick | Bittern Elder   | 41 | 59 | 30 |          | 0   | 121  | 49  | An old heavy one: cheap to buy and dear to carry.
      Sallowrick | Bittern Fed     | 30 | 44 | 26 | 7-26.5   | 1.1 | 33   | 95  | The sheet says 1.1 W while it records; we would plan on three times that.
      """;

  private PayloadCameras() {}

  static List<PayloadCamera> all() {
    return Shelf.rows(ROWS).map(PayloadCameras::camera).toList();
  }

  private static PayloadCamera camera(String[] row) {
    var draw = Draw.of(row[1]);
    var known = Sources.usual(draw);
    var volts = row[5].split("-", -1);
    return new PayloadCamera(
        Shelf.id(row[1]),
        row[0],
        row[1],
        Shelf.price(Double.parseDouble(row[8])),
        Sale.EACH,
        Shelf.mass(Double.parseDouble(row[7]) * draw.scatter(0.03), known),
        Double.parseDouble(row[2]),
        Double.parseDouble(row[3]),
        Double.parseDouble(row[4]),
        row[5].isEmpty()
            ? null
            : new VoltWindow(Double.parseDouble(volts[0]), Double.parseDouble(volts[1])),
        Double.parseDouble(row[6]),
        Sources.withNote(Sources.mass(known, draw), row[9]),
        List.of());
  }
}
