package pappus.order;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import pappus.assessment.LimitKind;
import pappus.assessment.Supply;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.ReadCatalog;
import pappus.catalog.ShelfEntry;
import pappus.change.Asked;
import pappus.compatibility.Rules;
import pappus.files.Closest;
import pappus.files.Fingerprint;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.Altered;
import pappus.files.json.JsonPlaces;
import pappus.files.json.JsonReader;
import pappus.offer.StockList;
import pappus.quantity.Money;
import pappus.scenario.Scenario;
import pappus.scenario.reading.ReadScenario;
import pappus.scenario.reading.ScenarioReader;

/** Reads an order with its scenarios and stock lists, and holds each to the catalogue. */
public final class OrderReader {
  private final Path file;
  private final ReadCatalog parts;
  private final Order order;
  private final JsonPlaces places;
  private final Problems problems;
  private final Map<String, Path> stockFiles;
  private final List<Fingerprint> files = new ArrayList<>();

  private OrderReader(
      Path file,
      ReadCatalog parts,
      Order order,
      JsonPlaces places,
      Problems problems,
      Map<String, Path> stockFiles) {
    this.file = file;
    this.parts = parts;
    this.order = order;
    this.places = places;
    this.problems = problems;
    this.stockFiles = stockFiles;
  }

  /**
   * Reads everything.
   *
   * @throws InputException with all that is wrong in all files
   */
  public static OrderInputs read(Path file, List<CatalogFolder> folders) {
    return reader(file, folders).inputs();
  }

  /**
   * Reads an order of which some came.
   *
   * @param earlier what was told of it
   * @param told the file that told it
   * @param have lists of what came
   * @param stocks what shops can deliver now, each a file, with the shop's name and = before it where the order has several
   * @throws InputException with all that is wrong in all files
   */
  public static Delivery delivered(
      Path file,
      List<CatalogFolder> folders,
      Earlier earlier,
      String told,
      List<Path> have,
      List<String> stocks) {
    var reader = reader(file, folders);
    var before = reader.inputs();
    var bags = reader.bags(earlier, told);
    var came = new ArrayList<Order.Leftover>();
    var lists = new ArrayList<>(before.files().subList(0, 1));
    for (var list : have) {
      Source.find(list, reader.problems).ifPresent(source -> {
        lists.add(source.fingerprint());
        came.addAll(HaveList.read(source, reader.parts.catalog(), reader.problems));
      });
    }
    var stockFiles = reader.stockFiles(stocks);
    reader.problems.throwIfAny();
    var paid = earlier.paid(came);
    var spent = paid.stream().mapToLong(Earlier.Bought::cents).sum();
    spent += spent == 0 ? 0 : earlier.postageCents();
    var now = new OrderReader(
        file,
        reader.parts,
        reader.order.after(came, spent, List.copyOf(stockFiles.keySet())),
        reader.places,
        reader.problems,
        stockFiles);
    now.files.addAll(lists);
    return new Delivery(before, now.inputs(), bags, paid, spent);
  }

  private static OrderReader reader(Path file, List<CatalogFolder> folders) {
    var problems = new Problems();
    var parts = CatalogReader.read(folders, problems);
    var source = Source.find(file, problems);
    var read =
        source.flatMap(found -> JsonReader.readRecord(found, Order.SCHEMA, Order.class, problems));
    problems.throwIfAny();
    var reader = new OrderReader(
        file, parts, read.orElseThrow(), JsonPlaces.of(source.orElseThrow()), problems, Map.of());
    reader.files.add(source.get().fingerprint());
    return reader;
  }

  private List<Delivery.Bag> bags(Earlier earlier, String told) {
    var bags = new ArrayList<Delivery.Bag>();
    for (var i = 0; i < order.groups().size(); i++) {
      var group = order.groups().get(i);
      var learners = 0;
      for (var bag : earlier.bags()) {
        if (bag.group().equals(group.name())) {
          learners += bag.learners();
          try {
            bags.add(new Delivery.Bag(
                i, bag.name(), bag.learners(), BuildText.of(bag.roles(), parts.catalog())));
          } catch (IllegalArgumentException unknown) {
            problems.add(Problem.ofFile(told, String.valueOf(unknown.getMessage())));
          }
        }
      }
      if (learners != group.pieces()) {
        problems.add(Problem.ofFile(
            told,
            "must have builds for %s learners of the group %s, as %s has, but has them for %s."
                .formatted(group.pieces(), group.name(), file, learners)));
      }
    }
    return bags;
  }

