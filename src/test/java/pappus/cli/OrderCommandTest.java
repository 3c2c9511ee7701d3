package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

/** The command on an order of the small shop's parts. */
@Tag("slow")
class OrderCommandTest {
  private static final String ORDER = """
      {"name": "fens", "budget": 900, "giveUp": 0,
       "groups": [{"name": "reed", "scenario": "marsh.json", "pieces": 1%s}]}""";

  @TempDir
  private Path folder;

  @BeforeEach
  void writeParts() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.few());
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(""));
    write("");
  }

  private void write(String fields) throws IOException {
    Files.writeString(folder.resolve("order.json"), ORDER.formatted(fields));
  }

  private CommandRun run(String command, String... words) {
    var args = new ArrayList<>(List.of(command));
    args.addAll(List.of(words));
    args.addAll(
        List.of("--no-shipped-catalog", "--catalog", folder.resolve("parts").toString()));
    return CommandRun.of(args);
  }

  private CommandRun order(String... more) {
    var words = new ArrayList<>(List.of(
        folder.resolve("order.json").toString(), "--out", folder.resolve("out").toString()));
    words.addAll(List.of(more));
    return run("order", words.toArray(String[]::new));
  }

  /** With as much as wanted of everything there is nothing to share. */
  @Test
  void oneLearnerGetsWhatRecommendRecommends() throws IOException {
    var ordered = order();

    assertThat(ordered.err()).isEmpty();
    assertThat(ordered.exitCode()).isZero();
    var recommended = run(
        "recommend",
        folder.resolve("marsh.json").toString(),
        "--out",
        folder.resolve("one").toString(),
        "--quiet");
    assertThat(recommended.exitCode()).isZero();
    var result = Files.readString(folder.resolve("one/result.json"));
    var first = result.substring(result.indexOf("\"build\": \""));
    first = first.substring(0, first.indexOf("\",") + 1);
    assertThat(Files.readString(folder.resolve("out/order.json"))).contains(first);
    assertThat(ordered.out()).contains("100.0 %", "next to nothing to gain");
  }

  @Test
  void writesListsToBuyFromAndIsTheSameAgain() throws IOException {
    order();
    var written = Files.readString(folder.resolve("out/order.json"));
    var list = Files.readString(folder.resolve("out/buy-elsewhere.csv"));

    var again = order("--format", "json");

    assertThat(again.out()).isEqualTo(written);
    assertThat(Files.readString(folder.resolve("out/buy-elsewhere.csv"))).isEqualTo(list);
    assertThat(list).startsWith("id,name,sold,units,pieces,price (EUR)");
  }

  @Test
  void sheetIsOfABuildOfAGroup() {
    order();

    var sheet = run(
        "sheet",
        folder.resolve("out/order.json") + "#reed",
        "--out",
        folder.resolve("sheet").toString());

    assertThat(sheet.err()).isEmpty();
    assertThat(sheet.exitCode()).isZero();
    assertThat(folder.resolve("sheet/sheet.html")).exists();
    var none = run("sheet", folder.resolve("out/order.json") + "#sedge");
    assertThat(none.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(none.err()).contains("one of reed, but has none");
  }

  @Test
  void offerIsOfABuildOfAGroup() throws IOException {
    order();
    Files.writeString(folder.resolve("shop.json"), """
        {"shop": "Reed and Rush", "address": ["1 Dyke Road"], "contact": ["knock twice"], "currency": "EUR",
         "tax": {"label": "sales tax", "percent": 20}, "pricesIncludeTax": true, "validDays": 14}""");

    var offer = run(
        "offer",
        folder.resolve("out/order.json") + "#reed",
        "--settings",
        folder.resolve("shop.json").toString(),
        "--date",
        "2026-05-31",
        "--quiet",
        "--out",
        folder.resolve("offer").toString());

    assertThat(offer.err()).isEmpty();
    assertThat(offer.exitCode()).isZero();
    assertThat(folder.resolve("offer/offer.html")).exists();
    var written = Files.readString(folder.resolve("out/order.json"));
    var motor = written.substring(written.indexOf("\"motor\": \"") + 10);
    assertThat(Files.readString(folder.resolve("offer/offer.csv")))
        .contains(motor.substring(0, motor.indexOf('"')));
  }

  @Test
  void groupWithoutAnyBuildIsNamedWithWhatWouldServeIt() throws IOException {
    write(", \"budget\": 20");

    var ordered = order();

    assertThat(ordered.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(ordered.out()).contains("No build serves the group reed", "budget");
    assertThat(folder.resolve("out/order.json")).doesNotExist();
    assertThat(order("--format", "json").out()).contains("\"unserved\"", "\"reed\"");
  }

  @Test
  void wrongFilesAreToldInOneLineEach() throws IOException {
    write(", \"leastShare\": 101");

    var ordered = order();

    assertThat(ordered.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(ordered.err().lines()).hasSize(1);
    assertThat(ordered.err()).contains("leastShare must be from 0 to 100, but is 101.");
  }
}
