package pappus.scenario.reading;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pappus.catalog.Catalog;
import pappus.files.Closest;
import pappus.files.Fingerprint;
import pappus.files.InputException;
import pappus.files.Problem;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.part.Antenna;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Camera;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Property;
import pappus.part.Receiver;
import pappus.part.Role;
import pappus.part.Transmitter;
import pappus.scenario.Choice;
import pappus.scenario.Families;
import pappus.scenario.FixedParts;
import pappus.scenario.OwnLine;
import pappus.scenario.Scenario;
import pappus.scenario.Where;

/**
 * A scenario and what it was read from.
 *
 * @param places where everything stands in its file
 */
public record ReadScenario(Scenario scenario, Fingerprint input, JsonPlaces places) {

  /**
   * The quad that is there to be changed, if the scenario starts from one.
   *
   * @param catalog with the draft frame
   * @param read told the result that names it, if one does
   * @throws InputException with all that is wrong with it
   */
  public Optional<Build> aboard(Catalog catalog, Consumer<Source> read) {
    var aircraft = scenario.aircraft();
    if (aircraft == null) {
      return Optional.empty();
    }
    var parent = Path.of(input.name()).getParent();
    var check =
        new AircraftCheck(scenario, aircraft, places, parent == null ? Path.of("") : parent);
    var build = check.build(catalog, read);
    build.ifPresent(there -> check.checkTouched(there, catalog));
    if (!check.problems().isEmpty()) {
      throw new InputException(
          InputException.Kind.BAD_DATA, check.problems().stream().sorted().toList());
    }
    return build;
  }

  /** A problem for all that is wrong with the quad that the scenario starts from. */
  public List<Problem> problemsWithAircraft(Catalog catalog) {
    try {
      aboard(catalog, read -> {});
      return List.of();
    } catch (InputException refused) {
      return refused.problems();
    }
  }

  /** More words than these are not told one by one. */
  private static final int MOST_LISTED = 12;

  /** A problem for every id that the catalogue does not hold, or that cannot fill its role. */
  public List<Problem> problemsWith(Catalog catalog) {
    var problems = new ArrayList<Problem>();
    var choice = scenario.partsOrAny();
    checkIds("parts.fixed", choice.fixedIds(), catalog, problems);
    checkIds("parts.excluded", choice.excludedIds(), catalog, problems);
    checkIds("parts.owned", choice.ownedIds(), catalog, problems);
    for (var i = 0; i < choice.allowedParts().size(); i++) {
      var allowed = choice.allowedParts().get(i);
      var path = "parts.allowed[" + i + "].parts";
      checkIds(path, allowed.parts(), catalog, problems);
      for (var j = 0; j < allowed.parts().size(); j++) {
        var element = path + "[" + j + "]";
        catalog
            .part(allowed.parts().get(j))
            .filter(part -> !mayFill(part, allowed.role()))
            .ifPresent(part -> problems.add(places.problem(
                element,
                "must be a part that fills the role %s, but %s is of the kind %s."
                    .formatted(allowed.role().key(), part.id(), part.kind().key()))));
      }
    }
    for (var i = 0; i < scenario.waived().size(); i++) {
      checkIds("waivers[" + i + "].parts", scenario.waived().get(i).parts(), catalog, problems);
    }
    var pilot = scenario.pilotOrAny();
    checkFamilies("pilot.video", pilot.video(), videoFamilies(catalog), problems);
    checkFamilies("pilot.radio", pilot.radio(), radioLinks(catalog), problems);
    scenario.whereOrAny().wishes().forEach(wish -> checkTexts(wish, catalog, problems));
    return problems.stream().sorted().toList();
  }

