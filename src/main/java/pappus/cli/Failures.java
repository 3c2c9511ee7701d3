package pappus.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pappus.answers.result.Refusal;
import pappus.files.Closest;
import pappus.files.InputException;
import pappus.files.output.CannotCreateException;
import picocli.CommandLine;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.ParseResult;

/** What a run says that came to no answer, and its exit code. */
final class Failures {
  private Failures() {}

  /** Has a command line report whatever goes wrong in it. */
  static CommandLine reported(CommandLine line) {
    return line.setParameterExceptionHandler(Failures::usage)
        .setExecutionStrategy(Failures::run)
        .setExecutionExceptionHandler(Failures::report);
  }

  /** What is typed wrongly is one line, and where to read more. */
  private static int usage(CommandLine.ParameterException wrong, String[] args) {
    var command = wrong.getCommandLine();
    var near = wrong instanceof CommandLine.UnmatchedArgumentException unknown
        ? Closest.to(unknown.getUnmatched().get(0), names(command))
            .map(name -> ". Maybe " + name + " was meant")
            .orElse("")
        : "";
    var more = near + "; " + command.getCommandSpec().qualifiedName() + " --help says more.";
    var message = String.valueOf(wrong.getMessage()).replaceAll("\\s*\\R\\s*", " ");
    Printer.err(command).line(message.replaceAll("\\.$", "") + more);
    return ExitCode.USAGE;
  }

  /** Commands and options that could have been typed. */
  private static List<String> names(CommandLine command) {
    var names = new ArrayList<>(command.getSubcommands().keySet());
    command.getCommandSpec().options().forEach(option -> names.addAll(List.of(option.names())));
    return names;
  }

  /** The parser hands on exceptions alone: errors would end the machine with the code of an answer. */
  private static int run(ParseResult parsed) {
    try {
      return new CommandLine.RunLast().execute(parsed);
    } catch (Error failed) {
      var commands = parsed.asCommandLineList();
      throw new ExecutionException(
          commands.get(commands.size() - 1), String.valueOf(failed.getMessage()), failed);
    }
  }

  /** The user's mistakes are one line each; ours keep their stack trace. */
  private static int report(Exception e, CommandLine command, ParseResult parsed) {
    if (e instanceof InputException wrong) {
      var lines = wrong.problems().stream().map(Object::toString).toList();
      return say(command, "bad-data", lines, ExitCode.of(wrong.kind()));
    }
    if (e instanceof CannotCreateException) {
      return say(command, String.valueOf(e.getMessage()).lines().toList(), ExitCode.CANNOT_CREATE);
    }
    if (e instanceof CommandLine.ParameterException usage) {
      Printer.err(command).line(usage.getMessage());
      return ExitCode.USAGE;
    }
    if (e instanceof IOException io) {
      return say(command, List.of(line(io)), ExitCode.IO);
    }
    if (e instanceof UncheckedIOException unchecked && unchecked.getCause() != null) {
      return say(command, List.of(line(unchecked.getCause())), ExitCode.IO);
    }
    var exhausted = exhausted(e);
    if (exhausted.isPresent()) {
      return say(command, List.of(exhausted.get()), ExitCode.BUG);
    }
    var first = "This is a bug of ours; please report it with what follows.";
    say(command, List.of(first), ExitCode.BUG);
    var trace = new StringWriter();
    e.printStackTrace(new PrintWriter(trace));
    trace.toString().lines().forEach(line -> Printer.err(command).line(line.replace("\t", "    ")));
    return ExitCode.BUG;
  }

  private static int say(CommandLine command, List<String> lines, int code) {
    return say(command, "failed", lines, code);
  }

  /** Lines for a person and, where it was asked for, one document for a machine. */
  private static int say(CommandLine command, String status, List<String> lines, int code) {
    lines.forEach(Printer.err(command)::line);
    if (command.getCommand() instanceof JsonAnswer asked && asked.wantsJson()) {
      Printer.out(command).document(Refusal.of(status, lines));
    }
    return code;
  }

  /** The machine's own words name the class of what happened, and not always the file. */
  private static String line(IOException e) {
    return e instanceof FileSystemException named && named.getFile() != null
        ? "%s: must be readable and writable, but %s. Maybe make room there, or name another folder."
            .formatted(named.getFile(), reason(named))
        : "Reading or writing failed: %s.".formatted(reason(e));
  }

  /** Why the system would not, without a capital or a stop. */
  static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "is missing";
    }
    if (e instanceof AccessDeniedException) {
      return "access is denied";
    }
    var said = e instanceof FileSystemException named ? named.getReason() : e.getMessage();
    return said == null || said.isBlank()
        ? "the system does not say why"
        : said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1).replaceAll("\\.$", "");
  }

  /** What has run out in the machine, here or in a thread of the search, and what helps. */
  private static Optional<String> exhausted(Throwable failed) {
    for (var cause = failed; cause != null; cause = cause.getCause()) {
      if (cause instanceof OutOfMemoryError) {
        return Optional.of(
            "The run must do with %s MiB of memory, but needs more. Maybe give it more, as with java -Xmx4g -jar pappus.jar, or ask for less."
                .formatted(Runtime.getRuntime().maxMemory() >> 20));
      }
      if (cause instanceof StackOverflowError) {
        return Optional.of(
            "The run must do with the stack that a thread has, but needs more. Maybe give it more, as with java -Xss16m -jar pappus.jar, and report what was asked.");
      }
    }
    return Optional.empty();
  }
}
