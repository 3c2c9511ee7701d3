package pappus.order;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import pappus.catalog.CatalogFolder;
import pappus.files.json.JsonText;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.shop.SmallShop;

/** Orders from a handful of parts, small enough to try everything. */
public final class SmallOrders {
  /** Kinds of which a random handful has more than the small shop. */
  private static final List<Kind> MORE =
      List.of(Kind.FRAME, Kind.MOTOR, Kind.PROPELLER, Kind.BATTERY);

  private SmallOrders() {}

  /** Reads an order as it stands in a text, with a scenario {@code marsh.json} and the parts of the small shop. */
  public static OrderInputs read(Path folder, String order) {
    return read(folder, order, SmallShop.few().parts().stream().map(Part::id).toList());
  }

  /** The same with parts of some ids. */
  public static OrderInputs read(Path folder, String order, List<String> ids) {
    try {
      SmallShop.write(folder.resolve("parts"), SmallShop.catalog(ids));
      Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(""));
      Files.writeString(
          folder.resolve("fen.json"),
          SmallShop.scenarioText("")
              .replace("marsh", "fen")
              .replace("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": 2.6"));
      return OrderReader.read(
          Files.writeString(folder.resolve("order.json"), order),
          List.of(CatalogFolder.of(folder.resolve("parts"))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** An order of two groups from a shop with postage, with spares for both and a camera left over; its stock is written beside it. */
  public static String forTwo(Path folder) throws IOException {
    var stock = new StringBuilder("id,stock\n");
    for (var part : SmallShop.few().parts()) {
      if (!part.kind().isSmall()) {
        stock.append(part.id()).append(part.kind() == Kind.MOTOR ? ",20\n" : ",6\n");
      }
    }
    Files.writeString(folder.resolve("stock.csv"), stock.toString());
    return """
        {"name": "fens", "note": "Three learners of one shop.", "budget": 900,
         "groups": [{"name": "one", "scenario": "marsh.json", "pieces": 2},
                    {"name": "two", "scenario": "fen.json", "pieces": 1}],
         "shops": [{"name": "reed", "stock": "stock.csv", "postage": 7}],
         "leftovers": [{"part": "newteye-14-feather", "pieces": 1}],
         "spares": [{"role": "motor", "pieces": 1}, {"role": "propeller", "units": 1}]}""";
  }

  /** A random order of two or three learners, from some six parts a kind of which there are few. */
  public static OrderInputs random(Path folder, int seed) throws IOException {
    var random = new Random(seed);
    var ids = new TreeSet<>(SmallShop.few().parts().stream()
        .filter(part -> !part.kind().isSmall())
        .map(Part::id)
        .toList());
    for (var kind : MORE) {
      var all = SmallShop.all().ofKind(kind);
      for (var more = 0; more < 2; more++) {
        ids.add(all.get(random.nextInt(all.size())).id());
      }
    }
    var stock = new StringBuilder("id,stock\n");
    for (var id : ids) {
      var part = SmallShop.all().part(id).orElseThrow();
      // For one quad at least: most orders are to have a build for each.
      var least = part.kind() == Kind.MOTOR || part.kind() == Kind.PROPELLER ? 4 : 1;
      var units = part.sold().unitsFor(least) + random.nextInt(part.kind() == Kind.MOTOR ? 8 : 3);
      stock.append(id).append(',').append(units).append('\n');
    }
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("stock.csv"), stock.toString());
    var postage = random.nextBoolean() ? ", \"postage\": 7, \"freeFrom\": 300" : "";
    var spares = List.of(
        "",
        ", \"spares\": [{\"role\": \"propeller\", \"units\": 1}]",
        ", \"spares\": [{\"role\": \"motor\", \"pieces\": 1}, {\"role\": \"battery\", \"units\": 1, \"perBuilds\": 2}]");
    var learners = 1 + random.nextInt(2);
    return read(
        folder,
        """
        {"name": "fens", "budget": %s, "giveUp": 0,
         "groups": [{"name": "one", "scenario": "marsh.json", "pieces": %s},
                    {"name": "two", "scenario": "fen.json", "pieces": 1}],
         "shops": [{"name": "reed", "stock": "stock.csv"%s}]%s, "aim": %s}""".formatted(
                (learners + 1) * (160 + random.nextInt(80)),
                learners,
                postage,
                spares.get(random.nextInt(spares.size())),
                JsonText.compact(random.nextBoolean() ? "worst" : "total")),
        new ArrayList<>(ids));
  }
}
