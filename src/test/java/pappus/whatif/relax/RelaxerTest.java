package pappus.whatif.relax;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.change.Asked;
import pappus.change.Asking;
import pappus.part.Build;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.physics.airframe.MassChance;
import pappus.ranking.Finder;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.shop.SmallShop;

/** What stands in the way against trying every build. */
@Tag("slow")
class RelaxerTest {
  private static final double NO_CAP = 25_000;

  /** Numbers of all builds that go together, with nothing asked for but that they hover. */
  private static final List<Assessment> HOVERING = Asking.together(SmallShop.scenario(""));

  private static final double DEVIATIONS = MassChance.deviationsFor(0.95);

  private static boolean keeps(Assessment build, double grams, double thrust, double budget) {
    return build.mass().neededMilligrams(DEVIATIONS) < Math.round(grams * 1000)
        && build.flight().orElseThrow().thrustToWeight() >= thrust
        && build.cost().cents() <= Math.round(budget * 100);
  }

  private static Optional<Assessment> best(double grams, double thrust, double budget) {
    return HOVERING.stream()
        .filter(build -> keeps(build, grams, thrust, budget))
        .max(Comparator.comparingLong(Assessment::objective));
  }

  private static boolean isAny(double grams, double thrust, double budget) {
    return best(grams, thrust, budget).isPresent();
  }

  @Test
  void aFeasibleScenarioHasItsBestBuildAlone() {
    var relaxation = Asking.relax(SmallShop.scenario(""));

    assertThat(relaxation.best().build().map(Assessment::build))
        .isEqualTo(Asking.best(SmallShop.scenario("")).map(Assessment::build))
        .isPresent();
    assertThat(relaxation.conflict()).isEmpty();
    assertThat(relaxation.reliefs()).isEmpty();
    assertThat(relaxation.together()).isEmpty();
    assertThat(relaxation.clashes()).isEmpty();
    assertThat(relaxation.isProof()).isTrue();
    assertThat(relaxation.searches()).isEqualTo(1);
    assertThat(relaxation.helps()).isTrue();
  }

  /** Three limits drawn at random, with all that is said of them against the numbers of all builds. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7})
  void limitsInConflictAndTheirSmallestChangesAreThoseOfAllBuilds(int seed) {
    var random = new Random(seed);
    double grams;
    double thrust;
    double budget;
    do {
      grams = 185 + random.nextInt(300) / 10.0;
      thrust = 1.9 + random.nextInt(80) / 100.0;
      budget = 170 + random.nextInt(600) / 10.0;
    } while (isAny(grams, thrust, budget));
    var relaxation = Asking.relax(Asking.hover(grams, thrust, Asking.budget(budget)));

    assertThat(relaxation.best().build()).isEmpty();
    assertThat(relaxation.isProof()).isTrue();
    var conflict = new TreeSet<>(Asking.ids(relaxation.conflict()));
    assertThat(minimalConflicts(grams, thrust, budget)).contains(conflict);
    var expected = new LinkedHashMap<String, Assessment>();
    for (var id : Asking.ids(relaxation.conflict())) {
      switch (id) {
        case "mass-cap" -> expected.putAll(leastCap(grams, thrust, budget));
        case "thrust-to-weight" -> expected.putAll(mostThrust(grams, thrust, budget));
        default -> expected.putAll(leastBudget(grams, thrust, budget));
      }
    }
    var told = new LinkedHashMap<String, Assessment>();
    for (var relief : relaxation.reliefs()) {
      assertThat(relief.isLeast()).isTrue();
      if (!relief.demand().id().equals("confidence")) {
        told.put(relief.demand().id() + " " + relief.to(), relief.build());
      }
    }
    assertThat(builds(told)).isEqualTo(builds(expected));
    assertThat(told.values()).allMatch(Assessment::isFeasible);
  }

  private static Map<String, Build> builds(Map<String, Assessment> assessments) {
    var builds = new LinkedHashMap<String, Build>();
    assessments.forEach((change, assessment) -> builds.put(change, assessment.build()));
    return builds;
  }

  /** Every set of limits that leaves no build, but does without any one of its limits. */
  private static List<Set<String>> minimalConflicts(double grams, double thrust, double budget) {
    var ids = List.of("budget", "thrust-to-weight", "mass-cap");
    var minimal = new ArrayList<Set<String>>();
    for (var bits = 1; bits < 8; bits++) {
      if (isAny(bits, grams, thrust, budget)) {
        continue;
      }
      var isMinimal = true;
      var set = new TreeSet<String>();
      for (var i = 0; i < 3; i++) {
        if ((bits & 1 << i) != 0) {
          set.add(ids.get(i));
          isMinimal &= isAny(bits & ~(1 << i), grams, thrust, budget);
        }
      }
      if (isMinimal) {
        minimal.add(set);
      }
    }
    return minimal;
  }

