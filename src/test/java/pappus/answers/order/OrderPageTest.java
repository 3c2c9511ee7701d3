package pappus.answers.order;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.answers.result.Run;
import pappus.order.SmallOrders;
import pappus.order.choice.Choice;
import pappus.order.column.Column;
import pappus.order.column.Need;
import pappus.order.plan.Plan;
import pappus.order.plan.Planner;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page of an order against what {@code order.json} tells of the same. */
@Tag("slow")
class OrderPageTest {
  private static final Pattern SECTION =
      Pattern.compile("(?s)<section id=\"(.*?)\">(.*?)</section>");
  private static final Pattern ROW =
      Pattern.compile("(?s)<tr>\\s*<th scope=\"row\"[^>]*>(.*?)</th>(.*?)</tr>");
  private static final Pattern LINE =
      Pattern.compile("<li>(\\d+) × [^<]+: [^<]+ <code>(.*?)</code></li>");
  private static final Pattern CELL = Pattern.compile("<td[^>]*>(.*?)</td>");

  @TempDir
  private static Path folder;

  private static Plan plan;
  private static String page;
  private static JsonNode json;
  private static final Map<String, String> SECTIONS = new HashMap<>();

  @BeforeAll
  static void plansOnce() throws IOException {
    var planner =
        new Planner(SmallOrders.read(folder, SmallOrders.forTwo(folder)), 2_000, said -> {});
    plan = planner.plan(planner.askers());
    page = OrderPage.of(plan, new OrderReport(plan), "pappus 1");
    json = JsonMapper.shared()
        .readTree(
            OrderJson.of(plan, new Run("pappus 1", 1, 2_000, List.of(), List.of(), List.of())));
    SECTION.matcher(page).results().forEach(found -> SECTIONS.put(found.group(1), found.group(2)));
  }

  /** The cells of rows by what stands first in each, added up. */
  private static Map<String, BigDecimal> sums(String html, int cell) {
    var sums = new HashMap<String, BigDecimal>();
    ROW.matcher(html).results().forEach(row -> {
      var cells = CELL.matcher(row.group(2)).results().map(one -> one.group(1)).toList();
      sums.merge(row.group(1), new BigDecimal(cells.get(cell)), BigDecimal::add);
    });
    return sums;
  }

  /** Pieces of a bag by part. */
  private static Map<String, BigDecimal> bag(String html) {
    var pieces = new HashMap<String, BigDecimal>();
    LINE.matcher(html)
        .results()
        .forEach(
            line -> pieces.merge(line.group(2), new BigDecimal(line.group(1)), BigDecimal::add));
    return pieces;
  }

  private static String section(String key) {
    return Objects.requireNonNull(SECTIONS.get(key), key);
  }

  @Test
  void hasEverySectionAndSaysWhatTheTextSays() {
    assertThat(SECTIONS.keySet())
        .containsExactlyInAnyOrder("good", "money", "builds", "bags", "box", "shared", "buy");
    var text = new OrderReport(plan).text(10_000);
    var first = text.lines().findFirst().orElseThrow();
    assertThat(page)
        .contains(
            "<h1>fens: order</h1>",
            first + "</p>",
            "Three learners",
            "Asked: 2 for one, 1 for two;");
    Pattern.compile("<p>(.*?)</p>")
        .matcher(section("good"))
        .results()
        .forEach(said -> assertThat(text).contains(said.group(1)));
    assertThat(page).contains("aria-label=\"Cautions\"", "Computed by pappus 1");
  }

  /** The linear program may price what an order leaves over. */
  @Test
  void isShortOnlyOfWhatIsTakenToTheLast() {
    var line = Pattern.compile("Short: \\S+, (\\d+) of (\\d+);");
    assertThat(line.matcher(new OrderReport(plan).text(10_000)).results())
        .allSatisfy(found -> assertThat(found.group(1)).isEqualTo(found.group(2)));
    assertThat(plan.worth()).isPresent();
  }

  /** What is bought of each part is in bags or in the box, and nothing else is. */
  @Test
  void whatIsBoughtIsInBagsOrInTheBox() {
    var packed = new HashMap<String, BigDecimal>();
    var bags = section("bags").split("<h3>");
    var builds = json.get("groups")
        .valueStream()
        .flatMap(group -> group.get("builds").valueStream())
        .toList();
    assertThat(bags).hasSize(1 + builds.size());
    for (var i = 0; i < builds.size(); i++) {
      var build = builds.get(i);
      assertThat(bags[i + 1]).startsWith(build.get("name").asString() + ": ");
      var bag = bag(bags[i + 1]);
      var told = new HashMap<String, BigDecimal>();
      build
          .get("bag")
          .properties()
          .forEach(each -> told.put(each.getKey(), each.getValue().decimalValue()));
      assertThat(bag).isEqualTo(told);
      var learners = build.get("learners").decimalValue();
      bag.forEach((part, pieces) -> packed.merge(part, pieces.multiply(learners), BigDecimal::add));
    }
    var box = sums(section("box"), 3);
    assertThat(box).isNotEmpty();
    box.forEach((part, pieces) -> packed.merge(part, pieces, BigDecimal::add));
    var bought = new HashMap<String, BigDecimal>();
    json.get("buys")
        .forEach(buy -> bought.merge(
            buy.get("part").asString(), buy.get("pieces").decimalValue(), BigDecimal::add));
    assertThat(sums(section("buy"), 3)).isEqualTo(bought);
    // The camera that is there already.
    bought.merge("newteye-14-feather", BigDecimal.ONE, BigDecimal::add);
    assertThat(packed).isEqualTo(bought);
  }

