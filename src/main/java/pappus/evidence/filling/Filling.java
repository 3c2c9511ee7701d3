package pappus.evidence.filling;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pappus.evidence.BatteryFigures;
import pappus.evidence.filling.Blanks.Harm;
import pappus.evidence.prior.ClassPriors;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonReader;
import pappus.files.json.JsonText;
import pappus.files.json.Listed;
import pappus.part.Assumed;
import pappus.part.Battery;
import pappus.part.Battery.Resistance;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.PartCopy;
import pappus.quantity.Require;
import pappus.structure.DrawnMass;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Fills the records of one file of a catalogue.
 *
 * <p>Why: src/site/markdown/decisions.md#a-missing-fact-counts-half-a-spread-the-harmful-way
 */
public final class Filling {
  /** Of ln of a winding's resistance about the law of stator and Kv: 51 openly listed motors. */
  static final double WINDING_SPREAD = 0.30;

  /** Of ln of the torque without load about its law of mass and speed: the same. */
  static final double NO_LOAD_SPREAD = 0.35;

  /** Of ln of an arm's width about 1.69 and 1.25 mm for an inch of propeller: the shipped catalogue. */
  private static final double ARM_SPREAD = 0.145;

  private static final double ROOT_MM_PER_INCH = 1.69;
  private static final double TIP_MM_PER_INCH = 1.25;

  private static final int MOST_OBJECTS = 500_000;

  private static final JsonMapper MAPPER = JsonMapper.shared();

  private final Kind kind;
  private final Map<Integer, List<Assumed>> assumed = new HashMap<>();

  Filling(Kind kind) {
    this.kind = kind;
  }

  /**
   * The records of a file as they count. What is wrong is added to the problems; a record that is right is returned all
   * the same.
   */
  public static <P extends Part> List<Listed<P>> read(
      Source source, Kind kind, Class<P> record, Problems problems) {
    var filling = new Filling(kind);
    return JsonReader.readList(source, kind.listName(), record, filling::completed, problems)
        .stream()
        .map(one -> new Listed<>(
            filling.settled(one.value(), one.index()), one.index(), one.line(), one.offset()))
        .toList();
  }

  /**
   * The file with what its records lack put in, each at the end of its object, so that every line stays where it was;
   * the file itself if it is no JSON, larger than any catalogue, or nothing was lacking that its class can fill.
   */
  Source completed(Source source) {
    if (hasTooMany(source.bytes())) {
      return source;
    }
    JsonNode root;
    JsonNode whole;
    Map<String, Integer> ends;
    try {
      root = MAPPER.readTree(source.bytes());
      whole = MAPPER.readTree(source.bytes());
      ends = ends(source.bytes());
    } catch (JacksonException notJson) {
      return source;
    }
    var records = whole.path(kind.listName());
    for (var i = 0; i < records.size(); i++) {
      if (records.get(i) instanceof ObjectNode record) {
        var blanks = Blanks.of(record);
        ClassFacts.fill(kind, blanks);
        if (!blanks.assumed().isEmpty()) {
          assumed.put(i, blanks.assumed());
        }
      }
    }
    var insertions = new TreeMap<Integer, String>();
    compare(root, whole, "", ends, insertions);
    return insertions.isEmpty() ? source : Source.of(source.name(), put(source, insertions));
  }

  /** Whether a file has more objects than the largest catalogue, which only memory would be spent on. */
  private static boolean hasTooMany(byte[] bytes) {
    var objects = 0;
    for (var each : bytes) {
      objects += each == '{' ? 1 : 0;
    }
    return objects > MOST_OBJECTS;
  }