  private static boolean isAny(int bits, double grams, double thrust, double budget) {
    return isAny(
        (bits & 4) == 0 ? NO_CAP : grams,
        (bits & 2) == 0 ? 1 : thrust,
        (bits & 1) == 0 ? 1e5 : budget);
  }

  private static Map<String, Assessment> leastCap(double grams, double thrust, double budget) {
    for (var tenths = 1; tenths < 1000; tenths++) {
      var value = Math.round(grams * 10 + tenths) / 10.0;
      var found = best(value, thrust, budget);
      if (found.isPresent()) {
        return Map.of("mass-cap " + plain(value) + " g", found.get());
      }
    }
    return Map.of();
  }

  private static Map<String, Assessment> mostThrust(double grams, double thrust, double budget) {
    for (var hundredths = Math.round(thrust * 100) - 1; hundredths >= 100; hundredths--) {
      var found = best(grams, hundredths / 100.0, budget);
      if (found.isPresent()) {
        return Map.of("thrust-to-weight " + plain(hundredths / 100.0), found.get());
      }
    }
    return Map.of();
  }

  private static Map<String, Assessment> leastBudget(double grams, double thrust, double budget) {
    for (var euros = 1; euros < 1000; euros++) {
      var value = Math.round(budget * 10 + 10 * euros) / 10.0;
      var found = best(grams, thrust, value);
      if (found.isPresent()) {
        return Map.of("budget " + plain(value) + " EUR", found.get());
      }
    }
    return Map.of();
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
  }

  /** By hand: the lightest build needs 190.563 g, the next 190.663 g. */
  @ParameterizedTest
  @CsvSource({
    "190,     true,  190 g,     190.6 g",
    "190,     false, 190 g,     190.6 g",
    "190.463, false, 190.463 g, 190.563 g",
    "190.463, true,  190.463 g, 190.663 g",
    "190.462, false, 190.462 g, 190.662 g",
    "190.464, true,  190.464 g, 190.564 g",
    "20,      true,  20 g,      190.6 g"
  })
  void aStrictCapNeedsAMilligramMore(double grams, boolean strict, String from, String to) {
    assertThat(HOVERING.stream().mapToLong(build -> build.mass().neededMilligrams(DEVIATIONS)))
        .contains(190_563L)
        .allMatch(needed -> needed >= 190_563);
    var scenario =
        with(SmallShop.scenario(""), "massCap", new MassCap(grams, strict, "a law", null));

    var relaxation = Asking.relax(scenario);

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("mass-cap");
    assertThat(Asking.changes(relaxation).get(0)).isEqualTo("mass-cap " + from + " " + to);
  }

  @ParameterizedTest
  @CsvSource({"190, 0.95", "188.3, 0.99", "188.3, 0.975", "188.15, 0.52", "188.11, 0.505"})
  void lessConfidenceIsAChangeOfItsOwnWhereTheCapIsInTheWay(double grams, double confidence) {
    var cap = new MassCap(grams, true, "a law", confidence);
    var relaxation = Asking.relax(with(SmallShop.scenario(""), "massCap", cap));

    var expected = "";
    for (var step = 1; expected.isEmpty() && step <= 50; step++) {
      var less = Math.max(0.5, Math.round(1000 * confidence - 10 * step) / 1000.0);
      var deviations = MassChance.deviationsFor(less);
      if (HOVERING.stream()
          .filter(build -> build.flight().orElseThrow().thrustToWeight() >= 2)
          .anyMatch(
              build -> build.mass().neededMilligrams(deviations) < Math.round(grams * 1000))) {
        expected = "confidence " + plain(confidence) + " " + plain(less);
      }
    }
    assertThat(expected).isNotEmpty();
    assertThat(Asking.changes(relaxation)).hasSize(2).last().isEqualTo(expected);
  }

