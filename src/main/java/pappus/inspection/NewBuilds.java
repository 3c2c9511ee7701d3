package pappus.inspection;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pappus.catalog.Catalog;
import pappus.compatibility.Loners;
import pappus.compatibility.Match;
import pappus.compatibility.Matcher;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Whether builds can be made with a part that could not before, by the fit rules of a scenario that asks for nothing.
 *
 * @param id of the part
 * @param fitting of each role that flies, how many parts go with it; none where it fits nothing of a role
 * @param example a build with it, ids by commas; empty if none was found
 * @param text in a line
 */
public record NewBuilds(
    String id, Map<Role, Integer> fitting, Optional<String> example, String text) {
  /** More matches than this are not tried for an example: a few thousand take a second. */
  private static final int MOST_TRIED = 4000;

  private static final List<Role> ORDER = List.copyOf(Role.FLYING);

  /**
   * What some parts of a catalogue make possible; nothing of those that could be built with before.
   *
   * @param before the catalogue without them, or with what they replace
   */
  public static List<NewBuilds> of(Catalog before, Catalog after, List<Part> parts) {
    var told = new ArrayList<NewBuilds>();
    var loners = new Loners(after).among(parts);
    for (var part : parts) {
      var lonely = Optional.ofNullable(loners.get(part));
      if (lonely.isPresent()) {
        told.add(new NewBuilds(
            part.id(),
            Map.of(),
            Optional.empty(),
            "%s makes no build possible: it %s".formatted(part.id(), lonely.get())));
      } else if (part.fills().stream().anyMatch(ORDER::contains)) {
        var now = new Trial(after).of(part);
        var was =
            before.part(part.id()).flatMap(old -> new Trial(before).of(old).example());
        if (was.isEmpty()) {
          told.add(now);
        }
      }
    }
    return List.copyOf(told);
  }

  /** Parts of one catalogue tried together. */
  private static final class Trial {
    private final Catalog catalog;
    private final Matcher matcher;
    private int tried;

    Trial(Catalog catalog) {
      this.catalog = catalog;
      this.matcher = new Matcher(catalog);
    }

    NewBuilds of(Part part) {
      var candidates = new EnumMap<Role, List<Part>>(Role.class);
      for (var role : ORDER) {
        if (!part.fills().contains(role)) {
          candidates.put(
              role,
              catalog.parts().stream()
                  .filter(other -> !other.fills().isEmpty() && other.fills().get(0) == role)
                  .filter(other -> goes(List.of(part), other))
                  .toList());
        }
      }
      var fitting = new EnumMap<Role, Integer>(Role.class);
      candidates.forEach((role, found) -> fitting.put(role, found.size()));
      var example = complete(List.of(part), List.copyOf(candidates.keySet()), candidates)
          .map(build -> build.stream()
              .sorted((one, other) -> one.fills().get(0).compareTo(other.fills().get(0)))
              .map(Part::id)
              .collect(Collectors.joining(", ")));
      return new NewBuilds(part.id(), fitting, example, text(part, fitting, example));
    }

    private String text(Part part, Map<Role, Integer> fitting, Optional<String> example) {
      var with = fitting.entrySet().stream()
          .map(entry -> "%s of %s as %s"
              .formatted(
                  entry.getValue(),
                  catalog.parts().stream()
                      .filter(other ->
                          !other.fills().isEmpty() && other.fills().get(0) == entry.getKey())
                      .count(),
                  entry.getKey().label()))
          .collect(Collectors.joining(", "));
      return example
          .map(build ->
              "%s makes builds possible, with %s: such as %s.".formatted(part.id(), with, build))
          .orElse("%s makes no build possible that was found, with %s.".formatted(part.id(), with));
    }

    /** The first parts of some roles that go with those given and with each other. */
    private Optional<List<Part>> complete(
        List<Part> given, List<Role> open, Map<Role, List<Part>> candidates) {
      if (open.isEmpty()) {
        return Optional.of(given);
      }
      for (var part : candidates.getOrDefault(open.get(0), List.of())) {
        if (tried++ > MOST_TRIED) {
          return Optional.empty();
        }
        if (given.size() == 1 || goes(given, part)) {
          var more = new ArrayList<>(given);
          more.add(part);
          var found = complete(more, open.subList(1, open.size()), candidates);
          if (found.isPresent()) {
            return found;
          }
        }
      }
      return Optional.empty();
    }

    private boolean goes(List<Part> given, Part part) {
      return matcher.match(given, part).map(Match::grade).stream()
          .noneMatch(grade -> grade == Match.Grade.NOT);
    }
  }
}