  /** A record of the file as it counts, with what was assumed of it. */
  private <P extends Part> P settled(P part, int index) {
    var all = new ArrayList<>(assumed.getOrDefault(index, List.of()));
    var values = new HashMap<String, Object>();
    if (part instanceof Motor motor) {
      settle(
          all,
          values,
          "resistanceMilliohms",
          1000 * ClassPriors.usualWindingOhms(motor),
          " mΩ",
          10,
          2000);
      settle(all, values, "noLoadCurrentAmps", ClassPriors.usualNoLoadAmps(motor), " A", 0.05, 5);
    } else if (part instanceof Frame frame && frame.armWidthMillimetres() == null) {
      var root = width(ROOT_MM_PER_INCH, frame);
      var tip = width(TIP_MM_PER_INCH, frame);
      values.put("armWidthMillimetres", new Frame.ArmWidth(root, tip));
      all.add(new Assumed(
          "armWidthMillimetres",
          "arm width",
          Blanks.plain(root) + " mm at the plate",
          ARM_SPREAD,
          "largest propeller"));
    }
    if (part instanceof Battery battery && battery.resistance() == null) {
      var spread = BatteryFigures.chemistry(battery).classResistanceDoubt();
      var value = Blanks.counted(
          BatteryFigures.usualCellMilliohms(battery), spread, Harm.IF_MORE, 0.3, 500);
      values.put(
          "resistance", new Resistance(value.doubleValue(), Resistance.Reading.DIRECT_CURRENT));
      all.add(new Assumed(
          "resistance",
          "cell resistance",
          value.toPlainString() + " mΩ",
          spread,
          "chemistry and capacity"));
    }
    if (all.isEmpty()) {
      return part;
    }
    values.put("assumed", all);
    var settled = PartCopy.with(part, values);
    return settled instanceof Frame frame ? PartCopy.with(settled, drawn(frame)) : settled;
  }

  /** What a record leaves to its drawing, by name. */
  private static Map<String, Object> drawn(Frame frame) {
    var mass = assumedByDrawing(frame, "mass");
    var centre = assumedByDrawing(frame, "centreOfMassXMillimetres");
    var drawn = DrawnMass.settled(frame, !mass, !centre);
    var all = new ArrayList<Assumed>();
    for (var one : frame.assumed()) {
      if (mass && one.path().equals("mass")) {
        var grams = Require.plain(drawn.mass().grams()) + " g";
        all.add(new Assumed(one.path(), one.name(), grams, DrawnMass.DOUBT, one.from()));
      } else if (centre && one.path().equals("centreOfMassXMillimetres")) {
        var forward = Require.plain(drawn.centreOfMassXMillimetres()) + " mm forward";
        all.add(new Assumed(one.path(), one.name(), forward, 0, one.from()));
      } else {
        all.add(one);
      }
    }
    return Map.of(
        "mass",
        drawn.mass(),
        "centreOfMassXMillimetres",
        drawn.centreOfMassXMillimetres(),
        "assumed",
        all);
  }

  private static boolean assumedByDrawing(Frame frame, String path) {
    return frame
        .assumed(path)
        .filter(one -> one.from().equals(ClassFacts.DRAWING))
        .isPresent();
  }

  private static double width(double millimetresPerInch, Frame frame) {
    return Blanks.counted(
            millimetresPerInch * frame.largestPropellerInches(), ARM_SPREAD, Harm.IF_MORE, 2, 40)
        .doubleValue();
  }

  /** A placeholder was put where a law needs the whole record. */
  private static void settle(
      List<Assumed> all,
      Map<String, Object> values,
      String field,
      double usual,
      String unit,
      double low,
      double high) {
    for (var i = 0; i < all.size(); i++) {
      var one = all.get(i);
      if (one.path().equals(field)) {
        var value = Blanks.counted(usual, one.spread(), Harm.IF_MORE, low, high);
        values.put(field, value.doubleValue());
        all.set(
            i,
            new Assumed(field, one.name(), value.toPlainString() + unit, one.spread(), one.from()));
      }
    }
  }

  /** A record as it was read: without what was assumed of it. */
  public static Object asRead(Part part) {
    if (part.assumed().isEmpty()) {
      return part;
    }
    var record = (ObjectNode) tree(JsonText.of(part));
    part.assumed().forEach(one -> remove(record, one.path()));
    return record;
  }

  /** The fields of a record as it was read, by path, with their values in words. */
  public static Map<String, String> stated(Part part) {
    var fields = new LinkedHashMap<String, String>();
    flatten("", tree(JsonText.of(asRead(part))), fields);
    return Collections.unmodifiableMap(fields);
  }

