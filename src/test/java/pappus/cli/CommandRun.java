package pappus.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pappus.catalog.Catalog;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One run of the real command line.
 *
 * @param exitCode what the shell sees
 * @param out standard output
 * @param err standard error
 */
record CommandRun(int exitCode, String out, String err) {
  static CommandRun of(String... args) {
    var out = new StringWriter();
    var err = new StringWriter();
    var exitCode = Main.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err, true))
        .execute(args);
    return new CommandRun(exitCode, out.toString(), err.toString());
  }

  static CommandRun of(List<String> args) {
    return of(args.toArray(String[]::new));
  }

  /** Standard output as the one document it must be. */
  JsonNode json() {
    return JsonMapper.shared().readTree(out);
  }

  /** Lines of standard error. */
  List<String> errors() {
    return err.lines().toList();
  }

  /** A folder as typed from here, so that no absolute path is given. */
  static Path typed(Path folder) {
    return Path.of("").toAbsolutePath().relativize(folder.toAbsolutePath());
  }

  /** A catalogue and a scenario on disk. */
  static void write(Path folder, Catalog catalog, String fields) throws IOException {
    SmallShop.write(folder.resolve("parts"), catalog);
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(fields));
  }

  /**
   * A command on the scenario and the parts of a folder alone.
   *
   * @param words what stands behind the scenario
   */
  static CommandRun onParts(Path folder, String command, List<String> words, String... more) {
    var typed = typed(folder);
    var args = new ArrayList<>(List.of(command, typed.resolve("marsh.json").toString()));
    args.addAll(words);
    args.addAll(
        List.of("--no-shipped-catalog", "--catalog", typed.resolve("parts").toString()));
    args.addAll(List.of(more));
    return of(args);
  }

  /** What {@code recommend} says of a folder that was typed in, with nothing but its own catalogue. */
  static CommandRun recommend(Path typed, String... more) {
    var args = new ArrayList<>(List.of(
        "recommend",
        typed.resolve("marsh.json").toString(),
        "--no-shipped-catalog",
        "--catalog",
        typed.resolve("parts").toString(),
        "--out",
        typed.resolve("out").toString()));
    args.addAll(List.of(more));
    return of(args);
  }
}
