package pappus.catalog;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static pappus.catalog.Examples.file;
import static pappus.catalog.Examples.motor;
import static pappus.catalog.Examples.strap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.files.Fingerprint;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.json.JsonText;
import pappus.part.Frame;
import pappus.part.FrameOption;
import pappus.part.Kind;
import pappus.part.Known;
import pappus.part.Mass;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Strap;
import pappus.quantity.Money;

class CatalogReaderTest {
  @TempDir
  private Path folder;

  @Test
  void givesPartsByIdAndKindInTheOrderOfIds() throws IOException {
    write("motors.json", file("motors", motor("m.2"), motor("m.10"), motor("m.1")));
    write("straps.json", file("straps", strap("a-strap")));

    var catalog = CatalogReader.read(List.of(CatalogFolder.of(folder))).catalog();

    assertThat(catalog.ids()).containsExactly("a-strap", "m.1", "m.10", "m.2");
    assertThat(catalog.parts()).extracting(Part::id).containsExactlyElementsOf(catalog.ids());
    assertThat(catalog.ofKind(Kind.MOTOR))
        .extracting(Part::id)
        .containsExactly("m.1", "m.10", "m.2");
    assertThat(catalog.ofKind(Strap.class)).extracting(Strap::id).containsExactly("a-strap");
    assertThat(catalog.ofKind(Kind.GPS)).isEmpty();
    assertThat(catalog.part("m.1", Motor.class).orElseThrow().price().cents()).isEqualTo(1990);
    assertThat(catalog.part("a-strap", Motor.class)).isEmpty();
    assertThat(catalog.part("m")).isEmpty();
    assertThat(catalog.size()).isEqualTo(4);
  }

  @Test
  void tellsWhichBytesItRead() throws IOException {
    write("straps.json", file("straps", strap("s")));
    write("notes.txt", "not ours");

    var inputs = CatalogReader.read(List.of(CatalogFolder.of(folder))).inputs();

    assertThat(inputs)
        .extracting(Fingerprint::name)
        .containsExactly(folder.resolve("straps.json").toString());
    assertThat(inputs)
        .extracting(Fingerprint::sha256)
        .allMatch(hash -> hash.matches("[0-9a-f]{64}"));
  }

  @Test
  void takesTheNameOfASchemaAndAByteOrderMark() throws IOException {
    write(
        "straps.json",
        "\uFEFF"
            + file("straps", strap("s")).replace("{\"straps\"", "{\"$schema\": \"x\", \"straps\""));

    assertThat(CatalogReader.read(List.of(CatalogFolder.of(folder))).catalog().ids())
        .containsExactly("s");
  }

  @Test
  void letsALaterFolderReplaceByIdAndSaysSo() throws IOException {
    write("base/straps.json", file("straps", strap("s"), strap("t")));
    write("mine/straps.json", file("straps", strap("t").replace("\"Strap\"", "\"Mine\"")));

    var read = read("base", "mine");

    assertThat(read.catalog().part("t").orElseThrow().name()).isEqualTo("Mine");
    assertThat(read.catalog().part("s").orElseThrow().name()).isEqualTo("Strap");
    assertThat(read.replacements())
        .extracting(Replacement::toString)
        .extracting(this::withoutFolder)
        .containsExactly("t at mine/straps.json:2 takes the place of that at base/straps.json:3.");
  }

  @Test
  void refusesToReplaceByAnotherKind() throws IOException {
    write("base/straps.json", file("straps", strap("x")));
    write("mine/motors.json", file("motors", motor("x")));

    assertThat(problems("base", "mine"))
        .containsExactly(
            "mine/motors.json:3: motors[0].id must be new or that of another motor, but x is the strap at base/straps.json:2.");
  }

  @Test
  void refusesAnIdTwiceInAFolderEvenAcrossKinds() throws IOException {
    write("motors.json", file("motors", motor("x"), motor("x")));
    write("straps.json", file("straps", strap("x")));

    assertThat(problems(""))
        .containsExactly(
            "motors.json:30: motors[1].id must be the only one of its folder, but x is at motors.json:2 too.",
            "straps.json:2: straps[0].id must be the only one of its folder, but x is at motors.json:2 too.");
  }

