package pappus.answers.match;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pappus.compatibility.Match;
import pappus.document.Alike;
import pappus.document.Spoken;
import pappus.part.Kind;
import pappus.part.Part;

/** How parts go together, in words. */
public final class MatchWords {
  /** What a table of what fits does not say. */
  public static final String CAUTION =
      "Two parts that fit are not yet a quad: assess judges currents, ports, balance and mass of all of it. Check before you buy, and mind what lithium packs, propellers and radio power can do.";

  /** What stands behind it. */
  public static final String STANDING =
      "Every part of the catalogue was checked by every fit rule that can judge these parts alone.";

  private MatchWords() {}

  /** A grade in a word. */
  public static String word(Match.Grade grade) {
    return switch (grade) {
      case DIRECT -> "yes";
      case ADAPTER -> "with adapter";
      case WARNING -> "with care";
      case NOT -> "no";
      case UNKNOWN -> "not known";
    };
  }

  /** How many of a kind go how well. */
  public static String counts(Kind kind, List<Match> matches) {
    var counts = new ArrayList<String>();
    for (var grade : Match.Grade.values()) {
      var count = matches.stream().filter(match -> match.grade() == grade).count();
      if (count > 0) {
        counts.add(count + " " + counted(grade));
      }
    }
    return Spoken.sentence(kind.listName().replace('-', ' ')) + ": " + String.join(", ", counts)
        + ".";
  }

  /** So many of a kind. */
  static String number(Kind kind, int count) {
    return count + " " + kind.listName().replace('-', ' ');
  }

  private static String counted(Match.Grade grade) {
    return switch (grade) {
      case DIRECT -> "directly";
      case ADAPTER -> "with an adapter";
      case WARNING -> "with a note";
      case NOT -> "not";
      case UNKNOWN -> "not known";
    };
  }

  /**
   * Parts of one grade that do not simply fit: those of which the same is to be said in one sentence.
   *
   * @param all whether every part is named; else a few of many, and what differs in numbers alone is told of one
   */
  public static List<String> each(List<Match> matches, boolean all) {
    if (matches.isEmpty()) {
      return List.of();
    }
    var lead = switch (matches.get(0).grade()) {
      case WARNING -> "note on ";
      case NOT -> "not ";
      case DIRECT, ADAPTER, UNKNOWN -> "";
    };
    var said = said(matches);
    return (all ? Alike.whole(said) : Alike.briefly(said))
        .stream().map(text -> lead + text).toList();
  }

  private static Map<String, String> said(List<Match> matches) {
    var said = new LinkedHashMap<String, String>();
    matches.forEach(match -> said.put(match.part().id(), said(match)));
    return said;
  }

  /** Ids of parts that fit as they come. */
  static String ids(List<Match> matches) {
    return "directly "
        + matches.stream().map(match -> match.part().id()).collect(Collectors.joining(", "));
  }

  /** The same by what their ids begin with, which is written once. */
  static List<String> folded(List<Match> matches) {
    var rows = new LinkedHashMap<String, List<String>>();
    for (var match : matches) {
      var id = match.part().id();
      var dash = id.indexOf('-');
      rows.computeIfAbsent(dash < 0 ? id : id.substring(0, dash + 1), fresh -> new ArrayList<>())
          .add(dash < 0 ? "" : id.substring(dash + 1));
    }
    return rows.entrySet().stream()
        .map(row -> "directly " + row.getKey() + String.join(", ", row.getValue()))
        .toList();
  }

  private static String said(Match match) {
    var said = String.join(" ", match.text());
    return switch (match.grade()) {
      case DIRECT -> "directly.";
      case ADAPTER -> "with " + adapters(match) + "." + (said.isEmpty() ? "" : " " + said);
      case WARNING, NOT, UNKNOWN -> said;
    };
  }

  /** What makes it fit, with mass and price; empty where nothing has to. */
  public static String adapters(Match match) {
    return match.adapters().stream().map(MatchWords::adapter).collect(Collectors.joining(", "));
  }

  private static String adapter(Part part) {
    return "%s (%s g, %s)"
        .formatted(part.name(), Spoken.number(part.mass().grams(), 1), Spoken.price(part.price()));
  }

  /** In a cell of a table. */
  public static String cell(Match match) {
    return switch (match.grade()) {
      case DIRECT -> "yes";
      case ADAPTER -> "with " + adapters(match);
      // Its text says by itself that it is not known.
      case UNKNOWN -> String.join(" ", match.text());
      case WARNING, NOT -> word(match.grade()) + ": " + String.join(" ", match.text());
    };
  }
}
