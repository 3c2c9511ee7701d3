package pappus.answers.check;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;

/** What was imported. */
public record ImportJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("The catalogue files that were written.")
    List<String> files,

    @JsonPropertyDescription("Ids that were not there before.")
    List<String> added,

    @JsonPropertyDescription("Ids that were there before.") List<String> replaced) {}
