package pappus.shop;

import java.util.List;
import java.util.stream.Stream;
import pappus.part.Antenna;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.Gps;
import pappus.part.Polarisation;
import pappus.part.Receiver;
import pappus.part.Sale;
import pappus.part.Sensitivity;
import pappus.part.SerialNeed;

/** Receivers of four link families, antennas, satellite receivers. */
final class Radio {
  static final String THRENNEL = "thrennel";
  static final String CALLOWHIT = "callowhit";
  static final String MURRELODE = "murrelode";
  static final String SANDRIGAL = "sandrigal";

  /** Maker, name, link, band, plug, ports, fixed, dBm at packets a second, window, watts, grams, price, note. */
  private static final String RECEIVERS = """
      Quernow   | Thrennel Seed        | thrennel  | GHZ_2_4 | SOLDERED   | 1 | y | -105@250 | 3.3-5.5 | 0.28 | 0.65 | 13   |
      Quernow   | Thrennel Leaf        | thrennel  | GHZ_2_4 | U_FL       | 1 | n | -108@250 | 4.5-5.5 | 0.30 | 0.7  | 14.5 |
      Quernow   | Thrennel Pair        | thrennel  | GHZ_2_4 | U_FL       | 2 | n | -109@250 | 4.5-5.5 | 0.42 | 1.8  | 26   |
      Pellistra | Osier T1             | thrennel  | GHZ_2_4 | SOLDERED   | 1 | y | -104@250 | 4.5-5.5 | 0.32 | 0.8  | 9.5  |
      Pellistra | Osier T2             | thrennel  | GHZ_2_4 | SMALL_U_FL | 1 | n | -107@250 | 3.3-5.5 | 0.30 | 0.55 | 15   | Its socket is the smaller size that looks like u.FL and is not.
      Pellistra | Osier T Long         | thrennel  | MHZ_900 | U_FL       | 1 | n | -112@200 | 4.5-5.5 | 0.38 | 1.1  | 17   |
      Pellistra | Osier T Long Pair    | thrennel  | MHZ_900 | U_FL       | 2 | n | -113@200 | 4.5-5.5 | 0.44 | 2.1  | 27   |
      Ardrusk   | Callowhit Nib        | callowhit | GHZ_2_4 | SOLDERED   | 1 | y | -103@150 | 4.5-5.5 | 0.30 | 0.9  | 15   |
      Ardrusk   | Callowhit Quill      | callowhit | GHZ_2_4 | U_FL       | 1 | n | -105@150 | 4.5-8.5 | 0.33 | 1.2  | 19   |
      Ardrusk   | Callowhit Quill Pair | callowhit | GHZ_2_4 | U_FL       | 2 | n | -106@150 | 4.5-8.5 | 0.45 | 2.4  | 32   |
      Ardrusk   | Callowhit Far        | callowhit | MHZ_900 | U_FL       | 1 | n | -114@50  | 4.5-8.5 | 0.40 | 1.5  | 24   |
      Ardrusk   | Callowhit Far Wire   | callowhit | MHZ_900 | SOLDERED   | 1 | y | -114@50  | 4.5-5.5 | 0.38 | 1.9  | 22   |
      Ardrusk   | Callowhit Reed       | callowhit | GHZ_2_4 | U_FL       | 1 | n | -104@150 | 4.5-5.5 | 0.31 | 0.8  | 21   |
      Tarnickel | Murrelode 1          | murrelode | MHZ_900 | U_FL       | 1 | n | -117@50  | 4.5-5.5 | 0.36 | 1.3  | 25   |
      Tarnickel | Murrelode 1 Light    | murrelode | MHZ_900 | U_FL       | 1 | n | -116@50  | 3.5-5.5 | 0.34 | 0.75 | 28   |
      Tarnickel | Murrelode 2          | murrelode | MHZ_900 | U_FL       | 2 | n | -118@50  | 4.5-5.5 | 0.45 | 3.1  | 39   |
      Tarnickel | Murrelode Fixed      | murrelode | MHZ_900 | SOLDERED   | 1 | y | -116@50  | 4.5-5.5 | 0.37 | 2.2  | 23   |
      Tarnickel | Murrelode Reach      | murrelode | MHZ_900 | SMA        | 1 | n | -120@25  | 4.5-12  | 0.45 | 2.5  | 25   |
      Wistavel  | Sandrigal One        | sandrigal | GHZ_2_4 | SOLDERED   | 1 | y | -96@110  | 4.5-5.5 | 0.30 | 1.0  | 9    |
      Wistavel  | Sandrigal One Plus   | sandrigal | GHZ_2_4 | SOLDERED   | 2 | y | -97@110  | 4.5-5.5 | 0.40 | 1.8  | 18   |
      Wistavel  | Sandrigal Socket     | sandrigal | GHZ_2_4 | U_FL       | 1 | n | -97@110  | 4.5-5.5 | 0.31 | 1.1  | 12   |
      Wistavel  | Sandrigal Small      | sandrigal | GHZ_2_4 | SOLDERED   | 1 | y | -94@110  | 3.3-5.5 | 0.26 | 0.6  | 14   |
      Wistavel  | Sandrigal Two        | sandrigal | GHZ_2_4 | U_FL       | 2 | n | -98@110  | 4.5-8.5 | 0.43 | 2.6  | 24   |
      Pellistra | Osier S1             | sandrigal | GHZ_2_4 | U_FL       | 1 | n | -96@110  | 4.5-5.5 | 0.29 | 0.85 | 10.5 |
      """;