  private Map<String, Path> stockFiles(List<String> stocks) {
    var names = order.shopsOrNone().stream().map(Order.Store::name).toList();
    var files = new LinkedHashMap<String, Path>();
    for (var text : stocks) {
      var equals = text.indexOf('=');
      var isNamed = equals > 0 && names.contains(text.substring(0, equals));
      if (!isNamed && names.size() > 1) {
        problems.add(Problem.ofFile(
            "--stock",
            "must begin with a shop and =, one of %s, but is %s."
                .formatted(String.join(", ", names), Shown.text(text))));
        continue;
      }
      var shop =
          isNamed ? text.substring(0, equals) : names.isEmpty() ? Order.ONLY_SHOP : names.get(0);
      if (files.put(shop, Path.of(isNamed ? text.substring(equals + 1) : text)) != null) {
        problems.add(Problem.ofFile(
            "--stock", "must be there once for each shop, but is there twice for " + shop + "."));
      }
    }
    return files;
  }

  private OrderInputs inputs() {
    checkParts();
    checkGroups();
    var stocks = stocks();
    var scenarios = scenarios();
    problems.throwIfAny();
    files.addAll(parts.inputs());
    var wares = Wares.of(parts.catalog(), parts.shelf(), order, stocks, named(scenarios));
    var groups = new ArrayList<AskedGroup>();
    for (var i = 0; i < scenarios.size(); i++) {
      groups.add(group(i, scenarios.get(i), wares));
    }
    return new OrderInputs(
        order,
        groups,
        wares,
        new Till(wares.all(), postages()),
        parts.catalog().currency(),
        files,
        remarks(stocks));
  }

  private void checkParts() {
    for (var i = 0; i < order.stepsOrNone().size(); i++) {
      var step = order.stepsOrNone().get(i);
      checkPart("priceSteps[" + i + "].part", step.part());
      var shop = step.shop();
      if (shop != null) {
        checkName(
            "priceSteps[" + i + "].shop",
            shop,
            "shop",
            order.shopsOrNone().stream().map(Order.Store::name).toList());
      }
    }
    for (var i = 0; i < order.leftoversOrNone().size(); i++) {
      checkPart("leftovers[" + i + "].part", order.leftoversOrNone().get(i).part());
    }
  }

  private void checkPart(String path, String id) {
    if (parts.catalog().part(id).isEmpty()) {
      problems.add(places.problem(
          path,
          "must name a part of the catalogue, but there is none of the id %s.%s"
              .formatted(id, Closest.advice(id, parts.catalog().ids()))));
    }
  }

  private void checkName(String path, String name, String what, List<String> names) {
    if (!names.contains(name)) {
      problems.add(places.problem(
          path,
          "must name a %s of the order, but is %s.%s"
              .formatted(what, name, Closest.advice(name, names))));
    }
  }

  private void checkGroups() {
    var names = order.groups().stream().map(Order.Group::name).toList();
    for (var i = 0; i < order.sameOrNone().size(); i++) {
      var of = order.sameOrNone().get(i).groups();
      for (var j = 0; of != null && j < of.size(); j++) {
        checkName("same[" + i + "].groups[" + j + "]", of.get(j), "group", names);
      }
    }
  }

  private @Nullable Path beside(String path, String name) {
    try {
      return file.resolveSibling(name);
    } catch (InvalidPathException noPath) {
      problems.add(places.problem(path, "must name a file, but is " + name + "."));
      return null;
    }
  }

  private List<List<ShelfEntry>> stocks() {
    var stocks = new ArrayList<List<ShelfEntry>>();
    for (var i = 0; i < order.shopsOrNone().size(); i++) {
      var shop = order.shopsOrNone().get(i);
      var given = stockFiles.get(shop.name());
      var path = given == null ? beside("shops[" + i + "].stock", shop.stock()) : given;
      if (path != null) {
        Source.find(path, problems).ifPresent(source -> {
          files.add(source.fingerprint());
          stocks.add(StockList.read(source, parts.catalog().currency(), problems));
        });
      }
    }
    return stocks;
  }

  private List<ReadScenario> scenarios() {
    var read = new ArrayList<ReadScenario>();
    var files = new LinkedHashMap<String, ReadScenario>();
    for (var i = 0; i < order.groups().size(); i++) {
      var name = order.groups().get(i).scenario();
      var known = files.get(name);
      var path = known == null ? beside("groups[" + i + "].scenario", name) : null;
      var scenario = path == null ? known : scenario(path);
      if (scenario != null) {
        files.put(name, scenario);
        read.add(scenario);
      }
    }
    return read;
  }