  @Test
  void confidenceIsNotSpokenOfWhereTheCapIsNotInTheWayOrNoneHelps() {
    assertThat(Asking.changes(Asking.relax(Asking.hover(250, 3, ""))))
        .containsExactly("thrust-to-weight 3 2.6");
    // The lightest build weighs 188.1 g.
    assertThat(Asking.changes(Asking.relax(Asking.hover(188, 2, ""))))
        .containsExactly("mass-cap 188 g 190.6 g");
  }

  /** Each of two demands needed for a conflict; the names are those of parts, the best build that of trying each. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      "fixed": ["thistledown-5"]                                                                  | fixed-thistledown-5     | take another part than thistledown-5
      "excluded": ["cottongrass-4"]                                                               | excluded-cottongrass-4  | take cottongrass-4 too
      "allowed": [{"role": "motor", "parts": ["cypsela-1404-2800"]}]                              | allowed-motor           | take any motor
      "allowed": [{"role": "frame", "parts": ["thistledown-5"]}], "excluded": ["frond-4.5x3.2x3"] | allowed-frame           | take any frame
      """, quoteCharacter = '\'')
  void aChoiceOfPartsIsInConflictWithTheCap(String choice, String id, String givenUp) {
    var scenario = Asking.hover(195, 2, ", \"parts\": {" + choice + "}");
    assertThat(Asking.best(scenario)).isEmpty();
    var uncapped = Asking.hover(NO_CAP, 1, ", \"parts\": {" + choice + "}");
    var least = Asking.together(uncapped).stream()
        .filter(build -> build.flight().orElseThrow().thrustToWeight() >= 2)
        .mapToLong(build -> build.mass().neededMilligrams(DEVIATIONS))
        .min()
        .orElseThrow();

    var relaxation = Asking.relax(scenario);

    assertThat(Asking.ids(relaxation.conflict())).containsExactly(id, "mass-cap");
    assertThat(relaxation.conflict().get(0).givenUp()).isEqualTo(givenUp);
    // Strict: one milligram more, then up to the next tenth of a gram.
    assertThat(Asking.changes(relaxation))
        .startsWith(id, "mass-cap 195 g " + plain((least / 100 + 1) / 10.0) + " g");
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(best(195, 2, 1e5).orElseThrow().build());
  }

  @Test
  void partsLeftOutOfARoleAltogetherAreInConflictTogether() {
    var scenario =
        Asking.hover(250, 2, ", \"parts\": {\"excluded\": [\"cottongrass-4\", \"thistledown-5\"]}");

    var relaxation = Asking.relax(scenario);

    assertThat(Asking.ids(relaxation.conflict()))
        .containsExactly("excluded-cottongrass-4", "excluded-thistledown-5");
    assertThat(Asking.changes(relaxation))
        .containsExactly("excluded-cottongrass-4", "excluded-thistledown-5");
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(
            Asking.best(Asking.hover(250, 2, ", \"parts\": {\"excluded\": [\"thistledown-5\"]}"))
                .orElseThrow()
                .build());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', textBlock = """
      "wants": ["gps"]                                         | wants-gps
      "pilot": {"video": "lumfret"}                            | pilot-video
      "pilot": {"radio": "callowhit"}                          | pilot-radio
      "pilot": {"video": "analogue", "radio": "callowhit"}     | pilot-radio
      """, quoteCharacter = '\'')
  void whatNoPartOfTheCatalogueDoesIsInTheWayAlone(String field, String id) {
    var relaxation = Asking.relax(Asking.hover(250, 2, ", " + field));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly(id);
    assertThat(Asking.changes(relaxation)).containsExactly(id);
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(Asking.best(Asking.hover(250, 2, "")).orElseThrow().build());
  }

  @Test
  void partsOfWhichNotEnoughIsKnownCanBeKept() {
    var parts = new ArrayList<Part>();
    for (var part : Asking.FEW.parts()) {
      parts.add(
          part instanceof Frame frame
              ? with(frame, "motorBoltCirclesMillimetres", List.of())
              : part);
    }
    var catalog = Catalog.of(parts);
    var leftOut = SmallShop.scenario(", \"unknownFacts\": \"leave-out\"");

    var relaxation = Asking.relax(Asking.asked(leftOut, catalog));

    assertThat(Asking.best(Asking.asked(leftOut, catalog))).isEmpty();
    assertThat(Asking.ids(relaxation.conflict())).containsExactly("unknown-facts");
    assertThat(Asking.changes(relaxation)).containsExactly("unknown-facts");
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(Asking.best(Asking.asked(SmallShop.scenario(""), catalog))
            .orElseThrow()
            .build());
  }

  /** Of the sender on the only board: 25, 100 and 200 mW. */
  @Test
  void transmitterPowerGoesDownToTheNextSetting() {
    var relaxation = Asking.relax(SmallShop.scenario(", \"transmitterMilliwatts\": 500"));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("transmitter-power");
    assertThat(Asking.changes(relaxation)).containsExactly("transmitter-power 500 mW 200 mW");
    assertThat(relaxation.reliefs().get(0).build())
        .extracting(Assessment::build, Assessment::objective)
        .containsExactly(
            Asking.best(SmallShop.scenario(", \"transmitterMilliwatts\": 200"))
                .orElseThrow()
                .build(),
            Asking.best(SmallShop.scenario(", \"transmitterMilliwatts\": 200"))
                .orElseThrow()
                .objective());
  }

