package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.files.Source;
import pappus.shop.SmallShop;
import tools.jackson.databind.json.JsonMapper;

/** Full disks and signals: what is there is whole, and the next run goes on. */
@Tag("slow")
@EnabledOnOs(OS.LINUX)
class FaultsTest {
  @TempDir
  private Path folder;

  private Path work;

  @BeforeEach
  void write() throws IOException {
    work = Files.createDirectory(folder.resolve("work"));
    CommandRun.write(work, SmallShop.few(), "");
  }

  private static final String[] RECOMMEND = {
    "recommend", "marsh.json", "--no-shipped-catalog", "--catalog", "parts", "--quiet", "--report"
  };

  /** Every file that the manifest lists is there as it says, and there is nothing else. */
  private void assertWhole(Path out) throws IOException {
    if (!Files.exists(out)) {
      return;
    }
    try (var files = Files.list(out)) {
      for (var file : files.toList()) {
        var name = file.getFileName().toString();
        assertThat(name).isIn("manifest.json", "result.json", "report.html");
        assertThat(Files.size(file)).isPositive();
        if (name.endsWith(".json")) {
          JsonMapper.shared().readTree(Files.readAllBytes(file));
        }
      }
    }
    if (Files.exists(out.resolve("manifest.json"))) {
      var manifest = JsonMapper.shared().readTree(Files.readAllBytes(out.resolve("manifest.json")));
      for (var listed : manifest.path("files")) {
        var bytes = Files.readAllBytes(out.resolve(listed.path("name").asString()));
        assertThat(Source.sha256(bytes)).isEqualTo(listed.path("sha256").asString());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"size=64k, 74", "'size=8m,nr_inodes=3', 74", "ro, 73"})
  void aDiskThatIsFullLeavesNothingHalf(String limit, int code) throws Exception {
    var mountable = new ProcessBuilder("unshare", "-m", "true").redirectErrorStream(true);
    assumeTrue(permits(mountable), "skipped: no file system may be mounted here");
    Files.createDirectory(work.resolve("room"));
    var limits = limit.equals("ro") ? "size=1m" : limit;
    var script = """
        exec unshare -m sh -c 'mount -t tmpfs -o %s tmpfs room || exit 99
        [ "%s" != ro ] || mount -o remount,ro room
        "$@"; code=$?; ls -A room/out 2>/dev/null >listed; exit $code' sh "$@" --out room/out
        """.formatted(limits, limit);
    var run = ToolProcess.run(script, work, List.of(), RECOMMEND);

    assertThat(run.code()).as(run.err()).isEqualTo(code);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).startsWith("room/out").doesNotContain("Exception", ".part");
    assertThat(Files.readString(work.resolve("listed"))).isEmpty();
  }

  private static boolean permits(ProcessBuilder command) throws InterruptedException {
    try {
      return command.start().waitFor() == 0;
    } catch (IOException notInstalled) {
      return false;
    }
  }

  @Test
  void aLimitOnFilesLeavesNothingHalf() throws Exception {
    var run = ToolProcess.run("ulimit -f 8; exec \"$@\" --out out", work, List.of(), RECOMMEND);

    assertThat(run.code()).isEqualTo(ExitCode.IO);
    assertThat(run.err()).startsWith("out/").contains("file too large").doesNotContain("Exception");
    assertThat(work.resolve("out")).isEmptyDirectory();
  }

  /** At ten moments from the start to the end of a run. */
  @Test
  void aSignalLeavesWhatIsWhole() throws Exception {
    var begun = System.nanoTime();
    assertThat(ToolProcess.run("exec \"$@\" --out first", work, List.of(), RECOMMEND)
            .code())
        .isEqualTo(ExitCode.OK);
    var whole = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
    var signals = List.of("INT", "TERM", "HUP");
    for (var moment = 0; moment < 10; moment++) {
      var out = "out" + moment;
      var signal = signals.get(moment % 3);
      var run = ToolProcess.start("exec \"$@\" --out " + out, work, List.of(), List.of(RECOMMEND));
      run.process().waitFor(whole * (moment + 1) / 11, TimeUnit.MILLISECONDS);
      new ProcessBuilder("kill", "-" + signal, String.valueOf(run.process().pid()))
          .start()
          .waitFor();
      var ended = run.end();

      assertThat(ended.code()).as(signal + " at moment " + moment).isIn(0, 1, 129, 130, 143);
      assertThat(ended.err()).doesNotContain("Exception");
      assertWhole(work.resolve(out));
    }
    var again = ToolProcess.run("exec \"$@\" --out out5", work, List.of(), RECOMMEND);
    assertThat(again.code()).as(again.err()).isEqualTo(ExitCode.OK);
    assertWhole(work.resolve("out5"));
  }
}
