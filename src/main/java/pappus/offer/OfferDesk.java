package pappus.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.change.Swap;
import pappus.change.Swapper;
import pappus.doubt.Doubts;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.AlsoBuy;
import pappus.scenario.Scenario;
import pappus.search.Incumbents;
import pappus.search.Question;

/**
 * Makes offers of builds, by a shop's prices and stock.
 *
 * <p>Why: src/site/markdown/decisions.md#an-offer-asks-the-assessment-anew-with-the-shops-shelf
 */
public final class OfferDesk {
  private final Shop shop;
  private final Shelf stock;
  private final boolean isCounted;
  private final Catalog catalog;
  private final Assessor assessor;
  private final Question question;

  /**
   * @param supply the catalogue; what is at hand in it makes no offer cheaper
   * @param stock what the shop has, and its prices; empty where it was not told
   */
  public OfferDesk(Shop shop, Scenario scenario, Supply supply, Optional<List<ShelfEntry>> stock) {
    this.shop = shop;
    this.stock = Shelf.of(stock.orElse(List.of()));
    this.isCounted = stock.isPresent();
    // What is short is told line by line, with what could take its place: the build itself stays as
    // it was asked for.
    var sold = new Supply(
            supply.catalog(),
            outOfReach(supply),
            supply.flown(),
            supply.evidence(),
            supply.aboard())
        .with(this.stock.priced(supply.catalog().parts()));
    this.catalog = sold.catalog();
    this.assessor = sold.assessor(scenario);
    this.question = Question.of(catalog, assessor);
  }

  /** What no build of the result can be made from: small things that nobody has. */
  private static Shelf outOfReach(Supply supply) {
    return Shelf.of(supply.shelf().entries().stream()
        .filter(entry -> supply.catalog().part(entry.id()).stream()
            .noneMatch(part -> supply.shelf().has(part, 1)))
        .toList());
  }

  /** Who judges by the shop's prices. */
  public Assessor assessor() {
    return assessor;
  }

  /** Every part at the shop's price, for builds that are named by ids. */
  public Catalog catalog() {
    return catalog;
  }

  /**
   * Ranks of the builds to offer where none were named: the longest flight to plan with, the most of it for the money,
   * and the lightest; fewer where one is several of these. What is hard to believe is left out unless there is nothing
   * else.
   *
   * @param builds of a result, by rank from 1
   */
  public List<Integer> pick(Map<Integer, Build> builds) {
    var all = builds.entrySet().stream()
        .map(each -> offered(each.getKey(), each.getValue()))
        .toList();
    var believed = all.stream().filter(OfferDesk::isBelieved).toList();
    var offered = believed.isEmpty() ? all : believed;
    var picked = new ArrayList<Integer>();
    for (ToDoubleFunction<OfferedBuild> better : Offer.GOALS.values()) {
      offered.stream()
          .max(Comparator.comparingDouble(better).thenComparing(build -> -build.rank()))
          .map(OfferedBuild::rank)
          .filter(rank -> !picked.contains(rank))
          .ifPresent(picked::add);
    }
    return picked;
  }

  /** What is better than such aircraft are known to fly is not to be pushed on anybody. */
  private static boolean isBelieved(OfferedBuild build) {
    return !build.assessment().isBeyondBelief();
  }

  /**
   * Builds as they are offered, with what takes the place of what is short.
   *
   * @param builds by rank
   */
  public List<OfferedBuild> offered(Map<Integer, Build> builds) {
    return builds.entrySet().stream()
        .map(each -> offered(each.getKey(), each.getValue()))
        .map(this::withStandIns)
        .toList();
  }

  /** Only builds that are offered need them. */
  private OfferedBuild withStandIns(OfferedBuild build) {
    var standIns = standIns(build.assessment(), build.lines());
    return new OfferedBuild(
        build.rank(),
        build.scenario(),
        build.assessment(),
        build.planWith(),
        build.lines(),
        build.totals(),
        standIns,
        lines(OfferedBuild.after(build.assessment(), standIns)),
        List.of());
  }

  private OfferedBuild offered(int rank, Build build) {
    var assessment = assessor.assess(build);
    var lines = lines(assessment);
    return new OfferedBuild(
        rank,
        assessor.scenario(),
        assessment,
        planWith(assessment),
        lines,
        totals(lines),
        List.of(),
        lines,
        List.of());
  }

  private Totals totals(List<OfferLine> lines) {
    var added = shop.settings().added().stream()
        .mapToLong(extra -> extra.price().cents())
        .sum();
    return Totals.of(added + lines.stream().mapToLong(OfferLine::cents).sum(), shop.settings());
  }

