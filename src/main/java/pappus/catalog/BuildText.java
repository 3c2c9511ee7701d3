package pappus.catalog;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import pappus.files.Closest;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.part.Antenna;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** Builds as people type them: part ids with counts, {@code id,id,id*4}. */
public final class BuildText {
  /** How a build of a result is named: its rank, or what it is picked for. */
  public static final String NAME = "[1-9][0-9]{0,2}|[a-z][a-z0-9-]{0,69}";

  private BuildText() {}

  /**
   * The build of a text.
   *
   * @throws IllegalArgumentException naming what cannot be read, an unknown id, a part without a role,
   *     or a count that is not the one that flies
   */
  public static Build parse(String text, Catalog catalog) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    var counts = new EnumMap<Role, Integer>(Role.class);
    var antennas = new ArrayList<Antenna>();
    var antennaCounts = new ArrayList<Integer>();
    for (var item : text.split(",", -1)) {
      var star = item.indexOf('*');
      var id = (star < 0 ? item : item.substring(0, star)).strip();
      var count = star < 0 ? 0 : count(item, item.substring(star + 1).strip());
      var part = catalog
          .part(id)
          .orElseThrow(() -> new IllegalArgumentException(
              "Each part must be the id of a part in the catalogue, but is "
                  + quoted(id)
                  + "."
                  + advice(id, catalog)));
      if (part instanceof Antenna antenna) {
        antennas.add(antenna);
        antennaCounts.add(count);
      } else if (part.fills().isEmpty()) {
        throw new IllegalArgumentException(String.format(
            Locale.ROOT,
            "%s is small hardware, which follows from the other parts: leave it out.",
            id));
      } else {
        put(chosen, counts, part.fills().get(0), part, count);
      }
    }
    for (var i = 0; i < antennas.size(); i++) {
      var antenna = antennas.get(i);
      put(chosen, counts, role(antenna, chosen), antenna, antennaCounts.get(i));
    }
    var build = Build.of(chosen);
    checkCounts(build, counts);
    return build;
  }

  /**
   * The build of a text that names parts, or a row or a pick of a result, {@code result.json#2}.
   *
   * @param folder from which the path of a result leads
   * @param read told each result that is read
   * @throws pappus.files.InputException if a result cannot be read
   * @throws IllegalArgumentException naming what cannot be read, as {@link #parse} does
   */
  public static Build read(String text, Path folder, Catalog catalog, Consumer<Source> read) {
    var hash = text.lastIndexOf('#');
    if (hash < 0) {
      return parse(text, catalog);
    }
    var which = text.substring(hash + 1);
    if (!which.matches(NAME)) {
      throw new IllegalArgumentException(
          "must end in # and a rank or a pick, but ends in #" + which + ".");
    }
    var source = Source.read(folder.resolve(text.substring(0, hash)));
    read.accept(source);
    return of(ResultFile.roles(source, which), catalog);
  }

  /**
   * The build of ids by role, as result files hold them.
   *
   * @throws IllegalArgumentException naming an id that the catalogue does not hold
   */
  public static Build of(Map<String, String> idsByRole, Catalog catalog) {
    var chosen = new EnumMap<Role, Part>(Role.class);
    for (var role : Role.values()) {
      var id = idsByRole.get(role.key());
      if (id != null) {
        chosen.put(
            role,
            catalog
                .part(id)
                .orElseThrow(() -> new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "The catalogue has no part %s, which the result names.",
                    quoted(id)))));
      }
    }
    return Build.of(chosen);
  }

  private static int count(String item, String text) {
    if (!text.matches("[1-9][0-9]?")) {
      throw new IllegalArgumentException(String.format(
          Locale.ROOT,
          "A count must be a whole number from 1 to 99, but %s has %s.",
          quoted(item),
          quoted(text)));
    }
    return Integer.parseInt(text);
  }

  private static void put(
      Map<Role, Part> chosen, Map<Role, Integer> counts, Role role, Part part, int count) {
    var earlier = chosen.putIfAbsent(role, part);
    if (earlier != null) {
      throw new IllegalArgumentException(String.format(
          Locale.ROOT,
          "%s and %s both fill the role of %s; name one.",
          earlier.id(),
          part.id(),
          role.label()));
    }
    if (count > 0) {
      counts.put(role, count);
    }
  }

  /** An antenna goes where its plug and band fit; the video port is asked first. */
  private static Role role(Antenna antenna, Map<Role, Part> chosen) {
    var build = Build.of(chosen);
    var byBand = Role.ANTENNAS.stream()
        .filter(role -> !chosen.containsKey(role))
        .filter(role ->
            build.port(role).filter(port -> port.band() == antenna.band()).isPresent())
        .findFirst();
    return byBand.orElse(
        chosen.containsKey(Role.VIDEO_ANTENNA) ? Role.RADIO_ANTENNA : Role.VIDEO_ANTENNA);
  }

  private static void checkCounts(Build build, Map<Role, Integer> counts) {
    counts.forEach((role, count) -> {
      if (count != build.count(role)) {
        throw new IllegalArgumentException(String.format(
            Locale.ROOT,
            "%d of the %s fly, but %d are named.",
            build.count(role),
            role.label(),
            count));
      }
    });
  }

  private static String advice(String id, Catalog catalog) {
    return id.endsWith(".json")
        ? " Maybe a rank is missing, as in " + quoted("result.json#1") + "."
        : Closest.advice(id, catalog.ids());
  }

  private static String quoted(String text) {
    return Shown.text(text);
  }
}
