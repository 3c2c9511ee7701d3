package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import pappus.shop.SmallShop;
import tools.jackson.databind.json.JsonMapper;

/** One good file of every kind, and the commands that read them, for those who spoil them. */
final class Workbench {
  /** Exit codes that a bad file may have; the others are a bug, or for what befalls the machine. */
  static final List<Integer> CODES = List.of(
      ExitCode.OK,
      ExitCode.NO,
      ExitCode.USAGE,
      ExitCode.BAD_DATA,
      ExitCode.NO_INPUT,
      ExitCode.CANNOT_CREATE,
      ExitCode.IO);

  private static final String SCENARIO = """
      {
        "name": "marsh",
        "note": "Stand still over the reeds.",
        "massCap": {"grams": 250, "strict": true, "rule": "Below 250 g at take-off", "confidence": 0.9},
        "leastThrustToWeight": 2,
        "budget": {"amount": 400, "currency": "EUR"},
        "air": {"altitudeMetres": 5, "temperatureCelsius": 12, "packTemperatureCelsius": 20},
        "flight": {"style": "hover", "reserve": 0.1, "packAge": "used"},
        "payload": {"name": "logger", "massGrams": 2, "watts": 0.1, "xMillimetres": 0, "lengthMillimetres": 9, "widthMillimetres": 9},
        "parts": {
          "fixed": ["cottongrass-4"],
          "allowed": [{"role": "camera", "parts": ["newteye-14-feather", "newteye-14"]}],
          "excluded": ["thistledown-5"],
          "owned": ["newteye-14"]
        },
        "pilot": {"video": "analogue", "radio": "thrennel"},
        "candidates": 3,
        "unknownFacts": "keep"
      }
      """;

  private static final Map<String, String> TABLES = Map.of(
      "parts/shelf.json",
      "{\"shelf\": [{\"id\": \"newteye-14\", \"owned\": 2, \"stock\": 3, \"price\": {\"amount\": 9.50, \"currency\": \"EUR\"}, \"note\": \"spare\"}]}\n",
      "parts/flown.json",
      "{\"flown\": [{\"style\": \"hover\", \"powerFactor\": 1.05, \"doubt\": 0.02, \"flights\": 9, \"source\": \"My own.\"}]}\n",
      "stock.csv",
      "id,stock,price\ncottongrass-4,3,42.00\nspikerush-1303-3400,12,11.90\n",
      "masses.csv",
      "what,grams\ncottongrass-4,31.5\ndry,112\nready,219\n",
      "flights.csv",
      "style,minutes,charged_mah\nhover,20,1600\nhover,18,1500\n");

  private final Path folder;
  private final Map<String, String> files = new TreeMap<>();

  private Workbench(Path folder) {
    this.folder = folder;
  }

