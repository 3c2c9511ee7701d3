package pappus.search;

/**
 * How much of the catalogue a search has looked at.
 *
 * @param combinations ways to fill the roles, counting those that cannot fit
 * @param assessed builds assessed, counting repeats
 * @param feasible feasible ones among them, counting repeats
 * @param proof how far it came
 */
public record Coverage(double combinations, long assessed, long feasible, Proof proof) {
  /** Whether no better build can exist. A search that tries changes proves nothing. */
  public boolean isProof() {
    return proof.ending() == Ending.PROVEN;
  }
}
