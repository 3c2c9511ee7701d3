package pappus.answers.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pappus.compatibility.Match;
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
   */
  public String text(int width) {
    var lines = new Lines(width);
    lines.say("What goes with " + names() + ", whatever the scenario:");
    if (!among.isEmpty()) {
      lines.say("Among themselves:");
      MatchWords.each(among).forEach(lines::item);
    }
    if (matches.isEmpty()) {
      lines.say("No rule has anything to say of any part beside it.");
    }
    matches.forEach((kind, list) -> {
      lines.blank().say(MatchWords.counts(kind, list));
      for (var grade : Match.Grade.values()) {
        var some = list.stream().filter(match -> match.grade() == grade).toList();
        if (grade == Match.Grade.DIRECT) {
          if (!some.isEmpty()) {
            lines.item("directly: "
                + some.stream().map(match -> match.part().id()).collect(Collectors.joining(", ")));
          }
        } else {
          MatchWords.each(some).forEach(lines::item);
        }
      }
    });
    return lines
        .blank()
        .say(MatchWords.STANDING)
        .blank()
        .caution(MatchWords.CAUTION)
        .text();
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
