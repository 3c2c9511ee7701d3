package pappus.answers.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pappus.compatibility.Match;
import pappus.document.Excerpt;
import pappus.document.Lines;
import pappus.document.Table;
import pappus.part.Kind;
import pappus.part.Part;

/** What goes with some parts, for a terminal, a machine or to paste elsewhere. */
public final class MatchReport {
  private final List<Part> given;
  private final List<Match> among;
  private final Map<Kind, List<Match>> matches;

  /**
   * @param given all of them together
   * @param among what there is to say of them beside each other
   */
  public MatchReport(List<Part> given, List<Match> among, Map<Kind, List<Match>> matches) {
    this.given = List.copyOf(given);
    this.among = List.copyOf(among);
    this.matches = matches;
  }

  private String names() {
    return given.stream()
        .map(part -> part.name() + " [" + part.id() + "]")
        .collect(Collectors.joining(" and "));
  }

  /**
   * For a terminal.
   *
   * @param width columns
   * @param all whether every part is named
   */
  public String text(int width, boolean all) {
    var foot = new Lines(width).say(MatchWords.STANDING).blank().caution(MatchWords.CAUTION);
    var lines = new Lines(width);
    lines.say("What goes with " + names() + ", whatever the scenario:");
    if (!among.isEmpty()) {
      lines.say("Among themselves:");
      MatchWords.each(among, true).forEach(lines::item);
    }
    if (matches.isEmpty()) {
      lines.say("No fit rule concerns this part.");
    }
    var whole = excerpt(width, all, false);
    var room = Excerpt.MOST_LINES - lines.size() - foot.size() - 3;
    if (all || whole.fits(room)) {
      whole.sayAll(lines);
    } else {
      var free = free();
      if (!free.isEmpty()) {
        lines.say("Directly, all there are: " + String.join(", ", free) + ".");
      }
      excerpt(width, false, true)
          .sayWithin(Excerpt.MOST_LINES - lines.size() - foot.size() - 3, lines);
      lines.blank().say("--all names every part, --format csv has them in a table.");
    }
    return lines.blank().text() + foot.text();
  }

  private static boolean isFree(List<Match> list) {
    return list.stream().allMatch(match -> match.grade() == Match.Grade.DIRECT);
  }

  /** Kinds of which everything fits. */
  private List<String> free() {
    return matches.entrySet().stream()
        .filter(entry -> isFree(entry.getValue()))
        .map(entry -> MatchWords.number(entry.getKey(), entry.getValue().size()))
        .toList();
  }

  /**
   * A section a kind.
   *
   * @param isBrief whether kinds of which everything fits are left out
   */
  private Excerpt excerpt(int width, boolean all, boolean isBrief) {
    var excerpt = new Excerpt(width);
    matches.forEach((kind, list) -> {
      if (!isBrief || !isFree(list)) {
        excerpt.add(MatchWords.counts(kind, list), rows(list, all), 2, false);
      }
    });
    return excerpt;
  }

  /** What there is more of goes without saying: what differs from it comes first. */
  private static List<String> rows(List<Match> list, boolean all) {
    var direct =
        list.stream().filter(match -> match.grade() == Match.Grade.DIRECT).toList();
    var fitting = direct.isEmpty()
        ? List.<String>of()
        : all ? List.of(MatchWords.ids(direct)) : MatchWords.folded(direct);
    var rows = new ArrayList<String>();
    for (var grade : Match.Grade.values()) {
      if (grade != Match.Grade.DIRECT) {
        rows.addAll(MatchWords.each(
            list.stream().filter(match -> match.grade() == grade).toList(), all));
      }
    }
    rows.addAll(2 * direct.size() > list.size() && !all ? rows.size() : 0, fitting);
    return rows;
  }

  private Table table() {
    var columns = List.of(
        Table.Column.text("kind", "kind"),
        Table.Column.text("part", "name"),
        Table.Column.text("id", "id"),
        Table.Column.text("fits", "fits"),
        Table.Column.text("with", "adapter"),
        Table.Column.text("remarks", "remarks"));
    var rows = new ArrayList<List<Object>>();
    matches.forEach((kind, list) -> list.forEach(match -> rows.add(List.of(
        kind.key(),
        match.part().name(),
        match.part().id(),
        MatchWords.word(match.grade()),
        MatchWords.adapters(match),
        String.join(" ", match.text())))));
    return new Table(columns, rows);
  }

  /** For a spreadsheet. */
  public String csv() {
    return table().csv();
  }

  /** For a page. */
  public String markdown() {
    return table().markdown();
  }

  /** With every digit. */
  public String json() {
    return MatchJson.of(given, among, matches);
  }
}
