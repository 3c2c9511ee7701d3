package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.files.json.SchemaFields;
import pappus.part.Kind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Every number of a scenario, a catalogue and what builders note beside it, at both ends of its documented range and a
 * little beyond, one at a time: none is a bug, and what check finds nothing in is answered.
 */
@Tag("slow")
class CheckedIsAcceptedTest {
  private static final Pattern RANGE =
      Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?) to (-?[0-9]+(?:\\.[0-9]+)?)");

  @TempDir
  private Path folder;

  private Workbench bench;
  private int tried;
  private int answered;
  private final List<String> failures = new ArrayList<>();

  @BeforeEach
  void open() throws IOException {
    bench = Workbench.in(folder);
  }

  @Test
  void bothEndsOfEveryRange() throws IOException {
    tryAll("marsh.json", "scenario", "");
    for (var kind : Kind.values()) {
      var file = "parts/" + kind.fileName();
      if (bench.files().containsKey(file)) {
        tryAll(file, kind.listName(), kind.listName());
      }
    }
    for (var other : List.of("flown", "shelf")) {
      tryAll("parts/" + other + ".json", other, other);
    }

    assertThat(failures).isEmpty();
    assertThat(tried).isGreaterThan(200);
    assertThat(answered).isGreaterThan(tried / 4);
  }

  private void tryAll(String file, String schema, String list) throws IOException {
    for (var field : SchemaFields.of(schema)) {
      var range = RANGE.matcher(field.description());
      if (!field.type().contains("number") || !range.find()) {
        continue;
      }
      for (var end : List.of(range.group(1), range.group(2))) {
        var good = JsonMapper.shared().readTree(bench.files().get(file));
        if (isSet(good, list, field, end)) {
          tryOne(file, field.path() + " = " + end, good.toString());
        }
      }
    }
    bench.restore(file);
  }

  private void tryOne(String file, String what, String text) throws IOException {
    Files.writeString(bench.file(file), text);
    var check = bench.run("check");
    var run = bench.run("recommend");
    tried++;
    var broken = bench.broken(run, false);
    broken.addAll(bench.broken(check, false));
    var saysNothing = check.exitCode() == ExitCode.OK && !check.out().contains("marsh.json");
    if (saysNothing && run.exitCode() > ExitCode.NO) {
      broken.add("refused what check finds nothing in");
    }
    if (!broken.isEmpty()) {
      failures.add("%s: %s: %s %s"
          .formatted(file, what, broken, run.err().lines().limit(4).toList()));
    }
    answered += run.exitCode() <= ExitCode.NO ? 1 : 0;
    bench.clear();
  }

  /** Sets the field in the first record that has what is around it. */
  private static boolean isSet(JsonNode good, String list, SchemaFields.Field field, String value) {
    var records = list.isEmpty() ? List.of(good) : good.path(list).valueStream().toList();
    for (var record : records) {
      var names = field.path().split("\\.", -1);
      var at = record;
      for (var i = 0; i < names.length - 1; i++) {
        at = names[i].endsWith("[]")
            ? at.path(names[i].replace("[]", "")).path(0)
            : at.path(names[i]);
      }
      if (at instanceof ObjectNode around) {
        var number = JsonMapper.shared().readTree(value);
        var isList = field.type().startsWith("list of ");
        around.set(
            names[names.length - 1],
            isList ? JsonMapper.shared().valueToTree(List.of(number)) : number);
        return true;
      }
    }
    return false;
  }

  @Test
  void whatContradictsTheRestIsFoundByCheckToo() throws IOException {
    for (var change : Map.of(
            "\"EUR\"", "\"USD\"",
            "\"excluded\": [\"thistledown-5\"]", "\"excluded\": [\"cottongrass-4\"]",
            "\"massGrams\": 2", "\"massGrams\": 0.005",
            "\"parts\": [\"newteye-14-feather\", \"newteye-14\"]", "\"parts\": [\"cottongrass-4\"]")
        .entrySet()) {
      Files.writeString(
          bench.file("marsh.json"),
          bench.text("marsh.json").replace(change.getKey(), change.getValue()));
      var run = bench.run("recommend");
      var check = bench.run("check");
      assertThat(run.exitCode()).as(change.toString()).isEqualTo(ExitCode.BAD_DATA);
      assertThat(check.err() + check.out()).contains(run.errors().get(0));
    }
  }
}
