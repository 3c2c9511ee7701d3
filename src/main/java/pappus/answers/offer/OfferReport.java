package pappus.answers.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Cautions;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.offer.Offer;
import pappus.offer.OfferLine;
import pappus.offer.OfferedBuild;
import pappus.offer.ShopSettings;
import pappus.offer.StandIn;
import pappus.part.Role;
import pappus.part.Sale;
import pappus.quantity.Money;
import pappus.scenario.OwnLine;
import pappus.scenario.Scenario;
import pappus.scenario.Spare;

/** An offer for a terminal, for a machine, and for the shop's till. */
public final class OfferReport {
  private final Scenario scenario;
  private final Offer offer;
  private final ShopSettings settings;
  private final boolean isForRange;

  public OfferReport(Scenario scenario, Offer offer) {
    this.scenario = scenario;
    this.offer = offer;
    this.settings = offer.shop().settings();
    this.isForRange = scenario.isForRange();
  }

  /** Whether flights are told in kilometres. */
  public boolean isForRange() {
    return isForRange;
  }

  /** A price to the cent. */
  public String price(long cents) {
    return settings.currency() + " " + Money.sum(cents).toPlainString();
  }

  /** What it is called on the offer: a letter, and what it is best at. */
  public String title(int index) {
    var labels = offer.builds().get(index).labels();
    return letter(index) + (labels.isEmpty() ? "" : ", " + String.join(", ", labels));
  }

  /** A, B or C. */
  public String letter(int index) {
    return String.valueOf((char) ('A' + index));
  }

  /** What to plan with, which is all that is promised of a flight. */
  public String plan(OfferedBuild build) {
    return "plan with " + promised(build.planWith());
  }

  /** Rounded down, to half minutes or as kilometres are told: a promise is kept or it is none. */
  private String promised(double figure) {
    var figures = new Figures(isForRange);
    return figures.planned(figure) + " " + figures.unit();
  }

  /** What the promise holds for, what all of them stay below, and whether stock was looked at. */
  public String conditions() {
    var cap = scenario.massCap();
    return "Flight counted for %s, %s m above the sea%s; what differs, wind and cold most of all, shortens it. By estimate each is %s %s g ready to fly%s with at least %s %% confidence: weigh it before you rely on that.%s"
        .formatted(
            switch (scenario.flight().style()) {
              case HOVER -> "standing in calm air";
              case LOITER -> "circling in calm air";
              case CRUISE -> "flying out and back over the same ground, both ways together";
              case PROFILE ->
                scenario.flight().stay().isPresent()
                    ? "the stay of the scenario alone, with its other legs flown before and after it"
                    : "the legs of the scenario flown in turn";
            },
            Spoken.number(scenario.air().altitudeMetres(), 0),
            Heading.unusual(scenario).stream().map(one -> ", " + one).collect(Collectors.joining()),
            cap.strict() ? "below" : "at most",
            Spoken.number(cap.grams(), 1).replaceFirst("\\.0$", ""),
            cap.because(),
            Spoken.number(100 * cap.confidenceOrUsual(), 0),
            offer.isCounted() ? "" : " Whether all of it is in stock is told on ordering.");
  }

  /** What has to be said of a build before anybody relies on it. */
  public Optional<String> disbelief(OfferedBuild build) {
    return build.assessment().isBeyondBelief()
        ? Optional.of(
            "Better than such aircraft are known to fly: not to be relied on until one is measured.")
        : Optional.empty();
  }

  /** For the shop alone: builds that cost more than the scenario allows; empty where none does. */
  public List<String> overBudget() {
    var budget = scenario.budget();
    var also = scenario.alsoBuyOrNothing();
    var elsewhere =
        also.counts() ? also.ownLines().stream().mapToLong(line -> line.cents()).sum() : 0;
    var over = new ArrayList<String>();
    for (var i = 0; i < offer.builds().size(); i++) {
      var gross = offer.builds().get(i).totals().gross();
      if (budget != null && gross + elsewhere > budget.cents()) {
        over.add("%s costs %s%s, above the scenario's budget of %s."
            .formatted(
                letter(i),
                price(gross),
                elsewhere == 0 ? "" : ", and what is bought elsewhere " + price(elsewhere),
                Spoken.price(budget)));
      }
    }
    return over;
  }

