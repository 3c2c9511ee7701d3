package pappus.evidence.filling;

import java.util.List;
import java.util.Map;
import pappus.evidence.filling.Blanks.Harm;
import pappus.evidence.prior.ClassPriors;
import pappus.evidence.prior.LinkPriors;
import pappus.part.Band;
import pappus.part.Kind;
import pappus.part.Polarisation;
import tools.jackson.databind.JsonNode;

/**
 * What parts of a class usually have, by what a seller's page prints. Without a source beside it a number is the median
 * of the shipped catalogue and its spread that of the parts about it: common practice, no published source.
 */
final class ClassFacts {
  private static final String SHOP = "what pages of shops mean";
  private static final String TRADE = "what is usual in the trade";
  private static final String ANALOGUE = "analogue";

  /** What mass and centre of mass of a frame come from that is drawn. */
  static final String DRAWING = "its drawing";

  /** Kv, stator diameter in mm and most cells of a motor multiply to this, ± 13 %. */
  private static final double KV_MM_CELLS = 221_000;

  /** g/cm³ of pouches and of cylinders in their shrink. */
  private static final double POUCH_DENSITY = 2.28;

  private static final double CYLINDER_DENSITY = 1.95;

  private ClassFacts() {}

  static void fill(Kind kind, Blanks part) {
    part.word("maker", "maker", "Not stated", "no more than is given");
    if (kind == Kind.PROPELLER) {
      part.json("sold", "sold as", "{\"unit\": \"set\", \"pieces\": 4}", "a set of 4", SHOP);
    } else {
      part.json("sold", "sold as", "{\"unit\": \"each\", \"pieces\": 1}", "one each", SHOP);
    }
    if (kind == Kind.FRAME && isDrawn(part)) {
      // Kept until the whole record is there, by which its drawing is weighed.
      part.json("mass", "mass", "{\"grams\": 50, \"known\": \"estimated\"}", "50 g", DRAWING);
    }
    part.within("mass", mass -> mass.word("known", "mass known", "maker", "the page of a shop"));
    part.word("source", "source", "Not stated.", "no more than is given");
    switch (kind) {
      case MOTOR -> motor(part);
      case PROPELLER -> propeller(part);
      case BATTERY -> battery(part);
      case BOARD -> board(part);
      case FRAME -> frame(part);
      case TRANSMITTER -> transmitter(part);
      case CAMERA -> camera(part);
      case RECEIVER -> receiver(part);
      case ANTENNA -> antenna(part);
      case GPS -> {
        part.json("input", "input volts", VOLTS_5, "4.5 to 5.5 V", TRADE);
        part.fill("watts", "power drawn", 0.16, " W", 0.25, Harm.IF_MORE, 0.01, 3, TRADE);
      }
      case LEAD ->
        part.fill(
            "millimetres", "length of its wires", 60, " mm", 0.25, Harm.IF_MORE, 0, 300, TRADE);
      case BUZZER -> {
        part.flag("ownCell", "cell of its own", false, "what is not said is not there");
        part.fill("watts", "power drawn", 0.15, " W", 0.45, Harm.IF_MORE, 0, 3, TRADE);
      }
      case PAYLOAD_CAMERA, CAPACITOR, SCREW, STRAP, ADAPTER, SUNDRY -> {}
    }
  }

  private static final String VOLTS_5 = "{\"lowVolts\": 4.5, \"highVolts\": 5.5}";

  private static boolean isCircularPlug(String connector) {
    return List.of("mmcx", "sma", "rp-sma").contains(connector);
  }

  private static void antenna(Blanks antenna) {
    var isVideo = antenna.text("band").equals("5.8-ghz");
    antenna.word(
        "polarisation",
        "polarisation",
        isVideo && isCircularPlug(antenna.text("connector")) ? "right" : "linear",
        "plug and band");
    var isLinear = antenna.text("polarisation").equals("linear");
    var gain = LinkPriors.gainDbi(
        isVideo ? Band.GHZ_5_8 : Band.GHZ_2_4, isLinear ? Polarisation.LINEAR : Polarisation.RIGHT);
    var shown = Blanks.plain(gain);
    antenna.json("gainDbi", "gain", shown, shown + " dBi", "band and polarisation, ± 1 dB");
  }