  @Test
  void refusesIdsThatDifferInCaseOrInvisibleCharacters() throws IOException {
    write("straps.json", file("straps", strap("x"), strap("X"), strap("x\u200B")));

    assertThat(problems(""))
        .containsExactly(
            "straps.json:3: straps[1].id must be small letters, digits, hyphens and dots, but is X.",
            "straps.json:4: straps[2].id must be text without control or hidden characters, but is the text \"x\\u200b\".");
  }

  /** The frame weighs 40 g as listed. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      -29.9 |
      -30.1 | must be from -30 to 30, but is -30.1.
      """)
  void takesAHeightThatIsLighterThanTheFrameAsListed(String grams, String refusal)
      throws IOException {
    write("frames.json", frame(40, grams));

    if (refusal == null) {
      assertThat(((Frame) read("").catalog().part("frame").orElseThrow()).leastAddedGrams())
          .isEqualTo(-29.9);
    } else {
      assertThat(problems(""))
          .containsExactly("frames.json:2: frames[0].heights[1].addedGrams " + refusal);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"-8", "-8.5"})
  void refusesAHeightThatLeavesNothingOfTheFrame(String grams) throws IOException {
    write("frames.json", frame(8, grams));

    assertThat(problems(""))
        .containsExactly(
            "frames.json:2: frames[0].heights[1].addedGrams must be above -8, since the frame weighs 8 g, but is %s."
                .formatted(grams));
  }

  /** As it is ordered: of what a shop lists of a frame, price and stock hold for each way, what is at hand for none. */
  @Test
  void readsEachWayToOrderAFrame() throws IOException {
    var options = List.of(new FrameOption("lite", "lite plate", -3, Money.ofCents(600, "EUR")));
    var frame = JsonText.of(Parts.with(Parts.frame(), "options", options));
    write("frames.json", file("frames", frame.replaceAll("\\s*\\n\\s*", " ")));
    write(
        "shelf.json",
        "{\"shelf\": [{\"id\": \"frame\", \"owned\": 1, \"stock\": 2, \"price\": {\"amount\": 20, \"currency\": \"EUR\"}}]}");

    var read = read("");

    assertThat(read.catalog().ids()).containsExactly("frame", "frame.lite");
    var lite = read.catalog().part("frame.lite").orElseThrow();
    assertThat(lite.price().cents()).isEqualTo(2600);
    assertThat(lite.mass().grams()).isEqualTo(37);
    assertThat(read.shelf().pieces(lite)).contains(2L);
    assertThat(read.shelf().owned(lite)).isZero();
    assertThat(read.places().get("frame.lite")).isEqualTo(read.places().get("frame"));
    assertThat(read.strangers()).isEmpty();

    write(
        "frames.json",
        file(
            "frames",
            frame.replaceAll("\\s*\\n\\s*", " "),
            JsonText.of(Parts.with(Parts.frame(), "id", "frame.lite"))
                .replaceAll("\\s*\\n\\s*", " ")));
    assertThat(problems(""))
        .containsExactly(
            "frames.json:2: frames[0].id must make ids that no other part has with its options, but makes frame.lite.");
  }

  /** On one line, with a second height that adds so much. */
  private static String frame(double grams, String added) {
    var frame = Parts.with(Parts.frame(), "mass", Mass.of(grams, Known.MEASURED));
    var text = JsonText.of(frame).replaceAll("\\s*\\n\\s*", " ");
    return file("frames", text.replaceFirst("1\\.2(?=\\D)", added));
  }

  @Test
  void refusesFilesThatAreNotOfACatalogue() throws IOException {
    write("motor.json", "{}");
    write("Straps.JSON", "{}");
    write("my-own-very-special.json", "{}");
    write(".hidden.json", "{}");

    assertThat(problems(""))
        .containsExactly(
            "Straps.JSON: is not a file of a catalogue. Maybe straps.json was meant.",
            "motor.json: is not a file of a catalogue. Maybe motors.json was meant.",
            "my-own-very-special.json: is not a file of a catalogue.");
  }

