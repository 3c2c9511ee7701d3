package pappus.answers.offer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.answers.build.Heading;
import pappus.answers.build.LinkWords;
import pappus.answers.build.OrderWords;
import pappus.assessment.flight.FlightEstimate;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.document.Table;
import pappus.offer.Offer;
import pappus.offer.OfferLine;
import pappus.offer.OfferedBuild;
import pappus.offer.ShopSettings;
import pappus.offer.StandIn;
import pappus.part.Part;
import pappus.part.Role;
import pappus.part.Sale;
import pappus.quantity.Money;
import pappus.scenario.OwnLine;
import pappus.scenario.Scenario;
import pappus.scenario.Spare;

/** An offer for a terminal, for a machine, and for the shop's till. */
public final class OfferReport {
  /** Parts that are named in a few words; more of them are counted, and named in the table. */
  private static final int MOST_NAMED = 2;

  private final Offer offer;
  private final ShopSettings settings;

  public OfferReport(Offer offer) {
    this.offer = offer;
    this.settings = offer.shop().settings();
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

  /** Main parts of what is delivered, with the mark of what nobody should believe. */
  public String names(OfferedBuild build) {
    var mark = Figures.mark(build.delivered());
    return BuildLines.names(build.delivered()) + (mark.isEmpty() ? "" : " " + mark);
  }

  /** A, B or C. */
  public String letter(int index) {
    return String.valueOf((char) ('A' + index));
  }

  /** What to plan with, which is all that is promised of a flight. */
  public String plan(OfferedBuild build) {
    return "plan with " + promised(build, build.deliveredPlanWith());
  }

  /** Rounded down, to half minutes or as kilometres are told: a promise is kept or it is none. */
  static String promised(OfferedBuild build, double figure) {
    var figures = new Figures(build.scenario().isForRange());
    return figures.planned(figure) + " " + figures.unit();
  }

  /** Builds by what was asked for, in their order. */
  private Map<Scenario, List<Integer>> byScenario() {
    var asked = new LinkedHashMap<Scenario, List<Integer>>();
    for (var i = 0; i < offer.builds().size(); i++) {
      asked
          .computeIfAbsent(offer.builds().get(i).scenario(), fresh -> new ArrayList<>())
          .add(i);
    }
    return asked;
  }

  /** What the promises hold for, what all of them stay below, and whether stock was looked at; a sentence each. */
  public List<String> conditions() {
    var asked = byScenario();
    var said = new ArrayList<String>();
    asked.forEach((scenario, builds) -> said.add((asked.size() == 1
            ? ""
            : builds.stream().map(this::letter).collect(Collectors.joining(" and ")) + ": ")
        + conditions(scenario)));
    if (!offer.isCounted()) {
      said.add("Whether all of it is in stock is told on ordering.");
    }
    return said;
  }

  private static String conditions(Scenario scenario) {
    var cap = scenario.massCap();
    return "Flight counted for %s, %s m above the sea%s; what differs, wind and cold most of all, shortens it. By estimate each is %s %s g ready to fly%s with at least %s %% confidence: weigh it before you rely on that."
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
            Spoken.number(100 * cap.confidenceOrUsual(), 0));
  }

  /** What has to be said of a build before anybody relies on it. */
  public Optional<String> disbelief(OfferedBuild build) {
    return build.delivered().isBeyondBelief()
        ? Optional.of(
            "Better than such aircraft are known to fly: not to be relied on until one is measured.")
        : Optional.empty();
  }

  /** For the shop: builds that cost more than their scenario allows; empty where none does. */
  public List<String> overBudget() {
    var over = new ArrayList<String>();
    for (var i = 0; i < offer.builds().size(); i++) {
      var build = offer.builds().get(i);
      var budget = build.scenario().budget();
      if (budget != null && over(build) > 0) {
        over.add("%s costs %s%s, above the scenario's budget of %s."
            .formatted(
                letter(i),
                price(build.deliveredTotals().gross()),
                elsewhere(build) == 0
                    ? ""
                    : ", and what is bought elsewhere " + price(elsewhere(build)),
                Spoken.price(budget)));
      }
    }
    return over;
  }