  private static void motor(Blanks motor) {
    motor.word("speedConstantReading", "Kv", "label", SHOP);
    // Kept until the whole record is there, by which the laws go.
    motor.fill(
        "resistanceMilliohms",
        "winding resistance",
        100,
        " mΩ",
        Filling.WINDING_SPREAD,
        Harm.EITHER,
        10,
        2000,
        "stator and Kv");
    motor.word("resistanceReading", "resistance of", "winding", "the law it is filled by");
    motor.fill(
        "noLoadCurrentAmps",
        "no-load current",
        0.5,
        " A",
        Filling.NO_LOAD_SPREAD,
        Harm.EITHER,
        0.05,
        5,
        "mass and Kv");
    motor.fill("noLoadVolts", "no-load volts", 10, " V", 0, Harm.EITHER, 1, 30, TRADE);
    var grams = motor.inner("mass").map(mass -> mass.number("grams").orElse(10)).orElse(10.0);
    var gauge = grams < 5 ? 30 : grams < 9.5 ? 28 : grams < 18.5 ? 26 : grams < 25 ? 22 : 20;
    motor.count("leadGauge", "gauge of its leads", gauge, 0, "mass");
    motor.fill(
        "leadsIncludedMillimetres",
        "leads in its mass",
        0,
        " mm",
        0,
        Harm.EITHER,
        0,
        500,
        "the heavier of two readings");
    motor.word("figures", "figures known", "maker", SHOP);
    var diameter = motor.number("statorDiameterMillimetres");
    var height = motor.number("statorHeightMillimetres");
    var kv = motor.number("speedConstantRpmPerVolt");
    if (diameter.isEmpty() || height.isEmpty() || kv.isEmpty()) {
      return;
    }
    var most = (int) Math.max(
        1, Math.min(8, Math.floor(KV_MM_CELLS / (kv.getAsDouble() * diameter.getAsDouble()))));
    var fewest = diameter.getAsDouble() < 12 ? 1 : Math.min(2, most);
    motor.json(
        "cells",
        "cells",
        "{\"from\": %s, \"to\": %s}".formatted(fewest, most),
        fewest + " to " + most,
        "stator and Kv");
    var circle = motor.list("boltCirclesMillimetres").stream()
        .filter(JsonNode::isNumber)
        .mapToDouble(JsonNode::doubleValue)
        .min()
        .orElse(diameter.getAsDouble() < 12 ? 9 : 12);
    motor.count("screwCount", "screws that hold it", circle < 8 ? 3 : 4, 0, "bolt pattern");
    motor.word(
        "screw", "their thread", circle < 8 ? "M1.4" : circle < 16 ? "M2" : "M3", "bolt pattern");
    motor.fill(
        "bellDiameterMillimetres",
        "diameter of the bell",
        diameter.getAsDouble() + 3.6,
        " mm",
        0.03,
        Harm.EITHER,
        8,
        50,
        "stator");
    motor.fill(
        "heightMillimetres",
        "height",
        height.getAsDouble() + 8.8,
        " mm",
        0.04,
        Harm.EITHER,
        5,
        50,
        "stator");
  }

  private static void propeller(Blanks propeller) {
    var isNut =
        propeller.list("seats").stream().anyMatch(seat -> seat.asString("").equals("nut-m5"));
    propeller.fill(
        "hubThicknessMillimetres",
        "thickness of the hub",
        isNut ? 6 : 5.4,
        " mm",
        0.125,
        Harm.EITHER,
        1,
        15,
        "seat");
    propeller.word("figures", "figures known", "maker", SHOP);
  }

