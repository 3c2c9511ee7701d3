package pappus.cli;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The command {@code help}, and the examples that it shows. */
class HelpCommandTest {
  private static Collection<String> commands() {
    return Main.commandLine().getSubcommands().keySet();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void saysWhatTheOptionSays(String command) {
    var run = CommandRun.of("help", command);

    assertThat(run).isEqualTo(CommandRun.of(command, "--help"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains("pappus " + command).contains("Examples:");
  }

  @Test
  void withoutACommandItListsThem() {
    var run = CommandRun.of("help");

    assertThat(run).isEqualTo(CommandRun.of("--help"));
    assertThat(run.out()).contains(commands());
  }

  @Test
  void aWordThatIsNoCommandIsWrongUsage() {
    var run = CommandRun.of("help", "recomend");

    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("COMMAND must be one of new, recommend, assess, ", "Maybe recommend was meant");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandHasTwoExamplesThatCanBeTyped(String command) {
    var examples = examples(command);

    assertThat(examples).hasSizeGreaterThanOrEqualTo(2).allSatisfy(example -> {
      var typed = example.substring(example.indexOf("pappus ") + "pappus ".length());
      assertThat(typed).startsWith(command);
      if (!typed.matches(".*[)>].*")) {
        var words = ExampleShell.words(typed).toArray(String[]::new);
        assertThatCode(() -> Main.commandLine().parseArgs(words)).doesNotThrowAnyException();
      }
    });
  }

  @ParameterizedTest
  @MethodSource("commands")
  void noExampleIsBrokenByTheWidthOfTheHelp(String command) {
    var out = CommandRun.of("help", command).out();

    assertThat(out.lines()).contains(footer(command));
  }

  private static String[] footer(String command) {
    var called = requireNonNull(Main.commandLine().getSubcommands().get(command));
    return called.getCommandSpec().usageMessage().footer();
  }

  private static List<String> examples(String command) {
    return String.join("\n", footer(command))
        .replaceAll("\\\\\\n\\s*", "")
        .lines()
        .toList();
  }
}