  /** In a sentence: what it weighs, and how much thrust it has, for who does not know the ratio by its name. */
  public String figures(OfferedBuild build) {
    return "%s g ready to fly; its thrust is %s times its weight"
        .formatted(
            Spoken.number(build.assessment().mass().grams(), 0),
            build
                .assessment()
                .flight()
                .map(FlightEstimate::thrustToWeight)
                .map(ratio -> Spoken.number(Math.floor(10 * ratio) / 10, 1))
                .orElse("-"));
  }

  /** What comes with other parts and so has no row of its own; empty where nothing does. */
  public Optional<String> builtIn(OfferedBuild build) {
    var flown = build.assessment().build();
    var roles = Stream.of(Role.values())
        .filter(role -> flown.fills(role) && flown.part(role).isEmpty())
        .map(Role::label)
        .toList();
    return roles.isEmpty()
        ? Optional.empty()
        : Optional.of("Built into its parts: " + String.join(", ", roles) + ".");
  }

  /** How the tax stands to the prices; empty where the shop tells of none. */
  public Optional<String> tax(OfferedBuild build) {
    var tax = settings.tax();
    return tax == null
        ? Optional.empty()
        : Optional.of("%s %s %%: %s; without it %s"
            .formatted(
                tax.label(),
                tax.percent().stripTrailingZeros().toPlainString(),
                price(build.totals().tax()),
                price(build.totals().net())));
  }

  /** What the table of parts does not say: which units are spares, and whether prices hold the tax. */
  public List<String> partsNotes() {
    var spares = new LinkedHashMap<String, Integer>();
    offer.builds().stream()
        .flatMap(build -> build.lines().stream())
        .filter(line -> line.spareUnits() > 0)
        .forEach(line -> spares.put(line.what(), line.spareUnits()));
    var notes = new ArrayList<String>();
    if (!spares.isEmpty()) {
      notes.add(spares.entrySet().stream()
          .map(one -> "%s %s".formatted(one.getKey(), one.getValue()))
          .collect(Collectors.joining(", ", "Spares among them, in the units sold: ", ".")));
    }
    besides().ifPresent(notes::add);
    if (settings.tax() != null) {
      notes.add("Single prices are%s.".formatted(taxed()));
    }
    return notes;
  }

  /** How single prices stand to the tax; empty where the shop tells of none. */
  private String taxed() {
    return settings.tax() == null ? "" : settings.pricesIncludeTax() ? " with tax" : " without tax";
  }

  /** What the shop adds to each build, with its price. */
  public List<String> added() {
    return settings.added().stream()
        .map(extra -> extra.text() + ": " + price(extra.cents()) + taxed())
        .toList();
  }

  /** What is out of stock and what takes its place, a sentence each. */
  public List<String> standIns(OfferedBuild build) {
    return build.standIns().stream().map(this::standIn).toList();
  }

  String standIn(StandIn one) {
    var line = one.line();
    var name = line.what() + " " + line.part().name();
    var out = line.inStock() == 0
        ? "%s is out of stock".formatted(name)
        : "only %s in stock of %s, where %s are wanted"
            .formatted(line.inStock(), name, line.units());
    if (one.swap().isPresent()) {
      var swap = one.swap().get();
      return Spoken.sentence("%s: with %s in its place%s; then plan with %s, at %s in all."
          .formatted(
              out,
              swap.part().name(),
              new Changes(isForRange, settings.currency()).alongside(swap.alongside()),
              promised(one.planWith()),
              price(one.totals().gross())));
    }
    return Spoken.sentence(out
        + (line.isEnoughToFly()
            ? ": enough to fly, but spares have to be ordered."
            : one.role().isPresent()
                ? ", and no other in stock keeps every rule and limit: it has to be ordered."
                : ": it has to be ordered."));
  }

  /** Every caution that goes with any of the builds, once. */
  public List<String> cautions() {
    var cautions = new LinkedHashSet<String>();
    offer.builds().forEach(build -> cautions.addAll(Cautions.of(build.assessment(), scenario)));
    return List.copyOf(cautions);
  }

  /** What the scenario buys beside a build otherwise than this offer; empty where there is no such thing. */
  public Optional<String> besides() {
    var also = scenario.alsoBuyOrNothing();
    var ours = settings.sparesOrNone().stream().map(Spare::label).toList();
    var said = new ArrayList<String>();
    var overruled =
        also.allSpares().stream().map(Spare::label).filter(ours::contains).toList();
    if (!overruled.isEmpty()) {
      said.add("Spares of %s are as the shop sells them, not as the scenario wants them."
          .formatted(String.join(", ", overruled)));
    }
    if (!also.ownLines().isEmpty()) {
      said.add("Bought elsewhere, and in no price here: %s."
          .formatted(
              also.ownLines().stream().map(OwnLine::text).collect(Collectors.joining(", "))));
    }
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
  }

