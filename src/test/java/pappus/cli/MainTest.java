package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  private static final String[] CODES = {
    "0", "1", "2", "65", "66", "70", "73", "74", "129", "130", "143"
  };

  @Test
  void helpNamesTheCommands() {
    var run = CommandRun.of("--help");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains("recommend", "assess", "--help", "--version");
    assertThat(run.err()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"recommend", "assess"})
  void helpOfACommandListsItsOptions(String command) {
    var run = CommandRun.of(command, "--help");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .contains(
            "SCENARIO",
            "--catalog=FOLDER",
            "--no-shipped-catalog",
            "--format=text|json",
            "--out=FOLDER",
            "--force",
            "--quiet",
            "--help",
            "--version");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "recommend", "assess"})
  void helpListsEveryExitCode(String command) {
    var run = command.isEmpty() ? CommandRun.of("--help") : CommandRun.of(command, "--help");

    assertThat(run.out().lines().map(String::strip).dropWhile(line -> !line.equals("Exit codes:")))
        .filteredOn(line -> line.matches("\\d.*"))
        .extracting(line -> line.replaceAll(" .*", ""))
        .containsExactly(CODES);
  }

  @Test
  void ownOptionsAreInTheHelpOfTheirCommand() {
    assertThat(CommandRun.of("recommend", "--help").out()).contains("--count=N");
    assertThat(CommandRun.of("assess", "--help").out())
        .contains("BUILD", "RESULT.json#2")
        .doesNotContain("--count");
  }

  @Test
  void theVersionNamesCommitAndJava() {
    var run = CommandRun.of("--version");

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .contains("pappus ", ", commit ", "Java " + System.getProperty("java.version"));
  }

  @Test
  void wrongUsageIsTwoAndSaysSoOnStandardError() {
    assertUsage("recommend", "scenarios/bird-survey.json", "--nonsense");
    assertUsage("recommend", "scenarios/bird-survey.json", "--format", "xml");
    assertUsage("recommend");
    assertUsage("assess", "scenarios/bird-survey.json");
    assertUsage("recomend");
  }

  private static void assertUsage(String... args) {
    var run = CommandRun.of(args);
    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isNotBlank();
  }
}
