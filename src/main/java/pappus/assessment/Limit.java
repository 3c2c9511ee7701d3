package pappus.assessment;

/**
 * One limit of the scenario, or of a part in steady flight, and how the build stands to it.
 *
 * @param id its name in reports
 * @param label in words
 * @param unit unit of value and bound
 * @param value what the build has
 * @param bound what is allowed
 * @param most true if the value must not be above the bound; else it must not be below
 * @param met whether it is kept
 */
public record Limit(
    String id, String label, String unit, double value, double bound, boolean most, boolean met) {
  /** No excess counts for more than ten times the bound. */
  static final long LARGEST_EXCESS = 10_000_000;

  /** Unit of what is counted one by one. */
  static final String PIECES = "pieces";

  static Limit atMost(String id, String label, String unit, double value, double bound) {
    return new Limit(id, label, unit, value, bound, true, value <= bound);
  }

  static Limit atLeast(String id, String label, String unit, double value, double bound) {
    return new Limit(id, label, unit, value, bound, false, value >= bound);
  }

  /** Whether it is of a kind. */
  public boolean is(LimitKind kind) {
    return id.equals(kind.id());
  }

  /** Whether it goes without saying: that there is a flight, where there is one. */
  public boolean isPlain() {
    return met && is(LimitKind.FLIGHT_TIME);
  }

  /** Whether it is a number of things: to have just enough of them is no want of room. */
  public boolean isCount() {
    return unit.equals(PIECES);
  }

  /** Whether to keep it just so is a want of room: not where it is kept or not, or counted. */
  public boolean hasRoom() {
    return !isCount() && !is(LimitKind.PACK_THROTTLE);
  }

  /** How much is left, in the unit; below zero where it is broken. */
  public double margin() {
    return most ? bound - value : value - bound;
  }

  /** Share of the bound that is left. */
  public double relativeMargin() {
    return bound == 0 ? margin() : margin() / Math.abs(bound);
  }

  /** By how much it is broken relative to the bound, in millionths; at least one where it is. */
  public long excessMillionths() {
    if (met) {
      return 0;
    }
    var excess = -relativeMargin() * 1e6;
    return excess >= LARGEST_EXCESS || Double.isNaN(excess)
        ? LARGEST_EXCESS
        : Math.max(1, (long) Math.ceil(excess));
  }
}