  /** Writes the good files into a folder, and a result that was made of them. */
  static Workbench in(Path folder) throws IOException {
    var bench = new Workbench(folder);
    SmallShop.write(folder.resolve("parts"), SmallShop.few());
    Files.writeString(folder.resolve("marsh.json"), SCENARIO);
    for (var table : TABLES.entrySet()) {
      Files.writeString(folder.resolve(table.getKey()), table.getValue());
    }
    for (var name : List.of("motors.csv", "shelf.csv")) {
      Files.copy(Path.of("src/test/resources/pappus/cli/examples", name), folder.resolve(name));
    }
    for (var name : List.of("shop.json", "logo.svg")) {
      Files.copy(Path.of("src/main/shop", name), folder.resolve(name));
    }
    var stand = Files.readAllLines(
        Path.of("src/test/resources/pappus/calibration/motor_propeller_bench.csv"));
    Files.write(folder.resolve("stand.csv"), stand.subList(0, Math.min(60, stand.size())));
    var found = bench.run("recommend");
    assertThat(found.exitCode()).as(found.err()).isEqualTo(ExitCode.OK);
    Files.move(bench.out().resolve("result.json"), folder.resolve("result.json"));
    bench.clear();
    try (var all = Files.walk(folder)) {
      for (var file : all.filter(Files::isRegularFile).toList()) {
        bench.files.put(
            folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return bench;
  }

  /** Every file by name, as it is when it is good. */
  Map<String, String> files() {
    return Collections.unmodifiableMap(files);
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  /** Where a command may write. */
  Path out() {
    return folder.resolve("out");
  }

  /** Makes a file good again. */
  void restore(String name) throws IOException {
    Files.writeString(file(name), files.get(name));
  }

  /** Removes what commands have written. */
  void clear() throws IOException {
    if (Files.exists(out())) {
      try (var all = Files.walk(out())) {
        for (var file : all.sorted(Collections.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** Commands that read a file of a name. */
  static List<String> reading(String name) {
    return switch (name) {
      case "marsh.json" -> List.of("recommend", "check", "assess", "verify");
      case "result.json" -> List.of("verify", "sheet", "offer", "assess-row");
      case "shop.json", "stock.csv", "logo.svg" -> List.of("offer");
      case "masses.csv", "flights.csv" -> List.of("weigh");
      case "motors.csv" -> List.of("import-motors");
      case "shelf.csv" -> List.of("import-shelf");
      case "stand.csv" -> List.of("calibrate");
      default -> List.of("recommend", "check");
    };
  }

  /** A command on the files, by its name. */
  CommandRun run(String command, String... more) {
    return CommandRun.of(words(command, more));
  }

  /** Its words. */
  List<String> words(String command, String... more) {
    var scenario = typed("marsh.json");
    var parts = List.of("--no-shipped-catalog", "--catalog", typed("parts"));
    var out = List.of("--out", typed("out"), "--quiet");
    var build = String.join(",", SmallShop.ONE_BUILD);
    return Stream.of(
            switch (command) {
              case "recommend" -> join(List.of(command, scenario, "--effort", "2000"), parts, out);
              case "check" ->
                List.of(command, "--no-shipped-catalog", "--quiet", typed("parts"), scenario);
              case "assess" -> join(List.of(command, scenario, build), parts, out);
              case "assess-row" ->
                join(List.of("assess", scenario, typed("result.json") + "#1"), parts, out);
              case "verify" ->
                List.of(command, typed("result.json"), "--effort", "2000", "--quiet");
              case "sheet" -> join(List.of(command, typed("result.json") + "#1"), out);
              case "offer" ->
                join(
                    List.of(command, typed("result.json"), "--date", "2026-05-31"),
                    List.of("--settings", typed("shop.json"), "--stock", typed("stock.csv")),
                    out);
              case "weigh" ->
                join(
                    List.of(command, scenario, build, "--masses", typed("masses.csv")),
                    List.of("--flights", typed("flights.csv")),
                    parts,
                    out);
              case "import-motors" ->
                List.of("import", typed("motors.csv"), "--kind", "motor", "--into", typed("out"));
              case "import-shelf" ->
                List.of("import", typed("shelf.csv"), "--kind", "shelf", "--into", typed("out"));
              case "calibrate" -> join(List.of(command, typed("stand.csv")), out);
              default -> List.of(command.split(" ", -1));
            },
            List.of(more))
        .flatMap(List::stream)
        .map(word -> word.replace("@", CommandRun.typed(folder).toString()))
        .toList();
  }

  @SafeVarargs
  private static List<String> join(List<String>... lists) {
    var joined = new ArrayList<String>();
    for (var list : lists) {
      joined.addAll(list);
    }
    return joined;
  }

  /** A file as it was laid out. */
  String text(String name) {
    return Objects.requireNonNull(files().get(name), name);
  }

  private String typed(String name) {
    return CommandRun.typed(folder).resolve(name).toString();
  }

  /** What holds of a run whatever was wrong: every way in which it does not, in words. */
  List<String> broken(CommandRun run, boolean asksForJson) {
    var broken = new ArrayList<String>();
    if (!CODES.contains(run.exitCode())) {
      broken.add("exit code " + run.exitCode());
    }
    var all = run.out() + run.err();
    if (all.lines().anyMatch(line -> line.matches("\\s+at [a-z.]+\\..*"))
        || all.contains("Exception")) {
      broken.add("a trace");
    }
    if (all.chars()
        .anyMatch(c -> (c < ' ' && c != '\n') || (c >= 0x7F && c < 0xA0) || c == 0x202E)) {
      broken.add("a control character");
    }
    if (all.matches("(?s).*\\b(NaN|Infinity)\\b.*") && run.exitCode() <= ExitCode.NO) {
      broken.add("no number");
    }
    var isRefused =
        List.of(ExitCode.USAGE, ExitCode.BAD_DATA, ExitCode.NO_INPUT).contains(run.exitCode());
    if (isRefused && run.err().isBlank() && !asksForJson) {
      broken.add("no word of why");
    }
    if (isRefused && Files.exists(out())) {
      broken.add("a folder of results");
    }
    if (asksForJson && run.exitCode() != ExitCode.USAGE) {
      try {
        JsonMapper.shared().readTree(run.out());
      } catch (RuntimeException notJson) {
        broken.add("no JSON: " + notJson.getMessage());
      }
      if (run.out().isBlank()) {
        broken.add("no JSON");
      }
    }
    return broken;
  }
}
