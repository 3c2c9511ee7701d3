package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pappus.answers.ranking.RankingJson;
import pappus.answers.ranking.RankingText;
import pappus.answers.result.AssessedJson;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.document.Style;
import pappus.doubt.Doubts;
import pappus.physics.flight.Ending;
import pappus.ranking.Ranker;
import pappus.ranking.Ranking;
import pappus.scenario.Scenario;
import pappus.search.Changed;
import pappus.search.Enumeration;
import pappus.search.Question;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What people and machines are told of flights that are no hover. */
class CourseReportTest {
  private static final Catalog FEW = SmallShop.few();
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final Run RUN = new Run("pappus test", 1, 0, List.of(), List.of(), List.of());
  private static final String WINDY = "{\"style\": \"cruise\", \"windMetresPerSecond\": 4}";
  /** A station that hears and sends so well that packs end before links. */
  private static final String FAR =
      ", \"pilot\": {\"antennaGainDbi\": 20, \"videoSensitivityDbm\": -120, \"radioMilliwatts\": 5000, \"radioGainDbi\": 20, \"antennaHeightMetres\": 50}";

  private static final Scenario RANGE = SmallShop.flying(WINDY, ", \"goal\": \"range\"" + FAR);
  private static final Ranking RANKING = rank(RANGE);

  private static Ranking rank(Scenario scenario) {
    var question = Question.of(FEW, SmallShop.assessor(FEW, scenario));
    return new Ranker(question, Enumeration.of(question)).rank(10, pappus.search.Ending.MOVES);
  }

  private static String text(Scenario scenario) {
    return new RankingText(scenario, 1000, Style.PLAIN, 3).of(rank(scenario), List.of());
  }

  private static Assessment assess(Scenario scenario) {
    return SmallShop.assessor(FEW, scenario).assess(SmallShop.oneBuild());
  }

  private static String assessed(Scenario scenario) {
    var assessment = assess(scenario);
    var band = new Doubts(SmallShop.assessor(FEW, scenario)).band(assessment);
    return new AssessmentText(scenario, 1000).of(assessment, Optional.of(band));
  }

  private static JsonNode json(Scenario scenario, Ranking ranking) {
    return MAPPER.readTree(RankingJson.of(scenario, RUN, ranking, 6));
  }

  @Test
  void ranksByRangeInKilometres() {
    var text = new RankingText(RANGE, 1000, Style.PLAIN, 3).of(RANKING, List.of());

    assertThat(text)
        .startsWith("marsh: cruise, wind 4.0 m/s, 5 m above sea level; below 250 g;")
        .contains("\nRanking by kilometres expected, what differs from row 1\n")
        .contains("Farthest found, not proven best: ")
        .containsPattern(
            "It flies out against the wind at [0-9.]+ m/s through the air, [0-9.]+ over ground, and back with it at [0-9.]+ m/s through the air, [0-9.]+ over ground\\.")
        .containsPattern(
            "[0-9.]+ km over ground in all: turn round after [0-9.]+ km, half of those to plan with, which is before a link ends\\.")
        .containsPattern(
            "In calm air it stays up longest at [0-9.]+ m/s with [0-9]+ W and gets farthest at [0-9.]+ m/s with [0-9]+ W; its top speed is at most [0-9]+ m/s\\.")
        .containsPattern("Ahead of the next by [0-9.]+ m: ")
        .contains("The flight ends at ")
        .containsPattern(
            "Best range takes [01]\\.[0-9]+ of the power of hover here, where multirotors were seen to need 1\\.092: expect fewer kilometres\\.")
        .containsPattern("Also, with one part changed: .* \\([0-9.]+ km, EUR ");
    var objectives = RANKING.candidates().stream()
        .map(candidate -> candidate.assessment().objective())
        .toList();
    assertThat(objectives).isSortedAccordingTo((one, other) -> Long.compare(other, one));
  }

  @Test
  void keepsMinutesFirstWhereTheGoalIsEndurance() {
    assertThat(text(SmallShop.flying(WINDY, "")))
        .contains("\nRanking by minutes expected, what differs from row 1\n")
        .contains("Longest found, not proven best: ")
        .contains(" km over ground in all: turn round after ");
    assertThat(text(SmallShop.flying("{\"style\": \"loiter\"}", "")))
        .contains("\nRanking by minutes expected, what differs from row 1\n")
        .containsPattern("It circles at [0-9.]+ m/s through the air\\.")
        .doesNotContain(" km over ground");
    assertThat(text(SmallShop.scenario("")))
        .contains("\nRanking by minutes expected, what differs from row 1\n")
        .doesNotContain("In calm air");
  }

