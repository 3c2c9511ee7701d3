package pappus.answers.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Journey;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.order.Lot;
import pappus.order.Order;
import pappus.order.choice.Standing;
import pappus.order.plan.Plan;
import pappus.order.plan.Revision;

/** A planned order, for a terminal and for those who buy. */
public final class OrderReport {
  private static final int MOST_SCARCE = 4;
  private static final int MOST_ROWS = 24;

  /** What differs by less is no gain to speak of: a two hundredth of the sum, thousandths. */
  private static final double HARDLY = 0.005;

  private final Plan plan;
  private final List<Served> served;
  private final Expenses expenses;
  private final String currency;
  private final Optional<RevisionWords> revised;

  public OrderReport(Plan plan) {
    this(plan, Optional.empty());
  }

  /** Of an order that was told before. */
  public OrderReport(Revision revision) {
    this(revision.plan(), Optional.of(new RevisionWords(revision)));
  }

  private OrderReport(Plan plan, Optional<RevisionWords> revised) {
    this.plan = plan;
    this.revised = revised;
    this.served = Served.of(plan);
    this.expenses = Expenses.of(plan);
    this.currency = plan.inputs().currency();
  }

  private String price(long cents) {
    return Spoken.price(cents, currency);
  }

  private static String percent(double thousandths) {
    return String.format(Locale.ROOT, "%.1f %%", thousandths / 10);
  }

  private static double quads(long millionths) {
    return millionths / 1e6;
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    var standing = plan.standing();
    var order = plan.inputs().order();
    if (!plan.isFeasible()) {
      lines.say(
          "%s: no order for all %s was found within the budget of %s and what there is. Nearest: %s."
              .formatted(
                  order.name(),
                  plan.columns().size(),
                  price(plan.inputs().budgetCents()),
                  price(standing.cents())));
      return lines.blank().caution(Cautions.general()).text();
    }
    lines.say(headline());
    lines.blank();
    if (revised.isPresent()) {
      changes().forEach(lines::item);
      lines.blank();
    }
    table(first()).withoutLast().lines(width).forEach(lines::whole);
    lines.blank();
    builds(lines);
    lines.blank().say(money());
    good().forEach(lines::say);
    lines.blank();
    lines.caution(Cautions.general());
    return lines.text();
  }

  /** What it is, and how well the worst and the best served fly. */
  String headline() {
    if (revised.isPresent()) {
      return revised.get().headline();
    }
    return "%s: %s quads for %s of %s; the worst served flies %s of its best alone, the best served %s."
        .formatted(
            plan.inputs().order().name(),
            plan.columns().size(),
            price(plan.standing().cents()),
            price(plan.inputs().budgetCents()),
            percent((double) plan.standing().worst()),
            percent(most() / 1000.0));
  }

  /** How good it is beside ordering in turn and beside what no order surpasses, and what binds. */
  List<String> good() {
    if (revised.isPresent()) {
      return revised.get().bounds();
    }
    var said = new ArrayList<String>();
    said.add(comparison());
    said.addAll(bounds());
    said.addAll(binding());
    said.addAll(same());
    return said;
  }

  /** Of an order that was told before: who keeps what was ordered, and what others get; else nothing. */
  List<String> changes() {
    return revised.map(RevisionWords::learners).orElse(List.of());
  }

  List<Served> served() {
    return served;
  }

  Expenses expenses() {
    return expenses;
  }

  private List<Served> first() {
    return served.subList(0, Math.min(served.size(), MOST_ROWS));
  }

  private long most() {
    return plan.columns().stream().mapToLong(column -> column.share()).max().orElse(0);
  }

  /** Who gets what; the parts come last. */
  Table table(List<Served> of) {
    var columns = List.of(
        Table.Column.text("group", "group"),
        figure("learners", "learners"),
        figure("flies", "flies"),
        figure("plan with", "planWith"),
        figure("share", "share"),
        figure("each", "cents"),
        Table.Column.text("parts", "parts"));
    var rows = new ArrayList<List<Object>>();
    for (var one : of) {
      rows.add(List.of(
          one.name(),
          String.valueOf(one.number()),
          flight(one, one.figure()),
          flight(one, one.planWith()),
          percent(one.column().share() / 1000.0),
          price(one.column().ownCents()),
          BuildLines.names(one.column().assessment())));
    }
    return new Table(columns, rows);
  }