  /**
   * A problem for every fixed part, the draft frame among them, that no build could have by what else the scenario
   * says.
   *
   * @param catalog without the draft frame
   */
  public List<Problem> contradictions(Catalog catalog) {
    var choice = scenario.choice();
    var problems = new ArrayList<Problem>();
    var fixed = fixed(catalog);
    scenario.drafts().stream()
        .map(Frame::id)
        .filter(id -> catalog.part(id).isPresent())
        .findFirst()
        .ifPresent(id -> problems.add(places.problem(
            "draftFrame.id",
            "must be an id that no part of the catalogue has, but is the text %s."
                .formatted(Shown.text(id)))));
    var taken = FixedParts.of(fixed.values(), scenario::permits, catalog);
    fixed.forEach((path, part) -> unmet(part, catalog)
        .or(() -> lumped(part, catalog))
        .or(() -> against(part, taken, choice, catalog))
        .ifPresent(wrong -> problems.add(places.problem(path, wrong))));
    for (var i = 0; i < scenario.partsOrAny().fixedIds().size(); i++) {
      var id = scenario.partsOrAny().fixedIds().get(i);
      if (choice.excludedIds().contains(id)
          && catalog.part(id).isEmpty()
          && draft(id).isEmpty()) {
        problems.add(places.problem("parts.fixed[" + i + "]", excluded(id)));
      }
    }
    for (var i = 0; i < choice.ownedIds().size(); i++) {
      var path = "parts.owned[" + i + "]";
      catalog
          .part(choice.ownedIds().get(i))
          .flatMap(part -> unmet(part, catalog))
          .ifPresent(wrong -> problems.add(places.problem(path, wrong)));
    }
    problems.addAll(lumpedRoles());
    return problems.stream().sorted().toList();
  }

  /** What is asked of roles for which no part is taken. */
  private List<Problem> lumpedRoles() {
    var problems = new ArrayList<Problem>();
    var lumped = scenario.lumped();
    for (var wish : scenario.whereOrAny().wishes()) {
      if (lumped.contains(wish.role())) {
        problems.add(places.problem(wish.path(), lumped(wish.role())));
      }
    }
    var allowed = scenario.partsOrAny().allowedParts();
    for (var i = 0; i < allowed.size(); i++) {
      if (lumped.contains(allowed.get(i).role())) {
        problems.add(places.problem(
            "parts.allowed[" + i + "].role", lumped(allowed.get(i).role())));
      }
    }
    return problems;
  }

  private static String lumped(Role role) {
    return "must be about a role that the lump does not fill, but is about the %s."
        .formatted(role.label());
  }

  /** A wish that keeps a part out of every role that it could fill, if one does. */
  private Optional<String> unmet(Part part, Catalog catalog) {
    var where = scenario.whereOrAny();
    var roles = catalog.roles(part);
    return roles.stream().anyMatch(role -> where.admits(role, part))
        ? Optional.empty()
        : roles.stream()
            .flatMap(role -> where.unmet(role, part).stream())
            .findFirst()
            .map(wish -> "must meet %s, %s, but of %s it is %s."
                .formatted(wish.path(), wish.condition().inWords(), part.id(), wish.found(part)));
  }

  /**
   * Fixed parts by where they stand: the draft frame first, as it can be ordered where no way to is fixed, then each once
   * that the catalogue holds.
   */
  private Map<String, Part> fixed(Catalog catalog) {
    var fixed = new LinkedHashMap<String, Part>();
    var ids = scenario.partsOrAny().fixedIds();
    var drafts = scenario.drafts();
    var asked = drafts.stream().filter(draft -> ids.contains(draft.id())).toList();
    drafts.stream()
        .filter(
            draft -> asked.isEmpty() ? scenario.permits(Role.FRAME, draft) : asked.contains(draft))
        .findFirst()
        .or(() -> drafts.stream().findFirst())
        .ifPresent(draft -> fixed.put("draftFrame.id", draft));
    for (var i = 0; i < ids.size(); i++) {
      var id = ids.get(i);
      if (ids.indexOf(id) == i) {
        var path = "parts.fixed[" + i + "]";
        draft(id)
            .or(() -> catalog.part(id))
            .filter(part -> !fixed.containsValue(part))
            .ifPresent(part -> fixed.put(path, part));
      }
    }
    return fixed;
  }

