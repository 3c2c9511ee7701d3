package pappus.whatif.relax;

import java.util.Optional;

/** Demands in words alone, for tests of what is said of them. */
public final class Demanded {
  private Demanded() {}

  /** A demand that changes nothing when it is given up. */
  public static Demand of(String id, String text, String givenUp) {
    return new Demand(id, text, givenUp, Optional.empty(), asked -> asked);
  }
}
