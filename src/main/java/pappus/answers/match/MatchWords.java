package pappus.answers.match;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import pappus.compatibility.Match;
import pappus.document.Spoken;
import pappus.part.Kind;
import pappus.part.Part;

/** How parts go together, in words. */
public final class MatchWords {
  /** What a table of what fits does not say. */
  public static final String CAUTION =
      "Two parts that fit make no quad: currents, ports, balance and mass are judged with all of it, which assess does. Check before you buy, and mind what lithium packs, propellers and radio power can do.";

  /** What stands behind it. */
  public static final String STANDING =
      "Every part of the catalogue was asked about by every fit rule that can tell from these parts alone.";

  /** In the place of a part's own id, where the same is said of several. */
  private static final String ITSELF = "\uE000";

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

  private static String counted(Match.Grade grade) {
    return switch (grade) {
      case DIRECT -> "directly";
      case ADAPTER -> "with an adapter";
      case WARNING -> "with something to know";
      case NOT -> "not";
      case UNKNOWN -> "not known";
    };
  }

  /** Parts of one grade that do not simply fit: those of which the same is to be said in one sentence. */
  public static List<String> each(List<Match> matches) {
    var ids = new LinkedHashMap<String, List<String>>();
    for (var match : matches) {
      ids.computeIfAbsent(said(match), fresh -> new ArrayList<>())
          .add(match.part().id());
    }
    var lines = new ArrayList<String>();
    ids.forEach((said, same) -> lines.add(
        String.join(", ", same) + said.replace(ITSELF, same.size() == 1 ? same.get(0) : "…")));
    return lines;
  }

  private static String said(Match match) {
    var said = String.join(" ", match.text()).replace(match.part().id(), ITSELF);
    return switch (match.grade()) {
      case DIRECT -> ": directly.";
      case ADAPTER -> " with " + adapters(match) + "." + (said.isEmpty() ? "" : " " + said);
      case WARNING -> ", to know: " + said;
      case NOT -> ", not: " + said;
      case UNKNOWN -> ": " + said;
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
