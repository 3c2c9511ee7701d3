package pappus.files.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.files.Source;

class OutputFolderTest {
  @TempDir
  private Path temp;

  @Test
  void writesFilesAndAManifestIntoANewFolder() throws IOException {
    write(false, "result.json", "{}\n", "report.html", "<p>ü</p>");

    assertThat(names()).containsExactly("manifest.json", "report.html", "result.json");
    assertThat(text("report.html")).isEqualTo("<p>ü</p>");
    // The hashes are those that sha256sum prints.
    assertThat(text("manifest.json"))
        .isEqualTo("""
        {
          "files": [
            {
              "name": "report.html",
              "sha256": "%s"
            },
            {
              "name": "result.json",
              "sha256": "ca3d163bab055381827226140568f3bef7eaac187cebd76878e0b63e9e442356"
            }
          ]
        }
        """.formatted(Source.sha256("<p>ü</p>".getBytes(StandardCharsets.UTF_8))));
  }

  @Test
  void replacesItsOwnFilesAndKeepsTheOthersListed() throws IOException {
    write(false, "result.json", "old", "report.html", "old");
    write(false, "result.json", "new");
    write(false, "report.html", "new");

    assertThat(text("result.json")).isEqualTo("new");
    assertThat(text("report.html")).isEqualTo("new");
    assertThat(text("manifest.json")).contains("result.json", "report.html");
  }

  @Test
  void forgetsItsFilesThatWereRemoved() throws IOException {
    write(false, "result.json", "old", "report.html", "old");
    Files.delete(file("report.html"));
    write(false, "result.json", "new");

    assertThat(text("manifest.json")).doesNotContain("report.html");
  }

  @Test
  void refusesAFileEditedSinceAndWritesNothing() throws IOException {
    write(false, "a.json", "old", "b.json", "old");
    Files.writeString(file("b.json"), "edited");
    var before = text("manifest.json");

    refuses(
        "out/b.json: must be as this tool wrote it, but was changed since. Maybe move it away, or replace it with --force.",
        "a.json",
        "new",
        "b.json",
        "new",
        "c.json",
        "new");

    assertThat(names()).containsExactly("a.json", "b.json", "manifest.json");
    assertThat(text("a.json")).isEqualTo("old");
    assertThat(text("b.json")).isEqualTo("edited");
    assertThat(text("manifest.json")).isEqualTo(before);
  }

  @Test
  void refusesEveryFileOfOthersAtOnce() throws IOException {
    Files.createDirectories(temp.resolve("out/d.json"));
    Files.writeString(file("b.json"), "mine");
    Files.createSymbolicLink(file("c.json"), temp.resolve("nowhere"));

    refuses("""
        out/b.json: must not be there yet, but is, and was not written by this tool. Maybe move it away, or replace it with --force.
        out/c.json: must not be there yet, but is, and was not written by this tool. Maybe move it away, or replace it with --force.
        out/d.json: must be a file, but is a folder.""", "a.json", "new", "b.json", "new", "c.json", "new", "d.json", "new");

    assertThat(names()).containsExactly("b.json", "c.json", "d.json");
  }

  @Test
  void replacesAnyFileByForce() throws IOException {
    Files.createDirectories(temp.resolve("out"));
    Files.writeString(file("a.json"), "mine");
    Files.writeString(file("manifest.json"), "mine");
    write(true, "a.json", "new");
    write(false, "a.json", "newer");

    assertThat(text("a.json")).isEqualTo("newer");
  }