  private static String flight(Served one, double figure) {
    return one.group().scenario().isForRange()
        ? Journey.kilometres(figure) + " km"
        : Spoken.number(Math.floor(figure / 6) / 10, 1) + " min";
  }

  private void builds(Lines lines) {
    for (var one : first()) {
      lines.item(one.name() + ": " + BuildLines.names(one.column().assessment()));
    }
    if (served.size() > MOST_ROWS) {
      lines.item("and %s more, in order.json.".formatted(served.size() - MOST_ROWS));
    }
  }

  private String money() {
    return "Money: %s for what flies, %s for spares and begun units, %s postage%s: %s. %s kinds of parts."
        .formatted(
            price(expenses.flying()),
            price(expenses.spares()),
            price(expenses.postage()),
            expenses.extra() == 0 ? "" : ", " + price(expenses.extra()) + " beside parts",
            price(plan.standing().cents()),
            plan.standing().kinds());
  }

  /** Whether ordering together gains anything over each taking what those before left. */
  private String comparison() {
    var turn = plan.inTurn();
    var now = plan.standing();
    if (turn.broken() > 0) {
      return "Each in turn, by what those before left, could not all be served.";
    }
    if (now.sum() - turn.sum() < HARDLY * turn.sum() && now.worst() - turn.worst() < 10) {
      return String.format(
          Locale.ROOT,
          "There is next to nothing to gain over ordering in turn: that serves the worst with %s and all with %.2f best flights, for %s.",
          percent((double) turn.worst()),
          quads(turn.sum()),
          price(turn.cents()));
    }
    return String.format(
        Locale.ROOT,
        "Each in turn, by what those before left: worst %s, %.2f best flights in all; together %.2f.",
        percent((double) turn.worst()),
        quads(turn.sum()),
        quads(now.sum()));
  }

  private List<String> bounds() {
    var said = new ArrayList<String>();
    var standing = plan.standing();
    plan.bounds()
        .worst()
        .ifPresent(bound -> said.add(
            bound <= standing.worst()
                ? "No order serves the worst better: proven."
                : "No order gives everybody more than %s: %s points above this one."
                    .formatted(
                        percent((double) bound),
                        percent((double) (bound - standing.worst())).replace(" %", ""))));
    plan.bounds().sum().ifPresent(bound -> {
      var gap = bound / (double) standing.sum() - 1;
      var of = plan.inputs().order().aimOrWorst() == Order.Aim.WORST
          ? "No order that serves the worst as well has"
          : "No order has";
      said.add(
          gap < 1e-6
              ? of + " a larger sum of shares: proven."
              : String.format(
                  Locale.ROOT,
                  "%s more than %.3f best flights in all; this has %.3f, %.1f %% below.",
                  of,
                  quads(bound),
                  quads(standing.sum()),
                  100 * gap / (1 + gap)));
    });
    if (plan.inputs().order().giveUpOrUsual() > 0) {
      said.add(
          "Up to %s of the sum was given up for less money and fewer kinds of parts, which are told without a bound."
              .formatted(percent((double) plan.inputs().order().giveUpOrUsual())));
    }
    return said;
  }

  private List<String> binding() {
    var scarce = Scarcity.of(plan);
    var said = new ArrayList<String>();
    for (var one : scarce.subList(0, Math.min(MOST_SCARCE, scarce.size()))) {
      said.add(String.format(
          Locale.ROOT,
          "Short: %s, %d of %d; one more is worth about %.1f %% of a best flight.",
          one.ware().part().id(),
          one.units(),
          one.ware().stock(),
          100 * one.share()));
    }
    plan.worth().ifPresent(worth -> {
      var share = 100_00 * worth.cent();
      if (share >= 0.01) {
        said.add(String.format(
            Locale.ROOT,
            "Money: %s more is worth about %.1f %% of a best flight.",
            price(100_00),
            100 * share));
      }
    });
    return said;
  }

  private List<String> same() {
    return plan.inputs().order().sameOrNone().isEmpty()
        ? List.of()
        : List.of(
            "What is to be the same is kept; the bounds are of orders without that wish, so no gap is promised.");
  }

