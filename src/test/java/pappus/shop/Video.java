package pappus.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Band;
import pappus.part.BundledCamera;
import pappus.part.Camera;
import pappus.part.CameraView;
import pappus.part.MountingHoles;
import pappus.part.OutputPower;
import pappus.part.Polarisation;
import pappus.part.Sale;
import pappus.part.SerialNeed;
import pappus.part.Transmitter;
import pappus.part.VideoSender;
import pappus.part.VoltWindow;

/** Video transmitters and cameras: analogue and three digital families that do not mix. */
final class Video {
  static final String LUMFRET = "lumfret";
  static final String OSTRALINE = "ostraline";
  static final String VELLIMAR = "vellimar";

  /**
   * Maker, name, family, powers, pattern (none: taped), height, window, antenna plug, ports, serial,
   * antenna in the box, camera in the box (width-height-cable), price, note.
   */
  private static final String TRANSMITTERS = """
      Eskerlyn    | Glowmoss 100        | analogue  | 25 100           |      | 3   | 3.5-5.5  | U_FL       | 1 | HALF | n |           | 15 |
      Eskerlyn    | Glowmoss 200        | analogue  | 25 100 200       |      | 3.5 | 4.8-5.6  | U_FL       | 1 | HALF | n |           | 17 |
      Eskerlyn    | Glowmoss 400        | analogue  | 25 100 200 400   | 20   | 5   | 5-26.5   | U_FL       | 1 | HALF | n |           | 24 |
      Eskerlyn    | Glowmoss 400 Corner | analogue  | 25 200 400       | 25.5 | 5.5 | 6-26.5   | MMCX       | 1 | HALF | n |           | 26 |
      Eskerlyn    | Glowmoss 800        | analogue  | 25 200 400 800   | 20   | 6   | 7-26.5   | MMCX       | 1 | HALF | y |           | 34 |
      Eskerlyn    | Glowmoss 1600       | analogue  | 25 400 800 1600  | 30.5 | 8   | 7-27     | MMCX       | 1 | HALF | n |           | 44 |
      Nebbrook    | Rushlight 50 Wire   | analogue  | 25 50            |      | 2.8 | 3.3-5.5  | SOLDERED   | 1 | NONE | y |           | 13 |
      Nebbrook    | Rushlight 200       | analogue  | 25 200           |      | 3.8 | 4.5-5.5  | U_FL       | 1 | HALF | y |           | 16 |
      Nebbrook    | Rushlight 300       | analogue  | 25 100 300       | 16   | 4   | 5-17.6   | SMALL_U_FL | 1 | HALF | n |           | 18 |
      Nebbrook    | Rushlight 400       | analogue  | 25 100 400       | 20   | 5.5 | 5-26     | U_FL       | 1 | HALF | n |           | 21 |
      Nebbrook    | Rushlight 600       | analogue  | 25 200 600       | 20   | 5.5 | 5.5-26   | U_FL       | 1 | HALF | n |           | 17 | The sheet says it draws one and a half watts at its highest setting; we would not plan on that.
      Nebbrook    | Rushlight 600 Plate | analogue  | 25 200 600       | 25   | 6   | 7-26     | MMCX       | 1 | HALF | n |           | 27 |
      Nebbrook    | Rushlight 1000      | analogue  | 25 200 600 1000  | 20   | 8   | 7-26.5   | RP_SMA     | 1 | HALF | n |           | 36 |
      Gannelweed  | Dimwick 350         | analogue  | 25 350           | 20   | 5   | 6.5-18   | U_FL       | 1 | NONE | n |           | 14 |
      Rushmattle  | Lumfret Sprig       | lumfret   | 25 100 200       | 20   | 7   | 6-18     | U_FL       | 1 | FULL | y | 14-16-80  | 109 |
      Rushmattle  | Lumfret Twig        | lumfret   | 25 200 400       | 20   | 7.5 | 6-26.5   | U_FL       | 1 | FULL | y |           | 79 |
      Rushmattle  | Lumfret Bough       | lumfret   | 25 200 500       | 25.5 | 9   | 6-26.5   | U_FL       | 1 | FULL | n | 19-20-120 | 134 |
      Rushmattle  | Lumfret Trunk       | lumfret   | 25 200 700 1000  | 20   | 11  | 7-26.5   | MMCX       | 2 | FULL | n | 19-22-140 | 169 |
      Rushmattle  | Lumfret Bud         | lumfret   | 25 100           |      | 6   | 4.8-13.2 | U_FL       | 1 | FULL | y |           | 72 |
      Aldersprote | Ostraline Shoal     | ostraline | 25 200 350       | 20   | 8   | 7-26.5   | MMCX       | 1 | FULL | y | 19-20-120 | 139 |
      Aldersprote | Ostraline Strand    | ostraline | 25 200 700       | 20   | 10  | 7-26.5   | MMCX       | 2 | FULL | y |           | 119 |
      Aldersprote | Ostraline Reach     | ostraline | 25 500 1000      | 25.5 | 13  | 7-26.5   | MMCX       | 2 | FULL | y | 21-22-140 | 189 |
      Aldersprote | Ostraline Cove      | ostraline | 25 200           | 25.5 | 7   | 5-18     | U_FL       | 1 | FULL | n | 14-16-100 | 115 |
      Aldersprote | Ostraline Inlet     | ostraline | 25 200 500       | 20   | 8.5 | 7-18     | U_FL       | 1 | FULL | n |           | 92 |
      Torvelark   | Vellimar Mote       | vellimar  | 25 200           | 25.5 | 6   | 5-13.2   | U_FL       | 1 | FULL | n |           | 74 |
      Torvelark   | Vellimar Mote Set   | vellimar  | 25 200           | 25.5 | 6   | 5-13.2   | U_FL       | 1 | FULL | y | 14-16-60  | 112 |
      Torvelark   | Vellimar Ember      | vellimar  | 25 200 400       | 20   | 8   | 7-17.6   | U_FL       | 1 | FULL | n |           | 86 |
      Torvelark   | Vellimar Kindle     | vellimar  | 25 200 500       | 25.5 | 9   | 7-26.5   | MMCX       | 1 | FULL | n | 19-20-140 | 142 |
      Torvelark   | Vellimar Blaze Long | vellimar  | 25 200 1000      | 30.5 | 12  | 7-26.5   | SMA        | 2 | FULL | n |           | 129 |
      Torvelark   | Vellimar Spark      | vellimar  | 25 100 250       | 16   | 6.5 | 5-9.5    | U_FL       | 1 | FULL | n |           | 78 |
      """;

