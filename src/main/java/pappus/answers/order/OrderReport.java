package pappus.answers.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Journey;
import pappus.document.CsvText;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.order.Lot;
import pappus.order.Order;
import pappus.order.plan.Plan;

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

  public OrderReport(Plan plan) {
    this.plan = plan;
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
    lines.say(
        "%s: %s quads for %s of %s; the worst served flies %s of its best alone, the best served %s."
            .formatted(
                order.name(),
                plan.columns().size(),
                price(standing.cents()),
                price(plan.inputs().budgetCents()),
                percent((double) standing.worst()),
                percent(most() / 1000.0)));
    lines.blank();
    table().lines(width).forEach(lines::whole);
    lines.blank();
    builds(lines);
    lines.blank().say(money());
    lines.say(comparison());
    bounds().forEach(lines::say);
    binding().forEach(lines::say);
    same().forEach(lines::say);
    lines.blank();
    lines.caution(Cautions.general());
    return lines.text();
  }

  private long most() {
    return plan.columns().stream().mapToLong(column -> column.share()).max().orElse(0);
  }

  private Table table() {
    var columns = List.of(
        Table.Column.text("group", "group"),
        Table.Column.text("learners", "learners"),
        Table.Column.text("flies", "flies"),
        Table.Column.text("plan with", "planWith"),
        Table.Column.text("share", "share"),
        Table.Column.text("each", "cents"));
    var rows = new ArrayList<List<Object>>();
    for (var one : served.subList(0, Math.min(served.size(), MOST_ROWS))) {
      rows.add(List.of(
          one.name(),
          String.valueOf(one.number()),
          flight(one, one.figure()),
          flight(one, one.planWith()),
          percent(one.column().share() / 1000.0),
          price(one.column().ownCents())));
    }
    return new Table(columns, rows);
  }

  private static String flight(Served one, double figure) {
    return one.group().scenario().isForRange()
        ? Journey.kilometres(figure) + " km"
        : Spoken.number(Math.floor(figure / 6) / 10, 1) + " min";
  }

  private void builds(Lines lines) {
    for (var one : served.subList(0, Math.min(served.size(), MOST_ROWS))) {
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

  /** What to buy in each shop, by its name; what is bought in none of the order's shops under {@code elsewhere}. */
  public Map<String, String> lists() {
    var rows = new LinkedHashMap<String, List<Map<String, Object>>>();
    for (var buy : expenses.bill().buys()) {
      var lot = buy.lot();
      var row = new LinkedHashMap<String, Object>();
      row.put("id", lot.part().id());
      row.put("name", lot.part().name());
      row.put("sold", lot.part().sold().unit().name().toLowerCase(Locale.ROOT));
      row.put("units", buy.units());
      row.put("pieces", buy.units() * lot.part().sold().pieces());
      row.put("price (" + currency + ")", decimal(buy.cents()));
      rows.computeIfAbsent(shop(lot), fresh -> new ArrayList<>()).add(row);
    }
    var lists = new LinkedHashMap<String, String>();
    rows.forEach((shop, list) -> {
      list.sort(Comparator.comparing(row -> String.valueOf(row.get("id"))));
      var titles = List.copyOf(list.get(0).keySet());
      lists.put(
          "buy-" + shop + ".csv",
          CsvText.of(
              titles,
              list.stream()
                  .map(row -> titles.stream().<Object>map(row::get).toList())
                  .toList()));
    });
    return lists;
  }

  private static String decimal(long cents) {
    return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
  }

  private String shop(Lot lot) {
    return lot.shop() < 0 ? "elsewhere" : plan.inputs().till().shops().get(lot.shop());
  }
}
