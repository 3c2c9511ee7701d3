package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.Optional;
import pappus.assessment.Limit;

/** A limit and what is left of it. */
public record LimitJson(
    @JsonPropertyDescription("What is limited.") String id,

    @JsonPropertyDescription("Unit of the three figures; empty for a pure number.")
    String unit,

    @JsonPropertyDescription("What the build has.") double value,
    @JsonPropertyDescription("What it may have at most.") Optional<Double> atMost,
    @JsonPropertyDescription("What it must have at least.") Optional<Double> atLeast,

    @JsonPropertyDescription("What is left; below 0 where the limit is missed.")
    double margin,

    @JsonPropertyDescription("Whether the limit is kept.") boolean met) {
  public static LimitJson of(Limit limit) {
    var bound = Optional.of(limit.bound());
    return new LimitJson(
        limit.id(),
        limit.unit(),
        limit.value(),
        bound.filter(most -> limit.most()),
        bound.filter(least -> !limit.most()),
        limit.margin(),
        limit.met());
  }
}
