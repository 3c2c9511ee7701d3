package pappus.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual, from the model of the command line: one page of Markdown, or a man page for each command. */
public final class Manual {
  /** What so many commands have in the same words, the page of all commands says once. */
  private static final int SHARED_BY = 4;

  private static final String DAY = "2026-05-31";
  private static final int LAST_OF_ASCII = 126;

  private static final Pattern OPTION = Pattern.compile("--[a-z-]+");
  private static final Pattern LINE = Pattern.compile("(.{1,76}|\\S+)(?: |$)");

  private final CommandSpec root = Main.commandLine().getCommandSpec();
  private final List<CommandSpec> commands =
      root.subcommands().values().stream().map(CommandLine::getCommandSpec).toList();

  Manual() {}

  /**
   * Writes the man pages.
   *
   * @param args the folder for them, and the day or moment in ISO 8601 that they bear
   * @throws IOException if they cannot be written
   */
  public static void main(String[] args) throws IOException {
    var folder = Files.createDirectories(Path.of(args[0]));
    for (var page : new Manual().manPages(args[1].substring(0, DAY.length())).entrySet()) {
      Files.writeString(folder.resolve(page.getKey()), page.getValue());
    }
  }

  /** What each command answers, as a table in Markdown. */
  String table() {
    var rows = new LinkedHashMap<String, String>();
    commands.forEach(
        command -> rows.put(command.name() + arguments(command), description(command)));
    return table("command", "answers", rows);
  }

  /** Every command with its arguments, options and examples, and the exit codes, in Markdown. */
  String markdown() {
    var shared = shared();
    var page = new StringBuilder();
    for (var command : commands) {
      var own = meanings(command);
      var common = new LinkedHashMap<>(own);
      common.entrySet().retainAll(shared.entrySet());
      own.entrySet().removeAll(shared.entrySet());
      page.append("## ").append(command.name()).append("\n\n");
      page.append(marked(description(command))).append("\n\n```sh\n");
      page.append(String.join("\n", command.usageMessage().footer())).append("\n```\n\n");
      page.append(own.isEmpty() ? "" : table("argument, option", "meaning", own) + "\n");
      page.append("Shared: ").append(names(common)).append(".\n\n");
    }
    page.append("## Shared options\n\n").append(table("option", "meaning", shared));
    page.append("\n## Exit codes\n\n")
        .append(table("code", "meaning", root.usageMessage().exitCodeList()));
    return page.toString();
  }

  /** The man page of each command, by the name of its file. */
  Map<String, String> manPages(String day) {
    var pages = new TreeMap<String, String>();
    pages.put("pappus.1", manPage(root, day));
    commands.forEach(
        command -> pages.put(command.qualifiedName("-") + ".1", manPage(command, day)));
    return pages;
  }

  private static String description(CommandSpec command) {
    return String.join(" ", command.usageMessage().description());
  }

  /** What is typed behind its name, options left out. */
  private static String arguments(CommandSpec command) {
    return command.parent() == null
        ? " COMMAND"
        : command.positionalParameters().stream()
            .map(each -> " " + typed(each))
            .collect(Collectors.joining());
  }

  private static String typed(PositionalParamSpec each) {
    var label = each.paramLabel() + (each.arity().max() > 1 ? "…" : "");
    return each.arity().min() == 0 ? "[" + label + "]" : label;
  }

  private static String typed(OptionSpec each) {
    var names = String.join(", ", each.names());
    return each.arity().max() == 0 ? names : names + " " + each.paramLabel();
  }

  /** Arguments, then options by name, each with its meaning. */
  private static Map<String, String> meanings(CommandSpec command) {
    var all = new LinkedHashMap<String, String>();
    command.positionalParameters().forEach(each -> all.put(each.paramLabel(), meaning(each)));
    command.options().stream()
        .sorted(Comparator.comparing(OptionSpec::longestName))
        .forEach(each -> all.put(typed(each), meaning(each)));
    return all;
  }

  private static String meaning(ArgSpec each) {
    var meaning = String.join(" ", each.description());
    return each.isOption() && each.required() ? meaning + " Must be given." : meaning;
  }

  private Map<String, String> shared() {
    var all = commands.stream().map(Manual::meanings).toList();
    var shared = new LinkedHashMap<String, String>();
    all.forEach(each -> each.forEach((typed, meaning) -> {
      if (all.stream().filter(other -> meaning.equals(other.get(typed))).count() >= SHARED_BY) {
        shared.putIfAbsent(typed, meaning);
      }
    }));
    return shared;
  }

  private static String table(String left, String right, Map<String, String> rows) {
    return rows.entrySet().stream()
        .map(row -> "| `%s` | %s |\n".formatted(cell(row.getKey()), cell(marked(row.getValue()))))
        .collect(Collectors.joining("", "| %s | %s |\n| --- | --- |\n".formatted(left, right), ""));
  }

  private static String names(Map<String, String> meanings) {
    return meanings.keySet().stream()
        .map(typed -> "`" + cell(typed) + "`")
        .collect(Collectors.joining(", "));
  }

  /** Two hyphens are no dash. */
  private static String marked(String text) {
    return OPTION.matcher(text).replaceAll("`$0`");
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }

  private String manPage(CommandSpec command, String day) {
    var name = command.qualifiedName("-");
    var lines = new ArrayList<String>();
    lines.add(".TH %s 1 %s pappus".formatted(roff(name.toUpperCase(Locale.ROOT)), day));
    lines.add(".SH NAME");
    lines.add(prose(name + " - " + description(command)));
    lines.add(".SH SYNOPSIS");
    lines.add(roff(command.qualifiedName() + " [OPTION…]" + arguments(command)));
    add("OPTIONS", meanings(command), lines);
    if (command == root) {
      var all = new LinkedHashMap<String, String>();
      commands.forEach(each -> all.put(each.name(), description(each)));
      add("COMMANDS", all, lines);
    }
    add("\"EXIT STATUS\"", root.usageMessage().exitCodeList(), lines);
    lines.addAll(List.of(".SH EXAMPLES", ".nf"));
    for (var example : command.usageMessage().footer()) {
      lines.add(roff(example));
    }
    lines.addAll(List.of(".fi", ".SH \"SEE ALSO\""));
    var others = command == root ? commands : List.of(root);
    lines.add(others.stream()
        .map(other -> "\\fB%s\\fR(1)".formatted(roff(other.qualifiedName("-"))))
        .collect(Collectors.joining(",\n")));
    return String.join("\n", lines) + "\n";
  }

  private static void add(String title, Map<String, String> meanings, List<String> lines) {
    lines.add(".SH " + title);
    meanings.forEach(
        (typed, meaning) -> lines.addAll(List.of(".TP", ".B " + roff(typed), prose(meaning))));
  }

  /** A text in lines of a length that readers of the source like. */
  private static String prose(String text) {
    return LINE.matcher(roff(text))
        .results()
        .map(line -> (line.group(1).matches("[.'].*") ? "\\&" : "") + line.group(1))
        .collect(Collectors.joining("\n"));
  }

  /** A text that the formatter takes as it is. */
  private static String roff(String text) {
    var safe = new StringBuilder();
    text.codePoints().forEach(each -> {
      if (each == '\\') {
        safe.append("\\e");
      } else if (each == '-') {
        safe.append("\\-");
      } else if (each > LAST_OF_ASCII) {
        safe.append(String.format(Locale.ROOT, "\\[u%04X]", each));
      } else {
        safe.appendCodePoint(each);
      }
    });
    return safe.toString();
  }
}
