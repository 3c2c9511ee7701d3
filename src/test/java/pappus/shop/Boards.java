package pappus.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.Board;
import pappus.part.Board.Layout;
import pappus.part.Board.PowerPlug;
import pappus.part.Board.Regulator;
import pappus.part.BuiltInReceiver;
import pappus.part.BuiltInTransmitter;
import pappus.part.Connector;
import pappus.part.MountingHoles;
import pappus.part.Polarisation;
import pappus.part.Sale;
import pappus.part.Sensitivity;
import pappus.part.VideoSender;
import pappus.part.VoltWindow;

/** Flight boards with their controllers. */
final class Boards {
  /**
   * Maker, name, amperes, pattern, height, window, rails (volts x amperes @ least input), ports, extras
   * (o overlay, b buzzer, r receiver wire, R receiver socket, v transmitter), own loss, plug, price, note.
   */
  private static final String BOARDS = """
      Plimmery  | Culvert 6 Whole      | 6  | 25.5 | 6.5 | 2.8-8.8  | 5x1@2.8          | 2 | orv | | xt30-20-50 | 52 |
      Plimmery  | Culvert 8            | 8  | 25.5 | 6   | 2.8-8.8  | 5x1.5@2.8        | 2 | or  | | xt30-20-50 | 42 |
      Plimmery  | Culvert 12           | 12 | 25.5 | 6.5 | 5-18     | 5x2@4.8          | 3 | o   | | | 44 |
      Plimmery  | Culvert 12 Whole     | 12 | 25.5 | 7   | 5-18     | 5x2@4.8          | 3 | orv | | xt30-18-60 | 66 |
      Plimmery  | Culvert 15           | 15 | 25.5 | 6.5 | 5-18     | 5x2@4.8          | 4 | ob  | | | 49 |
      Plimmery  | Culvert 20           | 20 | 25.5 | 7   | 5-18     | 5x2@5 9x1.5      | 4 | o   | | | 56 |
      Plimmery  | Culvert 35           | 35 | 25.5 | 8   | 7-26.5   | 5x2.5 9x2        | 5 | o   | | | 74 |
      Oostrewel | Sluice 10            | 10 | 26   | 6.5 | 4.5-17.6 | 5x1.5@4.5        | 3 | o   | | | 38 |
      Oostrewel | Sluice 13            | 13 | 26   | 6.5 | 6-16.8   | 5x1.5            | 3 | o   | | xt30-20-50 | 34 | Stands a full four-cell LiPo and not a tenth of a volt more, so no high-voltage pack.
      Oostrewel | Sluice 15 Link       | 15 | 26   | 7   | 4.5-17.8 | 5x2@4.5          | 4 | oR  | | | 54 |
      Oostrewel | Sluice 20            | 20 | 26   | 7   | 6-18     | 5x2              | 4 | ob  | | | 50 |
      Oostrewel | Sluice 25            | 25 | 26   | 7.5 | 6-25.5   | 5x2 9x2          | 4 | o   | | | 54 | Sold for six cells, but a full six-cell high-voltage pack is above what it stands.
      Oostrewel | Sluice 40            | 40 | 25.5 | 8.5 | 7-27     | 5x3 9x2          | 5 | ob  | | xt30-16-70 | 79 |
      Krummhag  | Penstock 12 Smooth   | 12 | 25.5 | 7   | 5-18     | 5x2@4.8          | 4 | ob  | 0.22 | | 69 |
      Krummhag  | Penstock 20 Smooth   | 20 | 25.5 | 7.5 | 5-18     | 5x2@4.8 9x1      | 5 | ob  | 0.2  | | 84 |
      Krummhag  | Penstock 30 Smooth   | 30 | 25.5 | 8   | 5-26.5   | 5x2.5@5 10x2     | 5 | ob  | 0.24 | | 94 |
      Krummhag  | Penstock 18          | 18 | 25.5 | 7   | 5-18     | 5x2@4.8          | 5 | o   | | | 62 |
      Molinquay | Lockkeeper 12 Link   | 12 | 25.5 | 6.5 | 5-17.6   | 5x1.5@4.8        | 3 | or  | | | 50 |
      Molinquay | Lockkeeper 16        | 16 | 20   | 7   | 5-18     | 5x1.5@4.8        | 3 | o   | | | 52 |
      Molinquay | Lockkeeper 16 Whole  | 16 | 25.5 | 7.5 | 5-18     | 5x2@4.8          | 3 | oRvb | | | 68 |
      Molinquay | Lockkeeper 45        | 45 | 25.5 | 9   | 7-27     | 5x3 10x2         | 6 |     | | | 88 |
      Molinquay | Lockkeeper Stack 25  | 25 | 20   | 14  | 6-18     | 5x2 9x1.5        | 5 | ob  | | | 66 |
      Molinquay | Lockkeeper Stack 45  | 45 | 30.5 | 17  | 7-27     | 5x2.5 10x2       | 6 | ob  | | xt60-14-80 | 96 |
      Wexlimar  | Weir Stack 20        | 20 | 20   | 13  | 5-18     | 5x2@5            | 4 | o   | | | 57 |
      Wexlimar  | Weir Stack 30        | 30 | 20   | 15  | 6-26.5   | 5x2 9x2          | 5 | o   | | | 72 |
      Wexlimar  | Weir Stack 40        | 40 | 20   | 16  | 7-27     | 5x3 9x2          | 6 | ob  | | xt60-16-70 | 92 |
      Wexlimar  | Weir Stack 50        | 50 | 30.5 | 18  | 7-27     | 5x3 10x2.5       | 6 | ob  | | xt60-14-80 | 104 |
      Wexlimar  | Weir Stack 35 Smooth | 35 | 30.5 | 17  | 6-27     | 5x3 10x2         | 6 | ob  | 0.23 | | 119 |
      Wexlimar  | Weir Stack 35        | 35 | 30.5 | 15  | 7-25.2   | 5x2 9x1.5        | 4 | o   | | xt60-14-80 | 61 | Cheap for its amperes; made for a six-cell LiPo only, and heavier than the sheet of others.
      Wexlimar  | Weir Stack 60        | 60 | 30.5 | 19  | 7-27     | 5x3 12x2         | 6 | o   | | xt60-14-90 | 122 |
      Drovewater | Runlet 5 One       | 5  | 25.5 | 5.5 | 2.8-4.5  | 5x0.8@2.8        | 2 | or  | | one-22-40 | 36 |
      Drovewater | Runlet 5 One Whole | 5  | 25.5 | 6   | 2.8-4.5  | 5x1@2.8          | 2 | orv | | one-22-40 | 48 |
      Drovewater | Runlet 8 One       | 8  | 25.5 | 5.5 | 2.5-4.5  | 5x1@2.5          | 3 | ob  | | | 39 |
      Drovewater | Runlet 12 One      | 12 | 25.5 | 6   | 2.8-4.5  | 5x1@3.6          | 3 | o   | | | 33 | The most amperes for one cell, but its five volts are gone below 3.6 V: half of a pack is out of reach of what hangs on them.
      """;

