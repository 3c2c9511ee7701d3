package pappus.catalog;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a fresh Java process loads, which is what every run of the command line waits for. */
@Tag("slow")
class StartTest {
  @TempDir
  private Path folder;

  @Test
  void goodFilesAreReadWithoutTheSchemaValidator() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("straps.json"), Examples.file("straps", Examples.strap("s")));
    Files.writeString(folder.resolve("motors.json"), Examples.file("motors", Examples.motor("m")));

    var log = classesLoaded();

    assertThat(log).contains("2 parts in", "pappus.files.json.JsonReader");
    assertThat(log).doesNotContain("com.networknt", "pappus.files.json.JsonDiagnosis");
  }

  @Test
  void wrongFilesAreReadWithIt() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("motors.json"), Examples.file("motors", "{}"));

    assertThat(classesLoaded()).contains("com.networknt", "pappus.files.json.JsonDiagnosis");
  }

  private String classesLoaded() throws IOException, InterruptedException {
    var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    var log = folder.resolve("log.txt");
    new ProcessBuilder(
            java,
            "-Xlog:class+load",
            "-cp",
            System.getProperty("java.class.path"),
            LoadTime.class.getName(),
            folder.toString())
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start()
        .waitFor();
    return Files.readString(log, UTF_8);
  }
}
