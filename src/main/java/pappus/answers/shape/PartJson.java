package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Optional;
import pappus.part.Part;

/** A part with all that its catalogue says of it; its kind tells which fields those are. */
public record PartJson(
    @JsonPropertyDescription("Catalogue key.") String id,

    @JsonPropertyDescription("Kind of part; \"describe KIND\" tells its other fields.")
    String kind,

    @JsonUnwrapped @JsonIgnoreProperties("id") Part part,

    @JsonPropertyDescription(
        "Fields that its record left out and its class filled; left out where it did none.")
    Optional<List<AssumedJson>> assumed) {
  /** A field filled by class. */
  public record AssumedJson(
      @JsonPropertyDescription("The field.") String field,

      @JsonPropertyDescription(
          "One standard deviation within the class, %; left out of what is no quantity.")
      Optional<Double> spreadPercent,

      @JsonPropertyDescription("What it follows from.") String from) {}

  public static PartJson of(Part part) {
    return new PartJson(
        part.id(),
        part.kind().key(),
        part,
        Optional.of(part.assumed().stream()
                .map(one -> new AssumedJson(
                    one.path(),
                    Optional.of(100 * (StrictMath.exp(one.spread()) - 1))
                        .filter(share -> share > 0),
                    one.from()))
                .toList())
            .filter(list -> !list.isEmpty()));
  }
}
