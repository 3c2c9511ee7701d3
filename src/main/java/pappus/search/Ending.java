package pappus.search;

/** What ended a search. */
public enum Ending {
  /** Nothing better is left. */
  PROVEN,
  /** It looked at as many nodes as it was given. */
  EFFORT,
  /** It tried as many changes as it was given. */
  MOVES,
  /** The safety net of the clock; another run may differ. */
  CLOCK,
  /** The user stopped it. */
  INTERRUPTED
}