  private Boards() {}

  static List<Board> all() {
    return Shelf.rows(BOARDS).map(Boards::one).toList();
  }

  private static Board one(String[] row) {
    var name = row[1];
    var draw = Draw.of(name);
    var amps = Double.parseDouble(row[2]);
    var pair = name.contains("Stack");
    var pattern = Frames.pattern(row[3]);
    var extras = row[8];
    var ends = row[5].split("-", -1);
    var builtIn = (extras.contains("v") ? 0.9 : 0)
        + ((extras.contains("r") || extras.contains("R")) ? 0.4 : 0);
    var grams = pair
        ? pairGrams(pattern.sideMillimetres(), amps) * draw.scatter(0.08)
        : 3.0 + 0.154 * amps + 0.55 * draw.normal();
    if (!row[12].isEmpty() && pair) {
      grams *= 1.2;
    }
    var known = Sources.usual(draw);
    var receiver = receiver(extras, row[0]);
    return new Board(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price(Double.parseDouble(row[11])),
        Sale.EACH,
        Shelf.mass(grams + builtIn, known),
        pair ? Layout.PAIR : Layout.ALL_IN_ONE,
        new MountingHoles(pattern, pattern.sideMillimetres() > 30 ? 4 : 3.2, false),
        Double.parseDouble(row[4]),
        null,
        new VoltWindow(Double.parseDouble(ends[0]), Double.parseDouble(ends[1])),
        amps,
        draw.chance(0.85) ? Draw.round(amps * draw.between(1.2, 1.45), 1) : null,
        row[9].isEmpty() ? null : Double.valueOf(row[9]),
        null,
        null,
        null,
        Stream.of(row[6].split(" ", -1)).map(Boards::rail).toList(),
        Integer.parseInt(row[7]),
        extras.contains("o"),
        Draw.round(draw.between(0.55, 0.9) + (receiver == null ? 0 : 0.3), 0.05),
        plug(row[10]),
        receiver,
        transmitter(extras, draw),
        extras.contains("b"),
        Sources.withNote(Sources.of(known, "ratings as the maker prints them", draw), row[12]),
        List.of());
  }