  /** Spares are what is asked for: one motor and a unit of propellers for each kind in use. */
  @Test
  void boxHoldsWhatIsAskedFor() {
    var spares = sums(section("box"), 1);
    json.get("groups")
        .forEach(group -> group.get("builds").forEach(build -> {
          assertThat(spares.get(build.get("roles").get("motor").asString()))
              .isEqualByComparingTo("1");
          assertThat(spares.get(build.get("roles").get("propeller").asString())).isPositive();
        }));
  }

  @Test
  void moneyOfShopsWithPostageIsAllThatIsPaid() {
    var paid = json.get("paid");
    var goods = sums(section("buy"), 4).values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    var together = goods.movePointRight(2).longValueExact()
        + paid.get("postageCents").asLong()
        + paid.get("otherCents").asLong();
    assertThat(together).isEqualTo(paid.get("cents").asLong());
    assertThat(paid.get("postageCents").asLong()).isEqualTo(700);
    assertThat(section("buy")).contains(" and 7.00 postage");
    var spent = sums(section("money"), 0);
    Map.of(
            "what flies", "flyingCents",
            "spares and begun units", "sparesCents",
            "postage", "postageCents",
            "together", "cents")
        .forEach((what, field) -> assertThat(spent)
            .containsEntry(
                what, new BigDecimal(BigInteger.valueOf(paid.get(field).asLong()), 2)));
  }

  @Test
  void whoSharesWhatNamesEachGroupWithItsPieces() {
    var pieces = sums(section("shared"), 1);
    var one = json.get("groups").get(0).get("builds").get(0).get("roles");
    var two = json.get("groups").get(1).get("builds").get(0).get("roles");
    one.properties().forEach(role -> {
      if (two.has(role.getKey()) && two.get(role.getKey()).equals(role.getValue())) {
        assertThat(pieces).containsKey(role.getValue().asString());
      }
    });
    pieces
        .keySet()
        .forEach(part -> json.get("groups")
            .forEach(group -> assertThat(group.get("builds").toString()).contains(part)));
    assertThat(pieces).isNotEmpty();
  }

  /** Sixty learners of two groups; each group has the same twelve different bags. */
  @Test
  void ofManyBagsIsALightPageThatTellsEachOnce() throws IOException {
    var inputs = SmallOrders.read(
        folder,
        SmallOrders.forTwo(folder)
            .replace("\"marsh.json\", \"pieces\": 2", "\"marsh.json\", \"pieces\": 36")
            .replace("\"fen.json\", \"pieces\": 1", "\"fen.json\", \"pieces\": 24"));
    var stock = folder.resolve("stock.csv");
    Files.writeString(stock, Files.readString(stock).replaceAll(",\\d+\n", ",999\n"));
    var each = IntStream.range(0, 2)
        .mapToObj(group -> IntStream.range(0, 12)
            .mapToObj(more -> other(plan.columns().get(0), group, more))
            .toList())
        .toList();
    var choice = Choice.of(inputs, each);
    var columns = new ArrayList<Column>();
    for (var learner = 0; learner < choice.learners().size(); learner++) {
      columns.add(choice.of(learner).get(learner % 12));
    }
    var sixty = new Plan(
        inputs,
        plan.askers(),
        choice,
        columns,
        plan.standing(),
        plan.inTurn(),
        plan.bounds(),
        Optional.empty());

    var told = OrderPage.of(sixty, new OrderReport(sixty), "pappus 1");

    assertThat(told.getBytes(UTF_8).length).isLessThan(80_000);
    assertThat(Pattern.compile("<h3>(.*): 5 bags alike</h3>").matcher(told).results())
        .hasSize(12)
        .anyMatch(found -> found.group(1).equals("one-1 (3), two-1 (2)"));
  }

  /** A build of which one part takes more pieces. */
  private static Column other(Column column, int group, int more) {
    var needs = new ArrayList<>(column.needs());
    var first = needs.get(0);
    needs.set(0, new Need(first.ware(), first.label(), first.pieces() + more));
    return new Column(
        group,
        more,
        column.assessment(),
        column.share(),
        column.ownCents(),
        column.extraCents(),
        needs);
  }
}
