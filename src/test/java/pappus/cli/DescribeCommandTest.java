package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.files.Problems;
import pappus.files.json.SchemaFields;
import pappus.files.json.SchemaText;
import pappus.offer.Shop;
import pappus.part.Kind;
import pappus.shop.SmallShop;

/** The command {@code describe}. */
final class DescribeCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(arguments);
  }

  @Test
  void aFieldIsToldWithUnitAndWhatIsAssumed() {
    assertThat(run("describe", "motor")).isEqualTo(ExitCode.OK);
    assertThat(out.toString().lines())
        .contains(
            "statorDiameterMillimetres (number, required): Stator diameter, mm, 8 to 40. In a spreadsheet also stator: 1404 is 14 by 4 mm, 1303.5 is 13 by 3.5.",
            "noLoadGrowth (number, optional): Exponent of its growth with speed, 0 to 1; absent: 0.33.")
        .anyMatch(line -> line.startsWith("mass.grams (number, required): "));
  }

  @Test
  void fieldsInListsAreToldToo() {
    assertThat(run("describe", "propeller")).isEqualTo(ExitCode.OK);
    assertThat(out.toString().lines())
        .contains("test.rows[].thrustCoefficient (number, required): T/(ρ n² D⁴), 0.02 to 0.5.");
  }

  @Test
  void aScenarioIsDescribedAsAPartIs() {
    assertThat(run("describe", "scenario")).isEqualTo(ExitCode.OK);
    assertThat(out.toString()).contains("massCap.grams (number, required): ");
  }

  @Test
  void theSchemaIsThatInTheJar() {
    assertThat(run("describe", "motor", "--schema")).isEqualTo(ExitCode.OK);
    assertThat(out.toString()).isEqualTo(SchemaText.of("motors"));
  }

  @Test
  void aWordThatIsNoKindIsWrongUsage() {
    assertThat(run("describe", "rotor")).isEqualTo(ExitCode.USAGE);
    assertThat(err.toString())
        .contains("KIND must be the id of a part of the catalogue or frame, motor, ");
  }

  @ParameterizedTest
  @EnumSource
  void noFieldOfAnyKindIsWithoutAMeaning(Kind kind) {
    assertThat(SchemaFields.of(kind.listName()))
        .hasSizeGreaterThan(7)
        .allSatisfy(field -> assertThat(field.description()).as(field.path()).isNotBlank());
  }

  /** Every kind of file that {@code check} takes, by its name. */
  static Stream<Arguments> checked() {
    return Stream.concat(
        Stream.of(Kind.values()).map(kind -> Arguments.of(kind.key(), kind.fileName())),
        Stream.of("shelf", "flown", "lumps", "scenario")
            .map(kind -> Arguments.of(kind, kind + ".json")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("checked")
  void anExamplePassesCheck(String kind, String file, @TempDir Path folder) throws IOException {
    write(kind, folder.resolve(file));

    var check =
        CommandRun.of("check", CommandRun.typed(folder).resolve(file).toString(), "--strict");

    assertThat(check.err()).isEmpty();
    assertThat(check.exitCode()).as(check.out()).isEqualTo(ExitCode.OK);
  }

  @Test
  void anExampleOfAShopIsReadAsOne(@TempDir Path folder) throws IOException {
    write("shop", folder.resolve("shop.json"));
    var problems = new Problems();

    assertThat(Shop.read(folder.resolve("shop.json"), "EUR", problems)).isPresent();
    assertThat(problems.sorted()).isEmpty();
  }

  private static void write(String kind, Path file) throws IOException {
    var example = CommandRun.of("describe", kind, "--example");
    assertThat(example.exitCode()).as(example.err()).isEqualTo(ExitCode.OK);
    Files.writeString(file, example.out());
  }

  @Test
  void anExampleIsOfThePartsThatAreRead(@TempDir Path folder) throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    var parts = CommandRun.typed(folder).resolve("parts").toString();
    var own = List.of("--example", "--no-shipped-catalog", "--catalog", parts);

    var motor = CommandRun.of(
        Stream.concat(Stream.of("describe", "motor"), own.stream()).toList());
    assertThat(motor.exitCode()).as(motor.err()).isEqualTo(ExitCode.OK);
    var told = motor.json().path("motors").path(0).path("source").asString();
    assertThat(SmallShop.few().ofKind(Kind.MOTOR))
        .anySatisfy(one -> assertThat(told).isEqualTo("An example, as " + one.id() + "."));
    assertThat(told)
        .isNotEqualTo(CommandRun.of("describe", "motor", "--example")
            .json()
            .path("motors")
            .path(0)
            .path("source")
            .asString());

    Files.delete(folder.resolve("parts/motors.json"));
    var none = CommandRun.of(
        Stream.concat(Stream.of("describe", "motor"), own.stream()).toList());
    assertThat(none.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(none.err())
        .contains(
            "--example must be asked of a kind that the catalogue has a part of, but has no motor");
  }

  @Test
  void anExampleOfWhatTheToolWritesIsWrongUsage() {
    var run = CommandRun.of("describe", "result", "--example");

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.errors())
        .first()
        .asString()
        .startsWith("--example must be asked of a file that one writes, but is of result;");
  }

  @Test
  void anIdShowsItsRecordWithWhatIsAssumed() {
    assertThat(run("describe", "ebb-2s-660")).isEqualTo(ExitCode.OK);
    assertThat(out.toString().lines())
        .contains("ebb-2s-660, a battery", "stated   cellsInSeries: 2")
        .anyMatch(line -> line.startsWith("assumed  resistance: cell resistance ")
            && line.endsWith(", from chemistry and capacity"));
  }
}
