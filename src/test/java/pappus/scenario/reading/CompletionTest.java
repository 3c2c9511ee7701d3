package pappus.scenario.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.files.InputException;
import pappus.files.Source;
import pappus.quantity.Money;
import pappus.scenario.MassCap;
import pappus.scenario.Scenario;
import pappus.scenario.Wish;

/** What a scenario file may leave out or write shorter, and what is set in place of what it says. */
class CompletionTest {
  private static final String SHORT = """
      {
        "massCap": 250,
        "leastThrustToWeight": 2,
        "budget": 399.50,
        "air": {"altitudeMetres": 5},
        "flight": {"style": "profile", "legs": [
          {"seconds": 60},
          {"metres": 500, "headwindMetresPerSecond": 2}]}
      }
      """;

  @TempDir
  private Path folder;

  private static ReadScenario read(String text, String currency, String... settings) {
    return ScenarioReader.read(
        Path.of("-"),
        new ByteArrayInputStream(text.getBytes(UTF_8)),
        Stream.of(settings).map(Setting::parse).toList(),
        currency,
        Map.of());
  }

  private static Scenario set(String... settings) {
    return read(SHORT, "EUR", settings).scenario();
  }

  /** Lines of all that is wrong. */
  private static List<String> wrong(String text, String... settings) {
    var refused = catchThrowableOfType(InputException.class, () -> read(text, "EUR", settings));
    assertThat(refused).as(String.join(" ", settings)).isNotNull();
    return refused.problems().stream().map(Object::toString).toList();
  }

  @Test
  void plainNumbersAreAStrictCapAndABudgetInTheCurrencyOfTheCatalogue() {
    var scenario = read(SHORT, "CHF").scenario();

    assertThat(scenario.massCap()).isEqualTo(new MassCap(250, true, null, null));
    assertThat(scenario.massCap().largestMilligrams()).isEqualTo(249_999);
    assertThat(scenario.budget()).isEqualTo(Money.ofCents(39_950, "CHF"));
    assertThat(scenario.note()).isNull();
  }

  @Test
  void whatIsWrittenOutIsReadAsEver() {
    var source = Source.of(
        "s.json",
        (" {\"name\": \"x\", "
                + SHORT
                    .strip()
                    .substring(1)
                    .replace("250", "{\"grams\": 250, \"strict\": false}")
                    .replace("399.50", "{\"amount\": 1, \"currency\": \"SEK\"}"))
            .getBytes(UTF_8));

    var read = ScenarioReader.read(source);

    assertThat(read.scenario().massCap().strict()).isFalse();
    assertThat(read.scenario().budget()).isEqualTo(Money.ofCents(100, "SEK"));
    assertThat(read.input()).isEqualTo(source.fingerprint());
  }