  private static void flatten(String path, JsonNode node, Map<String, String> fields) {
    if (node.isObject()) {
      node.properties()
          .forEach(field -> flatten(
              path.isEmpty() ? field.getKey() : path + "." + field.getKey(),
              field.getValue(),
              fields));
    } else if (node.isArray()) {
      for (var i = 0; i < node.size(); i++) {
        flatten(path + "[" + i + "]", node.get(i), fields);
      }
    } else {
      fields.put(
          path,
          node.isNumber()
              ? node.decimalValue().stripTrailingZeros().toPlainString()
              : node.isBoolean() ? (node.booleanValue() ? "yes" : "no") : node.asString());
    }
  }

  private static void remove(ObjectNode record, String path) {
    JsonNode at = record;
    var steps = path.split("\\.", -1);
    for (var i = 0; i < steps.length; i++) {
      var bracket = steps[i].indexOf('[');
      var name = bracket < 0 ? steps[i] : steps[i].substring(0, bracket);
      if (i == steps.length - 1 && at instanceof ObjectNode object) {
        object.remove(name);
        return;
      }
      at = at.path(name);
      if (bracket >= 0) {
        at = at.path(Integer.parseInt(steps[i].substring(bracket + 1, steps[i].length() - 1)));
      }
    }
  }

  static JsonNode tree(String json) {
    return MAPPER
        .reader()
        .with(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .readTree(json);
  }

  /** Where each object of a file ends, by its path. */
  private static Map<String, Integer> ends(byte[] bytes) {
    var ends = new HashMap<String, Integer>();
    try (var parser = MAPPER.createParser(bytes)) {
      var paths = new ArrayDeque<String>();
      var indexes = new ArrayDeque<Integer>();
      for (var token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.END_OBJECT) {
          ends.put(paths.pop(), (int) parser.currentTokenLocation().getByteOffset());
          indexes.pop();
        } else if (token == JsonToken.END_ARRAY) {
          paths.pop();
          indexes.pop();
        } else if (token != JsonToken.PROPERTY_NAME) {
          var path = path(parser.streamReadContext(), token, paths, indexes);
          if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
            paths.push(path);
            indexes.push(0);
          }
        }
      }
    }
    return ends;
  }

  private static String path(
      TokenStreamContext context,
      JsonToken token,
      ArrayDeque<String> paths,
      ArrayDeque<Integer> indexes) {
    if (paths.isEmpty()) {
      return "";
    }
    var around = token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY
        ? context.getParent()
        : context;
    if (around.inObject()) {
      return paths.peek() + "." + around.currentName();
    }
    var index = indexes.pop();
    indexes.push(index + 1);
    return paths.peek() + "[" + index + "]";
  }

  /** What the second has more than the first, by where it goes. */
  private static void compare(
      JsonNode was,
      JsonNode is,
      String path,
      Map<String, Integer> ends,
      SortedMap<Integer, String> insertions) {
    if (was instanceof ObjectNode object) {
      var more = is.properties().stream()
          .filter(field -> !object.has(field.getKey()))
          .map(field -> "\"" + field.getKey() + "\": " + field.getValue())
          .collect(Collectors.joining(", "));
      var end = ends.get(path);
      if (!more.isEmpty() && end != null) {
        insertions.put(end, (object.isEmpty() ? "" : ", ") + more);
      }
      object
          .properties()
          .forEach(field -> compare(
              field.getValue(),
              is.path(field.getKey()),
              path + "." + field.getKey(),
              ends,
              insertions));
    } else if (was.isArray()) {
      for (var i = 0; i < was.size(); i++) {
        compare(was.get(i), is.path(i), path + "[" + i + "]", ends, insertions);
      }
    }
  }

  private static byte[] put(Source source, SortedMap<Integer, String> insertions) {
    var bytes = source.bytes();
    var filled = new ByteArrayOutputStream(bytes.length + 1024);
    var from = 0;
    for (var insertion : insertions.entrySet()) {
      filled.write(bytes, from, insertion.getKey() - from);
      filled.writeBytes(insertion.getValue().getBytes(UTF_8));
      from = insertion.getKey();
    }
    filled.write(bytes, from, bytes.length - from);
    return filled.toByteArray();
  }
}
