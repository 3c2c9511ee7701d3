package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.scenario.reading.ScenarioReader;
import pappus.shop.SmallShop;

/** A scenario that contradicts itself has no answer, whatever is asked about it. */
class ContradictionsTest {
  @TempDir
  private Path folder;

  @BeforeEach
  void writeAllParts() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.all());
  }

  private String file() {
    return CommandRun.typed(folder).resolve("marsh.json").toString();
  }

  private void choosing(String parts) throws IOException {
    Files.writeString(
        folder.resolve("marsh.json"),
        SmallShop.scenarioText(", \"parts\": {" + parts.replace('\'', '"') + "}"));
  }

  private CommandRun run(String command, String... words) {
    return CommandRun.onParts(folder, command, List.of(words));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      'fixed': ['newteye-14'], 'excluded': ['newteye-14'] | parts.fixed[0] must be a part that is not excluded, but newteye-14 is in parts.excluded.
      'fixed': ['newteye-14'], 'allowed': [{'role': 'camera', 'parts': ['newteye-14-feather']}] | parts.fixed[0] must be allowed for the role camera, but newteye-14 is not in parts.allowed.
      'fixed': ['newteye-14', 'newteye-14-feather'] | parts.fixed[1] must be the only part fixed for the role camera, but newteye-14-feather is so beside newteye-14.
      'fixed': ['stipule-u', 'stipule-wire'] | parts.fixed[1] must be the only part fixed for the role video-antenna, but stipule-wire is so beside stipule-u.
      'fixed': ['thrennel-leaf', 'culvert-12-whole'] | parts.fixed[0] must be for a role that no other fixed part fills, but thrennel-leaf is a receiver, which culvert-12-whole brings along.
      'fixed': ['glowmoss-100', 'culvert-6-whole'] | parts.fixed[0] must be for a role that no other fixed part fills, but glowmoss-100 is a video transmitter, which culvert-6-whole brings along.
      'fixed': ['tendril-24-u', 'callowhit-nib'] | parts.fixed[0] must be for a role that no other fixed part fills, but tendril-24-u is a radio antenna, which callowhit-nib brings along.
      'fixed': ['isthmus-60-to-30', 'culvert-8', 'tidewell-2s-3500'] | parts.fixed[0] must be a lead that the fixed board and pack need, but isthmus-60-to-30 is between plugs that match.
      """)
  void isRefusedByWhateverReadsIt(String parts, String problem) throws IOException {
    choosing(parts);
    var line = file() + ":7: " + problem;

    for (var run : List.of(
        run("recommend"),
        run("relax"),
        run("vary", "--over", "mass-cap=240:250:5"),
        run("explain", String.join(",", SmallShop.ONE_BUILD)),
        run("alternatives", String.join(",", SmallShop.ONE_BUILD), "--kind", "camera"),
        run("assess", String.join(",", SmallShop.ONE_BUILD)))) {
      assertThat(run.errors()).containsExactly(line);
      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(run.out()).isEmpty();
    }
    var check =
        CommandRun.of("check", "--no-shipped-catalog", folder.resolve("parts").toString(), file());
    assertThat(check.errors()).contains(line);
    assertThat(check.exitCode()).isEqualTo(ExitCode.BAD_DATA);
  }

  @Test
  void allAreToldAtOnceInTheOrderOfTheirLines() throws IOException {
    choosing("""
        'fixed': ['newteye-14',
        'cottongrass-4', 'cottongrass-4',
        'thistledown-5'],
        'excluded': ['newteye-14']""");

    assertThat(run("recommend").errors())
        .containsExactly(
            file()
                + ":7: parts.fixed[0] must be a part that is not excluded, but newteye-14 is in parts.excluded.",
            file()
                + ":9: parts.fixed[3] must be the only part fixed for the role frame, but thistledown-5 is so beside cottongrass-4.");
  }

  @Test
  void noShippedScenarioHasOne() throws IOException {
    var catalog = CatalogReader.read(List.of(CatalogFolder.of(Path.of("catalog"))));
    var files = new ArrayList<Path>();
    try (var all = Files.list(Path.of("scenarios"))) {
      all.filter(file -> file.toString().endsWith(".json")).forEach(files::add);
    }
    assertThat(files).isNotEmpty();
    for (var file : files) {
      assertThat(ScenarioReader.read(file, System.in).contradictions(catalog.catalog()))
          .as(file.toString())
          .isEmpty();
    }
  }
}
