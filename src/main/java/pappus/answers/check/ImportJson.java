package pappus.answers.check;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.inspection.NewBuilds;
import pappus.part.Role;

/** What was imported. */
public record ImportJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("The catalogue files that were written.")
    List<String> files,

    @JsonPropertyDescription("Ids that were not there before.")
    List<String> added,

    @JsonPropertyDescription("Ids that were there before.") List<String> replaced,

    @JsonPropertyDescription(
        "What builds parts make possible that were not before; of the first of many.")
    List<Made> builds) {
  /** What a part makes possible. */
  public record Made(
      @JsonPropertyDescription("Id of the part.") String part,

      @JsonPropertyDescription("How many parts of a role go with it.")
      Map<Role, Integer> fitting,

      @JsonPropertyDescription("A build with it; left out where none was found.")
      Optional<String> example,

      @JsonPropertyDescription("The same in words.") String text) {
    public static Made of(NewBuilds made) {
      return new Made(made.id(), made.fitting(), made.example(), made.text());
    }
  }
}
