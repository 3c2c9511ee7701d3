package pappus.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.quantity.Money;
import pappus.shop.SmallShop;

class ShelfTest {
  private static final String MOTOR = "cypsela-1404-2800";

  @TempDir
  private Path folder;

  private CatalogFolder shelf(String name, String entries) throws IOException {
    var file = Files.createDirectories(folder.resolve(name)).resolve("shelf.json");
    Files.writeString(file, "{\"shelf\": [\n" + entries + "\n]}\n");
    return CatalogFolder.of(folder.resolve(name));
  }

  private CatalogFolder parts() throws IOException {
    SmallShop.write(folder.resolve("parts"), SmallShop.few());
    return CatalogFolder.of(folder.resolve("parts"));
  }

  private List<String> problems(CatalogFolder... folders) {
    var problems = new Problems();
    CatalogReader.read(List.of(folders), problems);
    return problems.sorted().stream()
        .map(Problem::toString)
        .map(text -> text.replace(folder + "/", ""))
        .toList();
  }

  @Test
  void pricesPartsAnewAndCountsThem() throws IOException {
    var read = CatalogReader.read(
        List.of(
            parts(),
            shelf(
                "shop",
                "{\"id\": \"" + MOTOR
                    + "\", \"owned\": 1, \"stock\": 2, \"price\": {\"amount\": 9.9, \"currency\": \"EUR\"}, \"note\": \"top drawer\"}")));
    var motor = read.catalog().part(MOTOR, Motor.class).orElseThrow();
    var before = (Motor) SmallShop.few().part(MOTOR).orElseThrow();

    assertThat(motor.price().cents()).isEqualTo(990);
    assertThat(motor).usingRecursiveComparison().ignoringFields("price").isEqualTo(before);
    assertThat(read.shelf().owned(motor)).isEqualTo(1);
    assertThat(read.shelf().pieces(motor)).contains(1L + 2L * motor.sold().pieces());
    assertThat(read.strangers()).isEmpty();
    assertThat(read.inputs()).anyMatch(input -> input.name().endsWith("shop/shelf.json"));
  }

  @Test
  void repricesEveryKind() {
    var price = new Money(new BigDecimal("1.23"), "EUR");
    assertThat(Stream.of(Kind.values()).map(kind -> SmallShop.all().ofKind(kind).get(0)))
        .allSatisfy(part -> {
          assertThat(Repriced.of(part, price).price()).isEqualTo(price);
          assertThat(Repriced.of(part, part.price())).isEqualTo(part);
        });
  }

  @Test
  void letsALaterShelfCountAndSaysSo() throws IOException {
    var read = CatalogReader.read(List.of(
        parts(),
        shelf("a", "{\"id\": \"" + MOTOR + "\", \"owned\": 1}"),
        shelf("b", "{\"id\": \"" + MOTOR + "\", \"stock\": 0}")));
    var motor = read.catalog().part(MOTOR).orElseThrow();

    assertThat(read.shelf().owned(motor)).isZero();
    assertThat(read.shelf().has(motor, 1)).isFalse();
    assertThat(read.replacements().stream().map(each -> each.toString().replace(folder + "/", "")))
        .containsExactly("The shelf entry of " + MOTOR
            + " at b/shelf.json:2 takes the place of that at a/shelf.json:2.");
  }

  @Test
  void passesOverEntriesOfNoPart() throws IOException {
    var read = CatalogReader.read(
        List.of(parts(), shelf("a", "{\"id\": \"cypsela-1404-2801\", \"owned\": 1}")));

    assertThat(read.strangers().stream().map(each -> each.toString().replace(folder + "/", "")))
        .containsExactly(
            "a/shelf.json:2: \"cypsela-1404-2801\" is in no catalogue: its entry on the shelf counts for nothing. Maybe cypsela-1404-2800 was meant.");
  }

  @Test
  void refusesAnEntryThatSaysNothingOrStandsTwice() throws IOException {
    assertThat(problems(shelf("a", """
            {"id": "a", "note": "x"},
            {"id": "b", "owned": -1, "stock": 2.5},
            {"id": "c", "owned": 1},
            {"id": "c", "owned": 2}""")))
        .containsExactly(
            "a/shelf.json:2: shelf[0].owned must be there where stock and price are not, but none of them is.",
            "a/shelf.json:3: shelf[1].stock must be a whole number, but is 2.5.",
            "a/shelf.json:5: shelf[3].id must be there once, but c is at a/shelf.json:4 too.");
  }
}