  @Test
  void aNameThatIsLeftOutIsTheFilesOwn() throws IOException {
    var file = Files.writeString(folder.resolve("My  Höhe_5.json"), SHORT);

    assertThat(
            ScenarioReader.read(file, InputStream.nullInputStream()).scenario().name())
        .isEqualTo("my-h-he-5");
    assertThat(set().name()).isEqualTo("scenario");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "a/b/Long Range.JSON, long-range",
    "con.json, scenario",
    "'---.json', scenario",
    "x.y.json, x-y",
    "ÄÖ.json, scenario",
    "'..\\\\up\\\\quad.json', quad"
  })
  void namesOfFilesAreMadeSafe(String file, String name) {
    assertThat(Completion.nameOf(file)).isEqualTo(name);
  }

  /** The same letters have the same fingerprint, whatever is put in. */
  @Test
  void theFingerprintIsThatOfTheFile() {
    assertThat(read(SHORT, "EUR", "budget=null").input())
        .isEqualTo(Source.of("-", SHORT.getBytes(UTF_8)).fingerprint());
  }

  @Test
  void whatIsWrongWithAShortFormIsToldAtItsPlace() {
    assertThat(wrong(SHORT.replace("250", "2").replace("399.50", "-1")))
        .containsExactly(
            "-:2: massCap.grams must be from 20 to 25000, but is 2. Maybe it was written in kilograms.",
            "-:4: budget.amount must be from 0 to 1000000, but is -1.");
    assertThat(wrong(SHORT.replace("250", "\"250\"").replace("399.50", "[]")))
        .containsExactly(
            "-:2: massCap must be a number or an object, but is the text \"250\".",
            "-:4: budget must be a number or an object, but is a list.");
    assertThat(wrong(SHORT.replace("250", "{\"gram\": 3, \"strict\": 1}")))
        .containsExactly(
            "-:2: massCap.gram is not a field. Maybe grams was meant.",
            "-:2: massCap.strict must be true or false, but is 1.");
  }

  @Test
  void aFileThatIsNoJsonIsToldOfAsItIs() {
    assertThat(wrong(SHORT + "}", "massCap=200")).singleElement().asString().startsWith("-:10: ");
    assertThat(wrong(SHORT.replace("\"air\"", "\"budget\": 3, \"air\"")))
        .singleElement()
        .asString()
        .contains("must stand once");
  }

  @Test
  void valuesAreReadByTheSchemasType() {
    var scenario = set(
        "massCap=200",
        "massCap.strict=false",
        "massCap.rule=25",
        "wants=gps,buzzer",
        "pilot.video=analogue",
        "parts.fixed=a,b",
        "parts.fixed[1]=c",
        "parts.owned=[\"d,e\"]",
        "candidates=3",
        "payload={\"name\": \"logger\", \"massGrams\": 3, \"watts\": 0, \"xMillimetres\": 0}");

    assertThat(scenario.massCap()).isEqualTo(new MassCap(200, false, "25", null));
    assertThat(scenario.wants()).containsExactly(Wish.GPS, Wish.BUZZER);
    assertThat(scenario.pilotOrAny().video()).hasToString("Families[written=analogue]");
    assertThat(scenario.choice().fixedIds()).containsExactly("a", "c");
    assertThat(scenario.choice().ownedIds()).containsExactly("d,e");
    assertThat(scenario.count()).isEqualTo(3);
    assertThat(scenario.payloadGrams()).isEqualTo(3);
  }

  @Test
  void whatIsOneOrSeveralIsEither() {
    assertThat(set("pilot.video=analogue").pilot())
        .isEqualTo(set("pilot={\"video\": \"analogue\"}").pilot());
    assertThat(set("pilot.video=analogue,vellimar").pilot())
        .isEqualTo(set("pilot.video=[\"analogue\", \"vellimar\"]").pilot());
    assertThat(set("where.battery.cellsInSeries=2,3").where())
        .isEqualTo(set("where={\"battery\": {\"cellsInSeries\": [2, 3]}}").where());
    assertThat(set("where.propeller.diameterInches.atMost=4").where())
        .isEqualTo(set("where.propeller.diameterInches={\"atMost\": 4}").where());
  }

  @Test
  void elementsAreSetAddedAndTakenOut() {
    assertThat(set("flight.legs[0].seconds=30", "flight.legs[2].seconds=9")
            .flight()
            .legs())
        .extracting(leg -> leg.seconds())
        .containsExactly(30.0, null, 9.0);
    assertThat(set("flight.legs[0]=null").flight().legs()).hasSize(1);
    assertThat(set("budget=null", "wants=").budget()).isNull();
    assertThat(set("flight={\"style\": \"hover\"}").flight().legs()).isNull();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      massCap=5                 | massCap.grams must be from 20 to 25000, but is 5. Maybe it was written in kilograms.
      massCap.grams=199,5       | massCap.grams must be a number, but is the text "199,5".
      massCap.strict=maybe      | massCap.strict must be true or false, but is the text "maybe".
      flight.resrve=0.1         | flight.resrve is not a field. Maybe reserve was meant.
      flight.legs[5].seconds=9  | flight.legs[5] must be in the list, but that has 2.
      flight.legs[2]=null       | flight.legs[2] must be in the list, but that has 2.
      flight.style.x=9          | flight.style must be an object to have x, but is none.
      air[0]=9                  | air must be a list to have [0], but is none.
      wants=gps,buzer           | wants[1] must be gps, buzzer or payload-camera, but is the text "buzer".
      candidates=3.5            | candidates must be a whole number, but is 3.5.
      pilot={"video":           | pilot must be one value in JSON, without a name twice, but is none.
      payload=3                 | payload must be an object, but is the text "3".
      name=../up                | name must be 1 to 64 small letters, digits and hyphens, but is ../up.
      """)
  void whatIsWrongWithASettingIsToldOfIt(String setting, String predicate) {
    assertThat(wrong(SHORT, setting)).containsExactly("--set " + setting + ": " + predicate);
  }

  @Test
  void whatSettingsDoNotTouchIsToldWhereItStands() {
    var text = SHORT.replace("500", "0");

    assertThat(wrong(text, "massCap=200", "leastThrustToWeight=null"))
        .containsExactly(
            "-:1: leastThrustToWeight is missing.",
            "-:8: flight.legs[1].metres must be from 1 to 100000, but is 0.");
  }

  @Test
  void aLongValueIsToldByItsPath() {
    var list = "parts.fixed=" + "a,".repeat(60);

    assertThat(wrong(SHORT, list + "\u200b"))
        .singleElement()
        .asString()
        .startsWith("--set parts.fixed=…: parts.fixed[60] must be text without control or hidden");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"massCap", "=3", "a b=3", "flight.legs[x]=1", "[0]=1", "a..b=1"})
  void whatIsNoPathIsRefused(String typed) {
    assertThat(catchThrowableOfType(IllegalArgumentException.class, () -> Setting.parse(typed)))
        .hasMessageStartingWith("must be PATH=VALUE, such as ");
  }
}
