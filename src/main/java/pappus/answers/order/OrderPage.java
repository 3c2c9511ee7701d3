package pappus.answers.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pappus.answers.build.Cautions;
import pappus.document.Pages;
import pappus.document.Shell;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.order.Ware;
import pappus.order.plan.Plan;

/** A planned order as a page for those who pack: who gets what, bags, spares and what to buy. */
public final class OrderPage {
  private final Plan plan;
  private final OrderReport report;

  private OrderPage(Plan plan, OrderReport report) {
    this.plan = plan;
    this.report = report;
  }

  /**
   * What stands under one heading.
   *
   * @param key for links: small letters and hyphens
   * @param title for people
   * @param says sentences before its tables
   * @param tables by what they are called
   */
  public record Section(String key, String title, List<String> says, Map<String, Table> tables) {
    public Section {
      says = List.copyOf(says);
    }
  }

  /**
   * The page.
   *
   * @param plan of an order that can be bought
   * @param report the same in words and tables
   * @param tool its version, told at the foot
   */
  public static String of(Plan plan, OrderReport report, String tool) {
    return new OrderPage(plan, report).page(tool);
  }

  private String page(String tool) {
    var order = plan.inputs().order();
    var title = order.name() + ": order";
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.still(title));
    content.put("title", title);
    content.put("note", Objects.requireNonNullElse(order.note(), ""));
    content.put("asked", asked());
    content.put("headline", report.headline());
    var sections = new ArrayList<>(List.of(
        new Section(
            "good",
            "How good it is",
            report.good(),
            Map.of("Together and in turn", report.levels())),
        new Section("money", "Money", List.of(), Map.of("Money by what it is for", report.spent())),
        new Section(
            "builds",
            "Who gets what",
            List.of(),
            Map.of("Builds by group", report.table(report.served()))),
        new Section(
            "bags",
            "Bags to pack",
            List.of("A bag for each learner: what goes into one."),
            Map.of()),
        box(),
        shared(),
        buys()));
    if (!report.changes().isEmpty()) {
      sections.add(0, new Section("changes", "What changes", report.changes(), Map.of()));
    }
    content.put("sections", sections);
    content.put("bags", bags());
    content.put("cautions", List.of(Cautions.general()));
    content.put("tool", tool);
    return Pages.of("order", content);
  }

  private String asked() {
    var inputs = plan.inputs();
    var groups = inputs.order().groups().stream()
        .map(group -> "%s for %s".formatted(group.pieces(), group.name()))
        .toList();
    var aim = switch (inputs.order().aimOrWorst()) {
      case WORST -> "the worst share first, then the sum of shares";
      case TOTAL -> "the largest sum of shares";
      case THRIFT -> "the least money that gives each the least share";
    };
    return "Asked: %s; for %s at most; %s."
        .formatted(
            String.join(", ", groups), Spoken.price(inputs.budgetCents(), inputs.currency()), aim);
  }

  /**
   * Bags that are alike.
   *
   * @param title whose they are, and how many
   * @param lines what goes into one
   */
  public record Bags(String title, List<Line> lines) {
    /** Pieces of a part, and what they are for. */
    public record Line(int pieces, String as, String name, String id) {}

    public Bags {
      lines = List.copyOf(lines);
    }
  }

  /** Each told once, whoever gets it. */
  private List<Bags> bags() {
    var alike = new LinkedHashMap<List<Bags.Line>, List<Served>>();
    for (var one : report.served()) {
      var lines = one.column().needs().stream()
          .map(need -> new Bags.Line(
              need.pieces(),
              need.label(),
              need.ware().part().name(),
              need.ware().part().id()))
          .toList();
      alike.computeIfAbsent(lines, fresh -> new ArrayList<>()).add(one);
    }
    var bags = new ArrayList<Bags>();
    alike.forEach((lines, all) -> {
      var number = all.stream().mapToInt(Served::number).sum();
      var whose = all.stream()
          .map(one -> all.size() == 1 ? one.name() : "%s (%s)".formatted(one.name(), one.number()))
          .collect(Collectors.joining(", "));
      bags.add(new Bags(
          whose + (number == 1 ? ": one bag" : ": %s bags alike".formatted(number)), lines));
    });
    return bags;
  }

  private Section box() {
    var rows = new ArrayList<List<Object>>();
    for (var box : Boxed.of(plan, report.expenses())) {
      var part = box.ware().part();
      rows.add(List.of(part.id(), part.name(), box.spares(), box.over(), box.pieces()));
    }
    var table = new Table(
        List.of(
            Table.Column.text("part", "id"),
            Table.Column.text("name", "name"),
            Table.Column.number("spare", "spares", 0),
            Table.Column.number("left over", "over", 0),
            Table.Column.number("in the box", "pieces", 0)),
        rows);
    return new Section(
        "box",
        "The spares box",
        rows.isEmpty()
            ? List.of("Nothing is left for it.")
            : List.of("For all: spares as asked, and what units hold beyond what is packed."),
        rows.isEmpty() ? Map.of() : Map.of("The spares box", table));
  }

  /** Small hardware is of no kind that anybody counts, so that it is left out. */
  private Section shared() {
    var users = new TreeMap<Integer, Map<String, Integer>>();
    for (var one : report.served()) {
      for (var need : one.column().needs()) {
        users
            .computeIfAbsent(need.ware().index(), fresh -> new LinkedHashMap<>())
            .merge(one.group().name(), one.number() * need.pieces(), Integer::sum);
      }
    }
    var rows = new ArrayList<List<Object>>();
    users.forEach((index, pieces) -> {
      var ware = plan.inputs().wares().all().get(index);
      if (pieces.size() > 1 && !ware.isSmall()) {
        rows.add(row(ware, pieces));
      }
    });
    return new Section(
        "shared",
        "Who shares what",
        List.of(
            rows.isEmpty()
                ? "No two groups use the same part, but for small hardware."
                : "Parts that more than one group uses, with pieces; small hardware is left out. Their spares serve all who use them."),
        rows.isEmpty()
            ? Map.of()
            : Map.of(
                "Parts of several groups",
                new Table(
                    List.of(
                        Table.Column.text("part", "id"),
                        Table.Column.text("name", "name"),
                        Table.Column.number("pieces", "pieces", 0),
                        Table.Column.text("used by", "groups")),
                    rows)));
  }

  private static List<Object> row(Ware ware, Map<String, Integer> pieces) {
    var by = pieces.entrySet().stream()
        .map(each -> each.getKey() + " " + each.getValue())
        .toList();
    return List.of(
        ware.part().id(),
        ware.part().name(),
        pieces.values().stream().mapToInt(one -> one).sum(),
        String.join(", ", by));
  }

  private Section buys() {
    var says = new ArrayList<>(report.sums());
    for (var buy : report.expenses().bill().buys()) {
      var part = buy.lot().part();
      var packed = plan.inputs().wares().of(part).part();
      if (!packed.equals(part)) {
        says.add("%s is the same as %s in every number, and is packed as that."
            .formatted(part.id(), packed.id()));
      }
    }
    var tables = new LinkedHashMap<String, Table>();
    report
        .buys()
        .forEach((shop, table) -> tables.put("%s, as in buy-%s.csv".formatted(shop, shop), table));
    return new Section("buy", "What to buy", says, tables);
  }
}
