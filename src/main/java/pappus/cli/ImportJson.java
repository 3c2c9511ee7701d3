package pappus.cli;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;

/** What was imported. */
public record ImportJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("The catalogue file that was written.")
    String file,

    @JsonPropertyDescription("Ids that were not there before.")
    List<String> added,

    @JsonPropertyDescription("Ids that were there before.") List<String> replaced) {}