  /** For the customer: by how much a build is over the budget; empty where it is not. */
  public Optional<String> overBudget(OfferedBuild build) {
    var budget = build.scenario().budget();
    return budget == null || over(build) <= 0
        ? Optional.empty()
        : Optional.of("%s more than your budget of %s%s."
            .formatted(
                price(over(build)),
                Spoken.price(budget),
                elsewhere(build) == 0
                    ? ""
                    : ", with %s for what is bought elsewhere".formatted(price(elsewhere(build)))));
  }

  /** Cents above the budget; 0 where there is none. */
  private static long over(OfferedBuild build) {
    var budget = build.scenario().budget();
    return budget == null ? 0 : build.deliveredTotals().gross() + elsewhere(build) - budget.cents();
  }

  private static long elsewhere(OfferedBuild build) {
    var also = build.scenario().alsoBuyOrNothing();
    return also.counts() ? also.ownLines().stream().mapToLong(OwnLine::cents).sum() : 0;
  }

  /** In a sentence: what it weighs, and its thrust. */
  public String figures(OfferedBuild build) {
    return "%s g ready to fly; %s"
        .formatted(Spoken.number(build.delivered().mass().grams(), 0), thrust(build));
  }

  /** For who does not know the ratio by its name. */
  public String thrust(OfferedBuild build) {
    return "its thrust is %s times its weight"
        .formatted(build
            .delivered()
            .flight()
            .map(FlightEstimate::thrustToWeight)
            .map(ratio -> Spoken.number(Math.floor(10 * ratio) / 10, 1))
            .orElse("-"));
  }