  @Test
  void leavesAFolderInTheWayEvenByForce() throws IOException {
    Files.createDirectories(file("a.json"));

    assertThatExceptionOfType(CannotCreateException.class)
        .isThrownBy(() -> write(true, "a.json", "new"))
        .withMessage(file("a.json") + ": must be a file, but is a folder.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "{\"files\": null}", "{\"files\": [], \"more\": 1}"})
  void refusesAManifestThatIsNotItsOwn(String manifest) throws IOException {
    Files.createDirectories(temp.resolve("out"));
    Files.writeString(file("manifest.json"), manifest);

    refuses(
        "out/manifest.json: must be the list of files written here before, but is something else. Maybe move it away, or replace it with --force.",
        "a.json",
        "new");

    assertThat(names()).containsExactly("manifest.json");
    assertThat(text("manifest.json")).isEqualTo(manifest);
  }

  /** As a run leaves them that was killed before it could write the manifest. */
  @Test
  void takesFilesOfTheSameBytesForItsOwn() throws IOException {
    Files.createDirectories(temp.resolve("out"));
    Files.writeString(file("a.json"), "same");
    Files.writeString(file(".a.json.1.part"), "sa");
    write(false, "a.json", "same");
    write(false, "a.json", "new");

    assertThat(text("a.json")).isEqualTo("new");
    assertThat(names()).containsExactly(".a.json.1.part", "a.json", "manifest.json");
  }

  @Test
  void isNotBlockedByWhatKilledRunsLeft() throws IOException {
    Files.createDirectories(temp.resolve("out"));
    for (var i = 1; i <= 150; i++) {
      Files.writeString(file(".a.json." + i + ".part"), "half");
    }
    Files.writeString(file(".b.json.1.part"), "of something else");
    for (var old : List.of(".a.json.3.part", ".a.json.150.part", ".b.json.1.part")) {
      Files.setLastModifiedTime(file(old), FileTime.from(Instant.now().minus(Duration.ofHours(2))));
    }
    write(false, "a.json", "new");

    assertThat(text("a.json")).isEqualTo("new");
    assertThat(names())
        .hasSize(148 + 3)
        .contains(".b.json.1.part", ".a.json.4.part")
        .doesNotContain(".a.json.3.part", ".a.json.150.part", ".a.json.151.part");
  }

  /** Each run of the loop ends between two other files, as by a kill: nothing is cleaned up. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void goesOnWhereARunWasKilledBetweenItsFiles(int moved) throws Exception {
    write(false, "a.json", "old", "b.json", "old");
    var classes = System.getProperty("java.class.path");
    var killed = new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            classes,
            KilledRun.class.getName(),
            temp.resolve("out").toString(),
            String.valueOf(moved))
        .redirectErrorStream(true)
        .start();
    assertThat(new String(killed.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
        .isEmpty();
    assertThat(killed.waitFor()).isEqualTo(137);

    for (var name : List.of("a.json", "b.json")) {
      assertThat(text(name)).isIn("old", "killed");
    }
    assertThat(names()).contains(".manifest.json.1.part");
    assertThat(text("a.json")).isEqualTo(moved > 0 ? "killed" : "old");
    write(false, "a.json", "newer", "b.json", "newer");
    assertThat(text("a.json")).isEqualTo("newer");
    assertThat(text("b.json")).isEqualTo("newer");

    Files.writeString(file("b.json"), "edited");
    refuses(
        "out/b.json: must be as this tool wrote it, but was changed since. Maybe move it away, or replace it with --force.",
        "b.json",
        "newest");
  }

  /** Writes into a folder and ends after so many files, with nothing run at its end. */
  static final class KilledRun {
    private KilledRun() {}

    public static void main(String[] args) {
      var left = new AtomicInteger(Integer.parseInt(args[1]));
      new OutputFolder(Path.of(args[0]), false, (from, to) -> {
            if (left.getAndDecrement() == 0) {
              Runtime.getRuntime().halt(137);
            }
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
          })
          .write(texts("a.json", "killed", "b.json", "killed"));
    }
  }

  @Test
  void takesAFolderAsItIsMeant() throws IOException {
    new OutputFolder(temp.resolve("not-there/../out/."), false).write(texts("a.json", "new"));

    assertThat(text("a.json")).isEqualTo("new");
    assertThat(temp.resolve("not-there")).doesNotExist();
  }

  @Test
  void refusesAFileInPlaceOfTheFolder() throws IOException {
    Files.writeString(temp.resolve("out"), "mine");

    refuses("out: must be a folder, but cannot be made one.", "a.json", "new");

    assertThat(temp.resolve("out")).hasContent("mine");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../a", "a/b", ".a", "", "manifest.json"})
  void takesSimpleNamesOnly(String name) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> write(false, name, "x"))
        .withMessage("name must be a simple one other than manifest.json, but is " + name + ".");
  }

  private void write(boolean force, String... namesAndTexts) {
    new OutputFolder(temp.resolve("out"), force).write(texts(namesAndTexts));
  }

  private void refuses(String lines, String... namesAndTexts) {
    assertThatExceptionOfType(CannotCreateException.class)
        .isThrownBy(() -> write(false, namesAndTexts))
        .withMessage(lines.replaceAll("(?m)^out", temp.resolve("out").toString()));
  }

  private static Map<String, String> texts(String... namesAndTexts) {
    var texts = new LinkedHashMap<String, String>();
    for (var i = 0; i < namesAndTexts.length; i += 2) {
      texts.put(namesAndTexts[i], namesAndTexts[i + 1]);
    }
    return texts;
  }

  private Path file(String name) {
    return temp.resolve("out").resolve(name);
  }

  private String text(String name) throws IOException {
    return Files.readString(file(name));
  }

  private List<String> names() throws IOException {
    try (var files = Files.list(temp.resolve("out"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
