package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.search.Enumeration;
import pappus.shop.SmallShop;

/** Wishes by property, through every command that asks. */
class WhereCommandsTest {
  private static final String SMALL = "'where': {'propeller': {'diameterInches': {'atMost': 4}}}";

  /** The best build of the few parts with propellers up to 4 inches. */
  private static final String BUILD = best(SMALL);

  @TempDir
  private Path folder;

  @BeforeEach
  void writeFewParts() throws IOException {
    CommandRun.write(folder, SmallShop.few(), fields(SMALL));
  }

  private static String fields(String single) {
    return ", " + single.replace('\'', '"');
  }

  private static String best(String asked) {
    return Enumeration.best(SmallShop.question(SmallShop.few(), fields(asked)))
        .orElseThrow()
        .build()
        .toString();
  }

  private void ask(String fields) throws IOException {
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields(fields)));
  }

  private CommandRun run(String command, String... more) {
    return CommandRun.onParts(folder, command, List.of(), more);
  }

  private static String unwrapped(String text) {
    return text.replaceAll("\\n *(?=[^-!\\n ])", " ");
  }

  @Test
  void recommendTakesNoOtherAndSaysWhatWasAskedFor() {
    var run = run("recommend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .containsIgnoringWhitespaces("where propeller.diameterInches at most 4", "Ligule 4×1.9×2")
        .doesNotContain("4.5×");
    var json = run("recommend", "--format", "json").json();
    assertThat(json.at("/scenario/where/propeller/diameterInches/atMost").asInt())
        .isEqualTo(4);
  }

  @Test
  void eachValueOfAFieldIsAStep() throws IOException {
    ask("'where': {'motor': {'maker': ['Ollerwick', 'Havrekel']}}");

    var run = run("vary", "--over", "where.propeller.diameterInches=4,4.5,7", "--format", "csv");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    for (var inches : List.of("4", "4.5")) {
      var found = Enumeration.best(SmallShop.question(
          SmallShop.few(),
          fields(
              "'where': {'propeller': {'diameterInches': %s}, 'motor': {'maker': ['Ollerwick', 'Havrekel']}}"
                  .formatted(inches))));
      assertThat(found).isPresent();
      assertThat(run.out().lines().filter(line -> line.startsWith(inches + ",")))
          .singleElement()
          .asString()
          .contains(found.get().build().toString());
    }
    assertThat(run.out().lines().filter(line -> line.startsWith("7,")))
        .singleElement()
        .asString()
        .doesNotContain("ligule");
  }

  @Test
  void aBoundIsSweptAsALimitIs() {
    var run = run(
        "vary", "--over", "where.propeller.diameterInches.atMost=3.5:4.5:0.5", "--format", "csv");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    for (var inches : List.of("3.5", "4", "4.5")) {
      var found =
          Enumeration.best(SmallShop.question(SmallShop.few(), fields(SMALL.replace("4", inches))));
      assertThat(run.out().lines().filter(line -> line.startsWith(inches + ",")))
          .singleElement()
          .asString()
          .contains(found.map(build -> build.build().toString()).orElse(",,"));
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      where.rotor.kv=3 | must be over a where.ROLE.FIELD, but has no role "rotor". Maybe motor was meant
      where.motor.blades=3 | must be over a field of a motor that holds a value, but is over "blades"
      where.motor.maker=Olerwick | must have texts that a part of the catalogue has, but has "Olerwick". Maybe Ollerwick was meant
      where.propeller.blades=two | must have plain numbers, but has "two"
      where.propeller.blades=2.5 | propeller.blades must be a whole number, but is 2.5
      where.battery.chemistry=lipoo | battery.chemistry must be lipo, lihv, li-ion-power or li-ion-energy, but is the text "lipoo". Maybe lipo was meant
      """)
  void whatCannotBeSweptIsSaid(String over, String said) {
    var run = run("vary", "--over", over);

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors()).singleElement().asString().contains(said);
  }

  @Test
  void relaxGivesAWishUp() throws IOException {
    ask(
        "'where': {'battery': {'cellsInSeries': 6}, 'motor': {'maker': {'noneOf': ['Ollerwick']}}}");

    var run = run("relax");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run.out()))
        .contains("even with nothing else asked for: battery.cellsInSeries 6.")
        .contains("\n- Take any battery.cellsInSeries: ");
  }

  @Test
  void explainSaysThatAWishKeepsAPartOut() {
    var run = CommandRun.onParts(folder, "explain", List.of(BUILD), "--part", "awn-4.5x2.5x2");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(unwrapped(run.out()))
        .contains(
            "The scenario asks for propeller.diameterInches at most 4: of Awn 4.5×2.5×2 it is 4.5. What follows is as if it did not.",
            "The best build with Awn 4.5×2.5×2, proven: ");
    var json = CommandRun.onParts(
            folder, "explain", List.of(BUILD), "--part", "awn-4.5x2.5x2", "--format", "json")
        .json();
    assertThat(json.path("unmetWishes").get(0).asString())
        .isEqualTo("where.propeller.diameterInches");
  }

  @Test
  void alternativesMeetTheWishesToo() {
    var run = CommandRun.onParts(folder, "alternatives", List.of(BUILD, "propeller"));

    assertThat(run.out()).doesNotContain("awn-4.5x2.5x2", "Awn 4.5");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      'where': {'battery': {'cellsInSeries': 4}}, 'parts': {'fixed': ['tidewell-2s-3500']} | parts.fixed[0] must meet where.battery.cellsInSeries, 4, but of tidewell-2s-3500 it is 2.
      'where': {'battery': {'cellsInSeries': 4}}, 'parts': {'owned': ['tidewell-2s-3500']} | parts.owned[0] must meet where.battery.cellsInSeries, 4, but of tidewell-2s-3500 it is 2.
      'where': {'receiver': {'link': {'noneOf': ['thrennel']}}}, 'parts': {'owned': ['culvert-6-whole']} | parts.owned[0] must meet where.receiver.link, none of thrennel, but of culvert-6-whole it is thrennel.
      'where': {'receiver': {'mass.grams': {'atMost': 9}}}, 'parts': {'fixed': ['culvert-6-whole']} | parts.fixed[0] must meet where.receiver["mass.grams"], at most 9, but of culvert-6-whole it is not known.
      'where': {'motor': {'maker': 'Olerwick'}} | where.motor.maker must be one that a part of the catalogue has, Havrekel, Ollerwick, but is the text "Olerwick". Maybe Ollerwick was meant.
      'where': {'motor': {'maker': {'noneOf': ['Olerwick']}}} | where.motor.maker.noneOf[0] must be one that a part of the catalogue has, Havrekel, Ollerwick, but is the text "Olerwick". Maybe Ollerwick was meant.
      'where': {'motor': {'maker': {'noneof': ['Olerwick']}}} | where.motor.maker.noneof is not a field. Maybe noneOf was meant.
      'where': {'motor': {'maker': [['Ollerwick']]}} | where.motor.maker[0] must be text, a number or true or false, but is a list.
      'where': {'motor': 3} | where.motor must be an object, but is 3.
      'where': {'rotor': {'a': 1}} | where.rotor must be a role, but is none. Maybe motor was meant.
      'where': {'motor': {'mass.grams': {'atLeast': 9, 'atMost': 3}}} | where.motor["mass.grams"].atLeast must be no more than 3, but is 9.
      'where': {'motor': {'a b': 1}} | where.motor["a b"] must be a field of a motor that holds a value, but is none.
      'pilot': {'video': ['analogue', 'analoge']} | pilot.video[1] must be one that a part of the catalogue has, analogue, but is the text "analoge". Maybe analogue was meant.
      'pilot': {'video': []} | pilot.video must list at least one, but is empty.
      'pilot': {'video': 3} | pilot.video must be text or a list, but is 3.
      """)
  void whatIsWrongIsSaidWithItsPlace(String fields, String said) throws IOException {
    ask(fields);

    for (var command : List.of("recommend", "check")) {
      var run = command.equals("check")
          ? CommandRun.of(
              "check",
              "--no-shipped-catalog",
              CommandRun.typed(folder).resolve("parts").toString(),
              CommandRun.typed(folder).resolve("marsh.json").toString())
          : run(command);
      assertThat(run.out() + run.err()).contains("marsh.json:7: " + said);
    }
    assertThat(run("recommend").exitCode()).isEqualTo(ExitCode.BAD_DATA);
  }

  @Test
  void aPilotMayHaveMoreThanOnePairOfGoggles() throws IOException {
    ask("'pilot': {'video': ['analogue'], 'radio': ['thrennel']}");
    var two = run("recommend");
    ask("'pilot': {'video': 'digital'}");
    var digital = run("recommend");

    assertThat(two.out()).contains(" 1 ");
    assertThat(two.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(digital.exitCode()).isEqualTo(ExitCode.NO);
  }
}