  private Optional<Part> draft(String id) {
    return scenario.drafts().stream()
        .filter(draft -> draft.id().equals(id))
        .map(Part.class::cast)
        .findFirst();
  }

  private Optional<String> lumped(Part part, Catalog catalog) {
    var lumped = scenario.lumped();
    // An antenna does not say what it is for: it is in the way where it is for nothing else.
    var filled = part instanceof Antenna ? catalog.roles(part) : part.fills();
    var isInTheWay = part instanceof Antenna
        ? !filled.isEmpty() && lumped.containsAll(filled)
        : filled.stream().anyMatch(lumped::contains);
    return filled.stream()
        .filter(role -> isInTheWay && lumped.contains(role))
        .findFirst()
        .map(role -> "must be for a role that the lump does not fill, but %s is a %s."
            .formatted(part.id(), role.label()));
  }

  private static String excluded(String id) {
    return "must be a part that is not excluded, but %s is in parts.excluded.".formatted(id);
  }

  /** What is wrong with fixing a part. */
  private static Optional<String> against(
      Part part, FixedParts fixed, Choice choice, Catalog catalog) {
    var id = part.id();
    if (choice.excludedIds().contains(id)) {
      return Optional.of(excluded(id));
    }
    var roles = catalog.roles(part);
    if (roles.isEmpty()) {
      return Optional.of(
          part instanceof Antenna antenna
              ? "must be an antenna for some port in the catalogue, but %s is for %s, which none has."
                  .formatted(id, antenna.band().label())
              : "must be a part that fills a role, but %s is of the kind %s. Maybe leave it out: small hardware follows from the other parts."
                  .formatted(id, part.kind().key()));
    }
    if (fixed.roles(part).isEmpty()) {
      return Optional.of("must be allowed for the role %s, but %s is not in parts.allowed."
          .formatted(roles.stream().map(Role::key).collect(Collectors.joining(" or ")), id));
    }
    for (var role : fixed.roles(part)) {
      var first = fixed.in(role).get(0);
      if (first != part) {
        return Optional.of("must be the only part fixed for the role %s, but %s is so beside %s."
            .formatted(role.key(), id, first.id()));
      }
    }
    return fixed.isNeedless(part) ? Optional.of(needless(part, fixed)) : Optional.empty();
  }

  private static String needless(Part part, FixedParts fixed) {
    return fixed.roles(part).stream()
        .flatMap(role -> fixed.bringing(role).stream()
            .map(other ->
                "must be for a role that no other fixed part fills, but %s is a %s, which %s brings along."
                    .formatted(part.id(), role.label(), other.id())))
        .findFirst()
        .orElse(
            "must be a lead that the fixed board and pack need, but %s is between plugs that match."
                .formatted(part.id()));
  }

  /** Video families that parts of a catalogue speak. */
  public static Set<String> videoFamilies(Catalog catalog) {
    var words = new TreeSet<String>();
    for (var part : catalog.parts()) {
      if (part instanceof Transmitter transmitter) {
        words.add(transmitter.family());
      } else if (part instanceof Camera camera) {
        words.add(camera.family());
      } else if (part instanceof Board board && board.transmitter() != null) {
        words.add(board.transmitter().family());
      }
    }
    return words;
  }

  /** Radio links that parts of a catalogue speak. */
  public static Set<String> radioLinks(Catalog catalog) {
    var words = new TreeSet<String>();
    for (var part : catalog.parts()) {
      if (part instanceof Receiver receiver) {
        words.add(receiver.link());
      } else if (part instanceof Board board && board.receiver() != null) {
        words.add(board.receiver().link());
      }
    }
    return words;
  }

  private void checkFamilies(
      String path, @Nullable Families families, Set<String> known, List<Problem> problems) {
    if (families == null) {
      return;
    }
    for (var i = 0; i < families.names().size(); i++) {
      var name = families.names().get(i);
      if (!name.equals(Families.DIGITAL)) {
        checkWord(families.isList() ? path + "[" + i + "]" : path, name, known, problems);
      }
    }
  }

