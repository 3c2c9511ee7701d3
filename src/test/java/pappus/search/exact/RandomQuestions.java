package pappus.search.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.change.Asked;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.FrameOption;
import pappus.part.Kind;
import pappus.part.Lump;
import pappus.part.Motor;
import pappus.part.Motor.CirclesNeeded;
import pappus.part.OrderedFrames;
import pappus.part.OutputPower;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Polarisation;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.part.SmallThing;
import pappus.part.Transmitter;
import pappus.quantity.Money;
import pappus.scenario.AlsoBuy;
import pappus.scenario.Choice;
import pappus.scenario.OwnLine;
import pappus.scenario.Pilot;
import pappus.scenario.Prefer;
import pappus.scenario.Spare;
import pappus.search.Enumeration;
import pappus.search.Incumbents;
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
      "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 9}",
      """
      {"style": "profile", "legs": [
        {"metres": 300, "airspeedMetresPerSecond": 6, "headwindMetresPerSecond": 2},
        {"seconds": 40, "airspeedMetresPerSecond": 0, "headwindMetresPerSecond": 2},
        {"metres": 120, "crosswindMetresPerSecond": 2},
        {"seconds": 30}]}""",
      """
      {"style": "profile", "legs": [
        {"metres": 700, "headwindMetresPerSecond": 3},
        {"seconds": 20},
        {"seconds": 30, "airspeedMetresPerSecond": 13},
        {"metres": 400, "headwindMetresPerSecond": -4}]}, "goal": "range\"""",
      """
      {"style": "profile", "legs": [
        {"metres": 900, "headwindMetresPerSecond": 5},
        {"metres": 900, "headwindMetresPerSecond": -5, "crosswindMetresPerSecond": 1},
        {"seconds": 15, "airspeedMetresPerSecond": 0}]}""");

  /** From this seed on the same is flown with a leg that lasts as long as possible. */
  public static final int STAYS = 10_000;

  private static final List<String> STAYING = List.of("""
      {"style": "profile", "legs": [
        {"metres": 500, "headwindMetresPerSecond": 3},
        {"asLongAsPossible": true, "airspeedMetresPerSecond": 0, "headwindMetresPerSecond": 3, "back": true}]}""", """
      {"style": "profile", "legs": [
        {"metres": 800, "airspeedMetresPerSecond": 9, "headwindMetresPerSecond": -4},
        {"seconds": 30},
        {"asLongAsPossible": true, "back": true},
        {"seconds": 60, "airspeedMetresPerSecond": 0}]}""", """
      {"style": "profile", "legs": [
        {"seconds": 60},
        {"asLongAsPossible": true, "airspeedMetresPerSecond": 9, "crosswindMetresPerSecond": 2},
        {"metres": 900, "headwindMetresPerSecond": 2}]}, "goal": "range\"""", """
      {"style": "profile", "legs": [
        {"asLongAsPossible": true},
        {"metres": 2500, "headwindMetresPerSecond": 5}]}""", """
      {"style": "profile", "legs": [
        {"metres": 3500},
        {"asLongAsPossible": true, "back": true}]}""", """
      {"style": "profile", "legs": [{"asLongAsPossible": true, "airspeedMetresPerSecond": 6}]}""");

  private static final Map<Integer, Question> QUESTIONS = new HashMap<>();
  private static final Map<Question, Catalog> CATALOGS = new HashMap<>();
  private static final Map<Integer, List<Assessment>> FEASIBLE = new HashMap<>();

  private RandomQuestions() {}

  /** A random handful of the shop's parts and a scenario, both fixed by the seed; made once a process. */
  public static synchronized Question of(int seed) {
    return QUESTIONS.computeIfAbsent(seed, RandomQuestions::draw);
  }

  /** That question with a lump in the place of some parts. */
  static Question lumped(int seed) {
    var plain = of(seed);
    var random = new Random(17L * seed + 3);
    var fills = LUMPED.get(random.nextInt(LUMPED.size()));
    var lump =
        new Lump("wired", 2 + 10 * random.nextDouble(), 3 * random.nextDouble(), null, fills);
    var supply = new Supply(Catalog.of(withHardware(parts(plain))), Shelf.EMPTY);
    return Question.of(
        supply.catalog(),
        supply.assessor(
            Parts.with(Parts.with(plain.assessor().scenario(), "lump", lump), "budget", null)));
  }

  private static final List<List<Role>> LUMPED = List.of(
      List.of(Role.BOARD),
      List.of(Role.BOARD, Role.RECEIVER, Role.RADIO_ANTENNA),
      List.of(Role.TRANSMITTER, Role.CAMERA, Role.VIDEO_ANTENNA),
      List.of(Role.CAPACITOR),
      List.of(Role.TRANSMITTER),
      Role.ACCESSORIES);

  private static Map<String, Part> parts(Question question) {
    var parts = new TreeMap<String, Part>();
    for (var role : Role.values()) {
      question.options(role).forEach(part -> {
        parts.put(part.id(), part);
        question.twins(part).forEach(twin -> parts.put(twin.id(), twin));
      });
    }
    return parts;
  }

  private static List<Part> withHardware(Map<String, Part> parts) {
    var all = new ArrayList<>(parts.values());
    ALL.parts().stream()
        .filter(part -> part.fills().isEmpty() && part.kind() != Kind.ANTENNA)
        .forEach(all::add);
    return all;
  }

  /** That question with some pieces of some parts at hand, and those preferred. */
  static Question owning(int seed) {
    return preferring(seed).question();
  }

  /** What that question asks, of which parts. */
  static Asked preferring(int seed) {
    var plain = of(seed);
    var random = new Random(37L * seed + 11);
    var parts = parts(plain);
    var shelf = new ArrayList<ShelfEntry>();
    var owned = new ArrayList<String>();
    for (var part : parts.values()) {
      if (random.nextInt(3) == 0) {
        shelf.add(new ShelfEntry(part.id(), random.nextInt(7), null, null, null));
      }
      if (random.nextInt(6) == 0) {
        owned.add(part.id());
      }
    }
    var scenario = plain.assessor().scenario();
    var choice = scenario.partsOrAny();
    scenario = Parts.with(
        scenario, "parts", new Choice(choice.fixed(), choice.allowed(), choice.excluded(), owned));
    var supply = new Supply(Catalog.of(withHardware(parts)), Shelf.of(shelf));
    return new Asked(Parts.with(scenario, "prefer", Prefer.OWNED), supply);
  }

  /**
   * That question with packs, spares and lines of its own that count against a budget which only some builds keep, and
   * some pieces of some parts at hand.
   */
  static Question buyingBeside(int seed) {
    var plain = of(seed);
    var random = new Random(31L * seed + 7);
    var spares = new ArrayList<Spare>();
    for (var role : Role.values()) {
      if (role != Role.BATTERY && random.nextInt(3) == 0) {
        spares.add(
            random.nextBoolean()
                ? Spare.pieces(role, 1 + random.nextInt(6))
                : new Spare(role, null, null, 1 + random.nextInt(3)));
      }
    }
    for (var small : SmallThing.values()) {
      if (random.nextInt(3) == 0) {
        spares.add(new Spare(null, small, 1 + random.nextInt(20), null));
      }
    }
    var also = new AlsoBuy(
        1 + random.nextInt(4),
        spares,
        List.of(new OwnLine("charger", Money.ofCents(random.nextInt(5000), "EUR"))),
        true);
    var parts = parts(plain);
    var shelf = new ArrayList<ShelfEntry>();
    var owned = new ArrayList<String>();
    for (var part : parts.values()) {
      if (random.nextInt(4) == 0) {
        shelf.add(new ShelfEntry(part.id(), random.nextInt(7), null, null, null));
      }
      if (random.nextInt(8) == 0) {
        owned.add(part.id());
      }
    }
    var scenario = plain.assessor().scenario();
    var choice = scenario.partsOrAny();
    scenario = Parts.with(
        scenario, "parts", new Choice(choice.fixed(), choice.allowed(), choice.excluded(), owned));
    scenario = Parts.with(Parts.with(scenario, "alsoBuy", also), "budget", null);
    var supply = new Supply(Catalog.of(withHardware(parts)), Shelf.of(shelf));
    var open = Question.of(supply.catalog(), supply.assessor(scenario));
    var prices = Enumeration.feasible(open).stream()
        .mapToLong(build -> build.cost().cents())
        .sorted()
        .toArray();
    if (prices.length == 0) {
      return open;
    }
    var budget = Money.ofCents(prices[random.nextInt(1 + prices.length / 2)], "EUR");
    return Question.of(supply.catalog(), supply.assessor(Parts.with(scenario, "budget", budget)));
  }

  /**
   * That question with more to send and to hear with, some of which draws less the more it sends, and a reach that only
   * some builds have; of three, two leave the power to the reach.
   */
  static Question reaching(int seed) {
    var plain = of(seed);
    var random = new Random(41L * seed + 13);
    var parts = parts(plain);
    some(Kind.ANTENNA, 3, random).forEach(id -> parts.put(id, ALL.part(id).orElseThrow()));
    some(Kind.TRANSMITTER, 1, random).forEach(id -> parts.put(id, ALL.part(id).orElseThrow()));
    parts.replaceAll((id, part) -> part instanceof Transmitter sender && random.nextInt(4) == 0
        ? Parts.with(
            sender,
            "powers",
            sender.powers().stream()
                .map(power -> new OutputPower(
                    power.milliwatts(), 9 + random.nextInt(4), power.milliwatts() / 2))
                .toList())
        : part);
    var scenario = plain.assessor().scenario();
    var pilot = scenario.pilotOrAny();
    scenario = Parts.with(
        scenario,
        "pilot",
        new Pilot(
            pilot.video(),
            pilot.radio(),
            List.of(Polarisation.values()).get(random.nextInt(3)),
            random.nextInt(9) - 1.0,
            null,
            null,
            random.nextBoolean() ? 25.0 : 500.0,
            null));
    var reach = List.of(60.0, 110.0, 180.0, 300.0, 500.0, 800.0, 1300.0, 2200.0);
    scenario = Parts.with(scenario, "reachMetres", reach.get(random.nextInt(reach.size())));
    scenario = Parts.with(
        scenario, "transmitterMilliwatts", random.nextInt(3) == 0 ? Double.valueOf(100) : null);
    var supply = new Supply(Catalog.of(withHardware(parts)), Shelf.EMPTY);
    return Question.of(supply.catalog(), supply.assessor(scenario));
  }

  /** The parts of that question, those that its scenario leaves out among them. */
  public static synchronized Catalog catalog(int seed) {
    return Objects.requireNonNull(CATALOGS.get(of(seed)));
  }

  /** Every feasible build of that question, tried once a process. */
  public static synchronized List<Assessment> feasible(int seed) {
    return FEASIBLE.computeIfAbsent(seed, fresh -> Enumeration.feasible(of(fresh)));
  }

  /** As incumbents keep them. */
  public static Incumbents tried(int seed) {
    var incumbents = new Incumbents();
    feasible(seed).forEach(incumbents::offer);
    return incumbents;
  }

  private static Question draw(int seed) {
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
    var catalog = shaped(SmallShop.catalog(List.copyOf(ids)), new Random(-seed));
    var styles = seed < STAYS ? STYLES : STAYING;
    var flying = styles.get(random.nextInt(styles.size()));
    var limits = LIMITS.get(random.nextInt(LIMITS.size()));
    if (random.nextInt(3) == 0) {
      limits += ", \"candidatesDifferIn\": 1";
    }
    // Drawn apart, so that what else is asked stays as it was.
    var view = new Random(43L * seed + 5);
    if (view.nextInt(5) == 0) {
      limits += ", \"clearViewDegrees\": " + (40 + view.nextInt(60));
    }
    return switch (random.nextInt(4)) {
      case 0 -> question(withDoubles(catalog, random), flying, limits);
      case 1 -> question(withLowPlates(catalog, random), flying, limits);
      case 2 -> withTightBudget(question(catalog, flying, limits), catalog, flying, limits, random);
      default -> question(drilledAnew(catalog, random), flying, limits);
    };
  }

  private static Question question(Catalog catalog, String flying, String limits) {
    var question =
        Question.of(catalog, SmallShop.assessor(catalog, SmallShop.flying(flying, limits)));
    CATALOGS.put(question, catalog);
    return question;
  }

  /** Some frames are tall and broad, so that their drag area is what is seen of them; of some nothing is known. */
  private static Catalog shaped(Catalog catalog, Random random) {
    var parts = new ArrayList<Part>();
    for (var part : catalog.parts()) {
      var shape = random.nextInt(6);
      if (part instanceof Frame frame && shape < 3) {
        var unstated = Parts.with(frame, "dragAreaSquareMetres", null);
        parts.add(
            shape == 2
                ? Parts.with(unstated, "armWidthMillimetres", null)
                : Parts.with(
                    Parts.with(
                        unstated,
                        "armWidthMillimetres",
                        new Frame.ArmWidth(15 + random.nextInt(10), 12 + random.nextInt(5))),
                    "heights",
                    frame.heights().stream()
                        .map(height ->
                            new Frame.PlateHeight(height.millimetres() + 30, height.addedGrams()))
                        .toList()));
      } else {
        parts.add(part);
      }
    }
    return Catalog.of(ordered(parts, random));
  }

  /** Of some frames a lighter plate can be had for money, and of some a height costs more. */
  private static List<Part> ordered(List<Part> parts, Random random) {
    var all = new ArrayList<Part>();
    for (var part : parts) {
      if (part instanceof Frame frame && random.nextInt(4) == 0) {
        var money = Money.ofCents(100 + random.nextInt(900), frame.price().currency());
        var option = new FrameOption("lite", "lite plate", -1 - random.nextInt(6), money);
        var heights = new ArrayList<>(frame.heights());
        if (!heights.isEmpty() && random.nextBoolean()) {
          var last = heights.remove(heights.size() - 1);
          heights.add(new Frame.PlateHeight(last.millimetres(), last.addedGrams() - 3, money));
        }
        all.addAll(OrderedFrames.of(
            Parts.with(Parts.with(frame, "options", List.of(option)), "heights", heights)));
      } else {
        all.add(part);
      }
    }
    return all;
  }

  /** A twin of one part; a part that ties with another in flight but not in price; and one that ties in both. */
  private static Catalog withDoubles(Catalog catalog, Random random) {
    var parts = new ArrayList<>(catalog.parts());
    parts.add(renamed(one(Kind.MOTOR, catalog, random), "-twin"));
    var propeller = (Propeller) one(Kind.PROPELLER, catalog, random);
    var dearer = Money.ofCents(propeller.price().cents() + 50, propeller.price().currency());
    parts.add(renamed(Parts.with(propeller, "price", dearer), "-dearer"));
    var battery = (Battery) one(Kind.BATTERY, catalog, random);
    parts.add(renamed(
        Parts.with(battery, "widthMillimetres", battery.widthMillimetres() + 0.5), "-wider"));
    return Catalog.of(parts);
  }

  private static Part one(Kind kind, Catalog catalog, Random random) {
    var parts = catalog.ofKind(kind);
    return parts.get(random.nextInt(parts.size()));
  }

  private static Part renamed(Part part, String suffix) {
    return (Part) Parts.with((Record) part, "id", part.id() + suffix);
  }

  /**
   * Plates so near each other that some stacks stand no longer between them, on standoffs that take much off what the
   * frame weighs as listed.
   */
  private static Catalog withLowPlates(Catalog catalog, Random random) {
    var parts = new ArrayList<Part>();
    for (var part : catalog.parts()) {
      if (part instanceof Frame frame) {
        var lower = random.nextInt(8);
        parts.add(Parts.with(
            frame,
            "heights",
            frame.heights().stream()
                .map(height -> new Frame.PlateHeight(
                    Math.max(8, height.millimetres() - lower),
                    height.addedGrams() - random.nextInt(9)))
                .toList()));
      } else {
        parts.add(part);
      }
    }
    return Catalog.of(parts);
  }

  /** Motors with a second bolt circle, which some need and some do not. */
  private static Catalog drilledAnew(Catalog catalog, Random random) {
    var parts = new ArrayList<Part>();
    for (var part : catalog.parts()) {
      var second = List.of(9.0, 12.0, 16.0, 25.0).get(random.nextInt(4));
      if (part instanceof Motor motor
          && motor.boltCirclesMillimetres().size() == 1
          && !motor.boltCirclesMillimetres().contains(second)
          && random.nextBoolean()) {
        var needed = random.nextInt(3) == 0 ? CirclesNeeded.BOTH : CirclesNeeded.EITHER;
        parts.add(Parts.drilled(motor, needed, motor.boltCirclesMillimetres().get(0), second));
      } else {
        parts.add(part);
      }
    }
    return Catalog.of(parts);
  }

  /** The same with so little money that only some of its builds can be had. */
  private static Question withTightBudget(
      Question question, Catalog catalog, String flying, String limits, Random random) {
    var incumbents = new Incumbents();
    Enumeration.feasible(question).forEach(incumbents::offer);
    var found = incumbents.bestFirst();
    if (found.isEmpty() || limits.contains("budget")) {
      return question;
    }
    var cost = Money.ofCents(found.get(random.nextInt(found.size())).cost().cents(), "EUR");
    return question(
        catalog,
        flying,
        limits
            + ", \"budget\": {\"amount\": %s, \"currency\": \"%s\"}"
                .formatted(cost.amount(), cost.currency()));
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
