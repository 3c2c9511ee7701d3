package pappus.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.files.InputException;

class FlownTest {
  private static final String HOVER =
      "{\"style\": \"hover\", \"powerFactor\": %s, \"doubt\": 0.02, \"flights\": 4, \"source\": \"my log\"}";

  @TempDir
  private Path folder;

  private CatalogFolder folder(String name, String... entries) throws IOException {
    var inside = Files.createDirectories(folder.resolve(name));
    Files.writeString(
        inside.resolve("flown.json"), "{\"flown\": [" + String.join(", ", entries) + "]}");
    return CatalogFolder.of(inside);
  }

  @Test
  void theLaterFolderCountsAndThatIsTold() throws IOException {
    var first = folder("first", HOVER.formatted("1.1"));
    var second = folder("second", HOVER.formatted("1.05"));

    var read = CatalogReader.read(List.of(first, second));

    assertThat(read.flown()).containsOnlyKeys("hover");
    assertThat(read.flown().get("hover")).isEqualTo(new Flown("hover", 1.05, 0.02, 4, "my log"));
    assertThat(read.replacements())
        .singleElement()
        .asString()
        .startsWith("The power factor of a hover");
  }

  @Test
  void oneWayOfFlyingHasOneFactor() throws IOException {
    var twice = folder("twice", HOVER.formatted("1.1"), HOVER.formatted("1.2"));

    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> CatalogReader.read(List.of(twice)))
        .satisfies(wrong -> assertThat(wrong.problems())
            .singleElement()
            .asString()
            .endsWith(
                "flown.json:1: flown[1].style must be there once, but hover is in line 1 too."));
  }

  @Test
  void refusesWhatNobodyFlies() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Flown("dive", 1.1, 0.02, 4, "my log"))
        .withMessage("style must be hover, loiter, cruise or profile, but is dive.");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Flown("hover", 110, 0.02, 4, "my log"))
        .withMessage(
            "powerFactor must be from 0.5 to 2, but is 110. Maybe it was written in percent.");
  }
}