  private static final String UNLIKELY = "Rushlight 600";

  /** Maker, name, family, width, least height, cable, watts, window, grams, price. */
  private static final String CAMERAS = """
      Eskerlyn    | Newteye 14          | analogue  | 14 | 16 | 0   | 0.45 | 3.3-5.5 | 1.6 | 17 |
      Eskerlyn    | Newteye 14 Dusk     | analogue  | 14 | 16 | 0   | 0.6  | 4.5-25  | 2.4 | 24 |
      Eskerlyn    | Newteye 14 Feather  | analogue  | 14 | 16 | 0   | 0.4  | 3.3-5.5 | 1.5 | 26 |
      Eskerlyn    | Newteye 19          | analogue  | 19 | 20 | 0   | 0.55 | 4.5-26  | 5.2 | 22 |
      Eskerlyn    | Newteye 19 Dusk     | analogue  | 19 | 21 | 0   | 0.75 | 4.5-26  | 6.8 | 33 |
      Nebbrook    | Hernlook 14         | analogue  | 14 | 16 | 0   | 0.5  | 3.5-5.5 | 2.1 | 13 |
      Nebbrook    | Hernlook 14 Wide    | analogue  | 14 | 16.5 | 0 | 0.55 | 3.5-16  | 2.8 | 16 |
      Nebbrook    | Hernlook 19         | analogue  | 19 | 21 | 0   | 0.6  | 5-26    | 6.1 | 16 |
      Nebbrook    | Hernlook 19 Metal   | analogue  | 19 | 21 | 0   | 0.65 | 5-26    | 8.4 | 19 |
      Nebbrook    | Hernlook 21         | analogue  | 21 | 22 | 0   | 0.7  | 5-26    | 8.8 | 18 |
      Gannelweed  | Paddock 14          | analogue  | 14 | 16 | 0   | 0.65 | 4.5-17  | 3.2 | 12 |
      Gannelweed  | Paddock 19          | analogue  | 19 | 20 | 0   | 0.8  | 4.5-17  | 7.2 | 15 |
      Gannelweed  | Paddock 14 Night    | analogue  | 14 | 16 | 0   | 0.7  | 4.5-5.5 | 2.9 | 22 |
      Thrumbel    | Stickleback 14      | analogue  | 14 | 16 | 0   | 0.45 | 3.3-9   | 1.9 | 19 |
      Thrumbel    | Stickleback 19      | analogue  | 19 | 20 | 0   | 0.5  | 3.3-18  | 4.6 | 28 |
      Rushmattle  | Lumfret Eye 14      | lumfret   | 14 | 16 | 80  | 0.4  |         | 2.2 | 34 |
      Rushmattle  | Lumfret Eye 14 Long | lumfret   | 14 | 16 | 140 | 0.4  |         | 2.6 | 36 |
      Rushmattle  | Lumfret Eye 19      | lumfret   | 19 | 20 | 120 | 0.55 |         | 6.4 | 48 |
      Rushmattle  | Lumfret Eye 19 Dusk | lumfret   | 19 | 22 | 120 | 0.65 |         | 8.1 | 69 |
      Rushmattle  | Lumfret Eye 19 Slim | lumfret   | 19 | 20 | 100 | 0.5  |         | 5.2 | 59 |
      Aldersprote | Ostraline Lens 14   | ostraline | 14 | 16 | 100 | 0.5  |         | 3.1 | 42 |
      Aldersprote | Ostraline Lens 19   | ostraline | 19 | 20 | 120 | 0.6  |         | 7.2 | 54 |
      Aldersprote | Ostraline Lens 21   | ostraline | 21 | 22 | 140 | 0.7  |         | 9.3 | 74 |
      Aldersprote | Ostraline Lens 19 Air | ostraline | 19 | 20 | 140 | 0.55 |       | 5.6 | 79 |
      Aldersprote | Ostraline Lens 14 Air | ostraline | 14 | 16 | 80 | 0.45 |        | 2.4 | 58 |
      Torvelark   | Vellimar Iris 14    | vellimar  | 14 | 16 | 60  | 0.35 |         | 1.9 | 31 |
      Torvelark   | Vellimar Iris 14 Dusk | vellimar | 14 | 16 | 100 | 0.45 |        | 2.7 | 44 |
      Torvelark   | Vellimar Iris 19    | vellimar  | 19 | 20 | 100 | 0.5  |         | 5.8 | 46 |
      Torvelark   | Vellimar Iris 19 Sharp | vellimar | 19 | 22 | 120 | 0.6  |       | 7.9 | 84 |
      Torvelark   | Vellimar Iris 21    | vellimar  | 21 | 22 | 140 | 0.6  |         | 8.8 | 52 |
      """;