  /** The low end of the band; 0 without a flight. */
  private double planWith(Assessment assessment) {
    return assessment.flight().isEmpty()
        ? 0
        : new Doubts(assessor).band(assessment).low();
  }

  /** One line a part, whatever it serves as. */
  private List<OfferLine> lines(Assessment assessment) {
    var pieces = new LinkedHashMap<Part, Integer>();
    var spares = new HashMap<Part, Integer>();
    var labels = new LinkedHashMap<Part, String>();
    var spared = new HashSet<String>();
    for (var line : assessment.cost().lines()) {
      pieces.merge(line.part(), line.pieces(), Integer::sum);
      if (spared.add(line.label() + line.part().id())) {
        spares.merge(line.part(), spares(line.label(), line.part()), Integer::sum);
      }
      labels.putIfAbsent(line.part(), line.label());
    }
    var lines = new ArrayList<OfferLine>();
    pieces.forEach((part, count) -> lines.add(
        line(String.valueOf(labels.get(part)), part, count, spares.getOrDefault(part, 0))));
    return lines;
  }

  /** Pieces beyond what flies: by the shop's settings where they name the thing, else as the scenario wants. */
  private int spares(String label, Part part) {
    var settings = shop.settings().sparesOrNone();
    return settings.stream().anyMatch(spare -> spare.label().equals(label))
        ? AlsoBuy.pieces(settings, label, part)
        : assessor.scenario().alsoBuyOrNothing().spares(label, part);
  }

  private OfferLine line(String what, Part part, int pieces, int spares) {
    // What the customer has serves one build; more of it is sold.
    var owned = assessor.scenario().choice().ownedIds().contains(part.id());
    var wanted = owned ? spares : pieces + spares;
    if (wanted == 0) {
      return new OfferLine(what, part, pieces, 0, 0, 0, OfferLine.Standing.CUSTOMERS, 0);
    }
    var units = part.sold().unitsFor(wanted);
    var there = entry(part).map(ShelfEntry::stock).orElse(null);
    var standing = !isCounted
        ? OfferLine.Standing.NOT_COUNTED
        : there == null
            ? OfferLine.Standing.TO_ORDER
            : there >= units ? OfferLine.Standing.IN_STOCK : OfferLine.Standing.SHORT;
    return new OfferLine(
        what,
        part,
        pieces,
        units,
        units - part.sold().unitsFor(owned ? 0 : pieces),
        units * part.price().cents(),
        standing,
        there == null ? 0 : there);
  }

  /** A frame is counted as it is listed, however it is ordered. */
  private Optional<ShelfEntry> entry(Part part) {
    return stock.entry(part.id()).or(() -> stock.entry(part.listedId()));
  }

  /** For each part that is short, the best other one; each taken before the next is looked for. */
  private List<StandIn> standIns(Assessment assessment, List<OfferLine> lines) {
    var standIns = new ArrayList<StandIn>();
    var current = assessment;
    for (var line : lines) {
      if (line.standing() == OfferLine.Standing.SHORT) {
        var role = roleOf(line.part(), current.build());
        // Where only spares are missing, nothing has to stand in.
        var base = current;
        var swap = line.isEnoughToFly()
            ? Optional.<Swap>empty()
            : role.flatMap(found -> standIn(base, found, line.part()));
        current = swap.map(Swap::assessment).orElse(current);
        standIns.add(new StandIn(line, role, swap, totals(lines(current)), planWith(current)));
      }
    }
    return standIns;
  }

  private static Optional<Role> roleOf(Part part, Build build) {
    return build.parts().entrySet().stream()
        .filter(entry -> entry.getValue().equals(part))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** The best build with another part in the place of one that is out. */
  private Optional<Swap> standIn(Assessment base, Role role, Part out) {
    var before =
        lines(base).stream().collect(Collectors.toMap(OfferLine::part, OfferLine::standing));
    return new Swapper(question)
        .all(base, role).stream()
            .filter(Swap::breaksNothing)
            .filter(swap -> canBeHad(swap.assessment(), before, out))
            .min(Comparator.comparing(Swap::assessment, Incumbents.BEST_FIRST));
  }

  /**
   * Whether a build is as well in stock as one before but for the part that is out: what comes along with the other
   * part must be there, and small things, which few shops list, must not be known to be short.
   */
  private boolean canBeHad(Assessment after, Map<Part, OfferLine.Standing> before, Part out) {
    return lines(after).stream()
        .allMatch(line -> !line.part().equals(out)
            && switch (line.standing()) {
              case IN_STOCK, CUSTOMERS, NOT_COUNTED -> true;
              case SHORT -> before.get(line.part()) == OfferLine.Standing.SHORT;
              case TO_ORDER ->
                before.containsKey(line.part())
                    || roleOf(line.part(), after.build()).isEmpty();
            });
  }
}
