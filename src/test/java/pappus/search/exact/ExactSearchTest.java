package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.catalog.Kind;
import pappus.catalog.Part;
import pappus.ranking.Ranker;
import pappus.search.Ending;
import pappus.search.Enumeration;
import pappus.search.Pool;
import pappus.search.Question;
import pappus.shop.SmallShop;

/** Exact ranking against trying every build, row for row. */
class ExactSearchTest {
  private static final int CATALOGUES = 200;
  private static final int ROWS = 6;

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

  @Test
  void ranksTwoHundredCataloguesAsTryingEveryBuildDoes() {
    var feasible = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var question = question(seed);
      var all = Enumeration.of(question);
      feasible += all.bestFirst().isEmpty() ? 0 : 1;

      assertThat(exact(question, 2)).as("catalogue %s", seed).isEqualTo(enumerated(question, all));
    }
    assertThat(feasible).isGreaterThanOrEqualTo(CATALOGUES / 2);
  }

  @Test
  void oneTwoAndEightThreadsGiveTheSame() {
    for (var seed = 0; seed < 10; seed++) {
      var question = question(seed);
      var two = exact(question, 2);

      assertThat(exact(question, 1)).isEqualTo(two);
      assertThat(exact(question, 8)).isEqualTo(two);
      assertThat(run(question, 8).nodes()).isEqualTo(run(question, 1).nodes());
    }
  }

  @Test
  void saysHowMuchIsLeftWhenItsEffortEnds() {
    var question = SmallShop.question(SmallShop.few(), "");
    var best = Enumeration.of(question).bestFirst().get(0);

    var found = new ExactSearch(question, 2).run(ROWS, 1, new Pool(), done -> {});

    assertThat(found.ending()).isEqualTo(Ending.EFFORT);
    assertThat(found.atMost().orElseThrow()).isGreaterThanOrEqualTo(best.objective());
  }

  @Test
  void refusesWhatItCannotBound() {
    var legs = "{\"style\": \"profile\", \"legs\": [{\"seconds\": 60}]}";
    var profile = SmallShop.assessor(SmallShop.few(), SmallShop.flying(legs, ""));

    assertThat(ExactSearch.obstacle(Question.of(SmallShop.few(), profile))).isPresent();
    assertThat(ExactSearch.obstacle(SmallShop.question(SmallShop.few(), ""))).isEmpty();
  }

  /** A random handful of the shop's parts and a scenario, both fixed by the seed. */
  private static Question question(int seed) {
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

  private static List<String> exact(Question question, int threads) {
    return run(question, threads).rows().stream()
        .map(row -> text(row.assessment(), row.variants()))
        .toList();
  }

  private static ExactSearch.Found run(Question question, int threads) {
    return new ExactSearch(question, threads).run(ROWS, Long.MAX_VALUE, new Pool(), done -> {});
  }

  private static List<String> enumerated(Question question, Pool all) {
    return new Ranker(question, all)
        .rank(ROWS, Ending.MOVES).candidates().stream()
            .map(candidate -> text(candidate.assessment(), candidate.variants()))
            .toList();
  }

  private static String text(Assessment row, List<Assessment> variants) {
    var text = new StringBuilder(row.objective() + " " + row.build());
    variants.forEach(variant ->
        text.append("\n  ").append(variant.objective()).append(' ').append(variant.build()));
    return text.toString();
  }
}
