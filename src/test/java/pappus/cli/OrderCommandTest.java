package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.part.Kind;
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

  private String made(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private CommandRun revise(String told, String... more) {
    var words = new ArrayList<>(
        List.of("--revise", told, "--out", folder.resolve("revised").toString(), "--quiet"));
    words.addAll(List.of(more));
    return CommandRun.of(Stream.concat(Stream.of("order"), words.stream()).toList());
  }

  private static String words(CommandRun run) {
    return run.out().replaceAll("\\s+", " ");
  }

  /** All of the list to buy from came: nobody changes and nothing is paid, whatever the shop has now. */
  @Test
  void revisionLeavesAloneWhatCame() throws IOException {
    order();
    var list = folder.resolve("out/buy-elsewhere.csv").toString();

    var revised = revise(folder.resolve("out/order.json").toString(), "--have", list);

    assertThat(revised.err()).isEmpty();
    assertThat(revised.exitCode()).isZero();
    assertThat(words(revised))
        .contains(
            "1 of 1 quads keep their main parts, none changes; EUR 0 to pay still",
            "as ordered; nothing to buy",
            "No order changes fewer: proven.",
            "none costs less: proven.");
    assertThat(folder.resolve("revised/buy-elsewhere.csv")).doesNotExist();
  }

  /** The propellers did not come and cannot be had: another kind is bought, and a revision of that has it all. */
  @Test
  void revisionTellsWhatTakesThePlaceOfWhatFailed() throws IOException {
    order();
    var told = folder.resolve("out/order.json").toString();
    var list = Files.readString(folder.resolve("out/buy-elsewhere.csv"));
    var written = Files.readString(folder.resolve("out/order.json"));
    var propeller = written.replaceAll("(?s).*?\"propeller\": \"([^\"]+)\".*", "$1");
    var came = made("came.csv", list.replaceAll("(?m)^" + Pattern.quote(propeller) + ",.*\n", ""));
    var stock = new StringBuilder("id,stock\n");
    SmallShop.few().ofKind(Kind.PROPELLER).stream()
        .filter(part -> !part.id().equals(propeller))
        .forEach(part -> stock.append(part.id()).append(",9\n"));
    var now = made("now.csv", stock.toString());

    var revised = revise(told, "--have", came, "--stock", now);

    assertThat(revised.err()).isEmpty();
    assertThat(revised.exitCode()).isZero();
    assertThat(words(revised))
        .contains("1 changes", "propeller " + propeller + " becomes ", "to buy 4 × ");
    var first = Files.readString(folder.resolve("revised/order.json"));
    assertThat(first).contains("\"changed\": 1", "\"changedAtLeast\": 1");
    var all = made(
        "all.csv",
        Files.readString(folder.resolve("revised/buy-shop.csv")).strip()
            + "\n"
            + Files.readString(Path.of(came)).lines().skip(1).collect(Collectors.joining("\n")));
    var again = CommandRun.of(List.of(
        "order",
        "--revise",
        folder.resolve("revised/order.json").toString(),
        "--have",
        all,
        "--stock",
        now,
        "--out",
        folder.resolve("last").toString()));
    assertThat(words(again)).contains("none changes; EUR 0 to pay still");
  }

  @Test
  void revisionRefusesWhatItCannotRead() throws IOException {
    order();
    var told = folder.resolve("out/order.json").toString();

    assertThat(revise(folder.resolve("none.json").toString()).exitCode())
        .isEqualTo(ExitCode.NO_INPUT);
    assertThat(revise(folder.resolve("marsh.json").toString()).err())
        .contains("must be what order wrote, but is another file.");
    var bad = revise(told, "--have", made("bad.csv", "id,pieces\nspikerush,4\nnewteye-14,1.5\n"));
    assertThat(bad.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(bad.err().lines()).hasSize(2);
    assertThat(bad.err())
        .contains(
            "bad.csv:2: id must name a part of the catalogue",
            "bad.csv:3: pieces must be a whole number");
    assertThat(revise(told, "--have", made("none.csv", "part,units\na,1\n")).err())
        .contains("none.csv:1: must have one column id, but has none among");
    assertThat(order("--have", "came.csv").exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run("order").exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run("order", "--revise", told, "--out", folder.resolve("out").toString())
            .err())
        .contains("--out must be another folder");
    Files.writeString(
        folder.resolve("order.json"),
        Files.readString(folder.resolve("order.json")).replace("\"pieces\": 1", "\"pieces\": 2"));
    var others = revise(told);
    assertThat(others.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(others.err()).contains("must have builds for 2 learners of the group reed");
  }
}
