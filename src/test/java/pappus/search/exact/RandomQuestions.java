package pappus.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import pappus.catalog.Catalog;
import pappus.catalog.Kind;
import pappus.catalog.Part;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** Questions small enough to try every build, each different, at least half of them with an answer. */
public final class RandomQuestions {
  private static final Catalog ALL = SmallShop.all();

  /** Ways of flying and limits, each with a different thing that binds. */
  private static final List<String> LIMITS = List.of(
      "",
      ", \"budget\": {\"amount\": 170, \"currency\": \"EUR\"}",
      ", \"outlook\": \"cautious\"",
      ", \"payload\": {\"name\": \"seeds\", \"massGrams\": 12, \"watts\": 1.5, \"xMillimetres\": 20}",
      ", \"wants\": [\"gps\", \"buzzer\"]",
      ", \"transmitterMilliwatts\": 100, \"unknownFacts\": \"leave-out\"",
      ", \"pilot\": {\"video\": \"vellimar\", \"radio\": \"thrennel\", \"polarisation\": \"left\"}",
      ", \"pilot\": {\"video\": \"analogue\", \"radio\": \"callowhit\"}, \"waivers\": "
          + "[{\"rule\": \"propeller-clearance\", \"parts\": [\"thistledown-5\"], "
          + "\"reason\": \"We fly it so.\"}]");

  private static final List<String> STYLES = List.of(
      "{\"style\": \"hover\"}",
      "{\"style\": \"hover\"}",
      "{\"style\": \"loiter\"}",
      "{\"style\": \"cruise\", \"windMetresPerSecond\": 3}",
      "{\"style\": \"cruise\"}",
      "{\"style\": \"cruise\", \"windMetresPerSecond\": 5}, \"goal\": \"range\"",
      "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 11}, \"goal\": \"range\"",
      "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 9}");

  private RandomQuestions() {}

  /** A random handful of the shop's parts and a scenario, both fixed by the seed. */
  public static Question of(int seed) {
    var random = new Random(seed);
    var ids = new TreeSet<>(random.nextBoolean() ? SmallShop.ONE_BUILD : List.<String>of());
    ids.addAll(some(Kind.FRAME, 2, random));
    ids.addAll(some(Kind.MOTOR, 3, random));
    ids.addAll(some(Kind.PROPELLER, 3, random));
    ids.addAll(some(Kind.BATTERY, 3, random));
    ids.addAll(some(Kind.BOARD, 2, random));
    for (var kind : List.of(Kind.TRANSMITTER, Kind.CAMERA, Kind.RECEIVER, Kind.GPS, Kind.BUZZER)) {
      ids.addAll(some(kind, 1, random));
    }
    ids.addAll(some(Kind.ANTENNA, 2, random));
    ids.addAll(some(Kind.CAPACITOR, 2, random));
    ids.addAll(some(Kind.LEAD, 2, random));
    var catalog = SmallShop.catalog(List.copyOf(ids));
    var flying = STYLES.get(random.nextInt(STYLES.size()));
    var limits = LIMITS.get(random.nextInt(LIMITS.size()));
    return Question.of(catalog, SmallShop.assessor(catalog, SmallShop.flying(flying, limits)));
  }

  private static List<String> some(Kind kind, int count, Random random) {
    var parts = ALL.ofKind(kind);
    var ids = new ArrayList<String>();
    for (var i = 0; i < count; i++) {
      Part part = parts.get(random.nextInt(parts.size()));
      ids.add(part.id());
    }
    return ids;
  }
}