  private static void battery(Blanks battery) {
    battery.count("cellsInParallel", "cells in parallel", 1, 0, SHOP);
    var plug = battery.text("connector");
    battery.count(
        "leadGauge",
        "gauge of its leads",
        Map.of("xt60", 14, "xt30", 18, "rcy", 22).getOrDefault(plug, 26),
        0,
        "plug");
    battery.fill(
        "leadMillimetres",
        "length of its leads",
        plug.equals("xt60") ? 90 : plug.equals("xt30") ? 70 : 55,
        " mm",
        0.15,
        Harm.IF_MORE,
        0,
        300,
        "plug");
    battery.word("figures", "figures known", "maker", SHOP);
    var grams = battery.inner("mass").flatMap(mass -> {
      var found = mass.number("grams");
      return found.isPresent()
          ? java.util.Optional.of(found.getAsDouble())
          : java.util.Optional.empty();
    });
    if (grams.isEmpty()) {
      return;
    }
    var isCylinder = battery.text("chemistry").startsWith("li-ion");
    var cubicMillimetres = 1000 * grams.get() / (isCylinder ? CYLINDER_DENSITY : POUCH_DENSITY);
    var widthOverLength = isCylinder ? 0.56 : 0.515;
    var heightOverWidth = isCylinder ? 0.77 : 0.6;
    var length =
        StrictMath.cbrt(cubicMillimetres / (widthOverLength * widthOverLength * heightOverWidth));
    var from = "mass and chemistry";
    battery.fill("lengthMillimetres", "length", length, " mm", 0.05, Harm.IF_MORE, 10, 250, from);
    battery.fill(
        "widthMillimetres",
        "width",
        widthOverLength * length,
        " mm",
        0.12,
        Harm.IF_MORE,
        5,
        100,
        from);
    battery.fill(
        "heightMillimetres",
        "height",
        heightOverWidth * widthOverLength * length,
        " mm",
        0.30,
        Harm.IF_MORE,
        3,
        100,
        from);
  }

  /** Volts of a flat and of a full cell, as boards are sold for so many of them. */
  private static final double FLAT = 3.0;

  private static final double FULL = 4.2;

  private static void board(Blanks board) {
    var isPair = board.text("layout").equals("pair");
    board.within("cells", cells -> {
      var from = cells.number("from");
      var to = cells.number("to");
      if (from.isPresent() && to.isPresent()) {
        var low = Blanks.plain(FLAT * from.getAsDouble());
        var high = Blanks.plain(FULL * to.getAsDouble());
        board.json(
            "input",
            "volts at the battery pads",
            "{\"lowVolts\": %s, \"highVolts\": %s}".formatted(low, high),
            low + " to " + high + " V",
            "cells");
      }
    });
    board.within(
        "mount", mount -> holes(mount, mount.text("pattern").equals("30.5x30.5") ? 4 : 3.2));
    board.fill(
        "heightMillimetres",
        "height",
        isPair ? 15.5 : 7,
        " mm",
        0.12,
        Harm.IF_MORE,
        2,
        30,
        "layout");
    board.json(
        "regulators", "rails", "[{\"volts\": 5, \"continuousAmps\": 1.5}]", "5 V, 1.5 A", TRADE);
    board.count("serialPorts", "serial ports", 3, 0.3, TRADE);
    board.fill(
        "watts",
        "power drawn",
        board.has("receiver") ? 0.95 : 0.7,
        " W",
        0.17,
        Harm.IF_MORE,
        0.1,
        6,
        "what is inside");
    board.flag("buzzer", "buzzer on it", false, "what is not said is not there");
    board.within("receiver", ClassFacts::radio);
    board.within("transmitter", sender -> {
      sender.json("antenna", "video antenna port", PORT_58, "5.8 GHz, plug not known", TRADE);
      powers(sender);
    });
  }

  private static final String PORT_58 = "{\"band\": \"5.8-ghz\", \"count\": 1}";
  private static final String PORT_24 = "{\"band\": \"2.4-ghz\", \"count\": 1}";