  @Test
  void refusesAFolderWithoutACatalogue() throws IOException {
    write("notes.txt", "x");

    assertThat(problems(""))
        .containsExactly(": must hold a file of a catalogue, such as motors.json, but holds none.");
  }

  @Test
  void tellsAMissingFolderFromAWrongOne() throws IOException {
    write("a-file", "x");

    var missing = refusal("nowhere", "a-file");

    assertThat(missing.kind()).isEqualTo(InputException.Kind.MISSING);
    assertThat(lines(missing))
        .containsExactly(
            "a-file: must be a folder, but is a file.",
            "nowhere: must be a folder, but is missing.");
  }

  @Test
  void refusesAFolderInPlaceOfAFile() throws IOException {
    Files.createDirectories(folder.resolve("motors.json"));

    assertThat(problems("")).containsExactly("motors.json: must be a file, but is a folder.");
  }

  @Test
  void listsAllProblemsOfAllFilesByFileAndLine() throws IOException {
    write(
        "straps.json",
        file(
            "straps",
            strap("good"),
            strap("a").replace("\"widthMillimetres\": 15", "\"widthMillimetres\": 150"),
            strap("b").replace("\"grams\": 4", "\"grams\": 0.004"),
            strap("c").replace("\"id\": \"c\", ", "")));
    write(
        "motors.json",
        file(
            "motors",
            motor("m")
                .replace("\"screw\": \"M2\"", "\"screw\": \"M4\"")
                .replace("\"grams\": 12.5", "\"grams\": 99999")
                .replace("\"amount\": 19.90", "\"amount\": \"12\"")));
    write("leads.json", "{\"leads\": [}");

    var refusal = refusal("");

    assertThat(refusal.kind()).isEqualTo(InputException.Kind.BAD_DATA);
    assertThat(lines(refusal))
        .containsExactly(
            "leads.json:1: The file must be JSON, but has \"}\" here. Maybe a bracket before it was not closed.",
            "motors.json:6: motors[0].price.amount must be a number, but is the text \"12\".",
            "motors.json:8: motors[0].mass.grams must be from 0.01 to 5000, but is 99999. Maybe it is not in grams.",
            "motors.json:20: motors[0].screw must be M1.4, M1.6, M2, M2.5 or M3, but is the text \"M4\".",
            "straps.json:3: straps[1].widthMillimetres must be from 5 to 40, but is 150.",
            "straps.json:4: straps[2].mass.grams must be from 0.01 to 5000, but is 0.004. Maybe it is not in grams.",
            "straps.json:5: straps[3].id is missing.");
  }

  @Test
  void listsEveryFieldOfARecordThatIsOutOfRange() throws IOException {
    write(
        "motors.json",
        file(
            "motors",
            motor("M 1")
                .replace("\"maker\": \"Example\"", "\"maker\": \" \"")
                .replace("19.90, \"currency\": \"EUR\"", "-1, \"currency\": \"eur\"")
                .replace("\"from\": 2, \"to\": 4", "\"from\": 20, \"to\": 4")
                .replace("\"noLoadVolts\": 10,", "\"noLoadVolts\": 100,"),
            motor("M 2").replace("\"leadGauge\": 24", "\"leadGauge\": 2")));

    assertThat(problems(""))
        .containsExactly(
            "motors.json:3: motors[0].id must be small letters, digits, hyphens and dots, but is M 1.",
            "motors.json:4: motors[0].maker must hold text, but is empty.",
            "motors.json:6: motors[0].price.amount must be from 0 to 1000000, but is -1.",
            "motors.json:6: motors[0].price.currency must be three capital letters as in ISO 4217, but is eur.",
            "motors.json:16: motors[0].noLoadVolts must be from 1 to 30, but is 100.",
            "motors.json:17: motors[0].cells.from must be from 1 to 14, but is 20.",
            "motors.json:30: motors[1].id must be small letters, digits, hyphens and dots, but is M 2.",
            "motors.json:52: motors[1].leadGauge must be from 14 to 34, but is 2.");
  }

