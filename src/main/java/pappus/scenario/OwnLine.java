package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Money;
import pappus.quantity.Require;

/** Something with a price that is no part of a build: a charger, goggles, postage, an hour of work. */
public record OwnLine(
    @JsonPropertyDescription("What it is.") String text,

    @JsonPropertyDescription(
        "What it costs in all; from a shop, with or without tax as all prices.")
    Money price) {
  public OwnLine {
    Require.text("text", text);
    Require.present("price", price);
  }

  /** What it costs, whole cents. */
  public long cents() {
    return price.cents();
  }
}