  @Test
  void tellsTheLegsOfAProfile() {
    var legs =
        "{\"style\": \"profile\", \"legs\": [{\"metres\": 300, \"airspeedMetresPerSecond\": 9, \"headwindMetresPerSecond\": 3}, {\"seconds\": 30, \"airspeedMetresPerSecond\": 0}]}";

    assertThat(assessed(SmallShop.flying(legs, "")))
        .contains(
            "The legs are flown in turn, over and over until the flight ends: leg 1 at 9.0 m/s through the air, 6.0 over ground, 50 s; leg 2 at 0.0 m/s through the air over a spot, 30 s.")
        .containsPattern(
            "[0-9.]+ km over ground in all\\.\n[0-9]+ whole rounds of 80 s; the [0-9]+ s that are left are too short for another\\. Plan with [0-9]+ rounds\\.")
        .contains(" min in the air, plan on ");
  }

  @Test
  void tellsTheStayAndWhatIsKeptBack() {
    var legs =
        "{\"style\": \"profile\", \"legs\": [{\"metres\": 300, \"airspeedMetresPerSecond\": 9, \"headwindMetresPerSecond\": 3}, {\"asLongAsPossible\": true, \"back\": true}]}";

    assertThat(assessed(SmallShop.flying(legs, "")))
        .containsPattern(
            "The legs are flown once: leg 1 at 9\\.0 m/s through the air, 6\\.0 over ground, 50 s; leg 2 at [0-9.]+ m/s through the air over a spot, as long as possible, [0-9]+ s; leg 1, back at 9\\.0 m/s through the air, 12\\.0 over ground, 25 s\\.")
        .containsPattern(
            "[0-9.]+ min in the air in all\\. The stay ends with [0-9]+ % of the charge left: what follows takes 25 s by estimate and is planned as [0-9]+ s, after which the reserve is left\\.")
        .contains(" min on leg 2, plan on ")
        .contains("The stay ends at landing voltage, ahead of the reserve");
  }

  /** Less than one round never comes home. */
  @Test
  void aRoundThatIsNotCompletedIsABrokenLimit() {
    var legs =
        "{\"style\": \"profile\", \"legs\": [{\"metres\": 300}, {\"seconds\": 30000, \"airspeedMetresPerSecond\": 0}]}";

    assertThat(assessed(SmallShop.flying(legs, "")))
        .containsPattern("Not one round of [0-9,]+ s is completed\\.")
        .containsPattern("rounds of the legs is 0\\.[0-9]+, but must be at least 1");
  }

  @Test
  void tellsOneBuildsRange() {
    assertThat(assessed(RANGE))
        .containsPattern("[0-9.]+ km in [0-9.]+ min, plan on [0-9.]+ \\(to ");
    assertThat(assessed(SmallShop.flying("{\"style\": \"cruise\"}", "")))
        .containsPattern("It flies out and back in calm air at [0-9.]+ m/s\\.");
  }

  @Test
  void tellsABrokenLimitWithBothNumbers() {
    var fast = SmallShop.flying("{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 58}", "");
    var blown = SmallShop.flying(
        "{\"style\": \"cruise\", \"airspeedMetresPerSecond\": 8, \"windMetresPerSecond\": 10}", "");

    assertThat(new AssessmentText(fast, 1000).of(assess(fast), Optional.empty()))
        .containsPattern(
            "- Limit \\(top-speed\\): airspeed in the cruise is 58.00 m/s, but must be at most [0-9.]+ m/s\\.");
    assertThat(new AssessmentText(blown, 1000).of(assess(blown), Optional.empty()))
        .contains(
            "- Limit (ground-speed): speed over ground on the way out is -2.00 m/s, but must be at least 0.50 m/s.")
        .contains("No flight: it makes no headway against the wind, on the way out.");
  }

  @Test
  void namesTheStretchWhoseLimitEndsTheFlight() {
    var flight = assess(SmallShop.flying(WINDY.replace("}", ", \"landingVoltsPerCell\": 2.5}"), ""))
        .flight()
        .orElseThrow();

    assertThat(Reasons.ending(flight)).isEqualTo("The flight ends at the reserve.");
    var low = assess(SmallShop.flying(WINDY.replace("}", ", \"landingVoltsPerCell\": 3.4}"), ""))
        .flight()
        .orElseThrow();
    assertThat(low.endurance().ending()).isEqualTo(Ending.LANDING_VOLTS);
    assertThat(Reasons.ending(low))
        .startsWith("The flight ends at landing voltage, ahead of the reserve, on the way ");
    assertThat(Reasons.ending(Changed.ending(flight, Ending.FULL_DUTY)))
        .isEqualTo("The flight ends when full throttle no longer holds the airspeed.");
  }

