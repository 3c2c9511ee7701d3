package pappus.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Completion for a shell. */
@Command(
    name = "completion",
    description =
        "Prints a script that completes commands and options in bash and zsh: source <(pappus completion)",
    footer = {"source <(pappus completion)", "pappus completion > pappus_completion.sh"})
final class CompletionCommand implements Callable<Integer> {
  @Spec
  private CommandSpec spec;

  @Override
  public Integer call() {
    var root = spec.root().commandLine();
    var out = Printer.out(spec.commandLine());
    out.document(AutoComplete.bash(root.getCommandName(), root));
    return ExitCode.OK;
  }
}