  @Test
  void countsLinesWithAByteOrderMarkAndWindowsLineEnds() throws IOException {
    var text = "\uFEFF" + file("straps", strap("s"), strap("t").replace("\"t\"", "7"), strap("s"));
    write("straps.json", text.replace("\n", "\r\n"));

    assertThat(problems(""))
        .containsExactly(
            "straps.json:3: straps[1].id must be text, but is 7.",
            "straps.json:4: straps[2].id must be the only one of its folder, but s is at straps.json:2 too.");
  }

  /** More than are indexed at a time. */
  @Test
  void listsTheProblemsOfManyRecords() throws IOException {
    var records = IntStream.range(0, 1000)
        .mapToObj(i -> i % 2 == 0 ? strap("s-" + i) : strap("s-" + i).replace(": 15,", ": \"15\","))
        .toArray(String[]::new);
    write("straps.json", file("straps", records));

    assertThat(problems(""))
        .hasSize(101)
        .startsWith(IntStream.range(0, 200)
            .filter(i -> i % 2 == 1)
            .mapToObj(i ->
                "straps.json:%s: straps[%s].widthMillimetres must be a number, but is the text \"15\"."
                    .formatted(i + 2, i))
            .toArray(String[]::new))
        .endsWith("straps.json: and 400 more.");
  }