  private Video() {}

  static List<Transmitter> transmitters() {
    return Shelf.rows(TRANSMITTERS).map(Video::transmitter).toList();
  }

  static List<Camera> cameras() {
    return Shelf.rows(CAMERAS).map(Video::camera).toList();
  }

  private static Transmitter transmitter(String[] row) {
    var name = row[1];
    var draw = Draw.of(name);
    var family = row[2];
    var digital = !family.equals(VideoSender.ANALOGUE);
    var levels = Stream.of(row[3].split(" ", -1)).map(Integer::valueOf).toList();
    var camera = bundled(family, row[11]);
    var factor = draw.scatter(0.18);
    var powers = digital
        ? digitalPowers(levels, factor, camera == null ? 0.5 : 0)
        : name.equals(UNLIKELY) ? unlikelyPowers() : analoguePowers(levels, factor);
    var last = powers.get(powers.size() - 1);
    var heat = last.watts() - last.milliwatts() / 1000;
    var taped = row[4].isEmpty();
    var grams = (1.5 + heat) * (taped && !digital ? 0.62 : 1) * draw.scatter(0.12);
    if (camera != null) {
      grams += camera.widthMillimetres() < 15 ? 2.6 : camera.widthMillimetres() < 20 ? 6.4 : 9;
    }
    var boxed = row[10].equals("y");
    var ports = Integer.parseInt(row[8]);
    if (boxed) {
      grams += ports * (row[7].equals("SOLDERED") ? 0.5 : 1.4);
    }
    var window = window(row[6]);
    var known = Sources.usual(draw);
    return new Transmitter(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price(Double.parseDouble(row[12])),
        camera == null ? Sale.EACH : Shelf.KIT,
        Shelf.mass(grams, known),
        family,
        taped
            ? null
            : new MountingHoles(Frames.pattern(row[4]), row[4].equals("30.5") ? 3.2 : 2.2, false),
        Double.parseDouble(row[5]),
        window,
        powers,
        new AntennaPort(
            AntennaConnector.valueOf(row[7]),
            Band.GHZ_5_8,
            ports,
            boxed ? boxedGain(family, row[7]) : null,
            boxed ? boxedPolarisation(family) : null),
        SerialNeed.valueOf(row[9]),
        camera,
        boxed,
        Sources.withNote(Sources.of(known, powersText(name, draw), draw), row[13]),
        List.of());
  }

