package pappus.scenario.reading;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.files.Problem;
import pappus.files.Source;
import pappus.files.json.JsonPlaces;
import pappus.part.Build;
import pappus.part.Role;
import pappus.scenario.Aircraft;
import pappus.scenario.Scenario;

/** The quad that a scenario starts from, and what of it contradicts the scenario or the catalogue. */
final class AircraftCheck {
  private final Scenario scenario;
  private final Aircraft aircraft;
  private final JsonPlaces places;
  private final Path folder;
  private final List<Problem> problems = new ArrayList<>();

  /** @param folder that of the scenario */
  AircraftCheck(Scenario scenario, Aircraft aircraft, JsonPlaces places, Path folder) {
    this.scenario = scenario;
    this.aircraft = aircraft;
    this.places = places;
    this.folder = folder;
  }

  /** What is wrong, as far as it was looked for. */
  List<Problem> problems() {
    return problems;
  }

  /**
   * The quad; empty where it is named wrongly, which is a problem then.
   *
   * @param read told a result that is read for it
   * @throws pappus.files.InputException if that cannot be read
   */
  Optional<Build> build(Catalog catalog, Consumer<Source> read) {
    try {
      var build = BuildText.read(aircraft.build(), folder, catalog, read);
      Role.FLYING.stream()
          .filter(role -> build.part(role).isEmpty())
          .forEach(role ->
              refuse("aircraft.build", "must name a %s, but names none.".formatted(role.label())));
      build.parts().keySet().stream()
          .filter(build::bringsAlong)
          .forEach(role -> refuse(
              "aircraft.build",
              "must leave out the %s, which another part of it brings along, but names one."
                  .formatted(role.label())));
      return Optional.of(build);
    } catch (IllegalArgumentException wrong) {
      refuse("aircraft.build", "cannot be read: " + wrong.getMessage());
      return Optional.empty();
    }
  }

  /** Looks at all that the scenario says of roles that may not change. */
  void checkTouched(Build build, Catalog catalog) {
    var choice = scenario.partsOrAny();
    check("parts.fixed", choice.fixedIds(), catalog);
    check("parts.excluded", choice.excludedIds(), catalog);
    for (var i = 0; i < choice.allowedParts().size(); i++) {
      check("parts.allowed[" + i + "].role", Set.of(choice.allowedParts().get(i).role()));
    }
    if (scenario.draftFrame() != null) {
      check("draftFrame.id", Set.of(Role.FRAME));
    }
    scenario.whereOrAny().wishes().forEach(wish -> check(wish.path(), Set.of(wish.role())));
    var wants = scenario.wants();
    for (var i = 0; wants != null && i < wants.size(); i++) {
      var role = wants.get(i).role();
      if (!build.fills(role) && !aircraft.mayChange(role) && !aircraft.mayChange(Role.BOARD)) {
        check("wants[" + i + "]", Set.of(role));
      }
    }
  }

  private void check(String path, List<String> ids, Catalog catalog) {
    for (var i = 0; i < ids.size(); i++) {
      var element = path + "[" + i + "]";
      catalog.part(ids.get(i)).ifPresent(part -> check(element, catalog.roles(part)));
    }
  }

  /** Refuses what is about roles none of which may change; small hardware is for none. */
  private void check(String path, Set<Role> roles) {
    if (!roles.isEmpty() && roles.stream().noneMatch(aircraft::mayChange)) {
      refuse(
          path,
          "must be about a role that may change, but is about %s, which aircraft.mayChange does not name."
              .formatted(
                  roles.stream().sorted().map(Role::key).collect(Collectors.joining(" or "))));
    }
  }

  private void refuse(String path, String predicate) {
    problems.add(places.problem(path, predicate));
  }
}
