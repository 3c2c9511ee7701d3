package pappus.scenario.reading;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.catalog.Catalog;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Source;
import pappus.part.Antenna;
import pappus.part.AntennaConnector;
import pappus.part.Band;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Parts;
import pappus.part.Polarisation;
import pappus.part.Sale;
import pappus.part.Strap;
import pappus.quantity.Money;

class ScenarioReaderTest {
  private static final String SCENARIO = """
      {
        "$schema": "scenario.schema.json",
        "name": "light",
        "note": "An example.",
        "massCap": {"grams": 250, "strict": true, "rule": "an example"},
        "leastThrustToWeight": 2,
        "air": {"altitudeMetres": 0},
        "flight": {"style": "hover"},
        "parts": {
          "fixed": ["strap-15"],
          "allowed": [
            {
              "role": "video-antenna",
              "parts": ["antena", "antenna",
                "strap-15"]
            }
          ],
          "excluded": ["strap-15",
            "zzz"],
          "owned": ["Strap-15"]
        },
        "waivers": [
          {"rule": "fits", "parts": ["antenna"], "reason": "an example"},
          {
            "rule": "fit",
            "parts": ["strap-1"], "reason": "an example"
          }
        ]
      }
      """;
  private static final Catalog CATALOG = Catalog.of(List.of(
      new Strap(
          "strap-15",
          "Example",
          "Strap",
          Money.ofCents(200, "EUR"),
          Sale.EACH,
          Mass.of(4, Known.MEASURED),
          15,
          200,
          "an example",
          List.of()),
      new Antenna(
          "antenna",
          "Example",
          "Antenna",
          Money.ofCents(200, "EUR"),
          Sale.EACH,
          Mass.of(4, Known.MEASURED),
          AntennaConnector.U_FL,
          Band.GHZ_5_8,
          Polarisation.LEFT,
          1.5,
          "an example",
          List.of())));

  @TempDir
  private Path folder;

  @Test
  void readsAFile() throws IOException {
    var file = Files.writeString(folder.resolve("light.json"), SCENARIO);

    var read = ScenarioReader.read(file, InputStream.nullInputStream());

    assertThat(read.scenario().name()).isEqualTo("light");
    assertThat(read.input().name()).isEqualTo(file.toString());
    assertThat(read.input().sha256())
        .isEqualTo(Source.of("", SCENARIO.getBytes(UTF_8)).sha256());
  }

  @Test
  void readsStandardInputForAHyphen() {
    var read =
        ScenarioReader.read(Path.of("-"), new ByteArrayInputStream(SCENARIO.getBytes(UTF_8)));

    assertThat(read.scenario().name()).isEqualTo("light");
    assertThat(read.input().name()).isEqualTo("-");
  }