  private static Supply shelf(ShelfEntry... entries) {
    return new Supply(Asking.FEW, Shelf.of(List.of(entries)));
  }

  private static ShelfEntry stock(String id, int pieces) {
    return new ShelfEntry(id, null, pieces, null, null);
  }

  @Test
  void whatIsNotInStockCanBeOrdered() {
    var supply = shelf(stock("spikerush-1303-3400", 3), stock("cypsela-1404-2800", 0));
    var asked = new Asked(SmallShop.scenario(""), supply);

    var relaxation = Asking.relax(asked);

    assertThat(Asking.best(asked)).isEmpty();
    assertThat(Asking.ids(relaxation.conflict())).containsExactly("in-stock");
    assertThat(Asking.changes(relaxation)).containsExactly("in-stock");
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(Asking.best(SmallShop.scenario("")).orElseThrow().build());
  }

  /** The pack is at hand and costs nothing: with it the cheapest build is 166.44, without it 178.84. */
  @Test
  void whatIsAtHandStaysAtHandWhereTheRestIsOrdered() {
    var owned = new ShelfEntry("tidewell-2s-3500", 1, null, null, null);
    var asked = new Asked(
        SmallShop.scenario(Asking.budget(170)),
        shelf(owned, stock("spikerush-1303-3400", 0), stock("cypsela-1404-2800", 0)));
    assertThat(Asking.best(asked)).isEmpty();

    var relaxation = Asking.relax(asked);

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("in-stock");
    assertThat(Asking.changes(relaxation)).containsExactly("in-stock");
    assertThat(relaxation.reliefs().get(0).build().cost().cents()).isEqualTo(16_644);
  }

  private static int first(Scenario[] steps) {
    for (var step = 0; step < steps.length; step++) {
      if (Asking.best(steps[step]).isPresent()) {
        return step;
      }
    }
    throw new AssertionError("none is feasible");
  }

  private static Scenario[] steps(int count, IntFunction<Scenario> scenario) {
    return IntStream.range(0, count).mapToObj(scenario).toArray(Scenario[]::new);
  }