  /** What lies in the box hears a little less well than what is bought apart. */
  private static double boxedGain(String family, String plug) {
    return family.equals(VideoSender.ANALOGUE) ? plug.equals("SOLDERED") ? 0.2 : 0.8 : 1.3;
  }

  private static Polarisation boxedPolarisation(String family) {
    return switch (family) {
      case VideoSender.ANALOGUE -> Polarisation.LINEAR;
      case VELLIMAR -> Polarisation.LEFT;
      default -> Polarisation.RIGHT;
    };
  }

  private static String powersText(String name, Draw draw) {
    return name.equals(UNLIKELY)
        ? "powers copied from the sheet in the bag"
        : draw.pick(List.of(
            "watts read at each setting on a bench supply",
            "watts from the maker's table of settings",
            "watts worked out from the current the maker gives"));
  }

  private static @Nullable BundledCamera bundled(String family, String text) {
    if (text.isEmpty()) {
      return null;
    }
    var parts = text.split("-", -1);
    return new BundledCamera(
        family,
        Double.parseDouble(parts[0]),
        Double.parseDouble(parts[1]),
        Double.parseDouble(parts[2]),
        null);
  }

  /** Input of an analogue transmitter, with one factor for all its settings. */
  static List<OutputPower> analoguePowers(List<Integer> levels, double factor) {
    var powers = new ArrayList<OutputPower>();
    for (var level : levels) {
      var watts = (0.57 + level / 1000.0 / 0.14) * factor;
      powers.add(new OutputPower(level, Draw.round(Math.max(0.4, watts), 0.05), null));
    }
    return powers;
  }

  /** Input of a digital one with its camera, less what a camera bought apart draws. */
  private static List<OutputPower> digitalPowers(
      List<Integer> levels, double factor, double cameraWatts) {
    var powers = new ArrayList<OutputPower>();
    for (var level : levels) {
      var watts = Draw.clamp((4.0 + level / 1000.0 / 0.20) * factor, 2.6, 13.8) - cameraWatts;
      powers.add(new OutputPower(level, Draw.round(watts, 0.1), null));
    }
    return powers;
  }

  private static List<OutputPower> unlikelyPowers() {
    return List.of(
        new OutputPower(25, 0.6, null),
        new OutputPower(200, 1.0, null),
        new OutputPower(600, 1.5, null));
  }

  private static Camera camera(String[] row) {
    var name = row[1];
    var draw = Draw.of(name);
    var known = Sources.usual(draw);
    return new Camera(
        Shelf.id(name),
        row[0],
        name,
        Shelf.price(Double.parseDouble(row[9])),
        Sale.EACH,
        Shelf.mass(Double.parseDouble(row[8]), known),
        row[2],
        Double.parseDouble(row[3]),
        Double.parseDouble(row[4]),
        Double.parseDouble(row[5]),
        Double.parseDouble(row[6]),
        row[7].isEmpty() ? null : window(row[7]),
        view(name, Double.parseDouble(row[3])),
        Sources.of(
            known,
            draw.pick(List.of(
                "width by caliper", "the rest from the maker's drawing", "current from the sheet")),
            draw),
        List.of());
  }

  /** Wider in the name, wider in the picture; drawn apart, so that nothing else moves. */
  private static @Nullable CameraView view(String name, double width) {
    var draw = Draw.of(name + " view");
    if (draw.chance(0.4)) {
      return null;
    }
    var across = Draw.round((name.contains("Wide") ? 150 : 118) + draw.between(-8, 12), 5);
    return new CameraView(
        across,
        Draw.round(across * draw.between(0.6, 0.75), 5),
        Draw.round(draw.between(15, 30), 5),
        width > 16 ? Draw.round(draw.between(0, 2), 0.5) : null);
  }

  static VoltWindow window(String text) {
    var ends = text.split("-", -1);
    return new VoltWindow(Double.parseDouble(ends[0]), Double.parseDouble(ends[1]));
  }
}