  @Test
  void tellsThatAFileIsMissing() {
    var file = folder.resolve("nowhere.json");

    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> ScenarioReader.read(file, InputStream.nullInputStream()))
        .withMessage(file + ": must be a file, but is missing.")
        .returns(InputException.Kind.MISSING, InputException::kind);
  }

  @Test
  void listsAllProblems() {
    var text = SCENARIO
        .replace("\"grams\": 250", "\"grams\": 0.25")
        .replace("\"hover\"", "\"profile\"")
        .replace("\"owned\"", "\"ownd\"")
        .replace("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": null, \"budget\": null")
        .replace("\"scenario.schema.json\"", "7")
        .replace("[\"strap-15\"],", "[null],");

    var refusal = catchThrowableOfType(InputException.class, () -> read(text));

    assertThat(refusal).hasMessage("""
        s.json:2: $schema must be text, but is 7.
        s.json:5: massCap.grams must be from 20 to 25000, but is 0.25. Maybe it was written in kilograms.
        s.json:6: budget must be a number or an object, but is null. Maybe leave it out.
        s.json:6: leastThrustToWeight must be a number, but is null.
        s.json:8: flight.legs must be given where the style is profile, but is left out.
        s.json:10: parts.fixed[0] must be text, but is null.
        s.json:20: parts.ownd is not a field. Maybe owned was meant.""");
    assertThat(refusal.kind()).isEqualTo(InputException.Kind.BAD_DATA);
  }

  @Test
  void takesTheNameOfASchemaOnlyAtTheTop() {
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> read(SCENARIO.replace("{\"style\"", "{\"$schema\": \"x\", \"style\"")))
        .withMessage("s.json:8: flight.$schema is not a field.");
  }

  @Test
  void hearsWhatTheScenarioItselfRefuses() {
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> read(SCENARIO.replace("\"light\"", "\"So Light\"")))
        .withMessage(
            "s.json:3: name must be 1 to 64 small letters, digits and hyphens, but is So Light.");
  }

  @Test
  void findsIdsThatTheCatalogueDoesNotHold() {
    assertThat(read(SCENARIO).problemsWith(CATALOG))
        .extracting(Problem::toString)
        .containsExactly(
            "s.json:14: parts.allowed[0].parts[0] must be the id of a part in the catalogue, but is the text \"antena\". Maybe antenna was meant.",
            "s.json:15: parts.allowed[0].parts[2] must be a part that fills the role video-antenna, but strap-15 is of the kind strap.",
            "s.json:19: parts.excluded[1] must be the id of a part in the catalogue, but is the text \"zzz\".",
            "s.json:20: parts.owned[0] must be the id of a part in the catalogue, but is the text \"Strap-15\". Maybe strap-15 was meant.",
            "s.json:26: waivers[1].parts[0] must be the id of a part in the catalogue, but is the text \"strap-1\". Maybe strap-15 was meant.");
  }

  @Test
  void findsWordsOfThePilotThatNoPartKnows() {
    var catalog = Catalog.of(List.of(Parts.camera(), Parts.receiver()));
    var family = Parts.camera().family();
    var link = Parts.receiver().link();
    var text = """
        {
          "name": "words",
          "note": "Two slips.",
          "massCap": {"grams": 250, "strict": true, "rule": "below 250 g"},
          "leastThrustToWeight": 2,
          "air": {"altitudeMetres": 0},
          "flight": {"style": "hover"},
          "pilot": {
            "video": "%sx",
            "radio": "%s"
          }
        }
        """;

    assertThat(read(text.formatted(family, link)).problemsWith(catalog))
        .extracting(Problem::toString)
        .containsExactly(
            "s.json:9: pilot.video must be one that a part of the catalogue has, %s, but is the text \"%sx\". Maybe %s was meant."
                .formatted(family, family, family));
    assertThat(read(text.formatted(family, "zzzz")).problemsWith(catalog)).hasSize(2);
    // A catalogue without such parts cannot know better.
    assertThat(read(text.formatted(family, "zzzz")).problemsWith(Catalog.of(List.of())))
        .isEmpty();
  }

  @Test
  void findsWaiversOfRulesThatThereAreNot() {
    assertThat(read(SCENARIO).problemsWithRules(Set.of("fits")))
        .extracting(Problem::toString)
        .containsExactly(
            "s.json:25: waivers[1].rule must be the id of a fit rule, but is the text \"fit\". Maybe fits was meant.");
  }

  @Test
  void findsWhatIsFixedAndCannotBe() {
    var text = SCENARIO
        .replace("[\"strap-15\"],", "[\"strap-15\", \"zzz\",\n\"antenna\"],")
        .replace("\"excluded\": [\"strap-15\",", "\"excluded\": [\"antenna\",");

    assertThat(read(text).contradictions(CATALOG))
        .extracting(Problem::toString)
        .containsExactly(
            "s.json:10: parts.fixed[0] must be a part that fills a role, but strap-15 is of the kind strap. Maybe leave it out: small hardware follows from the other parts.",
            "s.json:10: parts.fixed[1] must be a part that is not excluded, but zzz is in parts.excluded.",
            "s.json:11: parts.fixed[2] must be a part that is not excluded, but antenna is in parts.excluded.");
    assertThat(read(SCENARIO.replace("[\"strap-15\"],", "[\"antenna\"],")).contradictions(CATALOG))
        .extracting(Problem::toString)
        .containsExactly(
            "s.json:10: parts.fixed[0] must be an antenna for some port in the catalogue, but antenna is for 5.8 GHz, which none has.");
  }

  private static ReadScenario read(String text) {
    return ScenarioReader.read(Source.of("s.json", text.getBytes(UTF_8)));
  }
}