  /** Texts that a wish names must be those of some part. */
  private void checkTexts(Where.Wished wish, Catalog catalog, List<Problem> problems) {
    var property = wish.property();
    if (property.type() != Property.Type.TEXT) {
      return;
    }
    var known = Where.texts(wish.role(), property, catalog);
    wish.condition()
        .named()
        .forEach(
            (place, text) -> checkWord(wish.path() + place, String.valueOf(text), known, problems));
  }

  /** A word that no part knows is a slip, not a wish. */
  private void checkWord(String path, String word, Set<String> known, List<Problem> problems) {
    if (!known.isEmpty() && !known.contains(word)) {
      problems.add(places.problem(
          path,
          "must be one that a part of the catalogue has%s, but is the text %s.%s"
              .formatted(
                  known.size() > MOST_LISTED ? "" : ", " + String.join(", ", known),
                  Shown.text(word),
                  Closest.advice(word, known))));
    }
  }

  /** A problem for every waiver of a rule that there is not. */
  public List<Problem> problemsWithRules(Set<String> ruleIds) {
    var problems = new ArrayList<Problem>();
    for (var i = 0; i < scenario.waived().size(); i++) {
      var rule = scenario.waived().get(i).rule();
      if (!ruleIds.contains(rule)) {
        problems.add(places.problem(
            "waivers[" + i + "].rule",
            "must be the id of a fit rule, but is the text %s.%s"
                .formatted(Shown.text(rule), Closest.advice(rule, ruleIds))));
      }
    }
    return problems;
  }

  /** Prices are added up: all must be in one currency, and the budget in the same. */
  public List<Problem> problemsWithCurrency(Catalog catalog) {
    var currencies = catalog.parts().stream()
        .map(part -> part.price().currency())
        .distinct()
        .sorted()
        .toList();
    var budget = scenario.budget();
    var problems = new ArrayList<Problem>();
    if (currencies.size() > 1) {
      problems.add(Problem.ofFile(
          input.name(),
          "prices in the catalogue must be in one currency, but are in "
              + String.join(", ", currencies)
              + "."));
    } else if (budget != null && !currencies.isEmpty() && !currencies.contains(budget.currency())) {
      problems.add(places.problem(
          "budget.currency",
          "must be that of the catalogue, %s, but is %s."
              .formatted(currencies.get(0), budget.currency())));
    }
    var lump = scenario.lump();
    if (lump != null
        && lump.price() != null
        && currencies.size() == 1
        && !currencies.contains(lump.price().currency())) {
      problems.add(places.problem(
          "lump.price.currency",
          "must be that of the catalogue, %s, but is %s."
              .formatted(currencies.get(0), lump.price().currency())));
    }
    for (var i = 0; currencies.size() == 1 && i < ownLines().size(); i++) {
      var currency = ownLines().get(i).price().currency();
      if (!currencies.contains(currency)) {
        problems.add(places.problem(
            "alsoBuy.lines[" + i + "].price.currency",
            "must be that of the catalogue, %s, but is %s."
                .formatted(currencies.get(0), currency)));
      }
    }
    return problems;
  }

  private List<OwnLine> ownLines() {
    return scenario.alsoBuyOrNothing().ownLines();
  }

  private void checkIds(String path, List<String> ids, Catalog catalog, List<Problem> problems) {
    for (var i = 0; i < ids.size(); i++) {
      var id = ids.get(i);
      if (catalog.part(id).isEmpty() && draft(id).isEmpty()) {
        problems.add(places.problem(
            path + "[" + i + "]",
            "must be the id of a part in the catalogue, but is the text %s.%s"
                .formatted(Shown.text(id), Closest.advice(id, catalog.ids()))));
      }
    }
  }

  /** Antennas do not say what they are for: the port they are plugged in does. */
  private static boolean mayFill(Part part, Role role) {
    if (part instanceof Antenna) {
      return Role.ANTENNAS.contains(role);
    }
    return part.fills().contains(role);
  }
}
