package pappus.answers.match;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pappus.answers.result.NamedParts;
import pappus.answers.result.PartJson;
import pappus.answers.result.SaidJson;
import pappus.compatibility.Match;
import pappus.files.json.JsonText;
import pappus.part.Kind;
import pappus.part.Part;

/** What goes with each of some parts by itself, with every digit. */
public record MatrixJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("How far it can be trusted.") SaidJson standing,
    @JsonPropertyDescription("One a part.") List<Column> columns,

    @JsonPropertyDescription("The parts that are named by id, by id.")
    Map<String, PartJson> parts) {
  /** What goes with one part. */
  record Column(
      @JsonPropertyDescription("Its id.") String with,

      @JsonPropertyDescription("What goes with it, by kind.")
      Map<String, List<MatchJson.Row>> kinds) {}

  /**
   * The whole answer.
   *
   * @param matches one a part
   */
  static String of(List<Part> given, List<Map<Kind, List<Match>>> matches) {
    var parts = new NamedParts();
    var columns = IntStream.range(0, given.size())
        .mapToObj(i -> new Column(parts.id(given.get(i)), MatchJson.kinds(matches.get(i), parts)))
        .toList();
    return JsonText.of(new MatrixJson(MatchJson.STATUS, MatchJson.STANDING, columns, parts.all()));
  }
}