  /** How a part is sold. */
  public static String unit(OfferLine line) {
    var sale = line.part().sold();
    return sale.unit() == Sale.Unit.EACH
        ? "each"
        : "%s of %s".formatted(sale.unit().name().toLowerCase(Locale.ROOT), sale.pieces());
  }

  /** Whether a part can be had, in words; empty where stock was not told. */
  public static String standing(OfferLine line) {
    return switch (line.standing()) {
      case NOT_COUNTED -> "";
      case IN_STOCK -> "in stock";
      case SHORT ->
        line.inStock() == 0 ? "out of stock" : "only %s in stock".formatted(line.inStock());
      case TO_ORDER -> "to be ordered";
      case CUSTOMERS -> "you have it";
    };
  }

  /** One row a part: units of it in each build. */
  public Table parts() {
    var columns = new ArrayList<>(List.of(
        Table.Column.text("what", "what"),
        Table.Column.text("part", "part"),
        Table.Column.text("sold", "unit"),
        Table.Column.number(settings.currency() + " each", "price_each", 2)));
    for (var i = 0; i < offer.builds().size(); i++) {
      columns.add(Table.Column.number(letter(i), "units_" + letter(i).toLowerCase(Locale.ROOT), 0));
    }
    if (offer.isCounted()) {
      columns.add(Table.Column.text("stock", "stock"));
    }
    var rows = new LinkedHashMap<String, List<Object>>();
    for (var i = 0; i < offer.builds().size(); i++) {
      for (var line : offer.builds().get(i).lines()) {
        var row = rows.computeIfAbsent(line.part().id(), id -> row(line));
        row.set(4 + i, line.standing() == OfferLine.Standing.CUSTOMERS ? "yours" : line.units());
        if (offer.isCounted() && line.standing() == OfferLine.Standing.SHORT) {
          row.set(row.size() - 1, standing(line));
        }
      }
    }
    // What serves as the same stands together, in the order of the first build that has it.
    var byUse = new LinkedHashMap<Object, List<List<Object>>>();
    rows.values()
        .forEach(
            row -> byUse.computeIfAbsent(row.get(0), what -> new ArrayList<>()).add(row));
    return new Table(columns, byUse.values().stream().flatMap(List::stream).toList());
  }

  private List<Object> row(OfferLine line) {
    var row = new ArrayList<Object>(
        List.of(line.what(), line.part().name(), unit(line), line.part().price().cents() / 100.0));
    offer.builds().forEach(build -> row.add(""));
    if (offer.isCounted()) {
      row.add(standing(line));
    }
    return row;
  }

  /** For the till. */
  public String csv() {
    return new OfferTill(offer, this).table().csv();
  }

  /** For a page. */
  public String markdown() {
    return parts().markdown();
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    lines.say(
        "%s, %s, valid until %s.".formatted(settings.shop(), offer.date(), offer.validUntil()));
    for (var i = 0; i < offer.builds().size(); i++) {
      var build = offer.builds().get(i);
      lines.blank().say("%s: %s".formatted(title(i), BuildLines.names(build.assessment())));
      lines.row(
          "   %s; %s; %s"
              .formatted(plan(build), figures(build), price(build.totals().gross())),
          3);
      tax(build).ifPresent(tax -> lines.row("   " + tax, 3));
      builtIn(build).ifPresent(what -> lines.row("   " + what, 3));
      disbelief(build).ifPresent(text -> lines.item(Figures.DOUBTED + " " + text));
      standIns(build).forEach(lines::item);
    }
    lines.blank().say(conditions());
    lines.blank();
    parts().lines(width).forEach(line -> lines.row(line, 4));
    partsNotes().forEach(lines::say);
    if (!settings.added().isEmpty()) {
      lines.blank().say("Added to each build: " + String.join(", ", added()) + ".");
    }
    if (!settings.leftOut().isEmpty()) {
      lines.blank().say("Not included: " + notIncluded() + ".");
    }
    lines.blank();
    cautions().forEach(lines::caution);
    return lines.text();
  }

  /** In one line. */
  public String notIncluded() {
    return String.join(", ", settings.leftOut());
  }

  /** With every digit. */
  public String json(String version) {
    return OfferJson.of(scenario, offer, this, version);
  }
}