  @Test
  void payloadGoesDownByGrams() {
    IntFunction<Scenario> carrying = grams -> SmallShop.scenario(
        ", \"payload\": {\"name\": \"seeds\", \"massGrams\": %s, \"watts\": 0, \"xMillimetres\": 0}"
            .formatted(grams));
    var step = first(steps(60, down -> carrying.apply(60 - down)));
    assertThat(step).isPositive();

    var relaxation = Asking.relax(carrying.apply(60));

    assertThat(Asking.changes(relaxation)).contains("payload 60 g " + (60 - step) + " g");
    assertThat(Asking.ids(relaxation.conflict())).contains("payload");
    var relief = relaxation.reliefs().get(0);
    assertThat(relief.isLeast()).isTrue();
    assertThat(relief.build().build())
        .isEqualTo(Asking.best(carrying.apply(60 - step)).orElseThrow().build());
  }

  /** It reaches into the discs of every propeller, however light it is. */
  @Test
  void aPayloadThatNoGramLessHelpsIsLeftOut() {
    var relaxation = Asking.relax(
        SmallShop.scenario(
            ", \"payload\": {\"name\": \"reed\", \"massGrams\": 5, \"watts\": 0, \"xMillimetres\": 0, \"lengthMillimetres\": 300, \"widthMillimetres\": 300}"));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("payload");
    assertThat(Asking.changes(relaxation)).containsExactly("payload");
    assertThat(relaxation.reliefs().get(0).demand().givenUp()).isEqualTo("carry no payload");
    assertThat(relaxation.reliefs().get(0).isLeast()).isTrue();
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(Asking.best(SmallShop.scenario("")).orElseThrow().build());
    assertThat(relaxation.together()).isEmpty();
  }

  /** What flies slower than the wind comes never back: a faster flight helps, and nobody says no other would. */
  @Test
  void anAirspeedThatIsTooSlowForTheWindGoesUp() {
    var relaxation =
        Asking.relax(cruising(metresPerSecond("airspeed", 5), metresPerSecond("wind", 8)));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("airspeed", "wind");
    assertThat(Asking.changes(relaxation))
        .containsExactly("airspeed 5 m/s 8.5 m/s", "wind 8 m/s 4.5 m/s");
    var faster = relaxation.reliefs().get(0);
    assertThat(faster.isLeast()).isFalse();
    assertThat(faster.build().objective())
        .isEqualTo(
            Asking.best(cruising(metresPerSecond("airspeed", 8.5), metresPerSecond("wind", 8)))
                .orElseThrow()
                .objective());
    assertThat(relaxation.reliefs().get(1).isLeast()).isTrue();
    assertThat(relaxation.reliefs()).allMatch(SmallestRelaxation::isBest);
  }

  private static Scenario cruising(String airspeed, String wind) {
    return SmallShop.flying("{\"style\": \"cruise\"" + airspeed + wind + "}", "");
  }

  private static String metresPerSecond(String name, double value) {
    return ", \"%sMetresPerSecond\": %s".formatted(name, value);
  }

  @Test
  void airspeedGoesDownByHalfMetresASecond() {
    var step = first(steps(40, down -> cruising(metresPerSecond("airspeed", 30 - down / 2.0), "")));
    assertThat(step).isPositive();

    var relaxation = Asking.relax(cruising(metresPerSecond("airspeed", 30), ""));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("airspeed");
    assertThat(Asking.changes(relaxation))
        .containsExactly("airspeed 30 m/s " + plain(30 - step / 2.0) + " m/s");
    assertThat(relaxation.reliefs().get(0).build().build())
        .isEqualTo(Asking.best(cruising(metresPerSecond("airspeed", 30 - step / 2.0), ""))
            .orElseThrow()
            .build());
  }

  @Test
  void windGoesDownByHalfMetresASecond() {
    var step = first(steps(60, down -> cruising("", metresPerSecond("wind", 29.8 - down / 2.0))));
    assertThat(step).isPositive();

    var relaxation = Asking.relax(cruising("", metresPerSecond("wind", 29.8)));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("wind");
    assertThat(Asking.changes(relaxation))
        .containsExactly("wind 29.8 m/s " + plain((298 - 5 * step) / 10.0) + " m/s");
  }

