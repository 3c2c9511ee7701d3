package pappus.cli;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
    name = "pappus",
    description = "Chooses the parts of a small camera quad for the longest flight, and says why.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    subcommands = {
      NewCommand.class,
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
      OrderCommand.class,
      CheckCommand.class,
      DescribeCommand.class,
      CalibrateCommand.class,
      ImportCommand.class,
      CompletionCommand.class,
      HelpCommand.class
    },
    footerHeading = "%nExamples:%n",
    footer = {"pappus recommend scenarios/bird-survey.json", "pappus help recommend"},
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:the answer is no: nothing feasible, the build breaks a rule or limit, relax found nothing that helps, verify did not confirm, or warnings under --strict",
      "2:wrong usage",
      "65:bad data",
      "66:missing input",
      "70:a bug of ours, or memory ran out",
      "73:a result cannot be created",
      "74:read or write error, standard output too",
      "129:hung up, as a closed terminal does; the best so far is written",
      "130:interrupted, the best so far is written",
      "143:terminated, the best so far is written"
    })
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    var standard = new StandardOutput();
    // A pipe that is read as UTF-8 gets UTF-8, whatever the machine's locale.
    var out = new PrintWriter(new OutputStreamWriter(standard, StandardCharsets.UTF_8), false);
    var err = new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
    var code = commandLine().setOut(out).setErr(err).execute(args);
    out.flush();
    var loss = standard.loss();
    if (loss.isPresent()) {
      err.println("Standard output must be writable, but %s.".formatted(loss.get()));
      code = code == ExitCode.OK || code == ExitCode.NO ? ExitCode.IO : code;
    }
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
            .exitCodeList(usage.exitCodeList())
            .footerHeading(usage.footerHeading()));
    return Failures.reported(line.setCaseInsensitiveEnumValuesAllowed(true)
        // A file whose name begins so is a file, and what it holds is no command.
        .setExpandAtFiles(false));
  }
}
