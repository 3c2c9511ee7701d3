package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The man pages. */
class ManualTest {
  @TempDir
  private Path folder;

  @Test
  void everyCommandHasAPage() {
    var commands = Main.commandLine().getSubcommands().keySet();

    assertThat(new Manual().manPages("2026-05-31").keySet())
        .containsExactlyInAnyOrderElementsOf(Stream.concat(
                Stream.of("pappus.1"), commands.stream().map(name -> "pappus-" + name + ".1"))
            .toList());
  }

  @Test
  void aPageHasItsPartsInTheirOrder() {
    var page = String.valueOf(new Manual().manPages("2026-05-31").get("pappus-recommend.1"));

    assertThat(page.lines().filter(line -> line.startsWith(".SH ")))
        .containsExactly(
            ".SH NAME",
            ".SH SYNOPSIS",
            ".SH OPTIONS",
            ".SH \"EXIT STATUS\"",
            ".SH EXAMPLES",
            ".SH \"SEE ALSO\"");
    assertThat(page)
        .startsWith(".TH PAPPUS\\-RECOMMEND 1 2026-05-31 pappus\n")
        .contains(".B \\-\\-count N\nHow many candidates; default: as the scenario says.\n")
        .contains("\npappus recommend scenarios/bird\\-survey.json\n");
  }

  @Test
  void noTextIsTakenForARequest() {
    for (var page : new Manual().manPages("2026-05-31").values()) {
      assertThat(page.lines().filter(line -> line.matches("[.'].*")))
          .allMatch(line -> line.matches("\\.(TH|SH|TP|B|nf|fi)( .*)?"));
      assertThat(page).matches("\\p{ASCII}*");
    }
  }

  @Test
  void aReaderOfManPagesFindsNothingWrong() throws IOException, InterruptedException {
    var reader = Stream.of("/usr/bin/mandoc", "/usr/local/bin/mandoc")
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst();
    assumeTrue(reader.isPresent(), "mandoc is not installed");
    Manual.main(new String[] {folder.toString(), "2026-05-31T00:00:00Z"});
    var command = new ArrayList<>(List.of(reader.get().toString(), "-T", "lint", "-W", "style"));
    try (var pages = Files.list(folder)) {
      pages.map(Path::toString).sorted().forEach(command::add);
    }

    var process = new ProcessBuilder(command).redirectErrorStream(true).start();

    assertThat(new String(
            process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
        .isEmpty();
    assertThat(process.waitFor()).isZero();
  }
}