  @Test
  void twoDemandsAreGivenUpTogetherWhereNoneHelpsAlone() {
    var relaxation =
        Asking.relax(Asking.hover(190, 2, Asking.budget(185) + ", \"wants\": [\"gps\"]"));

    assertThat(Asking.ids(relaxation.conflict())).hasSize(1);
    assertThat(relaxation.reliefs()).isEmpty();
    assertThat(relaxation.helps()).isTrue();
    assertThat(relaxation.together()).hasSize(1);
    var pair = relaxation.together().get(0);
    assertThat(pair.isBest()).isTrue();
    assertThat(Asking.ids(pair.demands())).containsExactlyInAnyOrder("mass-cap", "wants-gps");
    assertThat(pair.build().build())
        .isEqualTo(best(NO_CAP, 2, 185).orElseThrow().build());
  }

  @Test
  void moreDemandsAreGivenUpTogetherWhereNoTwoHelp() {
    var relaxation = Asking.relax(Asking.hover(
        190, 2, ", \"wants\": [\"gps\", \"buzzer\"], \"pilot\": {\"radio\": \"callowhit\"}"));

    assertThat(Asking.ids(relaxation.conflict())).containsExactly("mass-cap");
    assertThat(relaxation.reliefs()).isEmpty();
    assertThat(relaxation.together()).hasSize(1);
    var demands = relaxation.together().get(0).demands();
    assertThat(Asking.ids(demands))
        .containsExactly("wants-gps", "wants-buzzer", "pilot-radio", "mass-cap");
    assertThat(relaxation.helps()).isTrue();
    assertThat(relaxation.isProof()).isTrue();
  }

  @Test
  void partsThatDoNotGoTogetherAreNoConflictOfDemands() {
    var apart = SmallShop.catalog(SmallShop.ONE_BUILD.stream()
        .map(id -> id.equals("ligule-4x1.9x2") ? "awn-4.5x2.5x2" : id)
        .toList());

    var relaxation = Asking.relax(Asking.asked(SmallShop.scenario(""), apart));

    assertThat(relaxation.best().build()).isEmpty();
    assertThat(relaxation.conflict()).isEmpty();
    assertThat(relaxation.reliefs()).isEmpty();
    assertThat(relaxation.together()).isEmpty();
    assertThat(relaxation.helps()).isFalse();
    assertThat(relaxation.isProof()).isTrue();
    assertThat(relaxation.clashes())
        .extracting(ClashCount::rule, ClashCount::clashes, ClashCount::pairs)
        .contains(Tuple.tuple("propeller-clearance", 1, 1));
  }

  @Test
  void whatIsNotProvenSaysSo() {
    var profile = SmallShop.flying(
        "{\"style\": \"profile\", \"legs\": [{\"seconds\": 60}, {\"metres\": 300}]}",
        Asking.budget(175));
    var changes = new Finder(Finder.Way.HEURISTIC, Finder.EFFORT, 160, done -> {});

    var relaxation = new Relaxer(Asking.asked(profile), changes).relax();

    assertThat(relaxation.best().build()).isEmpty();
    assertThat(relaxation.isProof()).isFalse();
    assertThat(relaxation.reliefs()).isNotEmpty().noneMatch(SmallestRelaxation::isLeast);
    assertThat(relaxation.reliefs().get(0).demand().id()).isEqualTo("budget");
    assertThat(relaxation.reliefs().get(0).build().isFeasible()).isTrue();
    assertThat(relaxation.reliefs()).isNotEmpty().noneMatch(SmallestRelaxation::isBest);
  }

  @Test
  void aProofThatEndsEarlyIsNone() {
    var early = new Finder(Finder.Way.EXACT, 1, 0, done -> {});

    var relaxation = new Relaxer(Asking.asked(Asking.hover(190, 2, "")), early).relax();

    assertThat(relaxation.best().build()).isEmpty();
    assertThat(relaxation.isProof()).isFalse();
  }
}
