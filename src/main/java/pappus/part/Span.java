package pappus.part;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import pappus.quantity.Require;

/** From one length to another, both included; equal for a plain hole. */
public record Span(
    @JsonPropertyDescription("Smallest, mm.") double fromMillimetres,
    @JsonPropertyDescription("Largest, mm.") double toMillimetres) {
  public Span {
    Require.inRange("fromMillimetres", fromMillimetres, 0.5, 200);
    Require.inRange("toMillimetres", toMillimetres, fromMillimetres, 200);
  }

  /** Whether the span holds a length, give or take a tolerance. */
  public boolean holds(double millimetres, double toleranceMillimetres) {
    return millimetres >= fromMillimetres - toleranceMillimetres
        && millimetres <= toMillimetres + toleranceMillimetres;
  }

  @Override
  public String toString() {
    return fromMillimetres == toMillimetres
        ? Require.plain(fromMillimetres)
        : Require.plain(fromMillimetres) + " to " + Require.plain(toMillimetres);
  }
}
