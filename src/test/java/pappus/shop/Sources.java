package pappus.shop;

import java.util.List;
import java.util.Locale;
import pappus.part.Known;

/** Sentences a person would write about where numbers come from. */
final class Sources {
  private static final List<String> WEIGHED = List.of(
      "Weighed on a 0.1 g scale, three pieces",
      "Weighed on a pocket scale as it came",
      "One piece weighed before it was built in",
      "Weighed on a 0.1 g scale out of its bag",
      "Two pieces weighed and the mean taken");
  private static final List<String> LISTED = List.of(
      "Mass from the maker's sheet of spring 2026",
      "Mass as printed on the box",
      "Mass from the maker's page, read in March 2026",
      "Maker's mass of autumn 2025",
      "Mass as the maker gives it by letter");
  private static final List<String> GUESSED = List.of(
      "Mass worked out from its volume",
      "Mass worked out from the next size up",
      "Mass guessed from a photograph beside a ruler",
      "Mass taken from a sister part");

  private Sources() {}

  /** A sentence about a mass alone. */
  static String mass(Known known, Draw draw) {
    return start(known, draw) + ".";
  }

  /** One sentence about the mass and, in the second half, the other figures. */
  static String of(Known mass, String figures, Draw draw) {
    return start(mass, draw) + "; " + figures + ".";
  }

  /** Known as most small parts are: some weighed, most from a sheet, a few guessed. */
  static Known usual(Draw draw) {
    var at = draw.between(0, 1);
    if (at < 0.35) {
      return Known.MEASURED;
    }
    return at < 0.9 ? Known.MAKER : Known.ESTIMATED;
  }

  static String withNote(String source, String note) {
    return note.isEmpty()
        ? source
        : source + " " + note.substring(0, 1).toUpperCase(Locale.ROOT) + note.substring(1);
  }

  private static String start(Known known, Draw draw) {
    return draw.pick(
        switch (known) {
          case MEASURED -> WEIGHED;
          case MAKER -> LISTED;
          case ESTIMATED -> GUESSED;
        });
  }
}
