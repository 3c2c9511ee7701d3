package pappus.answers.shape;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import pappus.part.Part;

/** A part with all that its catalogue says of it; its kind tells which fields those are. */
public record PartJson(
    @JsonPropertyDescription("Catalogue key.") String id,

    @JsonPropertyDescription("Kind of part; \"describe KIND\" tells its other fields.")
    String kind,

    @JsonUnwrapped @JsonIgnoreProperties("id") Part part) {
  public static PartJson of(Part part) {
    return new PartJson(part.id(), part.kind().key(), part);
  }
}
