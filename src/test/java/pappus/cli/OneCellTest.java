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

/** Quads on one cell, from shipped parts. */
class OneCellTest {
  private static final String BUILD =
      "samphire-3,cypsela-1103-7000*4,awn-3x2.5x2*4,groyne-1s-1400,runlet-8-one,glowmoss-200,"
          + "newteye-14-feather,sandrigal-small,stipule-u,dewpond-220-16,tether-one-22";

  @TempDir
  private Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("one.json"), """
        {"massCap": 100, "leastThrustToWeight": 1.8,
         "air": {"altitudeMetres": 5}, "flight": {"style": "hover"}}
        """);
  }

  private CommandRun assess(String build, String... more) {
    var args = new ArrayList<>(
        List.of("assess", CommandRun.typed(folder).resolve("one.json").toString(), build));
    args.addAll(List.of(more));
    return CommandRun.of(args);
  }

  @Test
  void fliesAsPeopleFlyIt() {
    var run = assess(BUILD, "--format", "json");

    assertThat(run.exitCode()).as(run.out()).isEqualTo(ExitCode.OK);
    var build = run.json().path("build");
    assertThat(build.path("milliseconds").asLong() / 60_000.0).isBetween(8.0, 18.0);
  }

  @Test
  void aLabelBehindASmallPlugDoesNotFly() {
    var run = assess(
        BUILD.replace("groyne-1s-1400", "driblet-1s-850").replace("tether-one-22", "tether-ph-24"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains("Limit (plug-current)");
  }

  @Test
  void aBoardWhoseRailEndsEarlyFeedsNoTransmitter() {
    var run = assess(
        BUILD.replace("runlet-8-one", "runlet-12-one").replace("groyne-1s-1400", "driblet-1s-650"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("Clash (input-window): glowmoss-200 takes 4.8 to 5.6 V");
  }
}
