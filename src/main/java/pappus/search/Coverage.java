package pappus.search;

import java.util.OptionalLong;

/**
 * How much of the catalogue a search has looked at.
 *
 * @param combinations ways to fill the roles, counting those that cannot fit
 * @param assessed builds assessed, counting repeats
 * @param feasible feasible ones among them, counting repeats
 * @param ending what ended it
 * @param atMost what no build that was not seen surpasses, in units of the objective; empty where nothing is known
 */
public record Coverage(
    double combinations, long assessed, long feasible, Ending ending, OptionalLong atMost) {
  /** Whether no better build can exist. A search that tries changes proves nothing. */
  public boolean isProof() {
    return ending == Ending.PROVEN;
  }
}
