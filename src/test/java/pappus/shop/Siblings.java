package pappus.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Catalogues of any size for measuring: parts of the shipped one with their numbers moved a little, each kind as many,
 * or copies under other names. Small hardware stays as it is. The same seed gives the same files.
 */
public final class Siblings {
  private static final ObjectMapper JSON = JsonMapper.shared();

  /** Kinds of which there are as many as asked for, by file. */
  private static final List<String> GROWING = List.of(
      "frames",
      "motors",
      "propellers",
      "batteries",
      "boards",
      "transmitters",
      "cameras",
      "receivers",
      "antennas",
      "gps",
      "buzzers",
      "payload-cameras",
      "capacitors",
      "leads");

  /** How far the logarithm of a number moves at most. */
  private static final Map<String, Double> MOVES = Map.ofEntries(
      Map.entry("grams", 0.10),
      Map.entry("frontSpacingMillimetres", 0.03),
      Map.entry("sideSpacingMillimetres", 0.03),
      Map.entry("speedConstantRpmPerVolt", 0.10),
      Map.entry("resistanceMilliohms", 0.10),
      Map.entry("noLoadCurrentAmps", 0.15),
      Map.entry("pitchInches", 0.08),
      Map.entry("powerCoefficient", 0.02),
      Map.entry("capacityMilliampHours", 0.06),
      Map.entry("milliohmsPerCell", 0.12),
      Map.entry("lengthMillimetres", 0.04),
      Map.entry("widthMillimetres", 0.04),
      Map.entry("watts", 0.10),
      Map.entry("controllerLoss", 0.05));

  private Siblings() {}

  /**
   * Writes a catalogue.
   *
   * @param args folder to write into, parts of each kind, seed, and "copies" for copies under other names
   */
  public static void main(String[] args) throws IOException {
    write(
        Path.of(args[0]),
        Integer.parseInt(args[1]),
        Long.parseLong(args[2]),
        args.length > 3 && args[3].equals("copies"));
  }

  /**
   * Writes a catalogue.
   *
   * @param count parts of each kind that grows
   * @param copies whether nothing but ids and names differs
   */
  public static void write(Path folder, int count, long seed, boolean copies) throws IOException {
    Files.createDirectories(folder);
    try (var files = Files.list(Path.of("catalog"))) {
      for (var file : files.sorted().toList()) {
        var name = file.getFileName().toString();
        var kind = name.replace(".json", "");
        if (GROWING.contains(kind)) {
          Files.writeString(
              folder.resolve(name),
              grown(file, count, new Random(seed * 31 + kind.hashCode()), copies));
        } else if (name.endsWith(".json")) {
          Files.copy(file, folder.resolve(name));
        }
      }
    }
  }

  private static String grown(Path file, int count, Random random, boolean copies)
      throws IOException {
    var text = Files.readString(file);
    var kind = file.getFileName().toString().replace(".json", "");
    var shipped = (ArrayNode) JSON.readTree(text).get(kind);
    var grown = JSON.createArrayNode();
    for (var i = 0; i < count; i++) {
      var part = (ObjectNode) shipped.get(i % shipped.size()).deepCopy();
      var round = i / shipped.size();
      if (round > 0) {
        part.put("id", part.get("id").asString() + "-v" + round);
        part.put("name", part.get("name").asString() + " V" + round);
        if (!copies) {
          move(part, random);
        }
      }
      grown.add(part);
    }
    var whole = JSON.createObjectNode();
    whole.set(kind, grown);
    return JSON.writeValueAsString(whole);
  }

  private static void move(ObjectNode part, Random random) {
    var price = (ObjectNode) part.get("price");
    price.put(
        "amount",
        StrictMath.rint(price.get("amount").asDouble() * (0.85 + 0.3 * random.nextDouble()) * 100)
            / 100);
    // It follows from the spacings.
    part.remove("diagonalMillimetres");
    part.remove("deliveredMilliampHours");
    // Nobody measured what was moved.
    if (part.has("figures")) {
      part.put("figures", "estimated");
    }
    moveAll(part, random);
  }

  private static void moveAll(JsonNode node, Random random) {
    if (node instanceof ArrayNode list) {
      list.forEach(one -> moveAll(one, random));
    } else if (node instanceof ObjectNode object) {
      for (var name : List.copyOf(object.propertyNames())) {
        var most = MOVES.get(name);
        var value = object.get(name);
        if (most != null && value.isNumber()) {
          // More power at the same thrust is always possible, less is not.
          var by =
              name.equals("powerCoefficient") ? random.nextDouble() : 2 * random.nextDouble() - 1;
          var moved = value.asDouble() * StrictMath.exp(most * by);
          object.put(name, StrictMath.rint(moved * 10_000) / 10_000);
        } else {
          moveAll(value, random);
        }
      }
    }
  }
}