  private @Nullable ReadScenario scenario(Path path) {
    try {
      var asked = ScenarioReader.read(
          path,
          InputStream.nullInputStream(),
          List.of(),
          parts.catalog().currency(),
          parts.lumps());
      files.add(asked.input());
      var supply = Supply.of(parts).drafting(asked.scenario());
      problems.addAll(asked.problemsWith(supply.catalog()));
      problems.addAll(asked.contradictions(parts.catalog()));
      problems.addAll(asked.problemsWithRules(Rules.waivableIds()));
      problems.addAll(asked.problemsWithCurrency(supply.catalog()));
      checkMayBeOrdered(asked);
      return asked;
    } catch (InputException refused) {
      problems.addAll(refused);
      return null;
    }
  }

  /** An order trades flights against each other: each must be ranked by one, and be built anew. */
  private void checkMayBeOrdered(ReadScenario asked) {
    var scenario = asked.scenario();
    if (!scenario.goalOrEndurance().isOfFlight()) {
      refuse(asked, "goal", "must be endurance or range in an order, but is another.");
    }
    if (scenario.aircraft() != null) {
      refuse(asked, "aircraft", "must be left out in an order: all is built anew.");
    }
    if (scenario.prefer() != null) {
      refuse(asked, "prefer", "must be left out in an order, which shares what is there.");
    }
    if (scenario.draftFrame() != null) {
      refuse(asked, "draftFrame", "must be left out in an order: put it in a catalogue.");
    }
  }

  private void refuse(ReadScenario asked, String path, String predicate) {
    problems.add(asked.places().problem(path, predicate));
  }

  /** Parts that some scenario names. */
  private static Set<String> named(List<ReadScenario> scenarios) {
    var named = new TreeSet<String>();
    for (var asked : scenarios) {
      var choice = asked.scenario().choice();
      named.addAll(choice.fixedIds());
      named.addAll(choice.ownedIds());
      named.addAll(choice.excludedIds());
      choice.allowedParts().forEach(allowed -> named.addAll(allowed.parts()));
      asked.scenario().waived().forEach(waiver -> named.addAll(waiver.parts()));
    }
    return named;
  }

  private AskedGroup group(int index, ReadScenario asked, Wares wares) {
    var group = order.groups().get(index);
    var own = group.budget() == null
        ? asked.scenario().budget() == null
            ? Long.MAX_VALUE
            : Objects.requireNonNull(asked.scenario().budget()).cents()
        : Amount.cents(group.budget());
    var budget = own == Long.MAX_VALUE ? Amount.cents(order.budget()) / order.learners() : own;
    var free = with(asked.scenario(), null);
    var held = with(asked.scenario(), Money.ofCents(budget, parts.catalog().currency()));
    var catalog = Catalog.of(wares.priced());
    var evidence = Supply.of(parts).evidence();
    var supply = new Supply(catalog, wares.stock(true), parts.flown(), evidence);
    return new AskedGroup(
        index,
        group,
        asked.input().name(),
        free,
        supply,
        supply.assessor(free),
        new Asked(held, new Supply(catalog, wares.stock(false), parts.flown(), evidence)),
        own);
  }

  private static Scenario with(Scenario scenario, @Nullable Money budget) {
    Map<String, @Nullable Object> changes = new LinkedHashMap<>();
    changes.put("alsoBuy", null);
    changes.put(LimitKind.BUDGET.field().path(), budget);
    return Altered.record(Scenario.class, scenario, changes);
  }

  private List<Till.Postage> postages() {
    return order.shopsOrNone().stream()
        .map(shop -> new Till.Postage(
            shop.name(),
            shop.postage() == null ? 0 : Amount.cents(shop.postage()),
            shop.freeFrom() == null ? Long.MAX_VALUE : Amount.cents(shop.freeFrom())))
        .toList();
  }

  private List<String> remarks(List<List<ShelfEntry>> stocks) {
    var remarks = new ArrayList<>(parts.remarks());
    for (var i = 0; i < stocks.size(); i++) {
      var shop = order.shopsOrNone().get(i);
      var given = stockFiles.get(shop.name());
      var list = given == null ? shop.stock() : given.toString();
      remarks.addAll(ReadCatalog.first(stocks.get(i).stream()
          .filter(entry -> parts.catalog().part(entry.id()).isEmpty())
          .map(entry -> Problem.ofFile(
              list, "%s is in no catalogue: it counts for nothing.".formatted(entry.id())))
          .toList()));
    }
    return remarks;
  }
}
