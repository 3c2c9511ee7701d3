package pappus.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Runs the examples of documents in a folder of their own, and writes each document with what the commands say now.
 *
 * <p>A block {@code console} holds commands behind {@code $} and what they print; a line {@code …} in it stands for
 * what is left out, so that as many lines before and behind it are held to the command as are there. A command that
 * does not end with 0 is followed by {@code echo $?}. A block with a file behind its language, such as {@code json
 * mine/shelf.json}, is that file. A block {@code sh} holds commands that only have to give an answer.
 */
final class Examples {
  /** What most examples go on from; its files are there at the beginning of each document. */
  private static final String SURVEY = "recommend scenarios/bird-survey.json";

  private static final String LEFT_OUT = "…";
  private static final String PROMPT = "$ ";
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)(?: (\\S+))?\n(.*?)^```$");
  private static final Pattern CONTINUED = Pattern.compile("\\\\\n\\s*");
  private static final Path GIVEN = Path.of("src/test/resources/pappus/cli/examples");
  private static final Path BENCH =
      Path.of("src/test/resources/pappus/calibration/motor_propeller_bench.csv");

  /** What is no example of ours, or takes many minutes. */
  private static final List<Pattern> NOT_RUN = List.of(
      Pattern.compile("(mvn|apt-get|source|git|man|time) .*"),
      Pattern.compile("pappus verify out/bird-survey/result.json"),
      // A minute and more on two processors each; that of the drawer is run.
      Pattern.compile("(target/)?pappus order scenarios/neap-tarn/order.json.*"),
      Pattern.compile("pappus sheet out/neap-tarn/order.json#.*"));

  private final ExampleShell shell = new ExampleShell();

  private Examples() throws IOException, InterruptedException {
    prepare();
    shell.runOnce(SURVEY);
    copy(Path.of("out"), Path.of("../out"));
  }

  /**
   * Runs in {@code target/documents/work}, among links to scenarios, sources and catalogue.
   *
   * @param args the documents; each is written into the folder {@code fresh} beside
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    var examples = new Examples();
    for (var name : args) {
      examples.prepare();
      var file = Path.of("../fresh", name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, examples.fresh(Files.readString(Path.of("../../..", name))));
    }
  }

  /** A folder with nothing in it. */
  static void empty(Path folder) throws IOException {
    Files.createDirectories(folder);
    try (var files = Files.walk(folder)) {
      for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
        if (!file.equals(folder)) {
          Files.delete(file);
        }
      }
    }
  }

  private void prepare() throws IOException {
    var here = Path.of("").toAbsolutePath();
    empty(here);
    for (var name : List.of("scenarios", "src", "catalog")) {
      Files.createSymbolicLink(here.resolve(name), Path.of("../../..", name));
    }
    if (Files.exists(Path.of("../out"))) {
      copy(Path.of("../out"), Path.of("out"));
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var files = Files.walk(from)) {
      for (var file : files.toList()) {
        var target = to.resolve(from.relativize(file));
        if (!Files.exists(target)) {
          Files.copy(file, target);
        }
      }
    }
  }

  private String fresh(String text) throws IOException, InterruptedException {
    var fresh = new StringBuilder();
    var block = BLOCK.matcher(text);
    while (block.find()) {
      var replacement = block.group();
      if (block.group(2) != null) {
        var file = Path.of(block.group(2));
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, block.group(3));
      } else if (block.group(1).equals("console")) {
        replacement = "```console\n" + console(block.group(3)) + "```";
      } else if (block.group(1).equals("sh")) {
        runAll(block.group(3));
      }
      block.appendReplacement(fresh, Matcher.quoteReplacement(replacement));
    }
    return block.appendTail(fresh).toString();
  }

  private void runAll(String commands) throws IOException, InterruptedException {
    copy(GIVEN, Path.of(""));
    copy(BENCH, Path.of("bench.csv"));
    copy(BENCH, Path.of("other.csv"));
    for (var line : CONTINUED.matcher(commands).replaceAll("").lines().toList()) {
      if (NOT_RUN.stream().noneMatch(pattern -> pattern.matcher(line).matches())) {
        run(line, true);
        if (shell.code() > ExitCode.NO) {
          throw new IllegalStateException(line + "\n" + shell.errors());
        }
      }
    }
  }

  private String console(String block) throws IOException, InterruptedException {
    var fresh = new StringBuilder();
    var steps = block.split("(?m)^(?=\\$ )", -1);
    for (var i = 0; i < steps.length; i++) {
      var next = i + 1 < steps.length ? steps[i + 1].strip() : "";
      fresh.append(step(steps[i], next));
    }
    return fresh.toString();
  }

  /** A command as it is typed, perhaps over several lines, and what it prints. */
  private String step(String step, String next) throws IOException, InterruptedException {
    var lines = step.lines().toList();
    var typed = 1;
    while (lines.get(typed - 1).endsWith("\\")) {
      typed++;
    }
    var command = String.join("\n", lines.subList(0, typed));
    var line = CONTINUED.matcher(command.substring(PROMPT.length())).replaceAll("");
    var printed = run(line, next.startsWith("$ echo $?"))
        .stripTrailing()
        .lines()
        .map(String::stripTrailing)
        .toList();
    var fresh = new ArrayList<>(List.of(command));
    fresh.addAll(shortened(printed, lines.subList(typed, lines.size())));
    return String.join("\n", fresh) + "\n";
  }

  /** As much of what is printed as was shown. */
  private static List<String> shortened(List<String> printed, List<String> shown) {
    var head = shown.indexOf(LEFT_OUT);
    var tail = shown.size() - head - 1;
    if (head < 0 || printed.size() <= head + tail) {
      return printed;
    }
    var parts = new ArrayList<>(printed.subList(0, head));
    parts.add(LEFT_OUT);
    parts.addAll(printed.subList(printed.size() - tail, printed.size()));
    return parts;
  }

  /** What a command prints; where it may say no, any answer will do. */
  private String run(String line, boolean mayFail) throws IOException, InterruptedException {
    System.err.println(line);
    var printed = shell.run(line);
    if (shell.code() != 0 && !mayFail) {
      throw new IllegalStateException(
          "%s\nends with %s.\n%s%s".formatted(line, shell.code(), printed, shell.errors()));
    }
    return printed;
  }
}