  /** Maker, name, plug, band, polarisation, dBi, grams, price, note. */
  private static final String ANTENNAS = """
      Lissomel   | Umbel U Right        | U_FL       | GHZ_5_8 | RIGHT  | 1.6  | 1.6  | 8.5 |
      Lissomel   | Umbel U Left         | U_FL       | GHZ_5_8 | LEFT   | 1.6  | 1.6  | 8.5 |
      Lissomel   | Umbel U Right Feather | U_FL      | GHZ_5_8 | RIGHT  | 1.2  | 1.05 | 12  |
      Lissomel   | Umbel U Left Feather | U_FL       | GHZ_5_8 | LEFT   | 1.2  | 1.05 | 12  |
      Zandrille  | Stipule U            | U_FL       | GHZ_5_8 | LINEAR | 0.6  | 0.45 | 3   |
      Zandrille  | Stipule U Sleeve     | U_FL       | GHZ_5_8 | LINEAR | 1.7  | 0.9  | 5   |
      Dunverrow  | Burr U Right         | U_FL       | GHZ_5_8 | RIGHT  | 1.9  | 2.7  | 4.5 |
      Lissomel   | Umbel M Right        | MMCX       | GHZ_5_8 | RIGHT  | 1.6  | 2.6  | 10  |
      Lissomel   | Umbel M Left         | MMCX       | GHZ_5_8 | LEFT   | 1.6  | 2.6  | 10  |
      Zandrille  | Stipule M            | MMCX       | GHZ_5_8 | LINEAR | 1.4  | 1.3  | 5   |
      Dunverrow  | Burr M Right         | MMCX       | GHZ_5_8 | RIGHT  | 2    | 4.4  | 6   |
      Dunverrow  | Burr M Left          | MMCX       | GHZ_5_8 | LEFT   | 2    | 4.4  | 6   |
      Lissomel   | Umbel S Right        | SMA        | GHZ_5_8 | RIGHT  | 1.8  | 7.2  | 13  |
      Lissomel   | Umbel S Left         | SMA        | GHZ_5_8 | LEFT   | 1.8  | 7.2  | 13  |
      Dunverrow  | Burr RS Right        | RP_SMA     | GHZ_5_8 | RIGHT  | 2.1  | 9.6  | 5   | Bought by mistake more often than on purpose: it screws onto an SMA socket and makes no contact.
      Lissomel   | Umbel RS Left        | RP_SMA     | GHZ_5_8 | LEFT   | 1.8  | 7.4  | 13  |
      Zandrille  | Stipule Small        | SMALL_U_FL | GHZ_5_8 | LINEAR | 0.6  | 0.5  | 4   |
      Lissomel   | Umbel Small Right    | SMALL_U_FL | GHZ_5_8 | RIGHT  | 1.5  | 1.5  | 10  |
      Zandrille  | Stipule Wire         | SOLDERED   | GHZ_5_8 | LINEAR | 0.3  | 0.4  | 3   |
      Lissomel   | Umbel Bare Right     | SOLDERED   | GHZ_5_8 | RIGHT  | 1.4  | 1.2  | 9   |
      Quernow    | Tendril 24 U         | U_FL       | GHZ_2_4 | LINEAR | 0    | 0.5  | 3.5 |
      Quernow    | Tendril 24 U Tee     | U_FL       | GHZ_2_4 | LINEAR | 1.8  | 0.9  | 5   |
      Quernow    | Tendril 24 U Chip    | U_FL       | GHZ_2_4 | LINEAR | -2   | 0.3  | 8   |
      Pellistra  | Withy 24 Small       | SMALL_U_FL | GHZ_2_4 | LINEAR | -0.5 | 0.4  | 4   |
      Pellistra  | Withy 24 Thread      | U_FL       | GHZ_2_4 | LINEAR | -1   | 0.3  | 3   |
      Pellistra  | Withy 24 Long        | U_FL       | GHZ_2_4 | LINEAR | 1.9  | 1.4  | 4   |
      Tarnickel  | Longreed 9 U         | U_FL       | MHZ_900 | LINEAR | 1.2  | 1.4  | 9   |
      Tarnickel  | Longreed 9 U Tee     | U_FL       | MHZ_900 | LINEAR | 2.1  | 1.9  | 12  |
      Ardrusk    | Callowhit Whisker    | U_FL       | MHZ_900 | LINEAR | 0.4  | 1.0  | 14  |
      Tarnickel  | Longreed 9 S         | SMA        | MHZ_900 | LINEAR | 1.5  | 6.4  | 9   |
      """;

