package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;

/** How far an answer can be trusted. */
public record SaidJson(
    @JsonPropertyDescription("Whether it is proven.") boolean proven,
    @JsonPropertyDescription("The same in sentences.") String text) {}
