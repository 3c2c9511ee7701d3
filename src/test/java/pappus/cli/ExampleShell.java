package pappus.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Runs command lines as a shell would: the tool in this process, all else by the machine's own shell. */
final class ExampleShell {
  private static final Pattern TOOL =
      Pattern.compile("^(?:target/pappus|java -jar target/pappus\\.jar|pappus) ");
  private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");
  private static final Pattern INTO_FILE = Pattern.compile(" > (\\S+)$");
  private static final String ERRORS_TOO = " 2>&1";

  /** What is run once, since it is asked so often: what it prints by what is typed. */
  private final Map<String, String> known = new HashMap<>();

  private int code;
  private String errors = "";

  /** Runs a command of the tool, and never again. */
  void runOnce(String typed) throws IOException, InterruptedException {
    known.put(typed, run("pappus " + typed));
  }

  /** Exit code of the last line. */
  int code() {
    return code;
  }

  /** What the tool said on standard error in it. */
  String errors() {
    return errors;
  }

  /** What a line prints. */
  String run(String line) throws IOException, InterruptedException {
    if (line.equals("echo $?")) {
      var last = code + "\n";
      code = 0;
      return last;
    }
    var file = INTO_FILE.matcher(line);
    if (file.find()) {
      Files.writeString(Path.of(file.group(1)), run(line.substring(0, file.start())));
      return "";
    }
    var text = "";
    for (var stage : line.split(" \\| ", -1)) {
      text = TOOL.matcher(stage).find() ? tool(stage, text) : shell(stage, text);
    }
    return text;
  }

  private String tool(String stage, String in) {
    var out = new StringWriter();
    var both = stage.endsWith(ERRORS_TOO);
    var err = both ? out : new StringWriter();
    System.setIn(new ByteArrayInputStream(in.getBytes(UTF_8)));
    var typed = TOOL.matcher(both ? stage.replace(ERRORS_TOO, "") : stage).replaceFirst("");
    if (known.containsKey(typed)) {
      code = 0;
      return String.valueOf(known.get(typed));
    }
    code = Main.commandLine()
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err, true))
        .execute(words(typed).toArray(String[]::new));
    errors = err.toString();
    return out.toString();
  }

  static List<String> words(String line) {
    var words = new ArrayList<String>();
    WORD.matcher(line).results().forEach(word -> {
      for (var group = 1; group <= word.groupCount(); group++) {
        if (word.group(group) != null) {
          words.add(word.group(group));
        }
      }
    });
    return words;
  }

  private String shell(String stage, String in) throws IOException, InterruptedException {
    var given = Files.createTempFile("example", ".txt");
    Files.writeString(given, in);
    var process = new ProcessBuilder("sh", "-c", stage)
        .redirectInput(given.toFile())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
    var out = new String(process.getInputStream().readAllBytes(), UTF_8);
    code = process.waitFor();
    Files.delete(given);
    return out;
  }
}