  /** Maker, name, compass, window, watts, grams, price. */
  private static final String SATELLITE = """
      Molinquay | Mudmark 10       | n | 3.3-5.5 | 0.12 | 2.6 | 14 |
      Molinquay | Mudmark 12       | n | 3.6-5.5 | 0.15 | 3.4 | 13 |
      Molinquay | Mudmark 18       | n | 3.6-5.5 | 0.16 | 4.8 | 11 |
      Molinquay | Mudmark 18 North | y | 3.6-5.5 | 0.18 | 7.6 | 19 |
      Plimmery  | Withymark        | n | 4-5.5   | 0.13 | 3.1 | 16 |
      Plimmery  | Withymark North  | y | 4-5.5   | 0.17 | 6.3 | 24 |
      Quernow   | Starfrond Small  | n | 3.3-5.5 | 0.1  | 2.5 | 18 |
      Quernow   | Starfrond        | n | 3.3-5.5 | 0.14 | 4.1 | 15 |
      Quernow   | Starfrond North  | y | 3.3-5.5 | 0.2  | 9.2 | 27 |
      Gannelweed | Peatmark        | n | 4.5-5.5 | 0.24 | 5   | 9  |
      """;

  private Radio() {}

  static List<Receiver> receivers() {
    return Shelf.rows(RECEIVERS).map(Radio::receiver).toList();
  }

  static List<Antenna> antennas() {
    return Shelf.rows(ANTENNAS).map(Radio::antenna).toList();
  }

  static List<Gps> satellite() {
    return Shelf.rows(SATELLITE).map(Radio::gps).toList();
  }

  private static Receiver receiver(String[] row) {
    var draw = Draw.of(row[1]);
    var known = Sources.usual(draw);
    var fixed = row[6].equals("y");
    var heard = row[7].split("@", -1);
    return new Receiver(
        Shelf.id(row[1]),
        row[0],
        row[1],
        Shelf.price(Double.parseDouble(row[11])),
        Sale.EACH,
        Shelf.mass(Double.parseDouble(row[10]), known),
        row[2],
        Video.window(row[8]),
        SerialNeed.FULL,
        new AntennaPort(
            AntennaConnector.valueOf(row[4]),
            Band.valueOf(row[3]),
            Integer.parseInt(row[5]),
            fixed ? -0.5 : null,
            fixed ? Polarisation.LINEAR : null),
        fixed,
        new Sensitivity(Double.parseDouble(heard[0]), Double.parseDouble(heard[1])),
        Double.parseDouble(row[9]),
        Sources.withNote(
            Sources.of(
                known,
                draw.pick(List.of(
                    "current from the maker's page",
                    "current read while it was linked to the radio",
                    "current as usual for its chip")),
                draw),
            row[12]),
        List.of());
  }

  private static Antenna antenna(String[] row) {
    var draw = Draw.of(row[1]);
    var known = Sources.usual(draw);
    return new Antenna(
        Shelf.id(row[1]),
        row[0],
        row[1],
        Shelf.price(Double.parseDouble(row[7])),
        Stream.of("Stipule Wire", "Withy 24 Thread").anyMatch(row[1]::equals)
            ? Shelf.bag(2)
            : Sale.EACH,
        Shelf.mass(Double.parseDouble(row[6]), known),
        AntennaConnector.valueOf(row[2]),
        Band.valueOf(row[3]),
        Polarisation.valueOf(row[4]),
        Double.parseDouble(row[5]),
        Sources.withNote(Sources.mass(known, draw), row[8]),
        List.of());
  }

  private static Gps gps(String[] row) {
    var draw = Draw.of(row[1]);
    var known = Sources.usual(draw);
    return new Gps(
        Shelf.id(row[1]),
        row[0],
        row[1],
        Shelf.price(Double.parseDouble(row[6])),
        Sale.EACH,
        Shelf.mass(Double.parseDouble(row[5]), known),
        row[2].equals("y"),
        Video.window(row[3]),
        Double.parseDouble(row[4]),
        Sources.of(known, "current from the maker's sheet", draw),
        List.of());
  }
}
