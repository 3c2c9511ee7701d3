package pappus.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static pappus.part.Parts.build;
import static pappus.part.Parts.with;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.catalog.BuildText;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.files.json.Altered;
import pappus.files.json.SchemaFields;
import pappus.quantity.Money;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Scenarios;
import pappus.shop.SmallShop;

class LimitKindTest {
  private static final Path MAIN = Path.of("src/main/java");
  private static final String BUDGET = ", \"budget\": {\"amount\": 180.5, \"currency\": \"EUR\"}";

  private static Assessment assess(Scenario scenario, Shelf shelf) {
    var few = SmallShop.few();
    return new Supply(few, shelf)
        .assessor(scenario)
        .assess(BuildText.parse(String.join(",", SmallShop.ONE_BUILD), few));
  }

  /** Of builds that are held to as much as can be: every kind is met, and nothing that is none. */
  @Test
  void everyLimitOfAnAssessmentIsAKind() {
    var counted = Shelf.of(List.of(new ShelfEntry(SmallShop.ONE_BUILD.get(0), 1, 1, null, null)));
    var cruise =
        "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 8, \"windMetresPerSecond\": 2}";
    var met = Stream.of(
            assess(SmallShop.scenario(BUDGET), counted),
            assess(SmallShop.flying(cruise, ""), Shelf.EMPTY),
            assess(
                SmallShop.flying("{\"style\": \"hover\", \"packStandsFullThrottle\": true}", ""),
                Shelf.EMPTY),
            assess(
                SmallShop.flying("{\"style\": \"profile\", \"legs\": [{\"seconds\": 60}]}", ""),
                Shelf.EMPTY),
            assess(
                SmallShop.flying(
                    "{\"style\": \"profile\", \"legs\": [{\"asLongAsPossible\": true}]}", ""),
                Shelf.EMPTY),
            assess(SmallShop.scenario(", \"leastMinutes\": 5"), Shelf.EMPTY),
            assess(SmallShop.scenario(", \"reachMetres\": 100"), Shelf.EMPTY),
            assess(SmallShop.scenario(", \"clearViewDegrees\": 50"), Shelf.EMPTY),
            assess(
                SmallShop.flying(cruise, ", \"goal\": \"range\", \"leastKilometres\": 1"),
                Shelf.EMPTY),
            new Supply(SmallShop.few(), Shelf.EMPTY)
                .assessor(SmallShop.scenario(""))
                .with(new Purpose(Purpose.Measure.FLIGHT, 0, true))
                .assess(BuildText.parse(String.join(",", SmallShop.ONE_BUILD), SmallShop.few())),
            Desk.assess(build()))
        .flatMap(assessment -> assessment.limits().stream())
        .toList();

    assertThat(met)
        .extracting(Limit::id)
        .hasSameElementsAs(Stream.of(LimitKind.values()).map(LimitKind::id).toList());
    assertThat(met).allSatisfy(limit -> {
      var kind = Stream.of(LimitKind.values()).filter(limit::is).findFirst().orElseThrow();
      assertThat(limit.most()).isEqualTo(kind.isAtMost());
      assertThat(limit.unit()).isEqualTo(kind.unit("EUR"));
      assertThat(limit.label()).isNotBlank().doesNotContain("%");
    });
  }

  @Test
  void aKindIsTheOnlySourceOfALimit() throws IOException {
    assertThat(Files.readString(MAIN.resolve("pappus/assessment/LimitTable.java")))
        .contains("LimitKind.MASS_CAP")
        .doesNotContain("Limit.at", "new Limit(");
  }