  private static void radio(Blanks receiver) {
    receiver.json("antenna", "radio antenna port", PORT_24, "2.4 GHz, plug not known", TRADE);
    receiver.within("antenna", port -> port(port, "2.4-ghz"));
    receiver.flag("antennaFixed", "antenna soldered on", false, "what is not said is not there");
    var band = receiver.inner("antenna").map(port -> port.text("band")).orElse("");
    var usual = LinkPriors.sensitivity(
        band.equals("868-915-mhz")
            ? Band.MHZ_900
            : band.equals("5.8-ghz") ? Band.GHZ_5_8 : Band.GHZ_2_4);
    var dbm = Blanks.plain(usual.dbm());
    var rate = Blanks.plain(usual.packetsPerSecond());
    receiver.json(
        "sensitivity",
        "weakest signal",
        "{\"dbm\": %s, \"packetsPerSecond\": %s}".formatted(dbm, rate),
        "%s dBm at %s packets a second".formatted(dbm, rate),
        "band, ± 6 dB");
  }

  private static void port(Blanks port, String band) {
    port.word("band", "band of its antenna", band, TRADE);
    port.count("count", "antenna ports", 1, 0, TRADE);
  }

  private static void holes(Blanks mount, double millimetres) {
    mount.fill("holeMillimetres", "holes", millimetres, " mm", 0, Harm.EITHER, 1, 6, "pattern");
    mount.flag("turned", "holes turned", false, TRADE);
  }

  private static void powers(Blanks sender) {
    var isAnalogue = sender.text("family").equals(ANALOGUE);
    for (var power : sender.each("powers")) {
      power
          .number("milliwatts")
          .ifPresent(milliwatts -> power.fill(
              "watts",
              "power drawn at " + Blanks.plain(milliwatts) + " mW",
              ClassPriors.usualSenderWatts(isAnalogue, milliwatts),
              " W",
              0.25,
              Harm.IF_MORE,
              0.1,
              40,
              "family and power radiated"));
    }
  }

  /** Whether a drawing tells all that a frame weighs. */
  private static boolean isDrawn(Blanks frame) {
    return frame
        .inner("drawing")
        .filter(drawing ->
            !drawing.list("plates").isEmpty() && !drawing.list("arms").isEmpty())
        .isPresent();
  }

  private static void frame(Blanks frame) {
    frame.number("diagonalMillimetres").ifPresent(diagonal -> {
      var side = diagonal / Math.sqrt(2);
      for (var spacing : List.of("frontSpacingMillimetres", "sideSpacingMillimetres")) {
        frame.fill(
            spacing, "spacing of the motors", side, " mm", 0, Harm.EITHER, 40, 400, "a true X");
      }
    });
    var front = frame.number("frontSpacingMillimetres");
    var side = frame.number("sideSpacingMillimetres");
    var inches = frame.number("largestPropellerInches");
    if (front.isEmpty() || side.isEmpty() || inches.isEmpty()) {
      return;
    }
    var diagonal = StrictMath.hypot(front.getAsDouble(), side.getAsDouble());
    var grams = frame.inner("mass").map(mass -> mass.number("grams").orElse(50)).orElse(50.0);
    frame.fill(
        "armThicknessMillimetres",
        "plate under the motor",
        0.414 * Math.sqrt(grams),
        " mm",
        0.13,
        Harm.EITHER,
        1,
        12,
        "mass");
    var places = frame.each("positions");
    for (var i = 0; i < places.size(); i++) {
      var place = places.get(i);
      place.word(
          "name", "name of a place", i == 0 ? "middle" : i == 1 ? "rear" : "place " + i, TRADE);
      if (i == 0) {
        place.fill("xMillimetres", "its middle", 0, " mm", 0, Harm.EITHER, -200, 200, TRADE);
      } else {
        place.json(
            "xMillimetres",
            "its middle",
            Blanks.plain(-0.18 * diagonal),
            Blanks.plain(-0.18 * diagonal) + " mm",
            "wheelbase");
      }
      place.flag("open", "no plate above", false, TRADE);
      place
          .each("patterns")
          .forEach(holes -> holes(holes, holes.text("pattern").equals("30.5x30.5") ? 3.2 : 2.2));
    }
    if (!places.isEmpty() && places.stream().allMatch(place -> place.isTrue("open"))) {
      frame.json(
          "heights", "height between the plates", "[]", "none", "places without a plate above");
    }
    var widest = frame.list("cameraWidthsMillimetres").stream()
        .filter(JsonNode::isNumber)
        .mapToDouble(JsonNode::doubleValue)
        .max()
        .orElse(14);
    var between = widest < 15 ? 20 : widest < 20 ? 22 : 25;
    frame.json(
        "heights",
        "height between the plates",
        "[{\"millimetres\": %s, \"addedGrams\": 0}]".formatted(between),
        between + " mm",
        "camera width");
    frame.fill(
        "cameraXMillimetres",
        "place of the camera",
        0.287 * diagonal,
        " mm forward",
        0.12,
        Harm.EITHER,
        -200,
        200,
        "wheelbase");
    frame.fill(
        "centreOfMassXMillimetres",
        "centre of mass",
        0,
        " mm forward",
        0,
        Harm.EITHER,
        -60,
        60,
        isDrawn(frame) ? DRAWING : TRADE);
    frame.within("bay", bay -> {
      bay.fill(
          "widthMillimetres",
          "width of the bay",
          0.207 * diagonal,
          " mm",
          0.12,
          Harm.IF_LESS,
          10,
          120,
          "wheelbase");
      var half = Blanks.plain(0.21 * diagonal);
      bay.json(
          "rearXMillimetres", "rear end of the bay", "-" + half, "-" + half + " mm", "wheelbase");
      bay.json("frontXMillimetres", "front end of the bay", half, half + " mm", "wheelbase");
      var strap = inches.getAsDouble() < 4 ? 12 : grams < 90 ? 16 : 20;
      bay.json(
          "strapWidthMillimetres",
          "widest strap",
          Integer.toString(strap),
          strap + " mm",
          "largest propeller and mass");
    });
  }

