package pappus.answers.match;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.answers.result.FlightJson;
import pappus.answers.result.NamedParts;
import pappus.answers.result.PartJson;
import pappus.answers.result.SaidJson;
import pappus.compatibility.Match;
import pappus.files.json.JsonText;
import pappus.part.Kind;
import pappus.part.Part;

/** What goes with some parts, with every digit. */
public record MatchJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("How far it can be trusted.") SaidJson standing,

    @JsonPropertyDescription("Ids of the parts, all of them together.")
    List<String> with,

    @JsonPropertyDescription("What there is to say of them beside each other.")
    List<Row> among,

    @JsonPropertyDescription("What goes with them, by kind.")
    Map<String, List<Row>> kinds,

    @JsonPropertyDescription("The parts that are named by id, by id.")
    Map<String, PartJson> parts) {
  /** The status of an answer of this kind. */
  static final String STATUS = "matched";

  /** What stands behind it. */
  static final SaidJson STANDING = new SaidJson(true, MatchWords.STANDING);

  /** One part. */
  record Row(
      @JsonPropertyDescription("Its id.") String part,

      @JsonPropertyDescription("How well it goes with them.")
      String fits,

      @JsonPropertyDescription("Ids of adapters that it takes.")
      List<String> adapters,

      @JsonPropertyDescription("The same in sentences.") List<String> text) {
    static Row of(Match match, NamedParts parts) {
      return new Row(
          parts.id(match.part()),
          FlightJson.key(match.grade()),
          match.adapters().stream().map(parts::id).toList(),
          match.text());
    }
  }

  static Map<String, List<Row>> kinds(Map<Kind, List<Match>> matches, NamedParts parts) {
    var kinds = new LinkedHashMap<String, List<Row>>();
    matches.forEach((kind, list) -> kinds.put(kind.key(), rows(list, parts)));
    return kinds;
  }

  private static List<Row> rows(List<Match> matches, NamedParts parts) {
    return matches.stream().map(match -> Row.of(match, parts)).toList();
  }

  /** The whole answer. */
  static String of(List<Part> given, List<Match> among, Map<Kind, List<Match>> matches) {
    var parts = new NamedParts();
    return JsonText.of(new MatchJson(
        STATUS,
        STANDING,
        given.stream().map(parts::id).toList(),
        rows(among, parts),
        kinds(matches, parts),
        parts.all()));
  }
}