  @Test
  void writesTheCourseForMachines() {
    var first = json(RANGE, RANKING).path("candidates").get(0);
    var flight = first.path("flight");
    var out = flight.path("stretches").get(0);
    var back = flight.path("stretches").get(1);

    assertThat(flight.path("style").asString()).isEqualTo("cruise");
    assertThat(flight.path("endsBy").asString()).isEqualTo("landing-volts");
    assertThat(first.path("rangeMetres").asDouble())
        .isEqualTo(flight.path("rangeMetres").asDouble());
    assertThat(flight.path("turnRoundAfterMetres").asDouble())
        .isCloseTo(first.path("band").path("planWithMetres").asDouble() / 2, within(1e-3));
    assertThat(flight.path("turnRoundBy").asString()).isEqualTo("pack");
    assertThat(first.path("links").get(1).path("link").asString()).isEqualTo("control");
    assertThat(out.path("where").asString()).isEqualTo("on the way out");
    assertThat(out.path("groundSpeedMetresPerSecond").asDouble())
        .isCloseTo(out.path("airspeedMetresPerSecond").asDouble() - 4, within(1e-9));
    assertThat(back.path("groundSpeedMetresPerSecond").asDouble())
        .isCloseTo(back.path("airspeedMetresPerSecond").asDouble() + 4, within(1e-9));
    assertThat(out.path("metres").asDouble())
        .isCloseTo(back.path("metres").asDouble(), withinPercentage(1e-9));
    assertThat(out.path("wattsAtHoverVolts").asDouble()).isPositive();
    assertThat(flight.path("speedsInCalmAir").propertyNames())
        .containsExactly(
            "bestEnduranceMetresPerSecond",
            "bestEnduranceWatts",
            "bestRangeMetresPerSecond",
            "bestRangeWatts",
            "bestRangeOfHover",
            "topMetresPerSecondAtMost",
            "powerAgainstAirspeed");
    var speeds = flight.path("speedsInCalmAir");
    var curve = speeds.path("powerAgainstAirspeed");
    assertThat(curve.get(0).path("metresPerSecond").asDouble()).isZero();
    assertThat(curve.get(0).path("watts").asDouble())
        .isCloseTo(flight.path("hover").path("watts").asDouble(), withinPercentage(0.5));
    assertThat(curve)
        .allMatch(point ->
            point.path("watts").asDouble() >= speeds.path("bestEnduranceWatts").asDouble() - 1e-9)
        .allMatch(point -> point.path("metresPerSecond").asDouble()
            <= speeds.path("topMetresPerSecondAtMost").asDouble());
    assertThat(flight.path("heat").propertyNames())
        .containsExactly(
            "steadyWindingCelsius", "burstWindingCelsius", "burstSeconds", "assumption");
    var band = first.path("band");
    assertThat(band.path("planWithMetres").asDouble())
        .isPositive()
        .isLessThan(first.path("rangeMetres").asDouble());
    assertThat(band.path("contributions"))
        .anyMatch(one -> one.path("what").asString().equals("the airframe's drag area")
            && one.path("metres").asDouble() < 0)
        .noneMatch(one -> one.has("seconds"));
  }

  @Test
  void writesWhatEndsWhereForMachines() {
    var scenario = SmallShop.flying(WINDY.replace("}", ", \"landingVoltsPerCell\": 3.4}"), "");
    var flight = MAPPER
        .readTree(AssessedJson.of(scenario, RUN, assess(scenario), Optional.empty()))
        .path("build")
        .path("flight");

    assertThat(flight.path("endsBy").asString()).isEqualTo("landing-volts");
    assertThat(flight.path("endsWhere").asString()).startsWith("on the way ");
  }

  @Test
  void hoverHasNoStretches() {
    var scenario = SmallShop.scenario("");
    var flight = json(scenario, rank(scenario)).path("candidates").get(0).path("flight");

    assertThat(flight.path("style").asString()).isEqualTo("hover");
    assertThat(flight.has("stretches")).isFalse();
    assertThat(flight.has("rangeMetres")).isFalse();
    assertThat(flight.path("heat").path("burstSeconds").asDouble()).isEqualTo(5);
  }
}