  /** What is paid by what it is for, and together. */
  Table spent() {
    var rows = new ArrayList<List<Object>>();
    rows.add(List.of("what flies", decimal(expenses.flying())));
    rows.add(List.of("spares and begun units", decimal(expenses.spares())));
    rows.add(List.of("postage", decimal(expenses.postage())));
    if (expenses.extra() != 0) {
      rows.add(List.of("beside parts", decimal(expenses.extra())));
    }
    rows.add(List.of("together", decimal(plan.standing().cents())));
    return new Table(List.of(Table.Column.text("for", "for"), figure(currency, "money")), rows);
  }

  /** How good it is, level by level, beside ordering in turn and beside its bounds. */
  Table levels() {
    var rows = new ArrayList<List<Object>>();
    rows.add(level("together", plan.standing()));
    rows.add(
        level(plan.inTurn().broken() > 0 ? "in turn, not all served" : "in turn", plan.inTurn()));
    var bounds = plan.bounds();
    if (bounds.worst().isPresent() || bounds.sum().isPresent()) {
      rows.add(List.of(
          "no order has more than",
          bounds.worst().isPresent() ? percent((double) bounds.worst().getAsLong()) : "",
          bounds.sum().isPresent() ? flights(bounds.sum().getAsLong()) : "",
          "",
          ""));
    }
    return new Table(
        List.of(
            Table.Column.text("ordered", "ordered"),
            figure("worst share", "worst"),
            figure("best flights in all", "sum"),
            figure(currency, "spent"),
            figure("kinds of parts", "kinds")),
        rows);
  }

  private List<Object> level(String what, Standing standing) {
    return List.of(
        what,
        percent((double) standing.worst()),
        flights(standing.sum()),
        decimal(standing.cents()),
        standing.kinds());
  }

  private static String flights(long millionths) {
    return String.format(Locale.ROOT, "%.3f", quads(millionths));
  }

  private static Table.Column figure(String title, String key) {
    return Table.Column.number(title, key, 0);
  }

  /** What to buy in each shop, by its name; what is bought in none of the order's shops under {@code elsewhere}. */
  Map<String, Table> buys() {
    var rows = new LinkedHashMap<String, List<List<Object>>>();
    for (var buy : expenses.bill().buys()) {
      var part = buy.lot().part();
      rows.computeIfAbsent(shop(buy.lot()), fresh -> new ArrayList<>())
          .add(List.of(
              part.id(),
              part.name(),
              part.sold().unit().name().toLowerCase(Locale.ROOT),
              buy.units(),
              buy.units() * part.sold().pieces(),
              decimal(buy.cents())));
    }
    var columns = List.of(
        Table.Column.text("part", "id"),
        Table.Column.text("name", "name"),
        Table.Column.text("sold as", "sold"),
        figure("units", "units"),
        figure("pieces", "pieces"),
        figure(currency, "price (" + currency + ")"));
    var tables = new LinkedHashMap<String, Table>();
    rows.forEach((shop, list) -> {
      list.sort(Comparator.comparing(row -> String.valueOf(row.get(0))));
      tables.put(shop, new Table(columns, list));
    });
    return tables;
  }

  /** What the parts of each shop cost, and its postage. */
  List<String> sums() {
    var goods = new LinkedHashMap<String, Long>();
    for (var buy : expenses.bill().buys()) {
      goods.merge(shop(buy.lot()), buy.cents(), Long::sum);
    }
    var shops = plan.inputs().till().shops();
    var said = new ArrayList<String>();
    goods.forEach((shop, cents) -> {
      var at = shops.indexOf(shop);
      var postage = at < 0 ? 0 : expenses.bill().postage().get(at);
      said.add("%s: %s %s%s."
          .formatted(
              shop,
              currency,
              decimal(cents),
              postage == 0
                  ? ""
                  : " and %s postage, %s together"
                      .formatted(decimal(postage), decimal(cents + postage))));
    });
    return said;
  }

  /** The same as files to buy from, by their names. */
  public Map<String, String> lists() {
    var lists = new LinkedHashMap<String, String>();
    buys().forEach((shop, table) -> lists.put("buy-" + shop + ".csv", table.csv()));
    return lists;
  }

  private static String decimal(long cents) {
    return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
  }

  private String shop(Lot lot) {
    return lot.shop() < 0 ? "elsewhere" : plan.inputs().till().shops().get(lot.shop());
  }
}