  private static Stream<Path> otherSources() throws IOException {
    try (var files = Files.walk(MAIN)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("LimitKind.java") && !file.endsWith("LimitField.java"))
          // An order has a budget of its own, which is no limit of a build.
          .filter(file -> !file.endsWith("pappus/order/Order.java"))
          .toList()
          .stream();
    }
  }

  /** Records name their own fields where they refuse a value. */
  @Test
  void noOtherSourceWritesAnIdOrAField() throws IOException {
    var ids = Stream.of(LimitKind.values()).map(kind -> '"' + kind.id() + '"').toList();
    var paths = LimitKind.stated().map(kind -> '"' + kind.field().path() + '"').toList();
    var written = new TreeSet<String>();
    for (var file : otherSources().toList()) {
      var text = Files.readString(file);
      ids.stream().filter(text::contains).forEach(id -> written.add(file + " has " + id));
      paths.stream()
          .filter(path -> text.contains(path) && !file.endsWith("pappus/scenario/Scenario.java"))
          .forEach(path -> written.add(file + " has " + path));
    }

    assertThat(otherSources()).hasSizeGreaterThan(300);
    assertThat(written).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void theReferenceListsIt(LimitKind kind) throws IOException {
    var limits = Files.readString(Path.of("src/site/markdown/reference/limits.md"));

    assertThat(limits).contains("`" + kind.id() + "`");
  }

  @Test
  void ofThoseThatAScenarioStatesTheFirstIsTheLastToGiveUp() {
    assertThat(LimitKind.stated())
        .containsExactly(
            LimitKind.MASS_CAP,
            LimitKind.THRUST_TO_WEIGHT,
            LimitKind.LEAST_MINUTES,
            LimitKind.LEAST_KILOMETRES,
            LimitKind.REACH,
            LimitKind.BUDGET,
            LimitKind.CLEAR_VIEW);
    assertThatThrownBy(LimitKind.IN_STOCK::field).isInstanceOf(IllegalStateException.class);
  }

  @ParameterizedTest
  @MethodSource("pappus.assessment.LimitKind#stated")
  void itsFieldIsOneOfTheScenarioThatTakesTheLoosestBound(LimitKind kind) {
    var field = kind.field();
    var loosest = BigDecimal.valueOf(field.loosest());
    var base = kind == LimitKind.LEAST_KILOMETRES
        ? SmallShop.flying("{\"style\": \"cruise\"}", BUDGET + ", \"goal\": \"range\"")
        : SmallShop.scenario(BUDGET);
    var open = Altered.record(Scenario.class, base, field.stating(loosest, "EUR"));

    assertThat(SchemaFields.of("scenario"))
        .extracting(SchemaFields.Field::path)
        .contains(field.path());
    assertThat(kind.bound(open)).contains(field.loosest());
    assertThat(open).isNotEqualTo(base);
    var looser = loosest.add(BigDecimal.valueOf(kind.isAtMost() ? 1 : -1));
    assertThatThrownBy(() -> Altered.record(Scenario.class, open, field.stating(looser, "EUR")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be from ");
  }

  @Test
  void readsTheBoundThatIsStated() {
    assertThat(LimitKind.MASS_CAP.bound(SmallShop.scenario(""))).contains(250.0);
    assertThat(LimitKind.THRUST_TO_WEIGHT.bound(SmallShop.scenario(""))).contains(2.0);
    assertThat(LimitKind.BUDGET.bound(SmallShop.scenario(BUDGET))).contains(180.5);
    assertThat(LimitKind.BUDGET.bound(SmallShop.scenario(""))).isEqualTo(Optional.empty());
  }

  @Test
  void givenUpAsksForAsLittleAsAScenarioCan() {
    var asked = SmallShop.scenario(BUDGET);

    assertThat(givenUp(LimitKind.MASS_CAP, asked))
        .isEqualTo(with(
            asked,
            "massCap",
            new MassCap(
                25_000,
                asked.massCap().strict(),
                asked.massCap().rule(),
                asked.massCap().confidence())));
    assertThat(givenUp(LimitKind.THRUST_TO_WEIGHT, asked))
        .isEqualTo(with(asked, "leastThrustToWeight", 1.0));
    assertThat(givenUp(LimitKind.BUDGET, asked)).isEqualTo(SmallShop.scenario(""));
  }

  private static Scenario givenUp(LimitKind kind, Scenario asked) {
    return Altered.record(Scenario.class, asked, kind.field().givenUp());
  }

  @Test
  void moneyIsRoundedToCentsAndNothingElseIs() {
    assertThat(LimitKind.BUDGET.field().rounded(228.408)).isEqualTo(new BigDecimal("228.41"));
    assertThat(LimitKind.MASS_CAP.field().rounded(299.988)).isEqualTo(new BigDecimal("299.988"));
    assertThat(LimitKind.BUDGET.field().stating(new BigDecimal("12.5"), "EUR"))
        .containsValue(Money.ofCents(1_250, "EUR"));
  }

  @Test
  void labelAndUnitHaveTheWordThatTheyLeaveOpen() {
    assertThat(LimitKind.TOP_SPEED.limit("in the cruise", 3, 2))
        .isEqualTo(new Limit("top-speed", "airspeed in the cruise", "m/s", 3, 2, true, false));
    assertThat(LimitKind.BUDGET.limit("EUR", 2, 3))
        .isEqualTo(new Limit("budget", "price to buy", "EUR", 2, 3, true, true));
    assertThat(LimitKind.GROUND_SPEED.limit("on the way back", 0.5, 0.5).met()).isTrue();
  }

  @Test
  void onlyAFlightThatThereIsGoesWithoutSaying() {
    assertThat(LimitKind.FLIGHT_TIME.limit(60, 1).isPlain()).isTrue();
    assertThat(LimitKind.FLIGHT_TIME.limit(0, 1).isPlain()).isFalse();
    assertThat(LimitKind.HOVER_THROTTLE.limit(0.4, 1).isPlain()).isFalse();
  }

  @Test
  void anAssessmentHasItsLimitsByKind() {
    var assessment = Desk.assess(build(), Scenarios.plain());

    assertThat(assessment.limit(LimitKind.MASS_CAP))
        .contains(Desk.limit(assessment, LimitKind.MASS_CAP.id()));
    assertThat(assessment.limit(LimitKind.BUDGET)).isEmpty();
  }
}
