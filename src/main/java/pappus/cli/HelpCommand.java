package pappus.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.files.Closest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How a command is used. */
@Command(
    name = "help",
    description =
        "Says how a command is used, with examples; without one, which commands there are.",
    helpCommand = true,
    footer = {"pappus help", "pappus help recommend"})
final class HelpCommand implements Callable<Integer> {
  @Spec
  private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "COMMAND", description = "One of the commands.")
  private @Nullable String name;

  @Override
  public Integer call() {
    var root = spec.root().commandLine();
    var commands = root.getSubcommands();
    var asked = name == null ? root : commands.get(name);
    if (asked == null) {
      throw new ParameterException(
          spec.commandLine(),
          "COMMAND must be one of %s, but is %s.%s"
              .formatted(
                  String.join(", ", commands.keySet()),
                  name,
                  Closest.advice(String.valueOf(name), commands.keySet())));
    }
    Printer.out(spec.commandLine()).document(asked.getUsageMessage());
    return ExitCode.OK;
  }
}