  /** What comes with other parts and so has no row of its own; empty where nothing does. */
  public Optional<String> builtIn(OfferedBuild build) {
    var flown = build.delivered().build();
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
                price(build.deliveredTotals().tax()),
                price(build.deliveredTotals().net())));
  }

  /** What the table of parts does not say: which units are spares, and whether prices hold the tax. */
  public List<String> partsNotes() {
    var spares = new LinkedHashMap<String, Integer>();
    offer.builds().stream()
        .flatMap(build -> build.standInLines().stream())
        .filter(line -> line.spareUnits() > 0)
        .forEach(line -> spares.put(line.what(), line.spareUnits()));
    var notes = new ArrayList<String>();
    if (!spares.isEmpty()) {
      notes.add(spares.entrySet().stream()
          .map(one -> "%s %s".formatted(one.getKey(), one.getValue()))
          .collect(Collectors.joining(", ", "Spares among them, in the units sold: ", ".")));
    }
    for (var i = 0; i < offer.builds().size(); i++) {
      var letter = offer.builds().size() == 1 ? "" : letter(i) + ": ";
      OrderWords.order(offer.builds().get(i).assessment())
          .ifPresent(order -> notes.add(letter + order));
    }
    notes.addAll(besides());
    if (settings.tax() != null) {
      notes.add("Single prices are%s.".formatted(taxed()));
    }
    return notes;
  }

  /** How single prices stand to the tax; empty where the shop tells of none. */
  String taxed() {
    return settings.tax() == null ? "" : settings.pricesIncludeTax() ? " with tax" : " without tax";
  }

  /** What the shop adds to each build, with its price. */
  public List<String> added() {
    return settings.added().stream()
        .map(extra -> extra.text() + ": " + price(extra.cents()) + taxed())
        .toList();
  }

  /**
   * How far picture and control reach, for who buys it; empty where the flight neither leads away nor was asked to reach, or
   * nothing is known.
   */
  public Optional<String> links(OfferedBuild build) {
    var assessment = build.delivered();
    return LinkWords.matter(build.scenario()) && !LinkWords.briefly(assessment).isEmpty()
        ? Optional.of(LinkWords.briefly(assessment) + " " + LinkWords.LAW)
        : Optional.empty();
  }

  /** What is out of stock and what takes its place, a sentence each, then what the build as asked for would be. */
  public List<String> standIns(OfferedBuild build) {
    var said = new ArrayList<>(
        build.standIns().stream().map(one -> standIn(one, build)).toList());
    if (!build.taken().isEmpty()) {
      said.add("Once it is in stock again: plan with %s, at %s in all."
          .formatted(promised(build, build.planWith()), price(build.totals().gross())));
    }
    return said;
  }

  String standIn(StandIn one, OfferedBuild build) {
    var line = one.line();
    var name = line.what() + " " + line.part().name();
    var out = line.inStock() == 0
        ? "%s is out of stock".formatted(name)
        : "only %s in stock of %s, where %s are wanted"
            .formatted(line.inStock(), name, line.units());
    if (one.swap().isPresent()) {
      var swap = one.swap().get();
      return Spoken.sentence("%s: %s in its place%s."
          .formatted(
              out,
              swap.part().name(),
              new Changes(build.scenario().isForRange(), settings.currency())
                  .alongside(swap.alongside())));
    }
    return Spoken.sentence(out
        + (line.isEnoughToFly()
            ? ": enough to fly, but spares have to be ordered."
            : one.role().isPresent()
                ? ", and no other in stock keeps every rule and limit: it has to be ordered."
                : ": it has to be ordered."));
  }

  /** What is in the large price, in a few words. */
  public String standing(OfferedBuild build) {
    if (!offer.isCounted()) {
      return "";
    }
    var toOrder = build.toOrder();
    var parts = build.delivered().build().parts();
    var names = toOrder.stream().filter(parts::containsValue).map(Part::name).toList();
    var small = toOrder.size() - names.size();
    if (toOrder.isEmpty()) {
      return "all of it in stock today";
    }
    return "to be ordered first: "
        + (names.size() > MOST_NAMED ? names.size() + " parts" : String.join(", ", names))
        + (small == 0
            ? ""
            : (names.isEmpty() ? "" : " and ")
                + small
                + (small == 1 ? " small thing" : " small things"));
  }

  /** Every caution for who buys one of the builds, once. */
  public List<String> cautions() {
    var cautions = new LinkedHashSet<String>();
    offer.builds().forEach(build -> cautions.addAll(BuyerCautions.of(build)));
    return List.copyOf(cautions);
  }

  /** What scenarios buy beside a build otherwise than this offer; empty where there is no such thing. */
  public List<String> besides() {
    return byScenario().keySet().stream()
        .flatMap(scenario -> besides(scenario).stream())
        .distinct()
        .toList();
  }

  private Optional<String> besides(Scenario scenario) {
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
    return new OfferParts(offer, this).units();
  }

  /** The same with what they cost, then work, tax and the sum. */
  public Table amounts() {
    return new OfferParts(offer, this).amounts();
  }

  /** For the till. */
  public String csv() {
    return new OfferTill(offer, this).table().csv();
  }

  /** For a page. */
  public String markdown() {
    return amounts().markdown();
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    lines.say("%s, %s%s, valid until %s."
        .formatted(
            settings.shop(),
            offer.number().map(number -> "offer " + number + " of ").orElse(""),
            offer.date(),
            offer.validUntil()));
    offer.customer().ifPresent(customer -> lines.say("For " + customer + "."));
    for (var i = 0; i < offer.builds().size(); i++) {
      var build = offer.builds().get(i);
      lines.blank().say("%s: %s".formatted(title(i), names(build)));
      lines.row(
          "   %s; %s; %s"
              .formatted(
                  plan(build), figures(build), price(build.deliveredTotals().gross())),
          3);
      if (!standing(build).isEmpty()) {
        lines.row("   " + Spoken.sentence(standing(build)) + ".", 3);
      }
      overBudget(build).ifPresent(more -> lines.row("   " + more, 3));
      tax(build).ifPresent(tax -> lines.row("   " + tax, 3));
      builtIn(build).ifPresent(what -> lines.row("   " + what, 3));
      links(build).ifPresent(text -> lines.row("   " + text, 3));
      disbelief(build).ifPresent(text -> lines.item(Figures.DOUBTED + " " + text));
      standIns(build).forEach(lines::item);
    }
    lines.blank();
    conditions().forEach(lines::say);
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
    return OfferJson.of(offer, this, version);
  }
}