  /** One change to a motor in order, and the one line it gives. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
          "grams": 12.5              | "grams": "NaN"          | 8: motors[0].mass.grams must be a number, but is the text "NaN".
          "grams": 12.5              | "grams": "12.5"         | 8: motors[0].mass.grams must be a number, but is the text "12.5".
          "grams": 12.5              | "grams": 1e999          | 8: motors[0].mass.grams must be a finite number, but is 1e999.
          "grams": 12.5              | "grams": -1e999         | 8: motors[0].mass.grams must be a finite number, but is -1e999.
          "grams": 12.5              | "grams": true           | 8: motors[0].mass.grams must be a number, but is true.
          "grams": 12.5              | "grams": ""             | 8: motors[0].mass.grams must be a number, but is the text "".
          "grams": 12.5              | "grams": [12.5]         | 8: motors[0].mass.grams must be a number, but is a list.
          "grams": 12.5              | "grams": {}             | 8: motors[0].mass.grams must be a number, but is an object.
          "grams": 12.5              | "grams": null           | 8: motors[0].mass.grams must be a number, but is null.
          "grams": 12.5, "known"     | "known"                 | 8: motors[0].mass.grams is missing.
          "grams": 12.5              | "gramms": 12.5          | 8: motors[0].mass.gramms is not a field. Maybe grams was meant.
          "grams": 12.5              | "grams": 12.5, "grams": 13 | 8: motors[0].mass.grams must stand once, but stands on line 8 too.
          "grams": 12.5              | "grams": 12.5, "colour": 1 | 8: motors[0].mass.colour is not a field.
          "grams": 12.5              | "grams": 12.5, "doubtGrams": null | 8: motors[0].mass.doubtGrams must be a number, but is null. Maybe leave it out.
          "grams": 12.5              | "grams": 12.5, "a\\tb": 1 | 8: motors[0].mass["a\\u0009b"] is not a field.
          "known": "measured"        | "known": "guessed"      | 8: motors[0].mass.known must be measured, maker or estimated, but is the text "guessed".
          "known": "measured"        | "known": "MEASURED"     | 8: motors[0].mass.known must be measured, maker or estimated, but is the text "MEASURED".
          "known": "measured"        | "known": " measured"    | 8: motors[0].mass.known must be measured, maker or estimated, but is the text " measured".
          "known": "measured"        | "known": 0              | 8: motors[0].mass.known must be measured, maker or estimated, but is 0.
          "known": "measured"        | "known": ""             | 8: motors[0].mass.known must be measured, maker or estimated, but is the text "".
          "id": "m"                  | "id": null              | 3: motors[0].id must be text, but is null.
          "id": "m"                  | "id": 7                 | 3: motors[0].id must be text, but is 7.
          "id": "m"                  | "id": ""                | 3: motors[0].id must hold text, but is empty.
          "id": "m"                  | "id": "a b"             | 3: motors[0].id must be small letters, digits, hyphens and dots, but is a b.
          "screwCount": 4            | "screwCount": 4.0       | 19: motors[0].screwCount must be a whole number, but is 4.0.
          "screwCount": 4            | "screwCount": 4.5       | 19: motors[0].screwCount must be a whole number, but is 4.5.
          "screwCount": 4            | "screwCount": "4"       | 19: motors[0].screwCount must be a whole number, but is the text "4".
          "screwCount": 4            | "screwCount": 99999999999 | 19: motors[0].screwCount must be from -2147483648 to 2147483647, but is 99999999999.
          "amount": 19.90            | "amount": 19.905        | 6: motors[0].price.amount must have at most two decimals, but is 19.905.
          "amount": 19.90            | "amount": 1e-99999999   | 6: motors[0].price.amount must be a number of at most 20 decimals or zeros, but is 1e-99999999.
          "amount": 19.90            | "amount": 1e400         | 6: motors[0].price.amount must be a finite number, but is 1e400.
          "EUR"                      | "Euro"                  | 6: motors[0].price.currency must be three capital letters as in ISO 4217, but is Euro.
          [12]                       | 12                      | 18: motors[0].boltCirclesMillimetres must be a list, but is 12.
          [12]                       | [12, null]              | 18: motors[0].boltCirclesMillimetres[1] must be a number, but is null.
          [12]                       | [12, "12"]              | 18: motors[0].boltCirclesMillimetres[1] must be a number, but is the text "12".
          [12]                       | [9, 12]                 | 18: motors[0].boltCirclesMillimetres must be no more than one where boltCirclesNeeded is left out, but is 9, 12. Maybe boltCirclesNeeded is both (one pattern of two distances, such as 16 by 19 mm) or either (drilled for each by itself, such as 9 by 9 and 12 by 12 mm).
          [12]                       | [12, 12]                | 18: motors[0].boltCirclesMillimetres must list each bolt circle once, but is 12, 12. Maybe an even pattern, such as 12 by 12 mm, is one bolt circle.
          [12]                       | [9, 12, 16], "boltCirclesNeeded": "both" | 18: motors[0].boltCirclesMillimetres must be two where boltCirclesNeeded is both, but is 9, 12, 16.
          [12]                       | [12], "boltCirclesNeeded": "either" | 18: motors[0].boltCirclesNeeded must be left out unless there are several boltCirclesMillimetres, but is given. Maybe a bolt circle is missing.
          [12]                       | [], "boltCirclesNeeded": "both" | 18: motors[0].boltCirclesNeeded must be left out unless there are several boltCirclesMillimetres, but is given. Maybe a bolt circle is missing.
          [12]                       | [9, 12], "boltCirclesNeeded": "all" | 18: motors[0].boltCirclesNeeded must be both or either, but is the text "all".
          [12]                       | ["9x9", "12x12"]        | 18: motors[0].boltCirclesMillimetres[0] must be a number, but is the text "9x9".¶18: motors[0].boltCirclesMillimetres[1] must be a number, but is the text "12x12".
          [12]                       | null                    | 18: motors[0].boltCirclesMillimetres must be a list, but is null.
          {"from": 2, "to": 4}       | [2, 4]                  | 17: motors[0].cells must be an object, but is a list.
          {"from": 2, "to": 4}       | {"from": 4, "to": 2}    | 17: motors[0].cells.to must be from 4 to 14, but is 2.
          {"from": 2, "to": 4}       | {}                      | 17: motors[0].cells.from is missing.¶17: motors[0].cells.to is missing.
          {"from": 2, "to": 4}       | {"from": 2, "to": 4, "$schema": "x"} | 17: motors[0].cells.$schema is not a field.
          "resistanceMilliohms": 120 | "resistanceMilliohms": 0.12 | 13: motors[0].resistanceMilliohms must be from 10 to 2000, but is 0.12. Maybe it was written in ohms.
          "id": "m",                 | "$schema": "x", "id": "m", | 3: motors[0].$schema is not a field.
          "propellerSeat": "nut-m5",   | ``                      | 2: motors[0].propellerSeat is missing.
          """)
  void tellsWhatIsWrongWithAMotor(String part, String change, String lines) throws IOException {
    write("motors.json", file("motors", motor("m").replace(part, change)));

    assertThat(problems(""))
        .containsExactly(Stream.of(lines.split("¶", -1))
            .map(line -> "motors.json:" + line)
            .toArray(String[]::new));
  }

  /** A file as a whole, and the one line it gives. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
          ``                           | 1: The file must be JSON, but is empty.
          `   `                        | 1: The file must be JSON, but is empty.
          null                         | 1: The file must be an object, but is null.
          []                           | 1: The file must be an object, but is a list.
          "straps"                     | 1: The file must be an object, but is the text "straps".
          {}                           | 1: straps is missing.
          {"motors": []}               | 1: motors is not a field.¶1: straps is missing.
          {"strap": []}                | 1: strap is not a field. Maybe straps was meant.
          {"straps": {}}               | 1: straps must be a list, but is an object.
          {"straps": null}             | 1: straps must be a list, but is null.
          {"straps": [null]}           | 1: straps[0] must be an object, but is null.
          {"straps": [[]]}             | 1: straps[0] must be an object, but is a list.
          {"straps": [],¶"straps": []} | 2: straps must stand once, but stands on line 1 too.
          {"$schema": 1, "straps": []} | 1: $schema must be text, but is 1.
          {"$schema": null, "straps": []} | 1: $schema must be text, but is null. Maybe leave it out.
          {"straps": [], "x": 1}       | 1: x is not a field.
          {"straps": []} {}            | 1: The file must be one JSON value, but has an object after its end.
          {"straps": []}¶]             | 2: The file must be JSON, but has "]" here. Maybe there is a bracket too many.
          {"straps": [                 | 1: The file must be JSON, but ends inside a list. Maybe its end was cut off.
          {"straps": [¶{"id": "s       | 2: The file must be JSON, but ends inside an object. Maybe its end was cut off.
          {"straps": [],}              | 1: The file must be JSON, but has "}" here. Maybe there is a comma too many before it.
          {"straps": [¶{},¶]}          | 3: The file must be JSON, but has "]" here. Maybe there is a comma too many before it.
          {"straps": [¶{}¶{}]}         | 3: The file must be JSON, but has "{" here. Maybe a comma is missing before it.
          {'straps': []}               | 1: The file must be JSON, but has "'" here. Maybe double quotes were meant.
          {straps: []}                 | 1: The file must be JSON, but has "s" here. Maybe a name without its double quotes begins here.
          // x¶{"straps": []}          | 1: The file must be JSON, but has "/" here. Maybe it begins a comment, which JSON does not have.
          {"straps": [NaN]}            | 1: The file must be JSON, but has "NaN" here. Maybe leave the field out: JSON has no such number.
          {"straps": [Infinity]}       | 1: The file must be JSON, but has "Infinity" here. Maybe leave the field out: JSON has no such number.
          {"straps": [-Infinity]}      | 1: The file must be JSON, but has "-Infinity" here. Maybe leave the field out: JSON has no such number.
          {"straps": [True]}           | 1: The file must be JSON, but has "True" here. Maybe small letters were meant.
          {"straps": [nul]}            | 1: The file must be JSON, but has "nul" here. Maybe it should stand between double quotes.
          {"straps": [01]}             | 1: The file must be JSON, but has a number that begins with a zero here. Maybe it should be left out.
          {"straps": }                 | 1: The file must be JSON, but has "}" here. Maybe a value is missing before it.
          {"straps" []}                | 1: The file must be JSON, but has "[" here. Maybe a colon is missing before it.
          {"straps": [.5]}             | 1: The file must be JSON, but has "." here. Maybe a zero is missing before it.
          {"straps": [+5]}             | 1: The file must be JSON, but has "+" here. Maybe leave the plus sign out.
          {"straps": ["a¶"]}           | 1: The file must be JSON, but has "\\u000a" here. Maybe a closing quote is missing before it.
          {"straps": ["\\x"]}          | 1: The file must be JSON, but has "x" here.
          """)
  void tellsWhatIsWrongWithAFile(String text, String line) throws IOException {
    write("straps.json", text.replace('¶', '\n'));

    assertThat(problems(""))
        .containsExactly(Stream.of(line.split("¶", -1))
            .map(each -> "straps.json:" + each)
            .toArray(String[]::new));
  }

  @Test
  void refusesBytesThatAreNotUtf8() throws IOException {
    Files.write(
        folder.resolve("straps.json"),
        file("straps", strap("s").replace("Example", "Gr\u00F6\u00DFe")).getBytes(ISO_8859_1));
    Files.write(folder.resolve("motors.json"), "{\"motors\": []}".getBytes(UTF_16LE));

    assertThat(problems(""))
        .containsExactly(
            "motors.json:1: The file must be text in UTF-8, but has a zero byte. Maybe it was saved in another encoding.",
            "straps.json:2: The file must be text in UTF-8, but has the byte 0xF6 in a wrong place. Maybe it was saved in another encoding.");
  }

  @Test
  void refusesWhatIsTooDeepOrTooLong() throws IOException {
    write("straps.json", "{\"straps\": " + "[".repeat(100) + "]".repeat(100) + "}");
    write("motors.json", "{\"motors\": [\n" + "9".repeat(100) + "]}");
    write("leads.json", "{\"" + "x".repeat(300) + "\": 1}");
    write("screws.json", "{\"screws\": [\"" + "x".repeat(100_000) + "\"]}");

    assertThat(problems(""))
        .containsExactly(
            "leads.json:1: Names must have at most 200 characters, but one here has more.",
            "motors.json:2: Numbers must have at most 60 digits, but one here has more.",
            "screws.json:1: Texts must have at most 20000 characters, but one here has more.",
            "straps.json:1: The file must nest at most 32 deep, but nests deeper here.");
  }

  @Test
  void showsHostileTextSafelyAndCutsIt() throws IOException {
    write(
        "straps.json",
        file(
            "straps",
            strap("\\u001b[31mred"),
            strap("s").replace("\"id\"", "\"" + "x".repeat(70) + "\": 1, \"id\""),
            strap("y".repeat(1000) + "!"),
            strap("z").replace("\"unit\": \"each\"", "\"unit\": \"" + "e".repeat(1000) + "\"")));

    assertThat(problems(""))
        .containsExactly(
            "straps.json:2: straps[0].id must be text without control or hidden characters, but is the text \"\\u001b[31mred\".",
            "straps.json:3: straps[1]." + "x".repeat(70) + " is not a field.",
            "straps.json:4: straps[2].id must be small letters, digits, hyphens and dots, but is "
                + "y".repeat(231) + "…" + "y".repeat(98) + "!.",
            "straps.json:5: straps[3].sold.unit must be each, set, bag or kit, but is the text \""
                + "e".repeat(60) + "…\".");
  }

  private ReadCatalog read(String... folders) {
    return CatalogReader.read(
        Stream.of(folders).map(name -> CatalogFolder.of(folder.resolve(name))).toList());
  }

  private InputException refusal(String... folders) {
    return catchThrowableOfType(InputException.class, () -> read(folders));
  }

  private List<String> problems(String... folders) {
    return lines(refusal(folders));
  }

  private List<String> lines(InputException e) {
    return e.problems().stream().map(Problem::toString).map(this::withoutFolder).toList();
  }

  private String withoutFolder(String line) {
    return line.replace(folder + "/", "").replace(folder.toString(), "");
  }

  private void write(String name, String text) throws IOException {
    var file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
