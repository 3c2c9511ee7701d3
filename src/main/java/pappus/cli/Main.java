package pappus.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import pappus.answers.result.Refusal;
import pappus.document.Spoken;
import pappus.files.InputException;
import pappus.files.output.CannotCreateException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParseResult;

/** The command line. */
@Command(
    name = "pappus",
    description = "Chooses the parts of a small camera quad for the longest flight, and says why.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    subcommands = {
      RecommendCommand.class,
      AssessCommand.class,
      ExplainCommand.class,
      CompareCommand.class,
      AlternativesCommand.class,
      RelaxCommand.class,
      VaryCommand.class,
      FitsCommand.class,
      WeighCommand.class,
      VerifyCommand.class,
      SheetCommand.class,
      OfferCommand.class,
      CheckCommand.class,
      DescribeCommand.class,
      CalibrateCommand.class,
      ImportCommand.class,
      CompletionCommand.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the answer is no: nothing feasible, the build breaks a rule or limit, or warnings under --strict",
      "2:wrong usage",
      "65:bad data",
      "66:missing input",
      "70:a bug of ours",
      "73:a result cannot be created",
      "74:read or write error",
      "130:interrupted, the best so far is written",
      "143:terminated, the best so far is written"
    })
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    // A pipe that is read as UTF-8 gets UTF-8, whatever the machine's locale.
    var out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), false);
    var err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
    var code = commandLine().setOut(out).setErr(err).execute(args);
    out.flush();
    err.flush();
    Interruption.finished();
    System.exit(code);
  }

  /** The command line, with streams a test may replace. */
  static CommandLine commandLine() {
    var line = new CommandLine(new Main());
    var usage = line.getCommandSpec().usageMessage();
    line.getSubcommands()
        .values()
        .forEach(command -> command
            .getCommandSpec()
            .mixinStandardHelpOptions(true)
            .versionProvider(new Version())
            .usageMessage()
            .exitCodeListHeading(usage.exitCodeListHeading())
            .exitCodeList(usage.exitCodeList()));
    return line.setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(Main::usage)
        .setExecutionExceptionHandler(Main::report);
  }

  /** What is typed wrongly is one line, and where to read more. */
  private static int usage(CommandLine.ParameterException wrong, String[] args) {
    var command = wrong.getCommandLine();
    var near = wrong instanceof CommandLine.UnmatchedArgumentException unknown
            && !unknown.getSuggestions().isEmpty()
        ? ". Maybe " + unknown.getSuggestions().get(0) + " was meant"
        : "";
    var more = near + "; " + command.getCommandSpec().qualifiedName() + " --help says more.";
    var message = String.valueOf(wrong.getMessage()).replaceAll("\\s*\\R\\s*", " ");
    command.getErr().println(Spoken.safe(message.replaceAll("\\.$", "") + more));
    return ExitCode.USAGE;
  }

  /** The user's mistakes are one line each; ours keep their stack trace. */
  private static int report(Exception e, CommandLine command, ParseResult parsed) {
    if (e instanceof InputException wrong) {
      wrong.problems().forEach(problem -> command.getErr().println(problem));
      if (command.getCommand() instanceof JsonAnswer asked && asked.wantsJson()) {
        command
            .getOut()
            .print(Refusal.of(wrong.problems().stream().map(Object::toString).toList()));
      }
      return switch (wrong.kind()) {
        case MISSING -> ExitCode.NO_INPUT;
        case UNREADABLE -> ExitCode.IO;
        case BAD_DATA -> ExitCode.BAD_DATA;
      };
    }
    if (e instanceof CannotCreateException) {
      command.getErr().println(e.getMessage());
      return ExitCode.CANNOT_CREATE;
    }
    if (e instanceof IOException || e instanceof UncheckedIOException) {
      command.getErr().println("Reading or writing failed: " + e.getMessage());
      return ExitCode.IO;
    }
    if (e instanceof CommandLine.ParameterException usage) {
      command.getErr().println(usage.getMessage());
      return ExitCode.USAGE;
    }
    command.getErr().println("This is a bug of ours; please report it with what follows.");
    e.printStackTrace(command.getErr());
    return ExitCode.BUG;
  }
}