  /** Flight board by its outline, controllers by their current, spacers. */
  private static double pairGrams(double side, double amps) {
    var outlineSquareCentimetres = (side + 7) * (side + 7) / 100;
    return 0.58 * outlineSquareCentimetres + 1.0 + 0.20 * amps + 0.6;
  }

  private static Regulator rail(String text) {
    var parts = text.split("[x@]", -1);
    return new Regulator(
        Double.parseDouble(parts[0]),
        Double.parseDouble(parts[1]),
        parts.length == 3 ? Double.valueOf(parts[2]) : null);
  }

  private static @Nullable PowerPlug plug(String text) {
    if (text.isEmpty()) {
      return null;
    }
    var parts = text.split("-", -1);
    return new PowerPlug(
        switch (parts[0]) {
          case "one" -> Connector.ONE_CELL;
          case "xt30" -> Connector.XT30;
          default -> Connector.XT60;
        },
        Integer.parseInt(parts[1]),
        Double.parseDouble(parts[2]));
  }

  private static @Nullable BuiltInReceiver receiver(String extras, String maker) {
    var link = maker.equals("Molinquay") ? Radio.SANDRIGAL : Radio.THRENNEL;
    var sensitivity = new Sensitivity(link.equals(Radio.THRENNEL) ? -105 : -96, 250);
    if (extras.contains("r")) {
      return new BuiltInReceiver(
          link,
          new AntennaPort(AntennaConnector.SOLDERED, Band.GHZ_2_4, 1, -1.0, Polarisation.LINEAR),
          true,
          sensitivity);
    }
    return extras.contains("R")
        ? new BuiltInReceiver(
            link,
            new AntennaPort(AntennaConnector.U_FL, Band.GHZ_2_4, 1, null, null),
            false,
            sensitivity)
        : null;
  }

  private static @Nullable BuiltInTransmitter transmitter(String extras, Draw draw) {
    if (!extras.contains("v")) {
      return null;
    }
    var levels = new ArrayList<>(List.of(25, 100));
    if (extras.length() > 3) {
      levels.add(400);
    } else {
      levels.add(200);
    }
    return new BuiltInTransmitter(
        VideoSender.ANALOGUE,
        Video.analoguePowers(levels, draw.scatter(0.2)),
        new AntennaPort(
            extras.contains("R") ? AntennaConnector.U_FL : AntennaConnector.SOLDERED,
            Band.GHZ_5_8,
            1,
            null,
            null));
  }
}