  private static void transmitter(Blanks sender) {
    sender.within(
        "mount", mount -> holes(mount, mount.text("pattern").equals("30.5x30.5") ? 3.2 : 2.2));
    sender.fill(
        "heightMillimetres",
        "height",
        sender.has("mount") ? 6 : 3.5,
        " mm",
        0.3,
        Harm.IF_MORE,
        1,
        30,
        "whether it has holes");
    powers(sender);
    sender.json("antenna", "antenna port", PORT_58, "5.8 GHz, plug not known", TRADE);
    sender.within("antenna", port -> port(port, "5.8-ghz"));
    sender.word(
        "serial",
        "serial port",
        sender.text("family").equals(ANALOGUE) ? "half" : "full",
        "family");
    sender.flag("antennaIncluded", "antenna in the box", false, "what is not said is not there");
  }

  private static void camera(Blanks camera) {
    var isAnalogue = camera.text("family").equals(ANALOGUE);
    var width = camera.number("widthMillimetres").orElse(19);
    camera.fill(
        "leastInnerHeightMillimetres",
        "height between plates it needs",
        width < 15 ? 16 : width < 20 ? 20.5 : width + 1,
        " mm",
        0.04,
        Harm.IF_MORE,
        8,
        50,
        "width");
    if (isAnalogue) {
      camera.fill("cableMillimetres", "cable", 0, " mm", 0, Harm.EITHER, 0, 400, "family");
      camera.json("input", "input volts", VOLTS_5, "4.5 to 5.5 V", TRADE);
    } else {
      camera.fill("cableMillimetres", "cable", 105, " mm", 0.25, Harm.IF_LESS, 0, 400, "family");
    }
    camera.fill(
        "watts", "power drawn", isAnalogue ? 0.56 : 0.5, " W", 0.2, Harm.IF_MORE, 0, 10, "family");
  }

  private static void receiver(Blanks receiver) {
    receiver.json("input", "input volts", VOLTS_5, "4.5 to 5.5 V", TRADE);
    receiver.word("serial", "serial port", "full", TRADE);
    radio(receiver);
    receiver.fill("watts", "power drawn", 0.34, " W", 0.18, Harm.IF_MORE, 0.01, 3, TRADE);
  }
}
