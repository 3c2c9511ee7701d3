package pappus.assessment;

import java.util.function.LongSupplier;

/**
 * The figure to plan with of one build, worked out when it is first asked for: searches assess millions of builds with
 * which nobody plans. It follows from the rest of an assessment and tells no two of them apart. Safe for several threads.
 */
public final class Planning {
  /** Without a flight there is nothing to plan with. */
  public static final Planning NONE = new Planning(() -> 0);

  private static final long UNKNOWN = -1;

  private final LongSupplier figure;
  private volatile long known = UNKNOWN;

  /**
   * @param figure in whole thousandths of a second or of a metre, at least 0
   */
  public Planning(LongSupplier figure) {
    this.figure = figure;
  }

  /** In whole thousandths of a second or of a metre. */
  public long thousandths() {
    if (known == UNKNOWN) {
      known = figure.getAsLong();
    }
    return known;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Planning;
  }

  @Override
  public int hashCode() {
    return 1;
  }

  @Override
  public String toString() {
    return "planning";
  }
}
